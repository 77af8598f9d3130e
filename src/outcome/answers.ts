import type { Rule } from '../protocol/protocol.ts';
import type { Bounds } from '../series/bounds.ts';
import type { Compiled } from './compile.ts';
import type { LevelReaders } from './level-readers.ts';
import type { RuleReaders } from './rule-readers.ts';
import type { View } from './view.ts';

export type State = 'met' | 'not_met' | 'undecided';

/** How one rule stands, without words. */
export interface RuleAnswer {
  readonly rule: Rule;
  readonly state: State;
  /** Undecided, and it counts in full: only exceptions that nobody has answered hold it back. */
  readonly counts: boolean;
  /** Whether its explanation is known to hold, and whether it still may. */
  readonly explained: boolean;
  readonly mayBeExplained: boolean;
  /** Not met, and that reassures nobody. */
  readonly notReliable: boolean;
}

/** How far up the ladder, as indices, lowest 0. */
export interface LevelAnswer {
  /** Null: not settled, and nothing calls for more than the lowest. */
  readonly atLeast: number | null;
  readonly couldBe: number;
  readonly settled: boolean;
}

/** Everything that was found about a patient at one time, before it is put into words. */
export interface Answers {
  readonly applies: 'yes' | 'no' | 'unsure';
  /** Null when the protocol is not for this patient. */
  readonly level: LevelAnswer | null;
  /** In the order of the file; also when the protocol is not for this patient. */
  readonly rules: readonly RuleAnswer[];
  /** With earlier values standing in; and with them counted as missing: the very same when none stands in. */
  readonly narrow: View;
  readonly wide: View;
}

/** Asks both ways of taking earlier values: what raises comes from the narrow one, what reassures from the wide one. */
export function answersOf(compiled: Compiled, bounds: Bounds): Answers {
  const narrow = view(compiled, bounds, false);
  const wide = bounds.wide === bounds.narrow ? narrow : view(compiled, bounds, true);
  const applies = appliesFrom(compiled, narrow.result, wide.result);
  return {
    applies,
    level: applies === 'no' ? null : levelFrom(compiled, narrow.result, wide.result),
    rules: [...compiled.rules.values()].map((rule) => ruleFrom(rule, narrow.result, wide.result)),
    narrow,
    wide,
  };
}

/** The level alone, for whoever asks of very many sets. Null when the protocol is not for this patient. */
export function levelOf({ levelAlone }: Compiled, { narrow, wide }: Bounds): LevelAnswer | null {
  const { evaluator } = levelAlone;
  const result = evaluator.run(narrow);
  const first = narrow === wide ? result : result.slice();
  const second = narrow === wide ? result : evaluator.run(wide);
  return appliesFrom(levelAlone, first, second) === 'no' ? null : levelFrom(levelAlone, first, second);
}

function view({ evaluator }: Compiled, { narrow, wide, facts }: Bounds, isWide: boolean): View {
  return { result: evaluator.run(isWide ? wide : narrow).slice(), facts, wide: isWide, hows: new Map() };
}

type Result = Float64Array;

export function appliesFrom({ applies }: LevelReaders, narrow: Result, wide: Result): Answers['applies'] {
  if (applies.possible(wide) === 0) return 'no';
  return applies.certain(narrow) === 0 ? 'unsure' : 'yes';
}

export function levelFrom(
  { applies, levels }: Omit<LevelReaders, 'evaluator'>,
  narrow: Result,
  wide: Result,
): LevelAnswer {
  const raised = levels.raised(narrow);
  const couldBe = Math.max(raised, levels.could(wide), 0);
  const floor = Math.max(levels.floor(wide), 0);
  const settled = applies.certain(wide) !== 0 && floor === Math.max(raised, 0) && floor === couldBe;
  return { atLeast: raised > 0 ? raised : settled ? 0 : null, couldBe, settled };
}

/** The state of a rule in the two results. */
export function stateFrom({ certain, possible }: RuleReaders, narrow: Result, wide: Result): State {
  if (certain(narrow) !== 0) return 'met';
  return possible(wide) === 0 ? 'not_met' : 'undecided';
}

function ruleFrom(readers: RuleReaders, narrow: Result, wide: Result): RuleAnswer {
  const state = stateFrom(readers, narrow, wide);
  const { explained } = readers;
  return {
    rule: readers.rule,
    state,
    counts: state === 'undecided' && readers.counts(narrow) !== 0,
    explained: explained.certain(narrow) !== 0,
    mayBeExplained: explained.possible(wide) !== 0,
    notReliable: state === 'not_met' && readers.notReliable(narrow) !== 0,
  };
}
