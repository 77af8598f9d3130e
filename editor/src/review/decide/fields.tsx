import { useId, type ReactNode } from 'react';
import { TypedLine, TypedLines } from '../../common/typed-field.tsx';
import type { FieldProblem } from './send.ts';

interface FieldProps {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly problems: readonly FieldProblem[];
  readonly children: (place: Place) => ReactNode;
}

/** What ties a field to its label, its hint and what is wrong with it. */
interface Place {
  readonly id: string;
  readonly 'aria-invalid': boolean;
  readonly 'aria-describedby': string | undefined;
}

/** A field with its label above it, and what is wrong with it below. */
function Field({ name, label, hint, problems, children }: FieldProps): ReactNode {
  const id = useId();
  const own = problems.filter(({ field }) => field === name).map(({ says }) => says);
  const said = [...(hint === undefined ? [] : [`${id}-hint`]), ...(own.length > 0 ? [`${id}-wrong`] : [])];
  return (
    <div className="decide-field" data-field={name}>
      <label htmlFor={id}>{label}</label>
      {children({ id, 'aria-invalid': own.length > 0, 'aria-describedby': said.join(' ') || undefined })}
      {hint !== undefined && (
        <p id={`${id}-hint`} className="hint">
          {hint}
        </p>
      )}
      {own.length > 0 && (
        <p id={`${id}-wrong`} className="decide-wrong">
          {own.join(' ')}
        </p>
      )}
    </div>
  );
}

type Named = Omit<FieldProps, 'children'>;

interface TextProps extends Named {
  readonly value: string;
  readonly onType: (typed: string) => void;
  readonly rows?: number;
  readonly type?: 'text' | 'date' | 'datetime-local';
}

/** A field that is typed into: a line, some lines, a day or a time. */
export function TextField({ value, onType, rows, type = 'text', ...named }: TextProps): ReactNode {
  return (
    <Field {...named}>
      {(place) =>
        rows === undefined ? (
          <TypedLine
            {...place}
            className="text-input"
            type={type}
            autoComplete="off"
            value={value}
            onType={onType}
          />
        ) : (
          <TypedLines
            {...place}
            className="text-input"
            rows={rows}
            autoComplete="off"
            value={value}
            onType={onType}
          />
        )
      }
    </Field>
  );
}

interface ChoiceProps extends Named {
  readonly value: string;
  /** Each with what is shown of it. */
  readonly options: readonly { readonly value: string; readonly says: string }[];
  readonly onChoose: (value: string) => void;
  /** What is shown as long as nothing is chosen. */
  readonly none: string;
}

/** A field in which one of a list is chosen. */
export function ChoiceField({ value, options, onChoose, none, ...named }: ChoiceProps): ReactNode {
  return (
    <Field {...named}>
      {(place) => (
        <select {...place} value={value} onChange={(event) => onChoose(event.target.value)}>
          <option value="">{none}</option>
          {options.map((each) => (
            <option key={each.value} value={each.value}>
              {each.says}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

interface KeyProps {
  readonly problems: readonly FieldProblem[];
  readonly onFile: (file: File | null) => void;
}

/** Where entries are signed: the file with the private key. It is read by this page alone. */
export function KeyField({ problems, onFile }: KeyProps): ReactNode {
  return (
    <Field
      name="key"
      label="File with your private key"
      hint="It is read in this page to sign this one entry, and sent nowhere."
      problems={problems.map((each) => (each.field === 'jws' ? { ...each, field: 'key' } : each))}
    >
      {(place) => (
        <input
          {...place}
          className="decide-file"
          type="file"
          onChange={(event) => onFile(event.target.files?.[0] ?? null)}
        />
      )}
    </Field>
  );
}
