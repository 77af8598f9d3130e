import { levelFrom, type LevelAnswer } from '../../outcome/answers.ts';
import { mergeLevels } from '../../ward/merge-levels.ts';
import type { Diagram, Diagrams } from '../diagrams/diagrams.ts';
import type { Pairwise } from '../diagrams/pairwise.ts';
import type { LogicDiagrams } from '../diagrams/logic-to-diagrams.ts';
import type { LevelChange } from './level-question.ts';
import type { Logic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';

/** More levels than a ladder has. */
const base = 64;

/** A level as one number, so that a diagram can end in it: 0 where nothing is for the patient. */
function levelToCode(level: LevelAnswer | null): number {
  if (!level) return 0;
  const { atLeast, couldBe, settled } = level;
  return 1 + (((atLeast ?? -1) + 1) * base + couldBe) * 2 + Number(settled);
}

function codeToLevel(code: number): LevelAnswer | null {
  if (code === 0) return null;
  const [rest, settled] = [(code - 1) >> 1, (code - 1) % 2 === 1];
  const atLeast = Math.floor(rest / base) - 1;
  return { atLeast: atLeast < 0 ? null : atLeast, couldBe: rest % base, settled };
}

/** What the levels of two protocols are together. */
const together: Pairwise = {
  name: 'levels together',
  of: (left, right) => levelToCode(mergeLevels([codeToLevel(left), codeToLevel(right)])),
  commutes: true,
};

/** Numbers of two steps, side by side: none is below 0 or as high as `base`. */
const beside: Pairwise = {
  name: 'beside',
  of: (left, right) => Math.max(left, 0) * base + Math.max(right, 0),
  commutes: false,
};

/** What is for the patient, by what is raised, what could be, and below which nothing can be. */
const named = (applies: 'surely' | 'maybe'): Pairwise => ({
  name: `level where it applies ${applies}`,
  of: (raisedAndCould, floor) =>
    levelToCode(
      levelFrom(
        {
          applies: { certain: () => (applies === 'surely' ? 1 : 0), possible: () => 1 },
          levels: {
            raised: () => Math.floor(raisedAndCould / base),
            could: () => raisedAndCould % base,
            floor: () => Math.max(floor, 0),
          },
        },
        noResult,
        noResult,
      ),
    ),
  commutes: false,
});

const noResult = new Float64Array();

/** The level of one protocol as a function of the set, in codes. */
export function levelDiagram({ levels, applies }: Logic, diagrams: LogicDiagrams, store: Diagrams): Diagram {
  const of = (logical: Logical): Diagram => diagrams.of(logical);
  const raisedAndCould = store.pair(beside, of(levels.raised), of(levels.could));
  const floor = of(levels.floor);
  const level = (how: 'surely' | 'maybe'): Diagram => store.pair(named(how), raisedAndCould, floor);
  const whereItMay = store.choose(of(applies.certain), level('surely'), level('maybe'));
  return store.choose(of(applies.possible), whereItMay, store.leaf(0));
}

/** The one level of several protocols. */
export const levelsTogether = (all: readonly Diagram[], store: Diagrams): Diagram =>
  all.reduce((left, right) => store.pair(together, left, right));

const most = 1 << 14;

/** Two levels, side by side. */
export const becomes: Pairwise = {
  name: 'becomes',
  of: (before, after) => before * most + after,
  commutes: false,
};

/** The levels of an end of `becomes`. */
export const codeToChange = (code: number): LevelChange => ({
  from: codeToLevel(Math.floor(code / most)),
  to: codeToLevel(code % most),
});
