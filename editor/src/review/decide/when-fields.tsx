import type { ReactNode } from 'react';
import { fromField } from '../../common/clock.ts';
import { ChoiceField, TextField } from './fields.tsx';
import type { FieldProblem } from './send.ts';
import type { Typing } from './use-decision.ts';

/** From when something holds, as it was chosen: empty is at once. Null: a time is to be given, and is none yet. */
export function chosenFrom({ when, from }: Typing['typed']): string | null {
  return when === 'later' ? fromField(from ?? '') : '';
}

/** The same in words, at the start of a sentence. */
export const fromInWords = ({ when, from = '' }: Typing['typed']): string =>
  when === 'later' ? `From ${from === '' ? '…' : from.replace('T', ' ')} on` : 'From this moment on';

/** What is told when a later time was chosen and none was given. A time that is half there is none. */
export const noTime: FieldProblem = { field: 'from', says: 'Still to be given: the day and the time.' };

interface Props extends Typing {
  readonly problems: readonly FieldProblem[];
}

/** At once, or from a time on: which of the two is chosen, never guessed from an empty field. */
export function WhenFields({ typed, onType, problems }: Props): ReactNode {
  return (
    <>
      <ChoiceField
        name="when"
        label="From when"
        none="From this moment on"
        value={typed['when'] ?? ''}
        options={[{ value: 'later', says: 'From a later time on' }]}
        problems={problems}
        onChoose={(when) => onType({ when })}
      />
      {typed['when'] === 'later' && (
        <TextField
          name="from"
          label="Day and time, by the clock of this machine"
          type="datetime-local"
          value={typed['from'] ?? ''}
          problems={problems}
          onType={(from) => onType({ from })}
        />
      )}
    </>
  );
}
