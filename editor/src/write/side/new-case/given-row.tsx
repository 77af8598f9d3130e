import { useId, type ReactNode } from 'react';
import type { Field } from '../../../../../src/index.ts';
import { sentence } from '../../../common/sentence.ts';
import type { GivenValue } from '../../messages.ts';
import { isNoNumber } from './usable.ts';

interface Props {
  readonly field: Field;
  readonly value: GivenValue | undefined;
  readonly onGive: (value: GivenValue | null) => void;
}

/** One observation of a case, by hand: a value, or why there is none; nothing at all is "not taken". */
export function GivenRow({ field, value, onGive }: Props): ReactNode {
  const id = useId();
  const title = sentence(field.title);
  return (
    <div className="given-row">
      <label htmlFor={id}>{title}</label>
      {field.kind === 'number' ? (
        <NumberGiven id={id} title={title} field={field} value={value} onGive={onGive} />
      ) : field.kind === 'several' ? (
        <SeveralGiven id={id} field={field} value={value} onGive={onGive} />
      ) : (
        <select id={id} value={chosen(value)} onChange={(event) => onGive(valueOf(event.target.value))}>
          <option value="">not taken</option>
          {field.choices.map(({ choice, title: words }) => (
            <option key={choice} value={`=${choice}`}>
              {words}
            </option>
          ))}
          <option value="unobtainable">unobtainable</option>
          <option value="declined">declined</option>
        </select>
      )}
    </div>
  );
}

const chosen = (value: GivenValue | undefined): string =>
  value?.kind === 'choice' ? `=${value.choice}` : (value?.kind ?? '');

function valueOf(chosenValue: string): GivenValue | null {
  if (chosenValue === 'unobtainable' || chosenValue === 'declined') return { kind: chosenValue };
  return chosenValue === '' ? null : { kind: 'choice', choice: chosenValue.slice(1) };
}

interface PartProps extends Props {
  readonly id: string;
}

function NumberGiven({ id, title, field, value, onGive }: PartProps & { readonly title: string }): ReactNode {
  const units = field.units;
  const unit = value?.kind === 'number' ? value.unit : (units[0]?.ucum ?? '');
  const text = value?.kind === 'number' ? value.text : '';
  return (
    <span className="given-number">
      <input
        id={id}
        className="text-input"
        inputMode="decimal"
        autoComplete="off"
        aria-invalid={isNoNumber(value)}
        aria-describedby={isNoNumber(value) ? `${id}-wrong` : undefined}
        placeholder={value && value.kind !== 'number' ? value.kind : 'not taken'}
        value={text}
        onChange={({ target }) => {
          const typed = target.value.replace(',', '.').trim();
          onGive(typed === '' ? null : { kind: 'number', text: typed, unit });
        }}
      />
      {units.length > 1 ? (
        <select
          aria-label={`${title}: unit`}
          value={unit}
          onChange={({ target }) => onGive({ kind: 'number', text, unit: target.value })}
        >
          {units.map(({ word, ucum }) => (
            <option key={ucum} value={ucum}>
              {word}
            </option>
          ))}
        </select>
      ) : (
        <span>{units[0]?.word ?? ''}</span>
      )}
      <select
        aria-label={`${title}: no value`}
        value={value && value.kind !== 'number' ? value.kind : ''}
        onChange={({ target }) => onGive(target.value === '' ? null : valueOf(target.value))}
      >
        <option value="">a value, or not taken</option>
        <option value="unobtainable">unobtainable</option>
        <option value="declined">declined</option>
      </select>
      {isNoNumber(value) && (
        <span id={`${id}-wrong`} className="given-wrong">
          This is no number, so it is not used.
        </span>
      )}
    </span>
  );
}

function SeveralGiven({ id, field, value, onGive }: PartProps): ReactNode {
  const picked = value?.kind === 'several' ? value.choices : [];
  return (
    <span id={id} role="group" aria-label={field.title} className="given-several">
      {field.choices.map(({ choice, title }) => (
        <label key={choice} className="tick">
          <input
            type="checkbox"
            checked={picked.includes(choice)}
            onChange={({ target }) => {
              const others = picked.filter((each) => each !== choice);
              const choices = target.checked ? [...others, choice] : others;
              onGive(choices.length === 0 ? null : { kind: 'several', choices });
            }}
          />
          {title}
        </label>
      ))}
    </span>
  );
}
