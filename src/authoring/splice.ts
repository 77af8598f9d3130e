/** One edit of a text: what stands from `from` to before `to` gives way to `text`. Offsets are in UTF-16 units. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/**
 * A text with its splices made. Their offsets are all of the text before; they may touch each other, but not overlap.
 *
 * `spliced('below: 90', [{ from: 7, to: 9, text: '85' }])` is `'below: 85'`; every other character stays as it was.
 */
export function spliced(text: string, splices: readonly Splice[]): string {
  const inOrder = [...splices].sort((left, right) => left.from - right.from || left.to - right.to);
  let made = '';
  let at = 0;
  for (const { from, to, text: put } of inOrder) {
    if (from < at || to < from || to > text.length)
      throw new Error(`a splice from ${from} to ${to} does not fit`);
    made += text.slice(at, from) + put;
    at = to;
  }
  return made + text.slice(at);
}
