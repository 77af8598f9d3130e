import { useId, useState, type ReactNode } from 'react';
import type { Form, SetInJson } from '../../../src/index.ts';
import { ask } from './ask.ts';
import { keyed } from '../common/keyed.ts';
import { withOffset } from '../common/clock.ts';

interface Props {
  readonly form: Form;
  readonly earlier: readonly SetInJson[];
  /** The time of the present set; null while there is none. */
  readonly takenAt: string | null;
  readonly canKeep: boolean;
  readonly onAdd: (sets: readonly SetInJson[]) => void;
  readonly onDrop: (at: string) => void;
  readonly onNextSet: () => void;
}

/** Earlier sets of this patient: kept from this page, typed, or pasted from a table. */
export function EarlierSets(props: Props): ReactNode {
  const { form, earlier, takenAt, canKeep, onAdd, onDrop, onNextSet } = props;
  const id = useId();
  const [text, setText] = useState('');
  const [problems, setProblems] = useState<readonly string[]>([]);
  const names = form.needs.flatMap(({ fields }) => fields.map(({ name }) => name));
  const add = (): void => {
    ask<'table'>({ kind: 'table', text, before: takenAt ?? withOffset(new Date()) }).then(
      (answer) => {
        setProblems(answer.problems);
        if (answer.problems.length > 0) return;
        onAdd(answer.sets);
        setText('');
      },
      () => setProblems(['The kit itself is at fault; nothing was added.']),
    );
  };
  return (
    <details className="part earlier">
      <summary>
        Earlier sets <span className="count">{earlier.length === 0 ? 'none' : String(earlier.length)}</span>
      </summary>
      {earlier.length > 0 && (
        <ul className="earlier-list">
          {earlier.toSorted(byTime).map((set) => (
            <li key={`${set.at} ${Object.keys(set).length}`}>
              <span>{`${set.at.slice(0, 16).replace('T', ' ')}: ${Object.keys(set).length - 1} values`}</span>
              <button
                type="button"
                className="quiet"
                onClick={() => onDrop(set.at)}
                aria-label={`Remove the set of ${set.at.slice(0, 16)}`}
              >
                Remove
              </button>
            </li>
          ))}
        </ul>
      )}
      <button type="button" className="button" disabled={!canKeep} onClick={onNextSet}>
        Keep this set as an earlier one, and start the next
      </button>
      <label htmlFor={id}>Or type or paste a table: names in the first line, then a line for each set</label>
      <textarea
        id={id}
        className="table-input"
        rows={5}
        spellCheck={false}
        autoComplete="off"
        placeholder={`time,${names.slice(0, 4).join(',')}\n14:00,…`}
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      <p className="hint">
        A time alone, such as 14:00, is the latest such time before this set. “bp” may hold 119/66; “temp
        (°F)” names a unit.
      </p>
      {problems.length > 0 && (
        <div className="before refused" role="alert">
          <strong>Nothing was added</strong>
          <ul className="plain">
            {keyed(problems).map(({ key, line }) => (
              <li key={key}>{line}</li>
            ))}
          </ul>
        </div>
      )}
      <button type="button" className="button" disabled={text.trim() === ''} onClick={add}>
        Add these sets
      </button>
    </details>
  );
}

const byTime = (left: SetInJson, right: SetInJson): number => Date.parse(left.at) - Date.parse(right.at);
