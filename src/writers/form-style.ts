/** How the page of a form looks: black on white, to be read at arm's length. */
export const formStyle = `@page { margin: 12mm; }
body { margin: 1.5rem auto; max-width: 52rem; padding: 0 1rem; font: 1.15rem/1.4 sans-serif; color: #000; background: #fff; }
h1 { font-size: 1.5rem; font-weight: normal; margin: 0 0 0.6rem; }
h2 { font-size: 1.15rem; margin: 1.2rem 0 0.4rem; border-bottom: 2px solid; break-after: avoid; }
dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 20rem), 1fr)); gap: 0 2rem; margin: 0; }
dl div { display: flex; justify-content: space-between; border-bottom: 1px solid #999; }
dd { margin: 0; }
table { border-collapse: collapse; width: 100%; }
th { text-align: left; font-weight: normal; border-bottom: 1px solid; }
td { border-bottom: 1px solid #999; }
th:not(:first-child), td:not(:first-child) { text-align: right; padding-left: 1rem; }
tr, li, .labels span { break-inside: avoid; }
ol { list-style: none; margin: 0; padding: 0; }
li { position: relative; padding: 0 0 0.5rem 2.2rem; }
.tick { position: absolute; left: 0; top: 0.1rem; width: 1.1rem; height: 1.1rem; border: 1px solid; }
.measures { display: flex; flex-wrap: wrap; align-items: center; justify-content: flex-end; gap: 0.2rem 1.2rem; }
.measures b { margin-right: auto; }
.measures span { display: inline-flex; align-items: center; gap: 0.6rem; }
.measures i { width: 6.5rem; height: 1.8rem; border: 1px solid; }
p { margin: 0; }
.caution { border-left: 4px solid; padding-left: 0.6rem; }
.labels { display: grid; grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr)); border: solid; border-width: 1px 0 0 1px; }
.labels span { border: solid; border-width: 0 1px 1px 0; padding: 0.3rem; text-align: center; }
@media print {
  body { margin: 0; max-width: none; padding: 0; font-size: 12.5pt; line-height: 1.22; }
  h1, h2 { margin-bottom: 2pt; font-size: 1em; }
  h2 { margin-top: 6pt; }
  li { padding-bottom: 2pt; }
  .measures i { height: 6.5mm; }
  .labels span { padding: 1.4mm 0; }
}
`;
