import type { Compiled } from '../../outcome/compile.ts';
import type { Logic } from '../../logic/logic.ts';
import { asOneProtocol } from '../as-one-protocol.ts';
import type { Box } from '../box.ts';
import { atEnd, TooManyPieces, type Diagram, type Diagrams } from '../diagrams/diagrams.ts';
import { findSetIn } from '../diagrams/find-set-in.ts';
import { eachPiece } from '../diagrams/input-diagrams.ts';
import { LogicDiagrams } from '../diagrams/logic-to-diagrams.ts';
import { piecesToBox } from '../diagrams/pieces-to-box.ts';
import type { Pairwise } from '../diagrams/pairwise.ts';
import { preferredPieces } from '../diagrams/preferred.ts';
import { logicOfSingleSet } from '../diagrams/single-set.ts';
import { Space } from '../diagrams/space.ts';
import { codeToLevel, levelDiagram, levelsTogether } from './level-codes.ts';
import { isSame, type LevelChange } from './level-question.ts';
import type { Asking } from './asking.ts';

/** A change of level that some set has, and one such set. */
export interface ChangeWithSet extends LevelChange {
  readonly box: Box;
}

/** Each change of level that there is, with a set: among complete sets, and among those in which something is missing. */
export interface ChangesOfEverySet {
  readonly complete: readonly ChangeWithSet[];
  readonly incomplete: readonly ChangeWithSet[];
  /** Changes that may happen, and that only earlier sets could show. */
  readonly open: readonly LevelChange[];
}

/**
 * Which levels become which, for every set, complete or not: both sides' levels as functions of the set, and a set for each pair of them that is not the
 * same. Null where these functions grow too large to be held.
 */
export function changesOfEverySet(asking: Asking): ChangesOfEverySet | null {
  try {
    return changesIn(asking);
  } catch (error) {
    if (error instanceof TooManyPieces) return null;
    throw error;
  }
}

function changesIn(asking: Asking): ChangesOfEverySet {
  const all = [...asking.before, ...asking.after].map(({ protocol }) => protocol);
  const space = new Space(asOneProtocol(all), all);
  const looksBack = [...asking.before, ...asking.after].some(({ logic }) =>
    logic.inputs.some(({ of }) => of === 'look_back'),
  );
  const single = changeDiagram(asking, space, ({ logic, protocol }) => logicOfSingleSet(logic, protocol));
  const complete = completeSets(space);
  const [whole, lacking] = [complete, space.store.not(complete)].map((which) =>
    changesWhere(which, single, asking, space),
  ) as [ChangeWithSet[], ChangeWithSet[]];
  const shown = new Set([...whole, ...lacking].map(keyOf));
  const every = looksBack ? changeDiagram(asking, space, ({ logic }) => logic) : single;
  const open = changesWhere(space.store.yes, every, asking, space).filter((each) => !shown.has(keyOf(each)));
  return { complete: whole, incomplete: lacking, open };
}

const keyOf = ({ from, to }: LevelChange): string => JSON.stringify([from, to]);

/** Both sides' levels, side by side, as a function of the set. */
function changeDiagram(asking: Asking, space: Space, logicOf: (member: Compiled) => Logic): Diagram {
  const { store } = space;
  const [before, after] = [asking.before, asking.after].map((members) =>
    levelsTogether(
      members.map((member) => {
        const logic = logicOf(member);
        return levelDiagram(logic, new LogicDiagrams(space, logic, member.protocol), store);
      }),
      store,
    ),
  ) as [Diagram, Diagram];
  return store.pair(becomes, before, after);
}

const most = 1 << 14;
const becomes: Pairwise = {
  name: 'becomes',
  of: (before, after) => before * most + after,
  commutes: false,
};

function changesWhere(which: Diagram, change: Diagram, asking: Asking, space: Space): ChangeWithSet[] {
  const { store } = space;
  const preferred = preferredPieces(space);
  return [...endsOf(change, store)].flatMap((code) => {
    const [from, to] = [codeToLevel(Math.floor(code / most)), codeToLevel(code % most)];
    if (isSame({ from, to }, asking)) return [];
    const pieces = findSetIn(space, [store.not(store.differ(change, store.leaf(code))), which], preferred);
    return pieces ? [{ from, to, box: piecesToBox(space, pieces) }] : [];
  });
}

/** Every number that a diagram ends in, in order. */
function endsOf(diagram: Diagram, store: Diagrams): readonly number[] {
  const [seen, ends] = [new Set([diagram]), new Set<number>()];
  for (const next of seen) {
    if (store.variableOf(next) === atEnd) ends.add(store.valueOf(next));
    else for (const end of store.endsOf(next)) seen.add(store.at(next, end));
  }
  return [...ends].sort((left, right) => left - right);
}

/** Sets in which every observation has a value, or is taken for what it counts as while nobody has stated it. */
function completeSets({ variables, store }: Space): Diagram {
  return store.and(
    ...variables.map((variable, place) =>
      eachPiece(
        place,
        variable,
        (_, lack) => (lack && (lack.unobtainable || !lack.assumed) ? store.no : store.yes),
        store,
      ),
    ),
  );
}
