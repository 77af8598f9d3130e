import type { Outcome, WardOutcome } from '../shape/generated/types.ts';
import { banners } from '../editions/said-of-policy.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import type { Ward } from '../ward/ward.ts';
import { Page, type Shown } from './page.ts';
import { showFacts } from './show-facts.ts';
import { showFaults } from './show-faults.ts';
import { showGaps } from './show-gaps.ts';
import { showLevel } from './show-level.ts';
import { showMeasures } from './show-measures.ts';
import { shortDigest, showRemarks } from './show-outcome.ts';
import { levelTitle } from './show-words.ts';
import { showWhy } from './show-why.ts';
import { answerHere, outcomesAsOne, protocolsAsOne } from '../ward/as-one.ts';

/**
 * The outcome of a ward policy as plain words for a nurse, in the order of an outcome of one protocol: one level and one answer to it,
 * then why, protocol by protocol, what is missing, and the measures of each.
 */
export function showWard(whole: WardOutcome, ward: Ward, shown: Shown): string {
  const page = new Page(shown);
  const one = outcomesAsOne(whole);
  const protocol = protocolsAsOne(ward);
  showBanners(whole, page);
  showRemarks('Not used', one.refused, protocol, page);
  showRemarks('Used, but is it right? Take it again', one.questioned, protocol, page);
  page.gap();
  page.title(whole.title);
  if (whole.at !== null) page.text(timeInWords(whole.at));
  showPlan(whole, page);
  const here = { level: answerHere(whole, ward), isPlanned: whole.plan !== undefined, isAlone: false };
  showLevel(one, protocol, page, here);
  showReads(whole, ward, page);
  showFaults(one, protocol, page);
  for (const { outcome, own } of withAdvice(whole, ward))
    showWhy(outcome, own, page, `Why: ${outcome.title}`);
  showGaps(one, protocol, page);
  for (const [index, outcome] of whole.reads.entries()) {
    const own = ward.members[index]?.protocol;
    if (own) showMeasures(outcome, own, page, `Measures: ${outcome.title}`);
  }
  showFacts(one, protocol, page);
  page.gap();
  page.text(
    `${whole.ward}, edition ${whole.edition}, ${shortDigest(whole.digest)}${whole.policy ? `, in force since ${timeInWords(whole.policy.in_force_from)}` : ''}`,
  );
  page.text(whole.caution);
  return page.toString();
}

/** What must be said of a policy that is in force, before anybody acts on it. */
function showBanners({ policy }: WardOutcome, page: Page): void {
  const said = policy ? banners(policy) : [];
  if (said.length === 0) return;
  page.heading('About this policy');
  for (const each of said) page.item(each);
}

function showPlan({ plan }: WardOutcome, page: Page): void {
  if (!plan) return;
  page.heading(`Plan: ${plan.title}`);
  page.text(`${plan.says} It changes whom to tell and how soon, not the level.`);
}

/** Each protocol with the level that it calls for, and those that are not for this patient. */
function showReads({ reads }: WardOutcome, ward: Ward, page: Page): void {
  page.heading('Read with');
  for (const [index, { title, level, applies, applies_because: because, otherwise }] of reads.entries()) {
    const own = ward.members[index]?.protocol;
    if (!own) continue;
    if (applies === 'no') {
      page.item(`${title}: not for this patient (${(because ?? []).join('; ')})`);
      if (otherwise !== undefined) page.text(otherwise, 2);
    } else page.item(`${title}: ${level ? levelInWords(level, own) : ''}`);
  }
}

function levelInWords(
  { at_least: atLeast, could_be: couldBe, settled }: NonNullable<Outcome['level']>,
  protocol: Parameters<typeof levelTitle>[1],
): string {
  const most = levelTitle(couldBe, protocol);
  if (atLeast === null) return `no result yet, it could be as high as ${most}`;
  const now = levelTitle(atLeast, protocol);
  if (settled) return now;
  return atLeast === couldBe ? `${now}, not settled` : `${now}, it could be as high as ${most}`;
}

interface Shared {
  readonly outcome: Outcome;
  readonly own: Parameters<typeof showWhy>[1];
}

/** The outcomes of the protocols with what is left for each to say, those that call for the highest level first. */
function withAdvice({ reads, advice }: WardOutcome, { members, ladder }: Ward): Shared[] {
  const rank = (level: string | null | undefined): number =>
    ladder.levels.findIndex(({ name }) => name === level);
  return reads
    .flatMap((outcome, index): Shared[] => {
      const own = members[index]?.protocol;
      const said = advice.filter(({ protocol }) => protocol === outcome.protocol);
      return own ? [{ own, outcome: { ...outcome, advice: said } }] : [];
    })
    .toSorted((left, right) => rank(right.outcome.level?.at_least) - rank(left.outcome.level?.at_least));
}
