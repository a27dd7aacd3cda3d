/**
 * Where the page's script begins: as the page itself; or as a helper beside it, which has no document. One script for both, so
 * that a helper loads what the page has loaded already, and the single file has everything in it once.
 */
if ('document' in globalThis) {
  void import('./main.js').then(({ showPage }) => showPage());
} else {
  const helper = import('./helper/helper.js');
  // listening from the start: what is sent before the helper is loaded would be lost
  addEventListener('message', ({ data }: MessageEvent) => {
    void helper.then(({ answer }) => answer(data));
  });
}
