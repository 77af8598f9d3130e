/** Up to so many pairs of lines are compared each with each; beyond that the whole middle counts as different. */
const mostCompared = 4_000_000;

/**
 * The longest list of lines that stand in both texts in the same order, as pairs of their places, from 0.
 *
 * `alikeLines(['a', 'b', 'c'], ['a', 'c'])` is `[[0, 0], [2, 1]]`.
 */
export function alikeLines(left: readonly string[], right: readonly string[]): [number, number][] {
  const most = Math.min(left.length, right.length);
  let start = 0;
  while (start < most && left[start] === right[start]) start += 1;
  let end = 0;
  while (end < most - start && left[left.length - 1 - end] === right[right.length - 1 - end]) end += 1;
  const middle = longestInBoth(left.slice(start, left.length - end), right.slice(start, right.length - end));
  return [
    ...Array.from({ length: start }, (_, index): [number, number] => [index, index]),
    ...middle.map(([index, other]): [number, number] => [start + index, start + other]),
    ...Array.from({ length: end }, (_, index): [number, number] => [
      left.length - end + index,
      right.length - end + index,
    ]),
  ];
}

function longestInBoth(left: readonly string[], right: readonly string[]): [number, number][] {
  const width = right.length + 1;
  if (left.length * right.length > mostCompared) return [];
  const longest = new Uint32Array((left.length + 1) * width);
  const at = (index: number, other: number): number => longest[index * width + other] ?? 0;
  for (let index = left.length - 1; index >= 0; index -= 1) {
    for (let other = right.length - 1; other >= 0; other -= 1) {
      longest[index * width + other] =
        left[index] === right[other]
          ? at(index + 1, other + 1) + 1
          : Math.max(at(index + 1, other), at(index, other + 1));
    }
  }
  const found: [number, number][] = [];
  let [index, other] = [0, 0];
  while (index < left.length && other < right.length) {
    if (left[index] === right[other]) found.push([index++, other++]);
    else if (at(index + 1, other) >= at(index, other + 1)) index += 1;
    else other += 1;
  }
  return found;
}

/** Lines and the ends between them, in turn: a line stands at each even place, the end of it behind it. */
const linesAndEnds = (text: string): string[] => text.split(/(\r\n|\r|\n)/);
const onlyLines = (parts: readonly string[]): string[] => parts.filter((_, index) => index % 2 === 0);

/**
 * The text of a field with the line ends of the text that it was opened with. A field evens line ends that are mixed; here each line that
 * stands in both texts gets its own end back, so that what nobody touched is the same to the byte. A line that was written anew ends as the
 * field ends it.
 *
 * `withOwnLineEnds('a\nc\n', 'a\r\nb\n')` is `'a\r\nc\n'`.
 */
export function withOwnLineEnds(field: string, opened: string): string {
  // Where line feeds are all that there is, nothing was evened.
  if (!opened.includes('\r') && !field.includes('\r')) return field;
  const [now, before] = [linesAndEnds(field), linesAndEnds(opened)];
  for (const [line, own] of alikeLines(onlyLines(now), onlyLines(before))) {
    const [end, ownEnd] = [now[2 * line + 1], before[2 * own + 1]];
    // The last line has no end; whether it got one is the author's own doing.
    if (end !== undefined && ownEnd !== undefined) now[2 * line + 1] = ownEnd;
  }
  return now.join('');
}
