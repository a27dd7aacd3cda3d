/** The ready specs to begin from; the build puts them into the page. */

const files = import.meta.glob<string>('../../../templates/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

export interface Template {
  readonly name: string;
  readonly title: string;
  readonly text: string;
}

export const templates: readonly Template[] = Object.entries(files).map(([path, text]) => ({
  name: path.replace(/^.*\/|\.yaml$/g, ''),
  title: /^title: *(.*)$/m.exec(text)?.[1] ?? '',
  text,
}));

export const firstTemplate = templates.find(({ name }) => name === 'wine-cask-225')?.text ?? '';
