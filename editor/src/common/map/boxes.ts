import { valueAt, type Plane, type PlaneLine } from '../../../../src/index.ts';
import { domainOf, margins, placeOf, type Frame, type MapPoint } from './frame.ts';

/** A rectangle of the picture, in its units, both corners included. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The words of a line or a point, where they can be read. */
export interface PlacedWords {
  readonly text: string;
  /** Their middle, in units of the picture. */
  readonly x: number;
  readonly y: number;
}

/** About how wide a letter is, and how high a line of words, in units of the picture. */
export const letter = 7.4;
export const line = 17;

export const around = (x: number, y: number, width: number, height: number): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});

export const boxOf = ({ text, x, y }: PlacedWords): Box => around(x, y, text.length * letter + 6, line + 2);

export const meets = (one: Box, other: Box): boolean =>
  one.left <= other.right && one.right >= other.left && one.top <= other.bottom && one.bottom >= other.top;

/** What the map is drawn within, of the picture. */
export const ground = ({ width, height }: Frame): Box => ({
  left: margins.left,
  right: width - margins.right,
  top: margins.top,
  bottom: height - margins.bottom,
});

const isInside = (one: Box, other: Box): boolean =>
  one.left >= other.left && one.right <= other.right && one.top >= other.top && one.bottom <= other.bottom;

/** What a point covers. */
export const pointBox = (point: MapPoint, frame: Frame): Box => {
  const { x, y } = placeOf(point, frame);
  return around(x, y, 22, 22);
};

type Piece = readonly (readonly [number, number])[];

/** Points along a piece of a line, in units of the picture, close enough for nothing to lie between them. */
function along(piece: Piece, { x, y }: Plane, frame: Frame): { readonly x: number; readonly y: number }[] {
  const { left, right, top, bottom } = ground(frame);
  const [across, up] = [domainOf(x, frame.x), domainOf(y, frame.y)];
  const share = (at: number, [low, high]: readonly [number, number]): number => (at - low) / (high - low);
  const places = piece.map(([at, high]) => ({
    x: left + share(at, across) * (right - left),
    y: bottom - share(high, up) * (bottom - top),
  }));
  return places.flatMap((from, index) => {
    const to = places[index + 1] ?? from;
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 4));
    return Array.from({ length: steps }, (_, step) => ({
      x: from.x + ((to.x - from.x) * step) / steps,
      y: from.y + ((to.y - from.y) * step) / steps,
    }));
  });
}

const placesOf = ({ pieces }: PlaneLine, plane: Plane, frame: Frame): ReturnType<typeof along>[] => {
  const inside = ground(frame);
  return pieces.map((piece) =>
    along(piece, plane, frame).filter(({ x, y }) => meets(around(x, y, 0, 0), inside)),
  );
};

/** What a line covers. */
export const lineBoxes = (each: PlaneLine, plane: Plane, frame: Frame): Box[] =>
  placesOf(each, plane, frame)
    .flat()
    .map(({ x, y }) => around(x, y, 7, 7));

const tries = [0.72, 0.5, 0.85, 0.6, 0.35, 0.2, 0.92, 0.1, 0.03] as const;
const offs = [15, -15, 24, -24, 36, -36, 50, -50] as const;

/** The title of a line beside its longest piece, inside the map and off what is taken; null for a line that is not seen. */
export function lineTitle(
  each: PlaneLine,
  plane: Plane,
  { frame, taken }: { readonly frame: Frame; readonly taken: readonly Box[] },
): PlacedWords | null {
  const [longest] = placesOf(each, plane, frame).toSorted((left, right) => right.length - left.length);
  if (!longest || longest.length === 0) return null;
  const found = offs.flatMap((off) =>
    tries.flatMap((share) => {
      const at = longest[Math.floor(share * longest.length)];
      return at ? [within({ text: each.title, x: at.x, y: at.y - off }, ground(frame))] : [];
    }),
  );
  const isOff = (words: PlacedWords, boxes: readonly Box[]): boolean =>
    boxes.every((box) => !meets(box, boxOf(words)));
  const own = lineBoxes(each, plane, frame);
  const free = found.filter((words) => isOff(words, taken));
  return free.find((words) => isOff(words, own)) ?? free[0] ?? found[0] ?? null;
}

/** The same words, moved by as little as keeps them inside. */
function within(words: PlacedWords, inside: Box): PlacedWords {
  if (isInside(boxOf(words), inside)) return words;
  const { left, right, top, bottom } = boxOf(words);
  const move = (low: number, high: number, [least, most]: readonly [number, number]): number =>
    low < least ? least - low : high > most ? most - high : 0;
  return {
    ...words,
    x: words.x + move(left, right, [inside.left, inside.right]),
    y: words.y + move(top, bottom, [inside.top, inside.bottom]),
  };
}

/** The words of a point beside it: right of it, or where there is no room, left. */
export function pointWords(text: string, point: MapPoint, frame: Frame): PlacedWords {
  const { x, y } = placeOf(point, frame);
  const half = (text.length * letter) / 2 + 15;
  const right = { text, x: x + half, y };
  return isInside(boxOf(right), ground(frame)) ? right : within({ text, x: x - half, y }, ground(frame));
}

/** A place of the picture in the units of the axes. */
export function valuesAt(
  place: { readonly x: number; readonly y: number },
  { x, y }: Plane,
  frame: Frame,
): { readonly x: number; readonly y: number } {
  const { left, right, top, bottom } = ground(frame);
  const steps = (share: number, [low, high]: readonly [number, number]): number =>
    low - 0.5 + share * (high - low + 1);
  return {
    x: valueAt(x, steps((place.x - left) / (right - left), frame.x)),
    y: valueAt(y, steps((bottom - place.y) / (bottom - top), frame.y)),
  };
}
