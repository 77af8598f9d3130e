import type { KeyboardEvent, ReactNode } from 'react';
import {
  CheckboxButton,
  CheckboxField,
  CheckboxGroup,
  Label,
  RadioButton,
  RadioField,
  RadioGroup,
} from 'react-aria-components';
import type { Field } from '../../../src/index.ts';
import { sentence } from '../common/sentence.ts';
import type { Entry } from './entries.ts';
import { kindOfKey, nothing } from './no-value.tsx';

interface Props {
  readonly field: Field;
  readonly entry: Entry | null;
  readonly describedBy: string | undefined;
  /** Whether it can be taken back to not known by a choice of its own. */
  readonly canBeUnknown: boolean;
  readonly onEnter: (entry: Entry | null) => void;
}

const unknown = 'not_known_here';

/** One of a few choices, each a touch away. */
export function ChoiceField({ field, entry, describedBy, canBeUnknown, onEnter }: Props): ReactNode {
  const onKey = (event: KeyboardEvent): void => {
    const kind = canBeUnknown || event.ctrlKey || event.metaKey ? undefined : kindOfKey(event.key);
    if (kind === undefined) return;
    event.preventDefault();
    onEnter(nothing(kind));
  };
  return (
    <div onKeyDownCapture={onKey}>
      <RadioGroup
        className="choices"
        orientation="horizontal"
        aria-label={sentence(field.title)}
        {...(describedBy === undefined ? {} : { 'aria-describedby': describedBy })}
        value={entry?.kind === 'choice' ? entry.choice : canBeUnknown ? unknown : null}
        onChange={(choice) => onEnter(choice === unknown ? null : { kind: 'choice', choice })}
      >
        {field.choices.map(({ choice, title }) => (
          <RadioField key={choice} value={choice}>
            <RadioButton className="choice">{sentence(title)}</RadioButton>
          </RadioField>
        ))}
        {canBeUnknown && (
          <RadioField value={unknown}>
            <RadioButton className="choice choice-unknown">Not known</RadioButton>
          </RadioField>
        )}
      </RadioGroup>
    </div>
  );
}

/** Several of a list, or none of them; none is an answer of its own. */
export function SeveralField({ field, entry, describedBy, onEnter }: Omit<Props, 'canBeUnknown'>): ReactNode {
  const chosen = entry?.kind === 'several' ? [...entry.choices] : [];
  const isNone = entry?.kind === 'several' && entry.choices.length === 0;
  return (
    <CheckboxGroup
      className="several"
      {...(describedBy === undefined ? {} : { 'aria-describedby': describedBy })}
      value={isNone ? [unknown] : chosen}
      onChange={(next) => {
        const [last] = next.slice(-1);
        if (last === unknown) onEnter({ kind: 'several', choices: [] });
        else {
          const choices = next.filter((each) => each !== unknown);
          onEnter(choices.length === 0 ? null : { kind: 'several', choices });
        }
      }}
    >
      <Label className="visually-hidden">{sentence(field.title)}</Label>
      <CheckboxField value={unknown}>
        <CheckboxButton className="choice">None seen</CheckboxButton>
      </CheckboxField>
      {field.choices.map(({ choice, title }) => (
        <CheckboxField key={choice} value={choice}>
          <CheckboxButton className="choice">{sentence(title)}</CheckboxButton>
        </CheckboxField>
      ))}
    </CheckboxGroup>
  );
}
