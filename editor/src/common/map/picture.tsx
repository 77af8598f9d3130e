import { useEffect, useRef, useState, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import { pointInWords } from '../../../../src/index.ts';
import { drawPlane, type Drawing } from './draw-plane.ts';
import { firstPoint, margins, movedBy, placeOf, pointAt, type Frame, type MapPoint } from './frame.ts';

interface PictureProps {
  readonly drawing: Drawing;
  readonly onPoint: ((point: MapPoint) => void) | undefined;
  /** What is said of a point; by itself, what the plane says there. */
  readonly saysAt?: (point: MapPoint) => string;
}

/** The picture itself, with a cross at the point that is read, and what is said there. */
export function Picture({ drawing, onPoint, saysAt }: PictureProps): ReactNode {
  const { plane, frame, id, points, here: marked = null } = drawing;
  const [chosen, setChosen] = useState<MapPoint | null>(null);
  const [hovered, setHovered] = useState<MapPoint | null>(null);
  const here = inside(chosen ?? marked ?? firstPoint(plane, frame), frame);
  const read = hovered ?? here;
  const isMoved = (chosen ?? hovered) !== null;
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
        style={{ aspectRatio: `${frame.width} / ${frame.height}` }}
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
        {(isMoved || !marked) && <Cross at={read} frame={frame} />}
      </div>
      <p className="hint" id={`${id}-keys`}>
        Arrow keys move by one step, with Shift by ten; Home and End go to the ends.
      </p>
      <output className="map-said" aria-live={hovered || !chosen ? 'off' : 'polite'}>
        {saysAt ? saysAt(read) : pointInWords(plane, read.x, read.y)}
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

export function Plot({ drawing }: { readonly drawing: Drawing }): ReactNode {
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
