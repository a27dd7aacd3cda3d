/** Answers that are asked for again and again, such as what a text measures. */

/** Keeps what is made of each text until there are `most`; then the store starts anew, since a page may draw for hours. */
export function keptByText<T>(most: number, make: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    if (known.size >= most) known.clear();
    const made = make(text);
    known.set(text, made);
    return made;
  };
}
