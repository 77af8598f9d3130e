import { withValue } from '../../document/edit.ts';
import type { Path } from '../../problems/place.ts';
import type { Change } from './change.ts';
import { made, type Original } from './making.ts';

/** The level of each rule, and the one that an explanation lowers it to, one higher and one lower on the ladder. */
export function* levelChanges(original: Original): Generator<Change> {
  for (const { path, level, explainedBy } of original.protocol.rules) {
    yield* moved([...path, 'level'], level, original);
    yield* moved([...path, 'explained_by', 'level'], explainedBy?.level ?? null, original);
  }
}

function* moved(path: Path, level: number | null, original: Original): Generator<Change> {
  if (level === null) return;
  const { levels } = original.protocol.ladder;
  for (const to of [level - 1, level + 1]) {
    const [before, after] = [levels[level]?.name, levels[to]?.name];
    if (before === undefined || after === undefined) continue;
    const document = withValue(original.document, path, after);
    yield made(original, { kind: 'level', path, what: `${before} to ${after}`, document });
  }
}
