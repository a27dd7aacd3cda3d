/** The next of a list that grows while it is worked off. */

/** Takes the best out of a list, of equals the first; undefined when it is empty. */
export function takeBest<Item>(
  items: Item[],
  isBetter: (a: Item, b: Item) => boolean,
): Item | undefined {
  let best = 0;
  for (const [i, item] of items.entries()) if (isBetter(item, items[best]!)) best = i;
  return items.splice(best, 1)[0];
}
