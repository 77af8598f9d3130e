import type { FocusEvent, KeyboardEvent, ReactNode } from 'react';
import type { Field } from '../../../src/index.ts';
import { sentence } from '../common/sentence.ts';
import { useTyped } from '../common/use-typed.ts';
import type { Entry } from './entries.ts';
import { kindOfKey, nothing } from './no-value.tsx';
import { moveOn } from './move-on.ts';

interface Props {
  readonly field: Pick<Field, 'name' | 'title' | 'units' | 'isWhole'>;
  readonly entry: Entry | null;
  /** UCUM code of the unit that people here enter. */
  readonly usualUnit: string;
  readonly describedBy: string | undefined;
  /** Whether the letters for nothing work here. */
  readonly lettersWork: boolean;
  readonly onEnter: (entry: Entry | null) => void;
  readonly onUnit: (ucum: string) => void;
  /** Told when a value is begun, so that nobody takes the outcome for one of it. */
  readonly onTyping: (isTyping: boolean) => void;
}

/** A number with its unit beside it. It is taken when the field is left, never while it is typed. */
export function NumberField(props: Props): ReactNode {
  const { field, entry, usualUnit, describedBy, lettersWork, onEnter, onTyping } = props;
  const written = entry?.kind === 'number' ? entry.text : '';
  const typed = useTyped<HTMLInputElement>(written, (text) => onTyping(text.trim() !== written));
  const unit = entry?.kind === 'number' ? entry.unit : usualUnit;

  /** Takes what stands in the field itself, whatever has been drawn of it. */
  const take = ({ currentTarget }: FocusEvent<HTMLInputElement>): void => {
    const text = currentTarget.value.trim();
    onTyping(false);
    if (text === written) return;
    if (text === '') onEnter(null);
    else onEnter({ kind: 'number', text, unit });
  };
  const onKey = (event: KeyboardEvent<HTMLInputElement>): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const kind = lettersWork ? kindOfKey(event.key) : undefined;
    if (kind !== undefined) {
      event.preventDefault();
      event.currentTarget.value = '';
      typed.onChange({ target: event.currentTarget });
      onTyping(false);
      onEnter(nothing(kind));
    } else if (event.key === '/' && field.name === 'systolic') {
      event.preventDefault();
      moveOn(event.currentTarget);
    }
  };
  const isWhole = field.isWhole && unit === (field.units[0]?.ucum ?? '');
  return (
    <span className="number">
      <input
        className="number-input"
        aria-label={sentence(field.title)}
        aria-describedby={describedBy}
        inputMode={isWhole ? 'numeric' : 'decimal'}
        autoComplete="off"
        maxLength={12}
        {...typed}
        onBlur={take}
        onKeyDown={onKey}
      />
      <UnitBeside {...props} unit={unit} />
    </span>
  );
}

function UnitBeside({ field, unit, entry, onEnter, onUnit }: Props & { readonly unit: string }): ReactNode {
  if (field.units.length < 2) return <span className="unit">{field.units[0]?.word}</span>;
  return (
    <select
      className="unit unit-select"
      aria-label={`${sentence(field.title)}: unit`}
      value={unit}
      onChange={(event) => {
        onUnit(event.target.value);
        if (entry?.kind === 'number') onEnter({ ...entry, unit: event.target.value });
      }}
    >
      {field.units.map(({ word, ucum }) => (
        <option key={ucum} value={ucum}>
          {word}
        </option>
      ))}
    </select>
  );
}
