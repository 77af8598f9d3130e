import type { ReactNode } from 'react';
import { stepInWords, valueAt, type Plane } from '../../../../src/index.ts';
import { fillOf, type FillBy } from './fills.ts';
import type { Frame } from './frame.ts';

interface Props {
  readonly plane: Plane;
  readonly by: FillBy;
  readonly frame: Frame;
}

const mostRows = 24;

/** The map as a table, for whoever does not look at it: at some steps of the one axis, what the other one leads to. */
export function Regions({ plane, by, frame }: Props): ReactNode {
  return (
    <details className="map-regions">
      <summary>The map as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">{plane.x.title}</th>
            <th scope="col">{plane.y.title}</th>
          </tr>
        </thead>
        <tbody>
          {rowsOf(frame).map((step) => (
            <tr key={step}>
              <th scope="row">{stepInWords(plane.x, step)}</th>
              <td>
                <ul>
                  {rangesAt(step, { plane, by, frame }).map((words) => (
                    <li key={words}>{words}</li>
                  ))}
                </ul>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function rowsOf({ x: [low, high] }: Frame): number[] {
  const every = Math.max(1, ...[5, 10, 20, 50].filter((step) => (high - low) / step >= mostRows / 2));
  const far = (high - low) / every > mostRows ? Math.ceil((high - low) / mostRows) : every;
  const first = Math.ceil(low / far) * far;
  return Array.from({ length: Math.floor((high - first) / far) + 1 }, (_, index) => first + index * far);
}

/** `45 to 49 mmHg: At least: Call the doctor, not settled`. */
export function rangesAt(x: number, { plane, by, frame }: Props): string[] {
  const [low, high] = frame.y;
  const column = plane.cells
    .filter((cell) => cell.x[0] <= x && cell.x[1] >= x && cell.y[1] >= low && cell.y[0] <= high)
    .toSorted((left, right) => left.y[0] - right.y[0]);
  const runs: { from: number; to: number; words: string }[] = [];
  for (const { y, answer } of column) {
    const said = plane.answers[answer];
    if (!said) continue;
    const { words } = fillOf(said, plane, by);
    const last = runs.at(-1);
    if (last?.words === words) last.to = Math.min(high, y[1]);
    else runs.push({ from: Math.max(low, y[0]), to: Math.min(high, y[1]), words });
  }
  return runs.map(({ from, to, words }) => {
    const start = from === to ? '' : `${Number(valueAt(plane.y, from).toFixed(2))} to `;
    return `${start}${stepInWords(plane.y, to)}: ${words}`;
  });
}
