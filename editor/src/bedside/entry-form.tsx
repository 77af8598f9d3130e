import type { ReactNode } from 'react';
import type { Field, FieldGroup, Form } from '../../../src/index.ts';
import type { Entries, Entry } from './entries.ts';
import { FieldRow, type Remark } from './field-row.tsx';
import { onFormKey } from './move-on.ts';

/** What every field of the room shares. */
export interface Entering {
  readonly remarksOf: (name: string) => readonly Remark[];
  readonly usualUnit: (field: Field) => string;
  readonly onUnit: (field: Field, ucum: string) => void;
  readonly onTyping: (isTyping: boolean) => void;
}

interface Props extends Entering {
  readonly form: Form;
  readonly entries: Entries;
  readonly onEnter: (name: string, entry: Entry | null) => void;
  readonly patientPart: ReactNode;
}

/** Where a set is entered: what is known of the patient, what is needed in the order in which it is taken, what only helps. */
export function EntryForm(props: Props): ReactNode {
  const { form, patientPart } = props;
  const helps = form.helps.flatMap(({ fields }) => fields);
  const given = helps.filter(({ name }) => props.entries[name]);
  return (
    <form
      className="entry"
      aria-label="The set"
      onKeyDownCapture={onFormKey}
      onSubmit={(event) => event.preventDefault()}
    >
      {patientPart}
      {form.needs.map((group) => (
        <Group key={group.heading} {...props} group={group} offersNothing />
      ))}
      <p className="hint keys">
        Enter moves on. In a field, <kbd>N</kbd> <kbd>U</kbd> <kbd>D</kbd> say not taken, unobtainable,
        declined; in a row of choices <kbd>1</kbd> <kbd>2</kbd> … pick.
      </p>
      {helps.length > 0 && (
        <details className="part more" open>
          <summary>
            What would tell more{' '}
            <span className="count">{`${given.length} of ${helps.length} answered`}</span>
          </summary>
          {form.helps.map((group) => (
            <Group key={group.heading} {...props} group={group} offersNothing={false} />
          ))}
        </details>
      )}
    </form>
  );
}

interface GroupProps extends Entering {
  readonly group: FieldGroup;
  readonly entries: Entries;
  readonly offersNothing: boolean;
  readonly onEnter: (name: string, entry: Entry | null) => void;
}

function Group({ group, entries, offersNothing, onEnter, ...entering }: GroupProps): ReactNode {
  return (
    <div className="part">
      <h2 className="part-heading">{group.heading}</h2>
      {group.fields.map((field) => (
        <FieldRow
          key={field.name}
          field={field}
          entry={entries[field.name] ?? null}
          remarks={entering.remarksOf(field.name)}
          usualUnit={entering.usualUnit(field)}
          // A number that only helps, such as a saturation, can be unobtainable too, and that can be a finding.
          offersNothing={offersNothing || field.kind === 'number'}
          onEnter={(entry) => onEnter(field.name, entry)}
          onUnit={(ucum) => entering.onUnit(field, ucum)}
          onTyping={entering.onTyping}
        />
      ))}
    </div>
  );
}
