import type { Advice, Outcome, OutcomeRule } from '../shape/generated/types.ts';
import { listed } from '../protocol/words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Page } from './page.ts';
import { showFrom } from './show-based-on.ts';
import { levelTitle, titleOf } from './show-words.ts';

/** Why: what each rule says that is met or counts, what it was found by, and what does not reassure. */
export function showWhy(outcome: Outcome, protocol: Protocol, page: Page, heading = 'Why'): void {
  const rules = new Map(outcome.rules.map((rule) => [rule.rule, rule]));
  const asked = new Set<string>();
  if (outcome.advice.length > 0) page.heading(heading);
  for (const advice of outcome.advice) {
    const rule = rules.get(advice.rule);
    if (rule) showAdvice(advice, rule, { outcome, protocol, page, asked });
  }
  const blind = outcome.rules.filter((rule) => rule.not_reliable !== undefined);
  if (blind.length > 0) page.heading('Not met, but that reassures nobody');
  for (const { title, not_reliable: because } of blind) page.item(`${title}: ${(because ?? []).join('; ')}`);
  const takenBack = outcome.rules.filter((rule) => rule.taken_back_by !== undefined);
  if (takenBack.length > 0) page.heading('Taken back by an exception');
  for (const { title, taken_back_by: by } of takenBack) page.item(`${title}: ${by ?? ''}`);
}

interface Showing {
  readonly outcome: Outcome;
  readonly protocol: Protocol;
  readonly page: Page;
  /** Questions that stand further up already. */
  readonly asked: Set<string>;
}

function showAdvice(advice: Advice, rule: OutcomeRule, showing: Showing): void {
  const { protocol, page, asked } = showing;
  page.gap();
  const calls = advice.level === undefined ? '' : ` (calls for: ${levelTitle(advice.level, protocol)})`;
  page.title(`${advice.title}${calls}`);
  showFrom(rule, page);
  if (advice.says !== undefined) page.text(advice.says, 2);
  for (const sentence of rule.decided_by ?? []) page.item(sentence, 2);
  if (advice.because !== undefined) page.text(`Why it matters: ${advice.because}`, 2);
  showExplanation(rule, protocol, page);
  if (rule.counts) showException(rule, protocol, page);
  const questions = advice.ask.filter((each) => !asked.has(each) && Boolean(asked.add(each)));
  if (questions.length > 0) page.text('Ask:', 2);
  for (const question of questions) page.item(question, 2);
}

function showExplanation(rule: OutcomeRule, protocol: Protocol, page: Page): void {
  if (rule.explained_by !== undefined) {
    const from = rule.lowered_from;
    const lowered = from === undefined ? '' : ` It lowers the level from: ${levelTitle(from, protocol)}.`;
    page.text(`Explained: ${rule.explained_by}${lowered}`, 2);
  }
  if (rule.could_be_explained_by !== undefined)
    page.text(`Not answered yet, and it could explain this: ${rule.could_be_explained_by}`, 2);
}

function showException(rule: OutcomeRule, protocol: Protocol, page: Page): void {
  const names = listed((rule.waits_for ?? []).map((name) => titleOf(name, protocol)));
  const exception = rule.could_be_taken_back_by;
  const words = exception === undefined ? '' : ` It would be taken back by: ${exception}`;
  page.text(`It counts until somebody has answered what could take it back. Ask: ${names}.${words}`, 2);
}
