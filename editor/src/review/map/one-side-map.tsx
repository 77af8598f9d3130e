import { useId, useMemo, useRef, type ReactNode } from 'react';
import type { Plane } from '../../../../src/index.ts';
import type { MarkedPoint } from '../../common/map/draw-plane.ts';
import { shortDigest } from '../../common/map/export-svg.ts';
import { frameOf } from '../../common/map/frame.ts';
import { Legend } from '../../common/map/legend.tsx';
import { Plot } from '../../common/map/picture.tsx';
import { useWidth } from '../../common/map/use-width.ts';

interface Props {
  readonly label: string;
  readonly plane: Plane;
  readonly isWhole: boolean;
  /** The point that is read on the map above. */
  readonly here: MarkedPoint | null;
}

/** The whole plane of one side, to look at beside that of the other. */
export function OneSideMap({ label, plane, isWhole, here }: Props): ReactNode {
  const place = useRef<HTMLElement>(null);
  const width = useWidth(place);
  const id = `s${useId().replace(/\W/g, '')}`;
  const drawing = useMemo(
    () => ({
      plane,
      by: 'at_least' as const,
      frame: frameOf(plane, isWhole, { width }),
      points: [],
      lines: [],
      here,
      id,
    }),
    [plane, isWhole, width, here, id],
  );
  const { frame } = drawing;
  const { edition, digest } = plane.protocol;
  return (
    <figure ref={place} className="map one-side-map" aria-label={`${label}: edition ${edition}`}>
      <figcaption>
        <strong>{label}</strong>
        <span className="hint">{`edition ${edition}, ${shortDigest(digest)}`}</span>
      </figcaption>
      <div className="map-picture" style={{ aspectRatio: `${frame.width} / ${frame.height}` }}>
        <Plot drawing={drawing} />
      </div>
      <Legend plane={plane} by="at_least" mark={here?.words ?? null} />
    </figure>
  );
}
