/** When a helper is to begin: once the browser has shown what the page changed, which has the processor to itself until then. */

/** After this long, ms, it begins although the browser still has something to do. */
const patience = 100;

export function afterPicture(begin: () => void): void {
  // a page that nobody looks at gets no frames
  if (document.hidden) return void setTimeout(begin);
  requestAnimationFrame(() => {
    // not every browser says when it has nothing else to do
    if ('requestIdleCallback' in window) requestIdleCallback(begin, { timeout: patience });
    else setTimeout(begin);
  });
}
