/** Which pieces have a drawing on the screen: those are kept up to date first. */

const pieceOf = new WeakMap<Element, string>();
const seen = new Set<Element>();
let onEntry: (piece: string) => void = () => {};

const observer = new IntersectionObserver((entries) => {
  for (const { target, isIntersecting } of entries) {
    seen[isIntersecting ? 'add' : 'delete'](target);
    if (isIntersecting) onEntry(pieceOf.get(target)!);
  }
});

/** Watches an element that shows a piece; answers with the way to stop. */
export function watch(element: Element, piece: string): () => void {
  pieceOf.set(element, piece);
  observer.observe(element);
  return () => {
    observer.unobserve(element);
    seen.delete(element);
  };
}

export const isInView = (piece: string): boolean =>
  [...seen].some((element) => pieceOf.get(element) === piece);

/** `told` hears of each piece that comes into view. */
export const onEntryOf = (told: (piece: string) => void): void => void (onEntry = told);
