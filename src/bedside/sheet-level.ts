import type { Level, Protocol } from '../protocol/protocol.ts';
import type { Outcome } from '../shape/generated/types.ts';
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

/** The level, what to do first, and whom to tell by when. What is not settled never reads as settled. */
export function sheetLevel(outcome: Outcome, protocol: Protocol): SheetLevel {
  const ladder = protocol.ladder.levels.map(({ title }) => title);
  const { level } = outcome;
  if (!level) {
    const reasons = [
      ...(outcome.applies_because ?? []),
      'This protocol gives no level here, and its silence reassures nobody.',
      ...(outcome.otherwise === undefined ? [] : [outcome.otherwise]),
    ];
    const heading = 'Not for this patient';
    return { ...none, kind: 'not_for_patient', heading, reached: null, could: null, ladder, reasons };
  }
  const could = rankOf(level.could_be, protocol);
  if (level.at_least === null) {
    return {
      ...none,
      kind: 'not_settled',
      heading: 'Not settled: complete the set',
      reached: null,
      could,
      ladder,
      couldBe: could > 0 ? `Could be as high as: ${levelTitle(level.could_be, protocol)}` : null,
      reasons: openReasons(outcome),
    };
  }
  const reached = rankOf(level.at_least, protocol);
  const title = levelTitle(level.at_least, protocol);
  const rung = protocol.ladder.levels[reached];
  return {
    ...none,
    kind: level.settled ? 'settled' : 'at_least',
    heading: level.settled ? title : `At least: ${title}`,
    reached,
    could,
    ladder,
    couldBe: level.settled ? null : `Could be: ${levelTitle(level.could_be, protocol)}`,
    reasons: level.settled
      ? settledReasons(outcome, reached, protocol)
      : reasonsFor(outcome, could > reached),
    doFirst: outcome.advice.filter((each) => each.level === level.at_least).flatMap((each) => each.do),
    ...(rung ? wordsOfRung(rung, !level.settled && outcome.missing.length > 0) : {}),
  };
}

const unsure = (applies: Outcome['applies']): string[] =>
  applies === 'unsure' ? ['It is not known whether this protocol is for this patient.'] : [];

const openReasons = ({ applies }: Outcome): string[] => [
  ...unsure(applies),
  'What is known so far calls for nothing more, and that reassures nobody while something is missing.',
  'Worried? Call now. Do not wait for the set.',
];

/** Why an outcome that calls for something is not settled. */
function reasonsFor({ applies, level, rules, stands_in: earlier }: Outcome, isHigher: boolean): string[] {
  const top = rules.filter((rule) => rule.level === level?.at_least);
  const counted = top.some(({ counts }) => counts === true);
  const explained = top.some((rule) => rule.could_be_explained_by !== undefined);
  return [
    ...unsure(applies),
    ...(isHigher ? ['What is missing, or known only roughly, may take it higher.'] : []),
    ...(counted ? ['An exception that nobody has answered may lower it.'] : []),
    ...(explained ? ['An explanation that nobody has answered may lower it.'] : []),
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
      ? `after ${stepDown.setsInARow === 1 ? '1 set' : `${stepDown.setsInARow} sets in a row`} below this level over ${stepDown.over}, agreed by: ${stepDown.agreedBy}`
      : null,
  };
}
