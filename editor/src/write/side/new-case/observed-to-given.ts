import type { Field } from '../../../../../src/index.ts';
import type { GivenSet, GivenValue } from '../../messages.ts';

/**
 * The present set of a series from the bedside, with what is known of the patient, as a case gives it. Times, names, reasons and earlier sets
 * are left out, and whatever the protocol has no field for.
 */
export function observedToGiven(json: string, fields: readonly Field[]): GivenSet {
  const series = JSON.parse(json) as {
    readonly patient?: { readonly standing?: Readonly<Record<string, unknown>> };
    readonly sets?: readonly Readonly<Record<string, unknown>>[];
  };
  const all: Readonly<Record<string, unknown>> = {
    ...series.patient?.standing,
    ...series.sets?.at(-1),
  };
  const found = fields.flatMap((field): [string, GivenValue][] => {
    const value = all[field.name];
    const given = value === undefined ? null : givenValue(value);
    return given ? [[field.name, given]] : [];
  });
  return Object.fromEntries(found);
}

function givenValue(value: unknown): GivenValue | null {
  if (typeof value === 'number') return { kind: 'number', text: String(value), unit: '' };
  if (typeof value === 'string') return { kind: 'choice', choice: value };
  if (Array.isArray(value)) return { kind: 'several', choices: value.map(String) };
  if (typeof value !== 'object' || value === null) return null;
  const parts = value as Readonly<Record<string, unknown>>;
  if ('unobtainable' in parts) return { kind: 'unobtainable' };
  if ('declined' in parts) return { kind: 'declined' };
  const inside = givenValue(parts['value']);
  return inside?.kind === 'number' && typeof parts['unit'] === 'string'
    ? { ...inside, unit: parts['unit'] }
    : inside;
}
