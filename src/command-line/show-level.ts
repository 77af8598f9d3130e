import type { Outcome } from '../shape/generated/types.ts';
import type { Level, Protocol } from '../protocol/protocol.ts';
import type { Page } from './page.ts';
import { levelTitle, roughlyKnown, titleOf } from './show-words.ts';
import { listed } from '../protocol/words.ts';

/** Our own sequence, from pale to dark, for five levels; each also reads in grey. The words say the same. */
const colours = [109, 74, 68, 98, 91] as const;

/** The level, what to do first, and whom to tell by when. What is not settled never looks settled. */
export function showLevel(outcome: Outcome, protocol: Protocol, page: Page): void {
  const { level } = outcome;
  if (!level) return notForThisPatient(outcome, page);
  if (level.at_least === null) return notSettled(outcome, level.could_be, protocol, page);
  const index = protocol.ladder.levels.findIndex(({ name }) => name === level.at_least);
  const rung = protocol.ladder.levels[index];
  const title = levelTitle(level.at_least, protocol);
  page.heading(level.settled ? title : `At least: ${title}`, colourOf(index, protocol));
  const mayRise = couldHelpRaise(outcome, index, protocol) ? [helpMayRaise] : [];
  if (level.settled) {
    page.text('Settled: no observation that this reading needs is missing and could change it.');
    for (const each of mayRise) page.text(each);
  } else unsettled(outcome, mayRise, protocol, page);
  if (!rung) return undefined;
  page.gap();
  if (rung.says !== null) page.text(rung.says);
  page.gap();
  doFirst(outcome, page);
  ladderWords(rung, !level.settled && outcome.missing.length > 0, page);
  return undefined;
}

const helpMayRaise = 'Something that only helps could still take it higher: see Would tell more, below.';

/** Whether something that only helps, and is missing, could make a rule of a higher level met. */
function couldHelpRaise(
  { rules, would_tell_more: more }: Outcome,
  at: number,
  { ladder }: Protocol,
): boolean {
  const rank = (name: string | undefined): number => ladder.levels.findIndex((each) => each.name === name);
  return rules.some(
    ({ level, decided_if: decided }) =>
      rank(level) > at && decided?.some((each) => each.state === 'met' && more.includes(each.observation)),
  );
}

function colourOf(index: number, { ladder }: Protocol): number {
  const most = Math.max(1, ladder.levels.length - 1);
  return colours[Math.round((index / most) * (colours.length - 1))] ?? colours[0];
}

function notForThisPatient({ applies_because: because, otherwise }: Outcome, page: Page): void {
  page.heading('Not for this patient');
  for (const each of because ?? []) page.item(each);
  page.gap();
  page.text('This protocol gives no level here, and its silence reassures nobody.');
  if (otherwise !== undefined) page.text(otherwise);
}

function notSettled(outcome: Outcome, couldBe: string, protocol: Protocol, page: Page): void {
  page.heading('Not settled: complete the set');
  const isLowest = protocol.ladder.levels[0]?.name === couldBe;
  if (!isLowest) page.text(`It could be as high as: ${levelTitle(couldBe, protocol)}.`);
  if (outcome.applies === 'unsure') page.text('It is not known whether this protocol is for this patient.');
  page.text('What is known so far calls for nothing more. That reassures nobody while something is missing.');
  page.gap();
  whatToGet(outcome, protocol, page);
  page.labelled('Worried?', ['Call now. Do not wait for the set.']);
}

/** What to ask and to take, in short; what it could change stands further down. */
function whatToGet(outcome: Outcome, protocol: Protocol, page: Page): void {
  const { ask_first: ask, take_first: take, unobtainable, declined, missing } = outcome;
  const needed = (all: Outcome['declined']): string[] =>
    all.map(({ observation }) => observation).filter((name) => missing.includes(name));
  const labels = [
    ['Ask first', ask],
    ['Take first', take],
    ['Try again', needed(unobtainable)],
    ['Ask again', needed(declined)],
    ['Take again', roughlyKnown(outcome)],
  ] as const;
  for (const [label, names] of labels) {
    if (names.length > 0) page.labelled(label, [listed(names.map((name) => titleOf(name, protocol)))]);
  }
}

function unsettled(outcome: Outcome, more: readonly string[], protocol: Protocol, page: Page): void {
  const couldBe = outcome.level?.could_be ?? '';
  const isHigher = couldBe !== outcome.level?.at_least;
  page.title(`Could be: ${levelTitle(couldBe, protocol)}`);
  page.text('Not settled. Act on this now, and find out what is open:');
  for (const reason of [...reasons(outcome, isHigher), ...more]) page.item(reason);
  page.gap();
  whatToGet(outcome, protocol, page);
}

/** Why an outcome that calls for something is not settled. */
function reasons({ applies, level, rules, stands_in: earlier }: Outcome, isHigher: boolean): string[] {
  const top = rules.filter((rule) => rule.level === level?.at_least);
  const counted = top.some(({ counts }) => counts === true);
  const explained = top.some((rule) => rule.could_be_explained_by !== undefined);
  return [
    ...(applies === 'unsure' ? ['It is not known whether this protocol is for this patient.'] : []),
    ...(isHigher ? ['What is missing, or known only as a range, may take it higher.'] : []),
    ...(counted ? ['An exception that nobody has answered may lower it.'] : []),
    ...(explained ? ['An explanation that nobody has answered may lower it.'] : []),
    ...(earlier.length > 0 ? ['Earlier values stand in; take them again.'] : []),
  ];
}

/** What the rules of this level ask to be done. */
function doFirst({ advice, level }: Outcome, page: Page): void {
  const actions = advice.filter((each) => each.level === level?.at_least).flatMap((each) => each.do);
  if (actions.length === 0) return;
  page.title('Do first');
  for (const action of actions) page.item(action);
  page.gap();
}

function ladderWords(
  { tell, respond, reassess, ifNoAnswer, stepDown }: Level,
  isIncomplete: boolean,
  page: Page,
): void {
  const now = isIncomplete ? 'complete this one now; then ' : '';
  if (tell.length > 0) page.labelled('Tell', tell.map(whoAndWhen));
  if (respond !== null) page.labelled('By when', [`at the bedside within ${respond}`]);
  if (ifNoAnswer) page.labelled('No answer', [`after ${ifNoAnswer.after} tell: ${ifNoAnswer.tell}`]);
  if (reassess !== null) page.labelled('Next set', [`${now}a full one within ${reassess}`]);
  if (stepDown) {
    const { setsInARow: sets, over, agreedBy } = stepDown;
    const count = sets === 1 ? '1 set' : `${sets} sets in a row`;
    page.labelled('Step down', [`after ${count} below this level over ${over}, agreed by: ${agreedBy}`]);
  }
}

const whoAndWhen = ({ who, from, to }: Level['tell'][number]): string =>
  from === null || to === null ? who : `${who} (${from} to ${to})`;
