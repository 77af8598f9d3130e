import type { ObservationEntry, Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Observed, Series } from '../series/series.ts';
import { inTakingOrder } from './taking-order.ts';
import type { SheetObserved } from './sheet.ts';
import { choiceTitle, stepsInWords } from './words.ts';

/** What the present set says of what is needed, and whatever else it says, in the order in which it is taken. */
export function observedInWords(series: Series, protocol: Protocol): readonly SheetObserved[] {
  const latest = Math.max(...series.sets.map(({ at }) => at ?? 0));
  const present = series.sets.filter((set) => (set.at ?? 0) === latest);
  const said = new Map(present.flatMap(({ observed }) => [...observed]));
  const entries = [...protocol.observations.values()].filter(
    ({ name, role, standing }) => said.has(name) || (role === 'needs' && !standing),
  );
  return inTakingOrder(entries).flatMap((group) =>
    group.entries.map((entry) => {
      const observed = said.get(entry.name);
      return {
        observation: entry.name,
        title: entry.title,
        words: observed ? inWords(observed, entry) : 'not taken',
        hasValue: observed !== undefined && observed.kind !== 'unobtainable' && observed.kind !== 'declined',
      };
    }),
  );
}

/** `104 mmHg`; `newly confused`; `could not be obtained (cold fingers)`; `above 250 mmHg, the end of the device`. */
export function inWords(observed: Observed, entry: ObservationEntry): string {
  switch (observed.kind) {
    case 'number':
      return numbersInWords(observed, entry);
    case 'choice':
      return choiceTitle(observed.choice, entry);
    case 'several':
      return listed(observed.choices.map((choice) => choiceTitle(choice, entry))) || 'none';
    case 'above_device':
      return `above ${stepsInWords(observed.bound, entry)}, the end of the device`;
    case 'below_device':
      return `below ${stepsInWords(observed.bound, entry)}, the end of the device`;
    case 'unobtainable':
    case 'declined': {
      const how = observed.kind === 'declined' ? 'declined' : 'could not be obtained';
      return observed.reason === null ? how : `${how} (${observed.reason})`;
    }
  }
}

function numbersInWords(
  { value, low, high }: Extract<Observed, { kind: 'number' }>,
  entry: ObservationEntry,
): string {
  if (value !== null && (low === value || low === null) && (high === value || high === null)) {
    return stepsInWords(value, entry);
  }
  const ends = [
    low === null ? null : `from ${stepsInWords(low, entry)}`,
    high === null ? null : `to ${stepsInWords(high, entry)}`,
  ].filter((each) => each !== null);
  return [...(value === null ? [] : [`${stepsInWords(value, entry)}, truly`]), ...ends].join(' ');
}
