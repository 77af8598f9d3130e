import { useId, useMemo, useRef, useState, type ReactNode } from 'react';
import { changeInWords, type ChangedPlane } from '../../../../src/index.ts';
import type { Drawing, MarkedPoint } from '../../common/map/draw-plane.ts';
import { frameOf, type MapPoint } from '../../common/map/frame.ts';
import { Legend } from '../../common/map/legend.tsx';
import { Picture } from '../../common/map/picture.tsx';
import { Regions } from '../../common/map/regions.tsx';
import { useWidth } from '../../common/map/use-width.ts';
import { OneSideMap } from './one-side-map.tsx';
import { saveChangeMap } from './save-change-map.ts';
import '../../common/map/map.css';

interface Props {
  readonly plane: ChangedPlane;
  /** Where the example stands that everything else is held as in; null at ordinary values. */
  readonly example: MapPoint | null;
}

/** What changes on the plane of two observations, alone; below it, the whole plane before and after. */
export function ChangeMap({ plane, example }: Props): ReactNode {
  const [isWhole, setWhole] = useState(false);
  const [point, setPoint] = useState<MapPoint | null>(null);
  const id = `c${useId().replace(/\W/g, '')}`;
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place);
  const marked = useMemo<MarkedPoint | null>(
    () => example && { ...example, words: 'The example' },
    [example],
  );
  const here = useMemo<MarkedPoint | null>(
    () => (point ? { ...point, words: 'Here' } : marked),
    [point, marked],
  );
  const drawing = useMemo<Drawing>(
    () => ({
      plane,
      by: 'changes',
      frame: frameOf(plane, isWhole, { width, here: marked }),
      points: [],
      lines: [],
      here: marked,
      id,
    }),
    [plane, isWhole, width, marked, id],
  );
  return (
    <section className="map change-map" aria-label="Map of what changes">
      <div ref={place} className="map">
        <label className="map-check">
          <input type="checkbox" checked={isWhole} onChange={({ target }) => setWhole(target.checked)} />
          Show everything that is possible
        </label>
        <Picture drawing={drawing} onPoint={setPoint} saysAt={({ x, y }) => changeInWords(plane, x, y)} />
        <Legend plane={plane} by="changes" mark={marked?.words ?? null} />
        <p className="hint map-held">{`Held: ${plane.held.join('; ') || 'nothing'}.`}</p>
        <Regions plane={plane} by="changes" frame={drawing.frame} />
        <button type="button" className="button" onClick={() => saveChangeMap(plane, drawing)}>
          Save what changes as a picture (SVG)
        </button>
      </div>
      <div className="two-maps">
        <OneSideMap label="Before" plane={plane.was} isWhole={isWhole} here={here} />
        <OneSideMap label="After" plane={plane} isWhole={isWhole} here={here} />
      </div>
    </section>
  );
}
