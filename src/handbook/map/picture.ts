import { valueAt, type Axis, type Plane } from '../../review/cells/plane.ts';
import { html, type Html } from '../html.ts';
import { gridOf, windowOf, type Grid, type Window } from './grid.ts';
import { hatchingsOf, patterns, type Hatching, type Pattern } from './hatching.ts';
import { areaOf, edgesOf, roomiestOf, type Scale } from './shapes.ts';

const [width, height] = [640, 420];
const margin = { left: 56, right: 10, top: 10, bottom: 46 } as const;

/** A map for black and white paper: hatchings with letters, and what each letter means in words. `id` is used once on the page. */
export function mapPicture(plane: Plane, id: string): Html {
  const window = windowOf(plane);
  const grid = gridOf(plane, window);
  const fills = hatchingsOf(plane);
  const scale = scaleOf(window);
  const seen = new Set(grid.answers.flat());
  const shown = [
    ...new Map(fills.flatMap((fill, index) => (seen.has(index) ? [[fill.key, fill] as const] : []))).values(),
  ];
  const inOrder = shown.toSorted((left, right) => left.letter.localeCompare(right.letter));
  const used = inOrder.flatMap(({ pattern }) => (pattern === null ? [] : [pattern]));
  const title = `Map of ${plane.x.title} and ${plane.y.title}`;
  return html`<figure class="map">
    <svg viewBox="0 0 ${width} ${height}" role="img" aria-label="${title}">
      <defs>${patterns.filter((each) => used.includes(each)).map((each) => patternOf(each, id))}</defs>
      ${inOrder.map((fill) => areaIn(fill, fills, grid, { scale, id }))}
      <path
        class="edge"
        d="${edgesOf(
          grid,
          fills.map(({ key }) => key),
          scale,
        )}"
      />
      ${axesOf(plane, window, scale)} ${inOrder.map((fill) => letterIn(fill, fills, grid, scale))}
    </svg>
    <ul class="legend">
      ${inOrder.map((fill) => legendRow(fill, id))}
    </ul>
  </figure>`;
}

function scaleOf({ x: [left, right], y: [bottom, top] }: Window): Scale {
  const [wide, high] = [width - margin.left - margin.right, height - margin.top - margin.bottom];
  return {
    x: (step) => margin.left + ((step - left) / (right + 1 - left)) * wide,
    y: (step) => height - margin.bottom - ((step - bottom) / (top + 1 - bottom)) * high,
  };
}

const isFilled =
  (key: string, fills: readonly Hatching[]) =>
  (answer: number): boolean =>
    fills[answer]?.key === key;

const areaIn = (
  { key, pattern }: Hatching,
  fills: readonly Hatching[],
  grid: Grid,
  { scale, id }: { readonly scale: Scale; readonly id: string },
): Html | null =>
  pattern === null
    ? null
    : html`<path
        d="${areaOf(grid, isFilled(key, fills), scale)}"
        fill="url(#${id}-${pattern})"
        shape-rendering="crispEdges"
      />`;

function letterIn(
  { key, letter }: Hatching,
  fills: readonly Hatching[],
  grid: Grid,
  scale: Scale,
): Html | null {
  const at = roomiestOf(grid, isFilled(key, fills), scale);
  if (!at) return null;
  return html`<circle cx="${at.x.toFixed(1)}" cy="${at.y.toFixed(1)}" r="11" class="disc" /><text
      x="${at.x.toFixed(1)}"
      y="${(at.y + 5).toFixed(1)}"
      class="letter"
      >${letter}</text
    >`;
}

const legendRow = ({ letter, words, pattern }: Hatching, id: string): Html =>
  html`<li>
    <svg viewBox="0 0 40 20" class="swatch" aria-hidden="true">
      <rect
        x="0.5"
        y="0.5"
        width="39"
        height="19"
        ${pattern === null ? html`fill="#fff"` : html`fill="url(#${id}-${pattern})"`}
        class="box"
      />
    </svg>
    <b>${letter}</b> ${words}
  </li>`;

/** Lines or dots at this distance; the darkest level is nearly black. */
const distances = [0, 14, 9, 6, 3.4] as const;

function patternOf(pattern: Pattern, id: string): Html {
  const [kind = '', shade = '0'] = pattern.split('-');
  const apart = kind === 'nobody' ? 8 : (distances[Number(shade)] ?? 0);
  const size = apart === 0 ? 20 : apart;
  const turn = kind === 'settled' ? html` patternTransform="rotate(45)"` : null;
  const ink =
    kind === 'nobody'
      ? html`<circle cx="2" cy="2" r="0.8" fill="#000" />`
      : apart === 0
        ? kind === 'open'
          ? html`<circle cx="10" cy="10" r="1.2" fill="#000" />`
          : null
        : html`<rect width="${Number(shade) >= 3 ? 1.7 : 1.1}" height="${size}" fill="#000" />`;
  return html`<pattern
    id="${id}-${pattern}"
    width="${size}"
    height="${size}"
    patternUnits="userSpaceOnUse"
    ${turn}
    ><rect width="${size}" height="${size}" fill="#fff" />${ink}</pattern
  >`;
}

function axesOf({ x, y }: Plane, window: Window, scale: Scale): Html {
  const [bottom, left] = [height - margin.bottom, margin.left];
  const across = ticksOf(x, window.x).map(
    ({ at, text }) =>
      html`<path class="tick" d="M${scale.x(at + 0.5).toFixed(1)} ${bottom}v5" /><text
          class="number"
          text-anchor="middle"
          x="${scale.x(at + 0.5).toFixed(1)}"
          y="${bottom + 18}"
          >${text}</text
        >`,
  );
  const up = ticksOf(y, window.y).map(
    ({ at, text }) =>
      html`<path class="tick" d="M${left} ${scale.y(at + 0.5).toFixed(1)}h-5" /><text
          class="number"
          text-anchor="end"
          x="${left - 8}"
          y="${(scale.y(at + 0.5) + 4).toFixed(1)}"
          >${text}</text
        >`,
  );
  const middle = (margin.top + bottom) / 2;
  return html`<rect
      class="frame"
      x="${left}"
      y="${margin.top}"
      width="${width - left - margin.right}"
      height="${bottom - margin.top}"
    />
    ${across}${up}
    <text class="axis" text-anchor="middle" x="${(left + width - margin.right) / 2}" y="${height - 8}"
      >${named(x)}</text
    >
    <text class="axis" text-anchor="middle" transform="translate(14 ${middle}) rotate(-90)"
      >${named(y)}</text
    >`;
}

const named = ({ title, unit }: Axis): string => (unit === null ? title : `${title} (${unit})`);

/** Round numbers along an axis, about eight of them. */
function ticksOf(
  axis: Axis,
  [low, high]: readonly [number, number],
): { readonly at: number; readonly text: string }[] {
  const [from, to] = [valueAt(axis, low), valueAt(axis, high)];
  const rough = (to - from) / 8;
  const power = 10 ** Math.floor(Math.log10(rough));
  const by = [1, 2, 5, 10].map((each) => each * power).find((each) => each >= rough) ?? power * 10;
  const first = Math.ceil(from / by);
  const [units, steps] = axis.unitsPerStep;
  return Array.from({ length: Math.max(0, Math.floor(to / by) - first + 1) }, (_, index) => {
    const value = (first + index) * by;
    return { at: Math.round((value * steps) / units), text: String(Number(value.toFixed(6))) };
  });
}
