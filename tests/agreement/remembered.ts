/** Makes a thing of a text once, as long as not too many others come between: then all are forgotten, so that a long run stays small. */
export function remembered<T>(make: (text: string) => T, most = 500): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const made = make(text);
    if (known.size >= most) known.clear();
    known.set(text, made);
    return made;
  };
}
