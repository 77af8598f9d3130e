import type { Outcome } from '../shape/generated/types.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import { Page, type Shown } from './page.ts';
import { showFaults } from './show-faults.ts';
import { showFacts } from './show-facts.ts';
import { showGaps } from './show-gaps.ts';
import { showLevel } from './show-level.ts';
import { showMeasures } from './show-measures.ts';
import { titleOf } from './show-words.ts';
import { showWhy } from './show-why.ts';

/**
 * An outcome as plain words for a nurse, wrapped to the terminal: values that are not used or that are questioned before everything; the
 * level, what to do first and whom to tell by when; why; what is missing and what it could change; the measures; what else is to be
 * known of the values; which edition this is, and the caution.
 */
export function showOutcome(outcome: Outcome, protocol: Protocol, shown: Shown): string {
  const page = new Page(shown);
  showRemarks('Not used', outcome.refused, protocol, page);
  showRemarks('Used, but is it right? Take it again', outcome.questioned, protocol, page);
  page.gap();
  page.title(outcome.title);
  if (outcome.at !== null) page.text(timeInWords(outcome.at));
  showLevel(outcome, protocol, page);
  showFaults(outcome, protocol, page);
  showWhy(outcome, protocol, page);
  showGaps(outcome, protocol, page);
  showMeasures(outcome, protocol, page);
  showFacts(outcome, protocol, page);
  page.gap();
  page.text(`${outcome.protocol}, edition ${outcome.edition}, ${shortDigest(outcome.digest)}`);
  page.text(outcome.caution);
  return page.toString();
}

export function showRemarks(
  heading: string,
  remarks: Outcome['refused'],
  protocol: Protocol,
  page: Page,
): void {
  if (remarks.length === 0) return;
  page.heading(heading);
  for (const because of new Set(remarks.map((each) => each.because))) {
    const same = remarks.filter((each) => each.because === because);
    const titles = same.map(({ observation }) => titleOf(observation, protocol));
    if (titles.some((title) => because.startsWith(`${title} `))) page.item(because);
    else
      page.item(`${listed(same.map(({ given }, index) => `${titles[index] ?? ''} (${given})`))}: ${because}`);
  }
}

/** Enough of a digest to tell two editions apart. */
export const shortDigest = (digest: string): string => digest.slice(0, 'sha256:'.length + 12);
