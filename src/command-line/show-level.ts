import type { Outcome } from '../shape/generated/types.ts';
import type { Level, Protocol } from '../protocol/protocol.ts';
import type { Page } from './page.ts';
import { mayRaise } from './may-raise.ts';
import { showInForce } from './show-in-force.ts';
import { showResponse } from './show-response.ts';
import { levelTitle, roughlyKnown, titleOf } from './show-words.ts';
import { listed } from '../protocol/words.ts';

/** Our own sequence, from pale to dark, for five levels; each also reads in grey. The words say the same. */
const colours = [109, 74, 68, 98, 91] as const;

/** How a level is answered where it is read: on a ward in other words than the ladder's, and with a plan that limits what is done. */
export interface AnswerHere {
  readonly level: Level | null;
  readonly isPlanned: boolean;
  /** Whether this is one of several readings of a set. */
  readonly isAlone: boolean;
}

const asOnTheLadder: AnswerHere = { level: null, isPlanned: false, isAlone: true };

/**
 * The level; what to take at once where it is not settled; whom to tell by when, and what to do until they come. What is not
 * settled never looks settled.
 */
export function showLevel(
  outcome: Outcome,
  protocol: Protocol,
  page: Page,
  here: AnswerHere = asOnTheLadder,
): void {
  const { level } = outcome;
  if (!level) return notForThisPatient(outcome, page);
  if (outcome.in_force) return stillInForce(outcome, protocol, page, here);
  if (level.at_least === null) return noResultYet(outcome, level.could_be, protocol, page);
  const index = indexOf(level.at_least, protocol);
  const title = levelTitle(level.at_least, protocol);
  page.heading(level.settled ? title : `Act now on: ${title}`, colourOf(index, protocol));
  if (!level.settled) {
    page.title(couldBe(level, protocol));
    whatToGet(outcome, protocol, page);
  }
  answered(outcome, index, protocol, page, here);
  if (here.isAlone) page.text(oneOfSeveral);
  page.gap();
  return howFar(outcome, level, protocol, page);
}

const oneOfSeveral =
  'This is one reading alone. Where another reading of this set, or your own worry, calls for more, act on that.';

function answered(outcome: Outcome, index: number, protocol: Protocol, page: Page, here: AnswerHere): void {
  const rung = here.level ?? protocol.ladder.levels[index];
  if (rung) showResponse(rung, outcome, page, here.isPlanned);
  page.gap();
}

/** A level of earlier sets holds until its role agrees to step down: it is what to act on, whatever the latest set calls for. */
function stillInForce(outcome: Outcome, protocol: Protocol, page: Page, here: AnswerHere): void {
  const { in_force: found, level } = outcome;
  if (!found || !level) return;
  const index = indexOf(found.level, protocol);
  page.heading(`Still in force: ${levelTitle(found.level, protocol)}`, colourOf(index, protocol));
  showInForce(found, page);
  answered(outcome, index, protocol, page, here);
  if (level.at_least === null) return noResultYet(outcome, level.could_be, protocol, page);
  page.title(`The latest set by itself: ${levelTitle(level.at_least, protocol)}`);
  if (!level.settled) {
    page.text(couldBe(level, protocol));
    whatToGet(outcome, protocol, page);
  }
  return howFar(outcome, level, protocol, page);
}

function howFar(
  outcome: Outcome,
  level: NonNullable<Outcome['level']>,
  protocol: Protocol,
  page: Page,
): void {
  if (level.settled) settled(outcome, indexOf(level.at_least, protocol), protocol, page);
  else unsettled(outcome, protocol, page);
}

const indexOf = (level: string | null, { ladder }: Protocol): number =>
  ladder.levels.findIndex(({ name }) => name === level);

function colourOf(index: number, { ladder }: Protocol): number {
  const most = Math.max(1, ladder.levels.length - 1);
  return colours[Math.round((index / most) * (colours.length - 1))] ?? colours[0];
}

const couldBe = (
  { at_least: now, could_be: most }: NonNullable<Outcome['level']>,
  protocol: Protocol,
): string =>
  now === most
    ? 'Not settled: what this reading needs takes it no higher.'
    : `Not settled: it could be as high as ${levelTitle(most, protocol)}.`;

/** How far a settled answer reaches: what it needs is there; what only helps may still take it higher. */
function settled(outcome: Outcome, index: number, protocol: Protocol, page: Page): void {
  const raising = mayRaise(outcome, index, protocol);
  if (isInDoubt(outcome)) page.text('The level is settled; what was measured is not: take it again.');
  else if (raising.length > 0) page.text('Settled only on what this reading needs.');
  else if (outcome.missing.length === 0) page.text('Settled: everything that this reading needs is there.');
  else page.text('Settled: nothing that this reading still needs could change it.');
  if (raising.length === 0) return;
  page.text('Take or ask these too, they could still take it higher:');
  for (const each of raising) page.item(each);
}

/** Whether a fault of technique puts a rule in doubt. */
const isInDoubt = ({ faults = [] }: Outcome): boolean => faults.some(({ changes }) => changes.length > 0);

function notForThisPatient({ applies_because: because, otherwise }: Outcome, page: Page): void {
  page.heading('No result: not for this patient');
  page.labelled('Worried?', ['Call now, whatever this protocol is for.']);
  page.gap();
  for (const each of because ?? []) page.item(each);
  page.text('This protocol gives no level here, and its silence reassures nobody.');
  if (otherwise !== undefined) page.text(otherwise);
}

function noResultYet(outcome: Outcome, most: string, protocol: Protocol, page: Page): void {
  page.heading('No result yet: complete the set');
  page.labelled('Worried?', ['Call now. Do not wait for the set.']);
  const isLowest = protocol.ladder.levels[0]?.name === most;
  if (!isLowest) page.title(`It could be as high as ${levelTitle(most, protocol)}.`);
  page.text(
    'Stay with the patient and complete the set now. Where you cannot, or the patient looks unwell, tell whoever is in charge.',
  );
  if (outcome.applies === 'unsure') page.text(unsureWords);
  page.gap();
  whatToGet(outcome, protocol, page);
}

const unsureWords = 'Whether this protocol is for this patient is not known yet.';

/** What to take and to ask, in short; what it could change stands further down. */
function whatToGet(outcome: Outcome, protocol: Protocol, page: Page): void {
  const { ask_first: ask, take_first: take, unobtainable, declined, missing, stands_in: old } = outcome;
  const needed = (all: Outcome['declined']): string[] =>
    all.map(({ observation }) => observation).filter((name) => missing.includes(name));
  const again = [...roughlyKnown(outcome), ...old.map(({ observation }) => observation)];
  const labels = [
    ['Take first', take],
    ['Ask first', ask],
    ['Try again', needed(unobtainable)],
    ['Ask again', needed(declined)],
    ['Take again', [...new Set(again)].filter((name) => !take.includes(name))],
  ] as const;
  for (const [label, names] of labels) {
    if (names.length > 0) page.labelled(label, [listed(names.map((name) => titleOf(name, protocol)))]);
  }
}

function unsettled(outcome: Outcome, protocol: Protocol, page: Page): void {
  page.title('Not settled, because');
  for (const reason of reasons(outcome, protocol)) page.item(reason);
}

/** Why an outcome that calls for something is not settled. */
function reasons(outcome: Outcome, protocol: Protocol): string[] {
  const { applies, level, rules, stands_in: earlier } = outcome;
  const index = protocol.ladder.levels.findIndex(({ name }) => name === level?.at_least);
  const top = rules.filter((rule) => rule.level === level?.at_least);
  const counted = top.some(({ counts }) => counts === true);
  const explained = top.some((rule) => rule.could_be_explained_by !== undefined);
  const old = listed(earlier.map(({ observation }) => titleOf(observation, protocol)));
  return [
    ...(applies === 'unsure' ? [unsureWords] : []),
    ...(level?.could_be === level?.at_least
      ? []
      : ['What is missing, or known only as a range, may take it higher.']),
    ...(counted ? ['An exception that nobody has answered may later lower it. Tell first, then ask.'] : []),
    ...(explained
      ? ['An explanation that nobody has answered may later lower it. Tell first, then ask.']
      : []),
    ...(isInDoubt(outcome)
      ? ['A fault of technique makes a reading unsure. Act on this now, and take it again.']
      : []),
    ...(old === '' ? [] : [`Old values stand in, of ${old}.`]),
    ...mayRaise(outcome, index, protocol).map(
      (each) => `Take or ask this too, it could take it higher: ${each}`,
    ),
  ];
}
