import type { Outcome } from '../shape/generated/types.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Page } from './page.ts';
import { levelTitle, roughlyKnown, titleOf, valuesInWords } from './show-words.ts';

/** So many values are told of one observation. */
const mostLines = 4;

/** What is missing, and what it could change, in the order in which to ask and take. */
export function showGaps(outcome: Outcome, protocol: Protocol, page: Page): void {
  const gaps = new Gaps(outcome, protocol, page);
  const { ask_first: ask, take_first: take, missing, would_tell_more: more } = outcome;
  const without = [...outcome.unobtainable, ...outcome.declined];
  const elsewhere = new Set([...ask, ...take, ...without.map(({ observation }) => observation)]);
  const rest = missing.filter((name) => !elsewhere.has(name));
  const rough = roughlyKnown(outcome);
  const noValue = [...new Set(outcome.rules.flatMap((rule) => rule.no_value ?? []))];
  if ([ask, take, rest, rough, more, noValue, without].every((list) => list.length === 0)) return;
  page.heading(
    outcome.level?.settled ? 'What is still missing' : 'What is missing, and what it could change',
  );
  gaps.asks(ask);
  gaps.list('Take first', take, true);
  gaps.list('Missing too', rest, false);
  gaps.withoutValue();
  gaps.list('Known only as a range', rough, false);
  gaps.list(
    'Would tell more',
    more.filter((name) => !elsewhere.has(name)),
    false,
  );
  if (noValue.length === 0) return;
  page.gap();
  page.title('Earlier sets, and numbers without a value');
  for (const sentence of noValue) page.item(sentence);
}

class Gaps {
  readonly #outcome: Outcome;
  readonly #protocol: Protocol;
  readonly #page: Page;

  constructor(outcome: Outcome, protocol: Protocol, page: Page) {
    this.#outcome = outcome;
    this.#protocol = protocol;
    this.#page = page;
  }

  asks(names: readonly string[]): void {
    if (names.length === 0) return;
    this.#page.gap();
    this.#page.title('Ask first');
    for (const sentence of this.#outcome.applies_because ?? []) this.#page.item(sentence);
    for (const name of names) {
      const title = titleOf(name, this.#protocol);
      const lines = this.#takesBack(name);
      if (lines.length > 0) this.#page.item(`${title}: ${lines.join('; ')}`);
      else if (!(this.#outcome.applies_because ?? []).some((each) => each.startsWith(`${title} `))) {
        this.#page.item(`${title}: may explain ${listed(this.#explained())}`);
      }
    }
  }

  /** Which values take back which rules that only their exception holds back. */
  #takesBack(name: string): string[] {
    const found = new Map<string, string[]>();
    for (const { counts, decided_if: decided, title } of this.#outcome.rules) {
      if (counts !== true) continue;
      const values = (decided ?? []).filter(
        ({ observation, state }) => observation === name && state === 'not_met',
      );
      if (values.length === 0) continue;
      const words = values.map((each) => valuesInWords(each, this.#protocol)).join(', ');
      found.set(words, [...(found.get(words) ?? []), `"${title}"`]);
    }
    return [...found].map(([values, titles]) => `${values} takes back ${listed(titles)}`);
  }

  /** The rules that something may explain: those of the level that is called for, where there are any. */
  #explained(): string[] {
    const all = this.#outcome.rules.filter((rule) => rule.could_be_explained_by !== undefined);
    const highest = all.filter(({ level }) => level === this.#outcome.level?.at_least);
    return [...new Set((highest.length > 0 ? highest : all).map(({ title }) => `"${title}"`))];
  }

  list(heading: string, names: readonly string[], numbered: boolean): void {
    if (names.length === 0) return;
    this.#page.gap();
    this.#page.title(heading);
    const all = names.map((name) => ({ title: titleOf(name, this.#protocol), lines: this.#wouldMeet(name) }));
    const quiet = numbered ? [] : all.filter(({ lines }) => lines.length === 0);
    const told = all.filter((each) => !quiet.includes(each));
    told.forEach(({ title, lines }, index) => {
      this.#page.item(title, 0, numbered ? `${index + 1}.` : '-');
      for (const line of lines) this.#page.text(line, 4);
    });
    if (quiet.length > 0) this.#page.item(listed(quiet.map(({ title }) => title)));
  }

  /** Which rules which values would make met, the highest level first; once it is settled, only what would take it higher. */
  #wouldMeet(name: string): string[] {
    const found = new Map<string, { rules: string[]; level: number }>();
    const { level: reached } = this.#outcome;
    const settledAt = reached?.settled ? this.#rank(reached.at_least ?? undefined) : -2;
    for (const rule of this.#outcome.rules) {
      const level = this.#rank(rule.level);
      if (level <= settledAt) continue;
      for (const each of rule.decided_if ?? []) {
        if (each.observation !== name || each.state !== 'met') continue;
        const values = valuesInWords(each, this.#protocol);
        const line = found.get(values) ?? { rules: [], level: -1 };
        const calls = rule.level === undefined ? '' : ` (${levelTitle(rule.level, this.#protocol)})`;
        found.set(values, {
          rules: [...new Set([...line.rules, `"${rule.title}"${calls}`])],
          level: Math.max(line.level, level),
        });
      }
    }
    const lines = [...found].toSorted(([, left], [, right]) => right.level - left.level);
    const shown = lines.slice(0, mostLines).map(([values, { rules }]) => `${values}: ${listed(rules)}`);
    return lines.length > mostLines
      ? [...shown, `${lines.length - mostLines} more of its values would change something`]
      : shown;
  }

  #rank(level: string | undefined): number {
    return this.#protocol.ladder.levels.findIndex(({ name }) => name === level);
  }

  withoutValue(): void {
    const groups = [
      ['Tried and not obtained', this.#outcome.unobtainable],
      ['Declined', this.#outcome.declined],
    ] as const;
    for (const [heading, all] of groups) {
      if (all.length === 0) continue;
      this.#page.gap();
      this.#page.title(heading);
      for (const { observation, because } of all) {
        const title = titleOf(observation, this.#protocol);
        this.#page.item(because === undefined ? title : `${title} (${because})`);
        for (const line of this.#wouldMeet(observation)) this.#page.text(line, 4);
      }
    }
  }
}
