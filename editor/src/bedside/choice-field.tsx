import type { KeyboardEvent, ReactNode } from 'react';
import { Checkbox, CheckboxGroup, Label, Radio, RadioGroup } from 'react-aria-components';
import type { Field } from '../../../src/index.ts';
import { sentence } from '../shared/sentence.ts';
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
          <Radio key={choice} value={choice} className="choice">
            {sentence(title)}
          </Radio>
        ))}
        {canBeUnknown && (
          <Radio value={unknown} className="choice choice-unknown">
            Not known
          </Radio>
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
      <Checkbox value={unknown} className="choice">
        None seen
      </Checkbox>
      {field.choices.map(({ choice, title }) => (
        <Checkbox key={choice} value={choice} className="choice">
          {sentence(title)}
        </Checkbox>
      ))}
    </CheckboxGroup>
  );
}
