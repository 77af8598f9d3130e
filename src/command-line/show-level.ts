import type { SheetLevel } from '../bedside/sheet.ts';
import type { Page } from './page.ts';

/** Our own sequence, from pale to dark, for five levels; each also reads in grey. The words say the same. */
const colours = [109, 74, 68, 98, 91] as const;

/**
 * The level; what to take at once where it is not settled; whom to tell by when, and what to do until they come. What is not
 * settled never looks settled.
 */
export function showLevel(level: SheetLevel, page: Page): void {
  page.heading(level.heading, colourOf(level));
  for (const each of level.inForce) page.item(each);
  if (level.kind === 'not_for_patient' || level.kind === 'not_settled') return withoutResult(level, page);
  if (level.kind === 'at_least' && !level.latest) {
    page.title(`Not settled: ${lowerFirst(level.couldBe ?? '')}.`);
    whatToGet(level, page);
  }
  showResponse(level, page);
  if (level.alone !== null) page.text(level.alone);
  page.gap();
  if (level.latest) showLatest(level.latest, level.couldBe ?? '', page);
  else howFar(level, page);
}

const lowerFirst = (text: string): string => text.slice(0, 1).toLowerCase() + text.slice(1);

function colourOf({ reached, ladder }: SheetLevel): number | null {
  if (reached === null) return null;
  const most = Math.max(1, ladder.length - 1);
  return colours[Math.round((reached / most) * (colours.length - 1))] ?? colours[0];
}

/** What the latest set calls for by itself, below a level of earlier sets that still holds. */
function showLatest(latest: SheetLevel, title: string, page: Page): void {
  if (latest.reached === null) return showLevel(latest, page);
  page.title(title);
  if (latest.kind === 'at_least') {
    page.text(`Not settled: ${lowerFirst(latest.couldBe ?? '')}.`);
    whatToGet(latest, page);
  }
  howFar(latest, page);
}

function withoutResult({ kind, worried, couldBe, reasons, notes, ...level }: SheetLevel, page: Page): void {
  if (worried !== null) page.labelled('Worried?', [worried]);
  if (kind === 'not_settled' && couldBe !== null) page.title(`${couldBe}.`);
  if (reasons.length > 0) page.gap();
  for (const each of reasons) page.item(each);
  for (const note of notes) page.text(note);
  page.gap();
  whatToGet(level, page);
}

function whatToGet({ toGet }: Pick<SheetLevel, 'toGet'>, page: Page): void {
  for (const { label, names } of toGet) page.labelled(label, [names]);
}

/** Whom to tell by when, then what to do until they come. */
function showResponse(level: SheetLevel, page: Page): void {
  const { says, tell, byWhen, noAnswer, doHeading, doFirst, nextSet, stepDown } = level;
  page.gap();
  if (says !== null) page.text(says);
  page.gap();
  if (tell.length > 0) page.labelled('Tell', tell);
  if (byWhen !== null) page.labelled('By when', [byWhen]);
  if (noAnswer !== null) page.labelled('No answer', [noAnswer]);
  if (doFirst.length > 0) {
    page.gap();
    page.title(doHeading);
    for (const action of doFirst) page.item(action);
    page.gap();
  }
  if (nextSet !== null) page.labelled('Next set', [nextSet]);
  if (stepDown !== null) page.labelled('Step down', [stepDown]);
  page.gap();
}

function howFar({ settledBy, reasons, mayRaise }: SheetLevel, page: Page): void {
  if (settledBy !== null) page.text(settledBy);
  if (reasons.length > 0) page.title('Not settled, because');
  for (const reason of reasons) page.item(reason);
  if (mayRaise.length > 0) page.text('Take or ask these too, they could still take it higher:');
  for (const each of mayRaise) page.item(each);
}
