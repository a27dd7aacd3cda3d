/** The lettering's font for PDF. */
const fonts = import.meta.glob<string>('../../../fonts/DejaVuSans.ttf', {
  query: '?inline',
  import: 'default',
});

let fetched: Promise<Uint8Array> | null = null;

/** Fetched when the first PDF is made; the same bytes every time. */
export function font(): Promise<Uint8Array> {
  return (fetched ??= fetchFont());
}

async function fetchFont(): Promise<Uint8Array> {
  const address = (await Object.values(fonts)[0]?.()) ?? '';
  return Uint8Array.from(atob(address.split(',')[1] ?? ''), (c) => c.charCodeAt(0));
}
