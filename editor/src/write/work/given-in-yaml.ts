import type { Field } from '../../../../src/index.ts';
import type { GivenSet, GivenValue } from '../messages.ts';

/** One set as a case gives it, on one line and in the trade's units: `{ age: 58 y, systolic: 104 }`. */
export function givenInYaml(given: GivenSet, fields: readonly Field[]): string {
  const byName = new Map(fields.map((field) => [field.name, field]));
  const entries = Object.entries(given).map(
    ([name, value]) => `${name}: ${valueInYaml(value, byName.get(name))}`,
  );
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}

function valueInYaml(value: GivenValue, field: Field | undefined): string {
  switch (value.kind) {
    case 'number': {
      const [own] = field?.units ?? [];
      const unit = field?.units.find(({ ucum }) => ucum === value.unit);
      const isOwn = unit?.ucum === own?.ucum && !/^(?:a|mo|wk|d|h|min)$/.test(own?.ucum ?? '');
      return unit && !isOwn ? `${value.text} ${unit.word}` : value.text;
    }
    case 'choice':
      return value.choice;
    case 'several':
      return `[${value.choices.join(', ')}]`;
    case 'unobtainable':
    case 'declined':
      return `{ ${value.kind}: yes }`;
  }
}

/** The same set as JSON, for reading it. */
export function givenInJson(given: GivenSet): string {
  const entries = Object.entries(given).map(([name, value]) => [name, valueInJson(value)] as const);
  return JSON.stringify(Object.fromEntries(entries));
}

function valueInJson(value: GivenValue): unknown {
  switch (value.kind) {
    case 'number':
      return value.unit === '' ? Number(value.text) : { value: Number(value.text), unit: value.unit };
    case 'choice':
      return value.choice;
    case 'several':
      return value.choices;
    case 'unobtainable':
    case 'declined':
      return { [value.kind]: true };
  }
}
