import { useState, type ReactNode } from 'react';
import type { DrillAnswer } from '../../../src/index.ts';
import { sentence } from '../common/sentence.ts';

type Changed = DrillAnswer['lowers'];

/** So many are shown at first. */
const most = 5;

/** What would change the level either way: for each observation the nearest value, all else as it is. */
export function Changes({ answer: { sheet, lowers, rules } }: { readonly answer: DrillAnswer }): ReactNode {
  if (rules === null) return null;
  const { reached, ladder } = sheet.level;
  const isTop = reached === ladder.length - 1;
  const isLowest = (reached ?? 0) === 0;
  return (
    <section className="panel" aria-label="What would change it">
      <h3 className="panel-heading">What would change it</h3>
      <p className="hint">
        The nearest value of each observation, all else as it is. At the bedside only the upper half is shown:
        nobody takes a reading again until it passes.
      </p>
      <Half
        heading="It would be higher with"
        changes={sheet.raises ?? []}
        none={
          isTop
            ? 'Nothing: this is the highest level of the ladder.'
            : 'No other value of what was taken, on its own, would raise it.'
        }
      />
      <Half
        heading="It would be lower with"
        changes={lowers}
        none={
          isLowest
            ? 'Nothing: no level is called for that could be lowered.'
            : 'No other value of what was taken, on its own, would lower it.'
        }
      />
    </section>
  );
}

interface HalfProps {
  readonly heading: string;
  readonly changes: Changed;
  readonly none: string;
}

function Half({ heading, changes, none }: HalfProps): ReactNode {
  const [all, setAll] = useState(false);
  const shown = all ? changes : changes.slice(0, most);
  return (
    <div className="half">
      <h4 className="small-heading">{heading}</h4>
      {changes.length === 0 && <p>{none}</p>}
      {shown.length > 0 && (
        <table className="raise-table">
          <thead className="visually-hidden">
            <tr>
              <th scope="col">Observation</th>
              <th scope="col">If it were</th>
              <th scope="col">Level</th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ observation, title, change, level }) => (
              <tr key={`${observation} ${change} ${level}`}>
                <th scope="row">{sentence(title)}</th>
                <td>{change}</td>
                <td>{sentence(level)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {changes.length > shown.length && (
        <button type="button" className="quiet" onClick={() => setAll(true)}>
          {`Show the other ${changes.length - shown.length}`}
        </button>
      )}
    </div>
  );
}
