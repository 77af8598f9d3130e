import { useId, type ReactNode } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { TypedLine } from '../common/typed-field.tsx';
import type { Entry } from './entries.ts';

const kinds = {
  not_taken: { words: 'Not taken', key: 'n' },
  unobtainable: { words: 'Unobtainable', key: 'u' },
  declined: { words: 'Declined', key: 'd' },
} as const;

type NoValueKind = keyof typeof kinds;
const names = Object.keys(kinds) as NoValueKind[];

/** The kind of nothing that a letter stands for. */
export const kindOfKey = (key: string): NoValueKind | undefined =>
  names.find((name) => kinds[name].key === key.toLowerCase());

/** The entry that says so. */
export const nothing = (kind: NoValueKind): Entry =>
  kind === 'not_taken' ? { kind } : { kind, because: '' };

interface Props {
  readonly title: string;
  readonly entry: Entry | null;
  readonly onEnter: (entry: Entry | null) => void;
}

/** Three kinds of nothing, each one touch away; which of them it is can matter. */
export function NoValue({ title, entry, onEnter }: Props): ReactNode {
  const kind = names.find((name) => name === entry?.kind);
  return (
    <ToggleButtonGroup
      className="no-value"
      aria-label={`${title}: no value`}
      selectionMode="single"
      selectedKeys={kind === undefined ? [] : [kind]}
      onSelectionChange={(selected) => {
        const chosen = names.find((name) => selected.has(name));
        onEnter(chosen === undefined ? null : nothing(chosen));
      }}
    >
      {names.map((name) => (
        <ToggleButton key={name} id={name} className="no-value-button">
          {kinds[name].words}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

/** Why there is no value; it may stay empty. */
export function NoValueReason({ title, entry, onEnter }: Props): ReactNode {
  const id = useId();
  if (entry?.kind !== 'unobtainable' && entry?.kind !== 'declined') return null;
  const { kind, because } = entry;
  return (
    <div className="reason">
      <label htmlFor={id}>Why? It may stay empty</label>
      <TypedLine
        id={id}
        className="text-input"
        aria-label={`${title}: why it was ${kind}`}
        value={because}
        maxLength={200}
        autoComplete="off"
        placeholder={kind === 'declined' ? 'asked not to be woken' : 'cold fingers'}
        onType={(typed) => onEnter({ kind, because: typed })}
      />
    </div>
  );
}
