import {
  useEffect,
  useId,
  useMemo,
  useRef,
  useState,
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
} from 'react';
import { pointInWords, type Plane, type PlaneLine } from '../../../../src/index.ts';
import { drawPlane, type CasePoint, type Drawing } from './draw-plane.ts';
import { exportSvg, filledBy, shortDigest } from './export-svg.ts';
import type { FillBy } from './fills.ts';
import {
  firstPoint,
  frameOf,
  margins,
  movedBy,
  placeOf,
  pointAt,
  type Frame,
  type MapPoint,
} from './frame.ts';
import { Legend } from './legend.tsx';
import { Choices, type Shown } from './choices.tsx';
import { Regions } from './regions.tsx';
import './map.css';

interface Props {
  readonly plane: Plane;
  /** Cases that lie in this plane. */
  readonly points?: readonly CasePoint[];
  readonly lines?: readonly PlaneLine[];
  /** The point that was chosen, in whole steps: by a click, or by keys. */
  readonly onPoint?: (point: MapPoint) => void;
  /** Where the map is saved as a picture: a file name, and the text of the file. Without it nothing can be saved. */
  readonly onExport?: (name: string, svg: string) => void;
}

const none: readonly never[] = [];

/** Which readings trigger which advice: two observations on the axes, everything else held. */
export function PlaneMap({ plane, points = none, lines = none, onPoint, onExport }: Props): ReactNode {
  const [shown, setShown] = useState<Shown>({
    by: 'at_least',
    whole: false,
    lines: lines.filter(({ kind }) => kind === 'curve').map(({ title }) => title),
  });
  const id = `m${useId().replace(/\W/g, '')}`;
  const frame = useMemo(() => frameOf(plane, shown.whole), [plane, shown.whole]);
  const drawing = useMemo<Drawing>(
    () => ({
      plane,
      by: shown.by,
      frame,
      points,
      id,
      lines: lines.filter((each) => shown.lines.includes(each.title)),
    }),
    [plane, shown, frame, points, lines, id],
  );
  const save = (): void => {
    const serializer = new XMLSerializer();
    const svg = exportSvg(drawing, document, (element) => serializer.serializeToString(element));
    onExport?.(fileName(plane, shown.by), svg);
  };
  const { title, edition, digest } = plane.protocol;
  return (
    <section className="map" aria-label={`Map: ${title}`}>
      <header className="map-head">
        <h3>{title}</h3>
        <p className="hint">{`Edition ${edition}, ${shortDigest(digest)}. ${filledBy(drawing)}`}</p>
      </header>
      <Choices plane={plane} lines={lines} shown={shown} onShown={setShown} />
      <Picture drawing={drawing} onPoint={onPoint} />
      <Legend plane={plane} by={shown.by} hasCases={points.length > 0} />
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

interface PictureProps {
  readonly drawing: Drawing;
  readonly onPoint: Props['onPoint'] | undefined;
}

/** The picture itself, with a cross at the point that is read, and what is said there. */
function Picture({ drawing, onPoint }: PictureProps): ReactNode {
  const { plane, frame, id, points } = drawing;
  const [chosen, setChosen] = useState<MapPoint | null>(null);
  const [hovered, setHovered] = useState<MapPoint | null>(null);
  const here = inside(chosen ?? firstPoint(plane, frame), frame);
  const read = hovered ?? here;
  const choose = (point: MapPoint): void => {
    setHovered(null);
    setChosen(point);
    onPoint?.(point);
  };
  const press = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const to = movedBy(event.key, event.shiftKey, here, frame);
    if (!to) return;
    event.preventDefault();
    choose(to);
  };
  const cases = points.filter((each) => each.x === read.x && each.y === read.y);
  return (
    <div className="map-body">
      <div
        className="map-picture"
        role="application"
        aria-roledescription="map"
        aria-label={`${plane.x.title} across, ${plane.y.title} up`}
        aria-describedby={`${id}-keys`}
        tabIndex={0}
        onKeyDown={press}
        onPointerMove={(event) => setHovered(pointOf(event, frame))}
        onPointerLeave={() => setHovered(null)}
        onClick={(event) => {
          const point = pointOf(event, frame);
          if (point) choose(point);
        }}
      >
        <Plot drawing={drawing} />
        <Cross at={read} frame={frame} />
      </div>
      <p className="hint" id={`${id}-keys`}>
        Arrow keys move by one step, with Shift by ten; Home and End go to the ends.
      </p>
      <output className="map-said" aria-live={hovered ? 'off' : 'polite'}>
        {pointInWords(plane, read.x, read.y)}
        {cases.map(({ name, passes }) => ` Case, ${passes ? 'passes' : 'fails'}: ${name}.`).join('')}
      </output>
    </div>
  );
}

const inside = ({ x, y }: MapPoint, frame: Frame): MapPoint => ({
  x: Math.min(frame.x[1], Math.max(frame.x[0], x)),
  y: Math.min(frame.y[1], Math.max(frame.y[0], y)),
});

/** The point under the pointer. */
function pointOf(
  event: Pick<PointerEvent, 'clientX' | 'clientY' | 'currentTarget'>,
  frame: Frame,
): MapPoint | null {
  const box = event.currentTarget.getBoundingClientRect();
  const [left, top] = [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height];
  return pointAt(left * frame.width, top * frame.height, frame);
}

function Plot({ drawing }: { readonly drawing: Drawing }): ReactNode {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const svg = drawPlane(drawing, document);
    svg.setAttribute('aria-hidden', 'true');
    place.current?.replaceChildren(svg);
  }, [drawing]);
  return <div ref={place} className="map-plot" />;
}

function Cross({ at, frame }: { readonly at: MapPoint; readonly frame: Frame }): ReactNode {
  const { x, y } = placeOf(at, frame);
  const [right, bottom] = [frame.width - margins.right, frame.height - margins.bottom];
  return (
    <svg className="map-cross" viewBox={`0 0 ${frame.width} ${frame.height}`} aria-hidden="true">
      <path d={`M${x} ${margins.top}V${bottom}M${margins.left} ${y}H${right}`} />
      <circle cx={x} cy={y} r={6} />
    </svg>
  );
}
