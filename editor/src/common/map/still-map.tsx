import { useId, useMemo, useRef, type ReactNode } from 'react';
import type { PlaneHere } from './plane-here.ts';
import { filledBy } from './export-svg.ts';
import { frameOf } from './frame.ts';
import { Legend } from './legend.tsx';
import { Plot } from './picture.tsx';
import { useWidth } from './use-width.ts';
import './map.css';

/** About as wide as the text of an A4 page, so that its words are as large there as the text around them. */
const onPage = 680;

/** The map as it stands on paper: in greys, with its legend in words, and nothing to press. */
export function StillMap({ plane, lines }: PlaneHere): ReactNode {
  const place = useRef<HTMLElement>(null);
  const width = Math.min(onPage, useWidth(place));
  const id = `p${useId().replace(/\W/g, '')}`;
  const drawing = useMemo(
    () => ({
      plane,
      by: 'at_least' as const,
      frame: frameOf(plane, false, { width }),
      points: [],
      lines: lines.filter(({ kind }) => kind === 'curve'),
      isPaper: true,
      id,
    }),
    [plane, lines, id, width],
  );
  const { frame } = drawing;
  return (
    <figure ref={place} className="map still-map">
      <div className="map-picture" style={{ aspectRatio: `${frame.width} / ${frame.height}` }}>
        <Plot drawing={drawing} />
      </div>
      <figcaption>
        <Legend plane={plane} by="at_least" isPaper />
        <p>{`${plane.x.title} across, ${plane.y.title} up. ${filledBy(drawing)}`}</p>
        <p>{`Held: ${plane.held.join('; ') || 'nothing'}.`}</p>
      </figcaption>
    </figure>
  );
}
