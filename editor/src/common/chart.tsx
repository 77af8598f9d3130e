import type { ReactNode } from 'react';
import type { Course } from '../../../src/index.ts';
import { sentence } from './sentence.ts';

const [width, height] = [260, 96];
const edge = { left: 48, right: 52, top: 14, bottom: 22 } as const;

/** How one number went over time, the present set filled. The same in words for whoever cannot see it. */
export function Chart({ course }: { readonly course: Course }): ReactNode {
  const { title, unit, points } = course;
  const [first, last] = [points[0]?.at ?? 0, points.at(-1)?.at ?? 1];
  const values = points.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const x = (at: number): number =>
    edge.left + ((at - first) / Math.max(1, last - first)) * (width - edge.left - edge.right);
  const y = (value: number): number =>
    height - edge.bottom - ((value - low) / (high - low || 1)) * (height - edge.top - edge.bottom);
  const line = points.map(({ at, value }) => `${x(at).toFixed(1)},${y(value).toFixed(1)}`).join(' ');
  return (
    <figure className="chart">
      <figcaption>
        {`${sentence(title)}${unit === '' ? '' : `, ${unit}`}${points.at(-1)?.isPresent ? '' : ' (not in this set)'}`}
      </figcaption>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={inWords(course)}>
        <polyline points={line} className="chart-line" />
        {points.map(({ at, value, words, isPresent }, index) => (
          <g key={`${at} ${words}`}>
            <circle
              cx={x(at)}
              cy={y(value)}
              r={isPresent ? 5 : 3.5}
              className={isPresent ? 'dot dot-now' : 'dot'}
            />
            {index === 0 && (
              <text x={x(at) - 9} y={y(value) + 4} textAnchor="end" className="chart-value">
                {value}
              </text>
            )}
          </g>
        ))}
        <text
          x={width - edge.right + 9}
          y={y(points.at(-1)?.value ?? 0) + 4}
          className={points.at(-1)?.isPresent ? 'chart-value chart-now' : 'chart-value'}
        >
          {points.at(-1)?.value}
        </text>
        <text x={edge.left} y={height - 5} textAnchor="middle" className="chart-time">
          {clock(points[0]?.time)}
        </text>
        <text x={width - edge.right} y={height - 5} textAnchor="middle" className="chart-time">
          {clock(points.at(-1)?.time)}
        </text>
      </svg>
    </figure>
  );
}

/** The clock time in `2026-03-02 08:00 UTC`. */
const clock = (time: string | undefined): string => /\d{2}:\d{2}/.exec(time ?? '')?.[0] ?? '';

const inWords = ({ title, points }: Course): string =>
  `${sentence(title)}: ${points.map(({ time, words, isPresent }) => `${words} at ${time}${isPresent ? ', the present set' : ''}`).join('; ')}`;
