import { alikeLines } from '../../../../src/index.ts';

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

const linesOf = (text: string): string[] => text.split(/\r?\n/);

/** Two texts beside each other, line by line: what stands in both stands on one level. */
export function differingLines(mine: string, theirs: string): LinePair[] {
  const [left, right] = [linesOf(mine), linesOf(theirs)];
  const pairs: LinePair[] = [];
  let [from, other] = [0, 0];
  const numbered = (lines: readonly string[], index: number): NumberedLine => ({
    number: index + 1,
    text: lines[index] ?? '',
  });
  const upTo = (index: number, second: number): void => {
    while (from < index || other < second) {
      const pair = {
        mine: from < index ? numbered(left, from) : null,
        theirs: other < second ? numbered(right, other) : null,
      };
      pairs.push({ ...pair, differs: true });
      if (pair.mine) from += 1;
      if (pair.theirs) other += 1;
    }
  };
  for (const [index, second] of alikeLines(left, right)) {
    upTo(index, second);
    pairs.push({ mine: numbered(left, index), theirs: numbered(right, second), differs: false });
    from = index + 1;
    other = second + 1;
  }
  upTo(left.length, right.length);
  return pairs;
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
