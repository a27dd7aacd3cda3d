/** The package has no types of its own. */
declare module 'subset-font' {
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: { readonly targetFormat: 'truetype' },
  ): Promise<Uint8Array>;
}
