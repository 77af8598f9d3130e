import { answersOf, type LevelAnswer } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import { inForce } from '../outcome/in-force.ts';
import { levelsOverTime } from '../outcome/levels-over-time.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Series } from '../series/series.ts';
import { wardOutcomeOf } from '../ward/series-to-ward-outcome.ts';
import type { Ward } from '../ward/ward.ts';
import type { RulesSay } from './judge.ts';
import type { Story } from './stories.ts';

/** What decks are made by. It gives the case away, so it is not shown before the case is answered. */
export interface CaseCard {
  readonly name: string;
  /** Whether the case was written to teach with. */
  readonly teaches: boolean;
  readonly rules: RulesSay;
  /** Rules that it meets; of a ward policy each with its protocol before it: `sepsis_screen.fast_rate`. */
  readonly met: readonly string[];
}

export function cardOf({ name, series, teach }: Story, reads: Compiled | Ward): CaseCard {
  const found = 'members' in reads ? askWard(reads, series) : askProtocol(reads, series);
  return { name, teaches: teach !== null, ...found };
}

type Found = Pick<CaseCard, 'rules' | 'met'>;

function askProtocol(compiled: Compiled, series: Series): Found {
  const { level, rules } = answersOf(compiled, seriesToBounds(compiled.protocol, series));
  const held =
    series.sets.length < 2
      ? null
      : inForce(levelsOverTime(compiled, series), level, compiled.protocol.ladder);
  return {
    rules: rulesSay(level, held?.level ?? null),
    met: rules.flatMap(({ state, rule }) => (level && state === 'met' ? [rule.name] : [])),
  };
}

function askWard(ward: Ward, series: Series): Found {
  const { level, in_force: held, reads } = wardOutcomeOf(ward, series);
  const rank = (name: string | null | undefined): number =>
    ward.ladder.levels.findIndex((each) => each.name === name);
  const found = level && {
    atLeast: level.at_least === null ? null : rank(level.at_least),
    couldBe: rank(level.could_be),
    settled: level.settled,
  };
  const read = reads.filter(({ applies }) => applies !== 'no');
  return {
    rules: rulesSay(found ?? null, held ? rank(held.level) : null),
    met: read.flatMap(({ protocol, rules }) =>
      rules.flatMap(({ state, rule }) => (state === 'met' ? [`${protocol}.${rule}`] : [])),
    ),
  };
}

/** A level of earlier sets that is still in force is what the rules say to act on. */
function rulesSay(level: LevelAnswer | null, held: number | null): RulesSay {
  if (level === null) return null;
  if (held === null) return { atLeast: level.atLeast, couldBe: level.couldBe };
  return { atLeast: Math.max(held, level.atLeast ?? 0), couldBe: Math.max(held, level.couldBe) };
}
