import type {
  Advice,
  Outcome,
  Remark,
  WardAdvice,
  WardFault,
  WardOutcome,
} from '../shape/generated/types.ts';
import { answersOf, type LevelAnswer } from '../outcome/answers.ts';
import { outcomeOf } from '../outcome/bounds-to-outcome.ts';
import { caution } from '../outcome/caution.ts';
import { inForce } from '../outcome/in-force.ts';
import { inForceToJson } from '../outcome/in-force-to-json.ts';
import { levelsOverTime } from '../outcome/levels-over-time.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Series } from '../series/series.ts';
import { mergeLevels } from './merge-levels.ts';
import { planName } from './own-protocol.ts';
import { levelHere, responseToJson } from './response.ts';
import type { Plan, Ward } from './ward.ts';

/**
 * What a ward policy says about a patient: the outcome of each of its protocols, and of all of them together one level, one answer to
 * it, and each piece of advice once.
 */
export function wardOutcomeOf(ward: Ward, series: Series): WardOutcome {
  const read = ward.members.map((compiled) => {
    const bounds = seriesToBounds(compiled.protocol, series);
    return { outcome: outcomeOf(compiled, bounds), level: answersOf(compiled, bounds).level };
  });
  const outcomes = read.map(({ outcome }) => outcome);
  const level = mergeLevels(read.map((each) => each.level));
  const plan = planOf(ward, series);
  const held = level && stillInForce(ward, series, level);
  const actOn = held?.level ?? level?.atLeast ?? null;
  const rung = actOn === null ? null : levelHere(ward, actOn, plan, series.at);
  return {
    ward: ward.name,
    edition: ward.edition,
    title: ward.title,
    digest: ward.digest,
    at: series.atText,
    level: level && levelToJson(level, ward),
    ...(plan ? { plan: { plan: plan.plan, title: plan.title, says: plan.says } } : {}),
    ...(rung ? { response: responseToJson(rung) } : {}),
    ...inForceToJson(held, ward.ladder),
    reads: outcomes,
    advice: adviceOnce(outcomes, ward),
    ...inOrderOfUrgency(outcomes, ward),
    ...faultsOnce(outcomes),
    refused: once(outcomes.flatMap(({ refused }) => refused)),
    questioned: once(outcomes.flatMap(({ questioned }) => questioned)),
    caution,
  };
}

function levelToJson(
  { atLeast, couldBe, settled }: LevelAnswer,
  { ladder }: Ward,
): NonNullable<WardOutcome['level']> {
  const name = (index: number): string => ladder.levels[index]?.name ?? '';
  return { at_least: atLeast === null ? null : name(atLeast), could_be: name(couldBe), settled };
}

/** The plan that is known to hold; without one, or while nobody can tell which, nothing is held back. */
function planOf({ own, plans }: Ward, series: Series): Plan | null {
  if (plans.size === 0 || !own.observations.has(planName)) return null;
  const choices = seriesToBounds(own, series).facts.present.get(planName)?.choices ?? [];
  return choices.length === 1 ? (plans.get(choices[0] ?? '') ?? null) : null;
}

function stillInForce(ward: Ward, series: Series, now: LevelAnswer | null): ReturnType<typeof inForce> {
  const over = ward.members.map((compiled) => levelsOverTime(compiled, series));
  const together = (over[0] ?? []).map((first, index) => ({
    ...first,
    level: mergeLevels(over.map((levels) => levels[index]?.level ?? null)),
  }));
  return inForce(together, now, ward.ladder);
}

const rankIn = ({ ladder }: Ward) => {
  const ranks = new Map(ladder.levels.map(({ name }, index) => [name, index]));
  return (level: string | null | undefined): number => ranks.get(level ?? '') ?? -1;
};

/** What the rules of all protocols say, the highest level first; an action or a question that several have stands with the first. */
function adviceOnce(outcomes: readonly Outcome[], ward: Ward): WardAdvice[] {
  const rank = rankIn(ward);
  const said = new Set<string>();
  const isNew = (text: string): boolean => !said.has(text) && Boolean(said.add(text));
  return outcomes
    .flatMap(({ protocol, advice }) => advice.map((each: Advice) => ({ protocol, ...each })))
    .toSorted((left, right) => rank(right.level) - rank(left.level))
    .map((each) => ({ ...each, ask: each.ask.filter(isNew), do: each.do.filter(isNew) }));
}

type Lists = Pick<
  WardOutcome,
  'ask_first' | 'take_first' | 'missing' | 'unobtainable' | 'declined' | 'would_tell_more'
>;

/** What to ask and to take: first for the protocol that could still go highest, then for the others. */
function inOrderOfUrgency(outcomes: readonly Outcome[], ward: Ward): Lists {
  const rank = rankIn(ward);
  const order = outcomes.toSorted((left, right) => rank(right.level?.could_be) - rank(left.level?.could_be));
  const names = (of: (outcome: Outcome) => readonly string[]): string[] => [...new Set(order.flatMap(of))];
  const missing = names((each) => each.missing);
  return {
    ask_first: names((each) => each.ask_first),
    take_first: names((each) => each.take_first),
    missing,
    unobtainable: once(outcomes.flatMap((each) => each.unobtainable)),
    declined: once(outcomes.flatMap((each) => each.declined)),
    would_tell_more: names((each) => each.would_tell_more).filter((name) => !missing.includes(name)),
  };
}

/** Each fault of technique once, with the rules of all protocols that it puts in doubt. */
function faultsOnce(outcomes: readonly Outcome[]): { faults?: readonly WardFault[] } {
  const found = new Map<string, WardFault>();
  for (const { protocol, faults = [] } of outcomes) {
    for (const fault of faults) {
      const before = found.get(fault.fault);
      const changes = fault.changes.map((each) => ({ protocol, ...each }));
      found.set(fault.fault, {
        ...fault,
        readings: once([...(before?.readings ?? []), ...fault.readings]),
        changes: [...(before?.changes ?? []), ...changes],
      });
    }
  }
  return found.size === 0 ? {} : { faults: [...found.values()] };
}

function once<T extends Remark | object>(all: readonly T[]): T[] {
  const seen = new Set<string>();
  return all.filter((each) => {
    const key = JSON.stringify(each);
    return !seen.has(key) && Boolean(seen.add(key));
  });
}
