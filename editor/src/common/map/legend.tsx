import type { ReactNode } from 'react';
import type { Plane } from '../../../../src/index.ts';
import type { Fill } from './fill.ts';
import { legendOf, onPaper, type FillBy } from './fills.ts';

interface Props {
  readonly plane: Plane;
  readonly by: FillBy;
  readonly hasCases?: boolean;
  /** What the marked point is called; null without one. */
  readonly mark?: string | null;
  readonly isPaper?: boolean;
}

/** What each filling means, in words. */
export function Legend({ plane, by, hasCases = false, mark = null, isPaper = false }: Props): ReactNode {
  return (
    <ul className="map-legend" aria-label="What the map is filled with">
      {legendOf(plane, by).map((fill) => (
        <li key={fill.key}>
          <Swatch fill={isPaper ? onPaper(fill) : fill} />
          {fill.words}
        </li>
      ))}
      {mark !== null && (
        <li>
          <svg className="map-swatch" viewBox="0 0 34 18" aria-hidden="true">
            <circle cx="17" cy="9" r="7" fill="#fff" stroke="#1f2430" strokeWidth="2.5" />
            <circle cx="17" cy="9" r="2.5" fill="#1f2430" />
          </svg>
          {mark}
        </li>
      )}
      {hasCases && <li>Cases: a ring passes, a cross fails</li>}
    </ul>
  );
}

/** What the patterns of changes look like in the small. */
const marks: Readonly<Record<string, string>> = {
  rising: 'M4 12l4-6 4 6M17 12l4-6 4 6',
  falling: 'M4 6l4 6 4-6M17 6l4 6 4-6',
  bars: 'M3 6h28M3 12h28',
};

function Swatch({ fill: { colour, pattern } }: { readonly fill: Fill }): ReactNode {
  return (
    <svg className="map-swatch" viewBox="0 0 34 18" aria-hidden="true">
      <rect x="1" y="1" width="32" height="16" fill={colour ?? '#fff'} stroke="#1f2430" />
      {pattern === 'lines' && (
        <>
          <path d="M4 17 20 1M14 17 30 1" stroke="#fff" strokeWidth="5" />
          <path d="M4 17 20 1M14 17 30 1" stroke="#1f2430" strokeWidth="1.6" />
        </>
      )}
      {pattern === 'dots' && <path d="M8 6h.1M17 12h.1M26 6h.1" className="map-dots" />}
      {pattern !== null && pattern in marks && (
        <>
          <path d={marks[pattern]} fill="none" stroke="#fff" strokeWidth="4.5" />
          <path d={marks[pattern]} fill="none" stroke="#1f2430" strokeWidth="1.8" />
        </>
      )}
    </svg>
  );
}
