import type { Level, Protocol } from '../protocol/protocol.ts';
import type { Outcome, OutcomeInForce } from '../shape/generated/types.ts';
import type { SheetLevel } from './sheet.ts';
import { levelTitle, rankOf } from './words.ts';

const none = {
  says: null,
  doFirst: [],
  tell: [],
  byWhen: null,
  noAnswer: null,
  nextSet: null,
  stepDown: null,
  couldBe: null,
} as const;

/** How a level is answered where it is read: on a ward in other words than the ladder's, and with a plan. */
export interface Here {
  readonly level: Level | null;
  /** What the patient's plan says; null without one. */
  readonly plan: string | null;
}

const asOnTheLadder: Here = { level: null, plan: null };

/** The level, what to do first, and whom to tell by when. What is not settled never reads as settled. */
export function sheetLevel(outcome: Outcome, protocol: Protocol, here: Here = asOnTheLadder): SheetLevel {
  const ladder = protocol.ladder.levels.map(({ title }) => title);
  const { level } = outcome;
  if (!level) {
    const reasons = [
      ...(outcome.applies_because ?? []),
      'This protocol gives no level here, and its silence reassures nobody.',
      ...(outcome.otherwise === undefined ? [] : [outcome.otherwise]),
    ];
    const heading = 'No result: not for this patient';
    return { ...none, kind: 'not_for_patient', heading, reached: null, could: null, ladder, reasons };
  }
  const could = rankOf(level.could_be, protocol);
  if (outcome.in_force) return stillInForce(outcome, outcome.in_force, protocol, here);
  if (level.at_least === null) {
    return {
      ...none,
      kind: 'not_settled',
      heading: 'No result yet: complete the set',
      reached: null,
      could,
      ladder,
      couldBe: could > 0 ? `It could be as high as: ${levelTitle(level.could_be, protocol)}` : null,
      reasons: openReasons(outcome),
    };
  }
  const reached = rankOf(level.at_least, protocol);
  const title = levelTitle(level.at_least, protocol);
  const rung = here.level ?? protocol.ladder.levels[reached];
  return {
    ...none,
    kind: level.settled ? 'settled' : 'at_least',
    heading: level.settled ? title : `Act now on: ${title}`,
    reached,
    could,
    ladder,
    couldBe: level.settled ? null : `It could be as high as: ${levelTitle(level.could_be, protocol)}`,
    reasons: [
      ...planned(here),
      ...(level.settled ? settledReasons(outcome, reached, protocol) : reasonsFor(outcome, could > reached)),
    ],
    doFirst: outcome.advice.flatMap((each) => each.do),
    ...(rung ? wordsOfRung(rung, !level.settled && outcome.missing.length > 0) : {}),
  };
}

/** A level of earlier sets holds, with its words and times, whatever the latest set calls for by itself. */
function stillInForce(
  outcome: Outcome,
  { level: held }: OutcomeInForce,
  protocol: Protocol,
  here: Here,
): SheetLevel {
  const { level } = outcome;
  const reached = rankOf(held, protocol);
  const rung = here.level ?? protocol.ladder.levels[reached];
  const now = level?.at_least ?? null;
  const latest = now === null ? 'no result yet: complete it' : levelTitle(now, protocol);
  return {
    ...none,
    kind: 'at_least',
    heading: `Still in force: ${levelTitle(held, protocol)}`,
    reached,
    could: Math.max(reached, rankOf(level?.could_be, protocol)),
    ladder: protocol.ladder.levels.map(({ title }) => title),
    couldBe: `The latest set by itself: ${latest}`,
    reasons: [...planned(here), ...unsure(outcome.applies)],
    doFirst: outcome.advice.flatMap((each) => each.do),
    ...(rung ? wordsOfRung(rung, outcome.missing.length > 0) : {}),
  };
}

/** A plan limits what is done, and is told before anything else. */
const planned = ({ plan }: Here): string[] =>
  plan === null ? [] : [`Plan: ${plan} What is to be done is done as far as the plan allows.`];

const unsure = (applies: Outcome['applies']): string[] =>
  applies === 'unsure' ? ['It is not known whether this protocol is for this patient.'] : [];

const openReasons = ({ applies }: Outcome): string[] => [
  ...unsure(applies),
  'Worried? Call now. Do not wait for the set.',
  'Stay with the patient and complete the set now. Where you cannot, or the patient looks unwell, tell whoever is in charge.',
];

/** Why an outcome that calls for something is not settled. */
function reasonsFor({ applies, level, rules, stands_in: earlier }: Outcome, isHigher: boolean): string[] {
  const top = rules.filter((rule) => rule.level === level?.at_least);
  const counted = top.some(({ counts }) => counts === true);
  const explained = top.some((rule) => rule.could_be_explained_by !== undefined);
  return [
    ...unsure(applies),
    ...(isHigher ? ['What is missing, or known only roughly, may take it higher.'] : []),
    ...(counted ? ['An exception that nobody has answered may later lower it. Tell first, then ask.'] : []),
    ...(explained
      ? ['An explanation that nobody has answered may later lower it. Tell first, then ask.']
      : []),
    ...(earlier.length > 0 ? ['Earlier values stand in; take them again.'] : []),
  ];
}

/** Settled says nothing of what only helps. */
function settledReasons(
  { rules, would_tell_more: more }: Outcome,
  reached: number,
  protocol: Protocol,
): string[] {
  const mayRise = rules.some(
    ({ level, decided_if: decided }) =>
      rankOf(level, protocol) > reached &&
      decided?.some((each) => each.state === 'met' && more.includes(each.observation)),
  );
  return mayRise ? ['Something that only helps could still take it higher: see “Would tell more”.'] : [];
}

type Words = Pick<SheetLevel, 'says' | 'tell' | 'byWhen' | 'noAnswer' | 'nextSet' | 'stepDown'>;

function wordsOfRung(
  { says, tell, respond, reassess, ifNoAnswer, stepDown }: Level,
  isIncomplete: boolean,
): Words {
  const now = isIncomplete ? 'complete this one now; then ' : '';
  return {
    says,
    tell: tell.map(({ who, from, to }) => (from === null || to === null ? who : `${who} (${from} to ${to})`)),
    byWhen: respond === null ? null : `at the bedside within ${respond}`,
    noAnswer: ifNoAnswer ? `after ${ifNoAnswer.after}, tell: ${ifNoAnswer.tell}` : null,
    nextSet: reassess === null ? null : `${now}a full one within ${reassess}`,
    stepDown: stepDown
      ? `once ${stepDown.setsInARow === 1 ? 'sets' : `${stepDown.setsInARow} sets in a row or more`} have stayed below this level for at least ${stepDown.over}; agreed by: ${stepDown.agreedBy}`
      : null,
  };
}
