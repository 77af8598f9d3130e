import { checkShape } from '../../shape/check-shape.ts';
import { readObservation } from '../../vocabulary/dictionary.ts';
import type { ObservationEntry } from '../../vocabulary/observation.ts';
import { entriesOf, type Part } from '../sketch/sketch.ts';
import { partToNode } from './part-to-plain.ts';

const span = { start: 0, end: 0 };
const scalar = (value: string | number) => ({ kind: 'scalar', span, value }) as const;
const entry = (key: string, value: ReturnType<typeof partToNode>) => ({ key, keySpan: span, value });

/** The observations that a protocol declares itself, as far as they can be read; half-typed ones are left out. */
export function declaredInPlace(declares: Part | undefined): Map<string, ObservationEntry> {
  const found = new Map<string, ObservationEntry>();
  for (const { key, value } of entriesOf(declares)) {
    const observations = { kind: 'map', span, entries: [entry(key.text, partToNode(value))] } as const;
    const root = {
      kind: 'map',
      span,
      entries: [
        entry('dictionary', scalar('declared')),
        entry('language', scalar(1)),
        entry('observations', observations),
      ],
    } as const;
    const { value: file } = checkShape('dictionary', { file: '', text: '', root });
    const plain = file?.observations[key.text];
    const read = plain && readObservation(key.text, plain, [], () => undefined);
    if (read) found.set(key.text, read);
  }
  return found;
}
