/** Hands a file to the browser to keep. */
import type { OutFile } from '../../index.js';

const types: Readonly<Record<string, string>> = {
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  pdf: 'application/pdf',
  zip: 'application/zip',
  yaml: 'text/yaml',
  html: 'text/html',
};

export function download({ name, content }: OutFile): void {
  const type = types[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
  const url = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // after the browser has taken it
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
