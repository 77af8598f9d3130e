import { timeInWords } from '../outcome/time-in-words.ts';
import type { ObservationEntry, Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Series, Stated } from '../series/series.ts';
import type { HandoffFacts } from './handoff.ts';
import { inWords } from './observed-in-words.ts';
import { choiceTitle, stepsInWords } from './words.ts';

/** What a handoff tells of the patient and of earlier sets. */
export function handoffFacts(series: Series, { observations }: Protocol): HandoffFacts {
  const latest = Math.max(...series.sets.map(({ at }) => at ?? 0));
  const earlier = series.sets
    .filter((set) => (set.at ?? 0) < latest)
    .toSorted((left, right) => (left.at ?? 0) - (right.at ?? 0))
    .map(({ atText, observed }) => {
      const values = [...observed].flatMap(([name, each]) => {
        const entry = observations.get(name);
        return entry ? [`${entry.title} ${inWords(each, entry)}`] : [];
      });
      return `${timeInWords(atText ?? '')}: ${values.join(', ')}`;
    });
  const standing = [...series.standing].flatMap(([name, stated]) => {
    const entry = observations.get(name);
    return entry && isInForce(stated, series.at) ? [statedInWords(stated, entry)] : [];
  });
  return { standing, earlier };
}

const isInForce = ({ from, until }: Stated, at: number | null): boolean =>
  at === null || ((from === null || from <= at) && (until === null || at < until));

function statedInWords({ value, by, until }: Stated, entry: ObservationEntry): string {
  const words =
    typeof value === 'number'
      ? stepsInWords(value, entry)
      : listed((typeof value === 'string' ? [value] : value).map((choice) => choiceTitle(choice, entry)));
  const end = until === null ? '' : `, until ${timeInWords(new Date(until).toISOString())}`;
  return `${entry.title}: ${words} (${by}${end})`;
}
