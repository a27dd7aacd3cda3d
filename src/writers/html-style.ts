/** How the page of patterns looks: black on white, one column on paper. */
export const indexPageStyle = `body { margin: 2rem auto; max-width: 64rem; padding: 0 1rem; font: 1rem/1.5 serif; color: #000; background: #fff; }
h1 { font-size: 1.6rem; font-weight: normal; border-bottom: 1px solid; padding-bottom: 0.3rem; }
h2 { font-size: 1.1rem; margin-bottom: 0.2rem; }
a { color: inherit; }
main { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 28rem), 1fr)); gap: 1.5rem; }
figure { margin: 0; padding: 0.8rem; border: 1px solid #999; break-inside: avoid; display: flex; flex-direction: column; }
figure > a, figure > p { flex: 1; display: flex; align-items: center; justify-content: center; margin: 0; }
img { max-width: 100%; max-height: 20rem; }
figcaption { margin-top: 0.6rem; border-top: 1px solid #999; padding-top: 0.4rem; }
figcaption b { display: block; }
footer { margin-top: 2rem; border-top: 1px solid; }
ul { margin-top: 0; padding-left: 1.2rem; }
@media print {
  body { margin: 0; max-width: none; }
  main { display: block; }
  figure { margin-bottom: 1rem; }
  section { break-inside: avoid; }
}
`;
