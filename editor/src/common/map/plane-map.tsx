import { useId, useMemo, useRef, useState, type ReactNode } from 'react';
import type { Plane, PlaneLine } from '../../../../src/index.ts';
import type { CasePoint, Drawing, MarkedPoint } from './draw-plane.ts';
import { exportSvg, filledBy, shortDigest } from './export-svg.ts';
import type { FillBy } from './fills.ts';
import { frameOf, type MapPoint } from './frame.ts';
import { Picture } from './picture.tsx';
import { useWidth } from './use-width.ts';
import { Legend } from './legend.tsx';
import { Choices, type Shown } from './choices.tsx';
import { Regions } from './regions.tsx';
import './map.css';

interface Props {
  readonly plane: Plane;
  /** Cases that lie in this plane. */
  readonly points?: readonly CasePoint[];
  readonly lines?: readonly PlaneLine[];
  /** The one point that the map is shown for. */
  readonly here?: MarkedPoint | null;
  /** The point that was chosen, in whole steps: by a click, or by keys. */
  readonly onPoint?: (point: MapPoint) => void;
  /** Where the map is saved as a picture: a file name, and the text of the file. Without it nothing can be saved. */
  readonly onExport?: (name: string, svg: string) => void;
}

const none: readonly never[] = [];

/** Which readings trigger which advice: two observations on the axes, everything else held. */
export function PlaneMap({
  plane,
  points = none,
  lines = none,
  here = null,
  onPoint,
  onExport,
}: Props): ReactNode {
  const [shown, setShown] = useState<Shown>({
    by: 'at_least',
    whole: false,
    lines: lines.filter(({ kind }) => kind === 'curve').map(({ title }) => title),
  });
  const id = `m${useId().replace(/\W/g, '')}`;
  const place = useRef<HTMLElement>(null);
  const width = useWidth(place);
  const frame = useMemo(
    () => frameOf(plane, shown.whole, { width, here }),
    [plane, shown.whole, width, here],
  );
  const drawing = useMemo<Drawing>(
    () => ({
      plane,
      by: shown.by,
      frame,
      points,
      here,
      id,
      lines: lines.filter((each) => shown.lines.includes(each.title)),
    }),
    [plane, shown, frame, points, here, lines, id],
  );
  const save = (): void => {
    const serializer = new XMLSerializer();
    const saved = { ...drawing, frame: frameOf(plane, shown.whole, { here }) };
    const svg = exportSvg(saved, document, (element) => serializer.serializeToString(element));
    onExport?.(fileName(plane, shown.by), svg);
  };
  const { title, edition, digest } = plane.protocol;
  return (
    <section ref={place} className="map" aria-label={`Map: ${title}`}>
      <header className="map-head">
        <h3>{title}</h3>
        <p className="hint">{`Edition ${edition}, ${shortDigest(digest)}. ${filledBy(drawing)}`}</p>
      </header>
      <Choices plane={plane} lines={lines} shown={shown} onShown={setShown} />
      <Picture drawing={drawing} onPoint={onPoint} />
      <Legend plane={plane} by={shown.by} hasCases={points.length > 0} mark={here?.words ?? null} />
      <p className="hint map-held">{`Held: ${plane.held.join('; ') || 'nothing'}.`}</p>
      {onExport && (
        <button type="button" className="button" onClick={save}>
          Save as a picture (SVG)
        </button>
      )}
      <Regions plane={plane} by={shown.by} frame={frame} />
    </section>
  );
}

const fileName = ({ protocol, x, y }: Plane, by: FillBy): string =>
  `${[protocol.name, x.name, y.name, typeof by === 'string' ? by : by.rule].join('-')}.svg`;
