import type { Protocol } from '../protocol/protocol.ts';
import type { Outcome } from '../shape/generated/types.ts';
import { asking, wouldMeet } from './gap-lines.ts';
import type { Gap, GapList, SheetGaps } from './sheet.ts';
import { titleOf } from './words.ts';

/** What is missing, what to ask, and what it could change. */
export function sheetGaps(outcome: Outcome, protocol: Protocol): SheetGaps {
  return {
    heading: outcome.level?.settled ? 'What is still missing' : 'What is missing, and what it could change',
    lists: listsOf(outcome, protocol).filter(({ gaps }) => gaps.length > 0),
    noValueHeading: 'Earlier sets, and numbers without a value',
    noValue: [...new Set(outcome.rules.flatMap((rule) => rule.no_value ?? []))],
  };
}

function listsOf(outcome: Outcome, protocol: Protocol): GapList[] {
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
  const tried = [...unobtainable, ...declined].map(({ observation }) => observation);
  const elsewhere = new Set([...ask, ...take, ...tried]);
  const rest = (names: readonly string[]): Gap[] =>
    names.filter((name) => !elsewhere.has(name)).map((name) => gap(name));
  const without = ({ observation, because }: Outcome['declined'][number]): Gap => {
    const each = gap(observation);
    return because === undefined ? each : { ...each, title: `${each.title} (${because})` };
  };
  return [
    {
      kind: 'ask',
      heading: 'Ask first',
      gaps: ask.map((name) => gap(name, asking(name, outcome, protocol))),
    },
    { kind: 'take', heading: 'Take first', gaps: take.map((name) => gap(name)) },
    { kind: 'missing', heading: 'Missing too', gaps: rest(missing) },
    { kind: 'unobtainable', heading: 'Tried and not obtained', gaps: unobtainable.map(without) },
    { kind: 'declined', heading: 'Declined', gaps: declined.map(without) },
    { kind: 'rough', heading: 'Known only as a range', gaps: roughlyKnown(outcome).map((name) => gap(name)) },
    { kind: 'more', heading: 'Would tell more', gaps: rest(more) },
  ];
}

/** Observations that have a value, and whose range leaves a rule undecided. */
export function roughlyKnown({ rules, missing, would_tell_more: more, ask_first: ask }: Outcome): string[] {
  const listedAlready = new Set([...missing, ...more, ...ask]);
  const waited = rules.flatMap((rule) => rule.waits_for ?? []);
  return [...new Set(waited)].filter((name) => !listedAlready.has(name));
}
