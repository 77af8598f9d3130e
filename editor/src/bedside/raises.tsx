import type { ReactNode } from 'react';
import type { BedsideSheet } from '../../../src/index.ts';
import { sentence } from '../common/sentence.ts';

/** For each observation the nearest value that would raise the level, all else as it is. What would lower it is not shown. */
export function Raises({ sheet }: { readonly sheet: BedsideSheet }): ReactNode {
  const { raises, level, observed } = sheet;
  if (raises === null || !observed.some(({ hasValue }) => hasValue)) return null;
  const isTop = level.reached === level.ladder.length - 1;
  return (
    <section className="panel raises" aria-label="What would change this">
      <h3 className="panel-heading">What would change this</h3>
      {raises.length === 0 ? (
        <p>
          {isTop
            ? 'This is the highest level of the ladder.'
            : 'No other value of what was taken, on its own, would raise the level.'}
        </p>
      ) : (
        <>
          <p className="hint">
            The nearest value of each observation that would raise the level, all else as it is.
          </p>
          <table className="raise-table">
            <thead className="visually-hidden">
              <tr>
                <th scope="col">Observation</th>
                <th scope="col">If it were</th>
                <th scope="col">Level</th>
              </tr>
            </thead>
            <tbody>
              {raises.map(({ observation, title, change, level: then }) => (
                <tr key={`${observation} ${change} ${then}`}>
                  <th scope="row">{sentence(title)}</th>
                  <td>{change}</td>
                  <td>{then}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  );
}
