/** A run of one column that is answered alike; both ends included. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly answer: number;
}

interface Rectangle {
  readonly across: readonly [number, number];
  readonly along: readonly [number, number];
  readonly answer: number;
}

/** Joins runs that neighbouring columns have in common to rectangles. The columns come in order and leave none out. */
export function columnsToCells(
  columns: Iterable<{ readonly from: number; readonly to: number; readonly runs: readonly Run[] }>,
): Rectangle[] {
  const done: Rectangle[] = [];
  let open = new Map<string, Rectangle>();
  for (const { from, to, runs } of columns) {
    const next = new Map<string, Rectangle>();
    for (const run of runs) {
      const key = `${run.from} ${run.to} ${run.answer}`;
      const before = open.get(key);
      open.delete(key);
      next.set(key, {
        across: [before?.across[0] ?? from, to],
        along: [run.from, run.to],
        answer: run.answer,
      });
    }
    done.push(...open.values());
    open = next;
  }
  return [...done, ...open.values()];
}
