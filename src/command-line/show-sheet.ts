import type { Said, Sheet, SheetFaults, SheetMeasure } from '../bedside/sheet.ts';
import { Page, type Shown } from './page.ts';
import { showGaps } from './show-gaps.ts';
import { showLevel } from './show-level.ts';
import { showWhy } from './show-why.ts';

/**
 * What the Bedside room shows, on a terminal: values that are not used or that are questioned before everything; the level, what to
 * do first and whom to tell by when; how it was taken; why; what is missing and what it could change; the measures; what else is to
 * be known of the values; which edition this is, and the caution. All wording is the sheet's own.
 */
export function showSheet(sheet: Sheet, shown: Shown): string {
  const page = new Page(shown);
  showRemarks('Not used', sheet.refused, page);
  showRemarks('Used, but is it right? Take it again', sheet.questioned, page);
  page.gap();
  page.title(sheet.title);
  if (sheet.at !== null) page.text(sheet.at);
  if (sheet.plan) {
    page.heading(sheet.plan.title);
    page.text(sheet.plan.says);
  }
  showLevel(sheet.level, page);
  showReads(sheet, page);
  if (sheet.faults) showFaults(sheet.faults, page);
  showWhy(sheet, page);
  showGaps(sheet.gaps, page);
  showMeasures(sheet.measures, page);
  for (const { heading, items } of sheet.facts) page.list(heading, items);
  page.gap();
  page.text(sheet.edition);
  page.text(sheet.caution);
  return page.toString();
}

/** What concerns two observations is said once. */
const showRemarks = (heading: string, remarks: readonly Said[], page: Page): void =>
  page.list(heading, [...new Set(remarks.map(({ says }) => says))]);

function showReads({ reads }: Sheet, page: Page): void {
  if (reads.length > 0) page.heading('Read with');
  for (const { says, otherwise } of reads) {
    page.item(says);
    if (otherwise !== null) page.text(otherwise, 2);
  }
}

function showFaults({ heading, faults, openHeading, open, matters }: SheetFaults, page: Page): void {
  page.heading(heading);
  for (const { title, says, do: actions } of faults) {
    page.gap();
    page.title(title);
    page.text(says, 2);
    for (const action of actions) page.item(action, 2);
  }
  page.gap();
  page.title(openHeading);
  for (const each of open) page.item(each);
  page.text(matters);
}

function showMeasures(measures: readonly SheetMeasure[], page: Page): void {
  for (const of of new Set(measures.map((each) => each.of))) {
    page.heading(of === null ? 'Measures' : `Measures: ${of}`);
    for (const { title, value, isKnown } of measures.filter((each) => each.of === of))
      page.item(isKnown ? `${title}: ${value}` : `${value}: ${title}`);
  }
}
