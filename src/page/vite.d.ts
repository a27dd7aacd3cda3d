/** What vite adds to modules: files as text, found when the page is built. */
interface ImportMeta {
  glob<T>(
    path: string,
    how: { readonly query: string; readonly import: string; readonly eager: true },
  ): Record<string, T>;
  glob<T>(
    path: string,
    how: { readonly query: string; readonly import: string },
  ): Record<string, () => Promise<T>>;
}
