import type { Outcome, WardOutcome } from '../shape/generated/types.ts';
import type { Level, Observation, Protocol } from '../protocol/protocol.ts';
import type { Ward } from './ward.ts';

/** What all protocols of a ward know by name, as if they were one: for titles, and for the ladder. It decides nothing. */
export function protocolsAsOne({ own, members, ladder, vocabulary }: Ward): Protocol {
  const all = members.map(({ protocol }) => protocol);
  return {
    ...own,
    ladder,
    vocabulary: vocabulary.observations,
    observations: strongest(all.flatMap(({ observations }) => [...observations.values()])),
    limits: vocabulary.limits,
    faults: all[0]?.faults ?? [],
    measures: new Map(all.flatMap(({ measures }) => [...measures])),
  };
}

/** Weakest first: what one protocol needs is needed, whatever it is for the others. */
const roles: readonly Observation['role'][] = ['helps', 'scope', 'needs'];

function strongest(all: readonly Observation[]): Map<string, Observation> {
  const found = new Map<string, Observation>();
  for (const each of all) {
    const before = found.get(each.name);
    if (!before || roles.indexOf(each.role) > roles.indexOf(before.role)) found.set(each.name, each);
  }
  return found;
}

/** The outcomes of all protocols of a ward as if they were one, with what the ward says of them together. It decides nothing. */
export function outcomesAsOne(whole: WardOutcome): Outcome {
  const reads = whole.reads.filter(({ applies }) => applies !== 'no');
  const unsure = reads.filter(({ applies }) => applies === 'unsure');
  const { advice, faults = [], in_force: inForce } = whole;
  return {
    protocol: whole.ward,
    edition: whole.edition,
    title: whole.title,
    digest: whole.digest,
    at: whole.at,
    applies: reads.length === 0 ? 'no' : unsure.length > 0 ? 'unsure' : 'yes',
    applies_because: once(unsure.flatMap(({ applies_because: because }) => because ?? [])),
    level: whole.level,
    rules: reads.flatMap(({ protocol, rules }) =>
      rules.map((rule) => ({ ...rule, rule: `${protocol}.${rule.rule}` })),
    ),
    measures: {},
    advice: advice.map(({ protocol, ...each }) => ({ ...each, rule: `${protocol}.${each.rule}` })),
    ask_first: whole.ask_first,
    take_first: whole.take_first,
    missing: whole.missing,
    unobtainable: whole.unobtainable,
    declined: whole.declined,
    would_tell_more: whole.would_tell_more,
    ...(faults.length > 0 ? { faults } : {}),
    ...(inForce ? { in_force: inForce } : {}),
    stands_in: once(reads.flatMap((each) => each.stands_in)),
    assumed: once(reads.flatMap((each) => each.assumed)),
    limits: once(reads.flatMap((each) => each.limits)),
    taken: once(reads.flatMap((each) => each.taken)),
    refused: whole.refused,
    questioned: whole.questioned,
    unused: readByNone(whole.reads),
    caution: whole.caution,
  };
}

/** What was given and no protocol reads. */
function readByNone([first, ...others]: readonly Outcome[]): string[] {
  return (first?.unused ?? []).filter((name) => others.every(({ unused }) => unused.includes(name)));
}

function once<T>(all: readonly T[]): T[] {
  return [...new Map(all.map((each) => [JSON.stringify(each), each])).values()];
}

/** The level as it is answered on this ward, now. */
export function answerHere({ response }: WardOutcome, { ladder }: Ward): Level | null {
  const level = ladder.levels.find(({ name }) => name === response?.level);
  if (!level || !response) return null;
  const { says = null, tell, respond = null, reassess = null, if_no_answer: ifNoAnswer = null } = response;
  return {
    ...level,
    says,
    tell: tell.map(({ who, from, to }) => ({ who, from: from ?? null, to: to ?? null })),
    respond,
    reassess,
    ifNoAnswer,
  };
}
