/** One line of two texts beside each other; null where the other text has a line that this one has not. */
export interface LinePair {
  readonly mine: NumberedLine | null;
  readonly theirs: NumberedLine | null;
  readonly differs: boolean;
}

export interface NumberedLine {
  /** From 1. */
  readonly number: number;
  readonly text: string;
}

/** Up to so many pairs of lines are compared each with each; beyond that the whole middle counts as different. */
const mostCompared = 4_000_000;

const linesOf = (text: string): string[] => text.split(/\r?\n/);

/** Two texts beside each other, line by line: what stands in both stands on one level. */
export function differingLines(mine: string, theirs: string): LinePair[] {
  const [left, right] = [linesOf(mine), linesOf(theirs)];
  let start = 0;
  while (start < Math.min(left.length, right.length) && left[start] === right[start]) start += 1;
  let end = 0;
  while (
    end < Math.min(left.length, right.length) - start &&
    left[left.length - 1 - end] === right[right.length - 1 - end]
  )
    end += 1;
  const same = (index: number, other: number): LinePair => ({
    mine: { number: index + 1, text: left[index] ?? '' },
    theirs: { number: other + 1, text: right[other] ?? '' },
    differs: false,
  });
  const head = Array.from({ length: start }, (_, index) => same(index, index));
  const tail = Array.from({ length: end }, (_, index) =>
    same(left.length - end + index, right.length - end + index),
  );
  const middle = middlePairs(
    left.slice(start, left.length - end),
    right.slice(start, right.length - end),
    start,
  );
  return [...head, ...middle, ...tail];
}

/** The part between what begins and what ends alike. */
function middlePairs(left: readonly string[], right: readonly string[], offset: number): LinePair[] {
  const pairs: LinePair[] = [];
  let [from, other] = [0, 0];
  const upTo = (index: number, second: number): void => {
    while (from < index || other < second) {
      const mine = from < index ? { number: offset + from + 1, text: left[from] ?? '' } : null;
      const theirs = other < second ? { number: offset + other + 1, text: right[other] ?? '' } : null;
      pairs.push({ mine, theirs, differs: true });
      if (mine) from += 1;
      if (theirs) other += 1;
    }
  };
  for (const [index, second] of inBoth(left, right)) {
    upTo(index, second);
    const text = left[index] ?? '';
    pairs.push({
      mine: { number: offset + index + 1, text },
      theirs: { number: offset + second + 1, text },
      differs: false,
    });
    from = index + 1;
    other = second + 1;
  }
  upTo(left.length, right.length);
  return pairs;
}

/** The longest list of lines that stand in both texts in the same order, as pairs of their places. */
function inBoth(left: readonly string[], right: readonly string[]): [number, number][] {
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

/** A run of lines that are alike, of which only how many they are is of interest; or a pair that is shown. */
export type ShownLines =
  { readonly alike: number; readonly key: string } | (LinePair & { readonly key: string });

/** What is shown of two texts: each difference with so many lines around it; the rest is counted. */
export function aroundDifferences(pairs: readonly LinePair[], around = 3): ShownLines[] {
  const near = new Set<number>();
  pairs.forEach(({ differs }, index) => {
    if (!differs) return;
    for (let each = index - around; each <= index + around; each += 1) near.add(each);
  });
  const shown: ShownLines[] = [];
  let alike = 0;
  const flush = (): void => {
    if (alike > 0) shown.push({ alike, key: `alike before ${shown.length}` });
    alike = 0;
  };
  pairs.forEach((pair, index) => {
    if (!near.has(index)) {
      alike += 1;
      return;
    }
    flush();
    shown.push({ ...pair, key: `${pair.mine?.number ?? ''}|${pair.theirs?.number ?? ''}` });
  });
  flush();
  return shown;
}
