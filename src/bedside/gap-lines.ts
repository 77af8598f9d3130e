import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Outcome } from '../shape/generated/types.ts';
import { decidingInWords, levelTitle, rankOf, titleOf } from './words.ts';

/** So many values are told of one observation. */
const mostLines = 4;

/** What an answer does: whether the protocol is for this patient, what it takes back, what it may explain. */
export function asking(name: string, outcome: Outcome, protocol: Protocol): string[] {
  const scope = (outcome.applies_because ?? []).filter((each) =>
    each.startsWith(`${titleOf(name, protocol)} `),
  );
  const back = takesBack(name, outcome, protocol);
  return scope.length + back.length > 0 ? [...scope, ...back] : [`may explain ${listed(explained(outcome))}`];
}

/** Which values take back which rules that only their exception holds back. */
function takesBack(name: string, outcome: Outcome, protocol: Protocol): string[] {
  const found = new Map<string, string[]>();
  for (const { counts, decided_if: decided, title } of outcome.rules) {
    const values = (decided ?? []).filter((each) => each.observation === name && each.state === 'not_met');
    if (counts !== true || values.length === 0) continue;
    const words = values.map((each) => decidingInWords(each, protocol)).join(', ');
    found.set(words, [...(found.get(words) ?? []), `"${title}"`]);
  }
  return [...found].map(([values, titles]) => `${values} takes back ${listed(titles)}`);
}

/** The rules that something may explain: those of the level that is called for, where there are any. */
function explained({ rules, level }: Outcome): string[] {
  const all = rules.filter((rule) => rule.could_be_explained_by !== undefined);
  const highest = all.filter((rule) => rule.level === level?.at_least);
  return [...new Set((highest.length > 0 ? highest : all).map(({ title }) => `"${title}"`))];
}

/** Which rules which values would make met, the highest level first; once it is settled, only what would take it higher. */
export function wouldMeet(name: string, outcome: Outcome, protocol: Protocol): string[] {
  const { level: reached } = outcome;
  const settledAt = reached?.settled ? rankOf(reached.at_least, protocol) : -2;
  const found = new Map<string, { readonly rules: readonly string[]; readonly level: number }>();
  for (const rule of outcome.rules) {
    const level = rankOf(rule.level, protocol);
    if (level <= settledAt) continue;
    for (const each of rule.decided_if ?? []) {
      if (each.observation !== name || each.state !== 'met') continue;
      const values = decidingInWords(each, protocol);
      const line = found.get(values) ?? { rules: [], level: -1 };
      const calls = rule.level === undefined ? '' : ` (${levelTitle(rule.level, protocol)})`;
      const rules = [...new Set([...line.rules, `"${rule.title}"${calls}`])];
      found.set(values, { rules, level: Math.max(line.level, level) });
    }
  }
  const lines = [...found].toSorted(([, left], [, right]) => right.level - left.level);
  const shown = lines.slice(0, mostLines).map(([values, { rules }]) => `${values}: ${listed(rules)}`);
  return lines.length > mostLines
    ? [...shown, `${lines.length - mostLines} more of its values would change something`]
    : shown;
}

/**
 * What only helps, is missing, and could make a rule of a higher level met: each with its values and the highest level that
 * they call for, `oxygen saturation (91 % or less: Call the doctor)`.
 */
export function mayRaise(
  { rules, would_tell_more: more }: Outcome,
  at: number,
  protocol: Protocol,
): string[] {
  return more.flatMap((name) => {
    const found = rules
      .filter(({ level }) => rankOf(level, protocol) > at)
      .toSorted((left, right) => rankOf(right.level, protocol) - rankOf(left.level, protocol))
      .flatMap(({ level, decided_if: decided }) =>
        (decided ?? []).map((each) => ({ ...each, level: level as string })),
      )
      .find(({ observation, state }) => observation === name && state === 'met');
    if (!found) return [];
    return `${titleOf(name, protocol)} (${decidingInWords(found, protocol)}: ${levelTitle(found.level, protocol)})`;
  });
}
