/** The text of an SVG as a reader of XML has it: our files hold characters beyond ASCII as numbers. */
export function decoded(svg: string): string {
  return svg.replaceAll(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));
}
