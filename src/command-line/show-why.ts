import type { Sheet, SheetWhy } from '../bedside/sheet.ts';
import type { Page } from './page.ts';

/** Why: what each rule says that is met or counts, on a ward protocol by protocol, and what does not reassure. */
export function showWhy({ why, notReassuring, takenBack }: Sheet, page: Page): void {
  for (const of of new Set(why.map((each) => each.of))) {
    page.heading(of === null ? 'Why' : `Why: ${of}`);
    for (const rule of why.filter((each) => each.of === of)) showRule(rule, page);
  }
  page.list('Not met, but that reassures nobody', notReassuring);
  page.list('Taken back by an exception', takenBack);
}

function showRule({ title, level, from, says, because, decidedBy, notes, ask }: SheetWhy, page: Page): void {
  page.gap();
  page.title(level === null ? title : `${title} (calls for: ${level})`);
  if (from !== null) page.text(from, 2);
  if (says !== null) page.text(says, 2);
  for (const sentence of decidedBy) page.item(sentence, 2);
  if (because !== null) page.text(`Why it matters: ${because}`, 2);
  for (const note of notes) page.text(note, 2);
  if (ask.length > 0) page.text('Ask:', 2);
  for (const question of ask) page.item(question, 2);
}
