import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { DecidedIf, Outcome } from '../shape/generated/types.ts';
import type { Gap, SheetGaps } from './sheet.ts';
import { decidingInWords, levelTitle, rankOf, titleOf } from './words.ts';

/** So many values are told of one observation. */
const mostLines = 4;

/** What is missing, what to ask, and what it could change. */
export function sheetGaps(outcome: Outcome, protocol: Protocol): SheetGaps {
  const {
    ask_first: ask,
    take_first: take,
    missing,
    would_tell_more: more,
    unobtainable,
    declined,
  } = outcome;
  const gap = (name: string, lines = wouldMeet(name, outcome, protocol)): Gap => ({
    observation: name,
    title: titleOf(name, protocol),
    lines,
  });
  const tried = [
    ...unobtainable.map((each) => ({ ...each, how: 'tried and not obtained' })),
    ...declined.map((each) => ({ ...each, how: 'declined' })),
  ];
  const elsewhere = new Set([...ask, ...take, ...tried.map(({ observation }) => observation)]);
  const rest = (names: readonly string[]): Gap[] =>
    names.filter((name) => !elsewhere.has(name)).map((name) => gap(name));
  return {
    ask: ask.map((name) => gap(name, asking(name, outcome, protocol))),
    take: take.map((name) => gap(name)),
    missing: rest(missing),
    again: tried.map(({ observation, because, how }) => ({
      ...gap(observation),
      title: `${titleOf(observation, protocol)}: ${how}${because === undefined ? '' : ` (${because})`}`,
    })),
    rough: roughlyKnown(outcome).map((name) => gap(name)),
    more: rest(more),
    noValue: [...new Set(outcome.rules.flatMap((rule) => rule.no_value ?? []))],
  };
}

/** Observations that have a value, and whose range leaves a rule undecided. */
function roughlyKnown({ rules, missing, would_tell_more: more, ask_first: ask }: Outcome): string[] {
  const listedAlready = new Set([...missing, ...more, ...ask]);
  const waited = rules.flatMap((rule) => rule.waits_for ?? []);
  return [...new Set(waited)].filter((name) => !listedAlready.has(name));
}

/** What an answer does: whether the protocol is for this patient, what it takes back, what it may explain. */
function asking(name: string, outcome: Outcome, protocol: Protocol): string[] {
  const title = titleOf(name, protocol);
  const scope = (outcome.applies_because ?? []).filter((each) => each.startsWith(`${title} `));
  const back = outcome.rules.flatMap(({ counts, decided_if: decided, title: rule }) =>
    (counts === true ? (decided ?? []) : [])
      .filter(({ observation, state }) => observation === name && state === 'not_met')
      .map((each) => `${valuesOf(each, protocol)}: takes back “${rule}”`),
  );
  if (scope.length + back.length > 0) return [...scope, ...back];
  const explained = outcome.rules
    .filter((rule) => rule.could_be_explained_by !== undefined && rule.level === outcome.level?.at_least)
    .map((rule) => `“${rule.title}”`);
  return explained.length > 0 ? [`may explain ${listed(explained)}`] : [];
}

/** Which rules which values would make met, the highest level first; once it is settled, only what would take it higher. */
function wouldMeet(name: string, outcome: Outcome, protocol: Protocol): string[] {
  const { level: reached } = outcome;
  const settledAt = reached?.settled ? rankOf(reached.at_least, protocol) : -2;
  const found = new Map<string, { readonly rules: readonly string[]; readonly level: number }>();
  for (const rule of outcome.rules) {
    const level = rankOf(rule.level, protocol);
    if (level <= settledAt) continue;
    for (const each of rule.decided_if ?? []) {
      if (each.observation !== name || each.state !== 'met') continue;
      const values = valuesOf(each, protocol);
      const line = found.get(values) ?? { rules: [], level: -1 };
      const calls = rule.level === undefined ? '' : ` (${levelTitle(rule.level, protocol)})`;
      const rules = [...line.rules, `“${rule.title}”${calls}`];
      found.set(values, { rules, level: Math.max(line.level, level) });
    }
  }
  const lines = [...found].toSorted(([, left], [, right]) => right.level - left.level);
  const shown = lines.slice(0, mostLines).map(([values, { rules }]) => `${values}: ${listed(rules)}`);
  return lines.length > mostLines ? [...shown, `and ${lines.length - mostLines} more`] : shown;
}

function valuesOf(decided: DecidedIf, protocol: Protocol): string {
  const entry = protocol.observations.get(decided.observation);
  return entry ? decidingInWords(decided, entry) : '';
}
