import { shared, type Constraint, type Stretches } from './constraints.ts';
import type { Space } from './space.ts';

/** Dimensions that hang together through what their values have to keep to, and a box of them. */
interface Part {
  readonly places: readonly number[];
  readonly constraints: readonly Constraint[];
}

interface Box {
  readonly lows: Float64Array;
  readonly highs: Float64Array;
}

/** More values of one part than this are not walked through, and nothing is said of their number. */
const mostSteps = 4_000_000;

/** The points of a box that keep to all constraints: whether there is one, and how many there are. */
export class Points {
  readonly #space: Space;
  readonly #counts = new Map<string, number | null>();
  readonly #found = new Map<string, Float64Array | 'none' | 'too_large'>();
  /** How many steps may still be walked. */
  #left = 0;

  constructor(space: Space) {
    this.#space = space;
  }

  /** The point nearest to usual values that is met first; that there is none; or that it is too much to find out. */
  find(box: Box, constraints: readonly Constraint[]): Float64Array | 'none' | 'too_large' {
    const point = this.#usual(box);
    for (const part of partsIn(constraints)) {
      const key = keyOf(part, box);
      let found = this.#found.get(key);
      if (found === undefined) {
        const made = new Float64Array(box.lows.length);
        this.#left = mostSteps;
        const isThere = this.#search(part, box, made);
        found = isThere ? made : this.#left > 0 ? 'none' : 'too_large';
        this.#found.set(key, found);
      }
      if (typeof found === 'string') return found;
      for (const place of part.places) point[place] = found[place] as number;
    }
    return point;
  }

  /** How many there are over some dimensions, all others left aside; null when that is too much to work out. */
  count(box: Box, constraints: readonly Constraint[], over: ReadonlySet<number>): bigint | null {
    let total = 1n;
    const alone = new Set(over);
    for (const part of partsIn(constraints)) {
      if (!part.places.some((place) => over.has(place))) continue;
      for (const place of part.places) alone.delete(place);
      const key = keyOf(part, box);
      let count = this.#counts.get(key);
      if (count === undefined) {
        this.#left = mostSteps;
        const walked = this.#countPart(part, box, new Float64Array(box.lows.length));
        count = this.#left > 0 && walked <= Number.MAX_SAFE_INTEGER ? walked : null;
        this.#counts.set(key, count);
      }
      if (count === null) return null;
      total *= BigInt(count);
    }
    for (const place of alone)
      total *= BigInt((box.highs[place] as number) - (box.lows[place] as number) + 1);
    return total;
  }

  /** The point of a box that is nearest to usual values, whatever it has to keep to. */
  #usual({ lows, highs }: Box): Float64Array {
    return Float64Array.from(this.#space.dimensions, ({ usual }, place) =>
      Math.min(highs[place] as number, Math.max(lows[place] as number, usual)),
    );
  }

  #countPart({ places, constraints }: Part, box: Box, point: Float64Array): number {
    if (places.length === 1) return sizeOf(this.#lineOf(places[0] as number, constraints, box, point));
    const hub = hubOf(places, constraints, box);
    const rest = places.filter((place) => place !== hub);
    const [alone, others] = split(constraints, hub, rest);
    const stretches = this.#lineOf(hub, alone, box, point);
    const parts = partsOf(rest, others);
    let total = 0;
    for (let at = 0; at < stretches.length; at += 2) {
      for (let value = stretches[at] as number; value <= (stretches[at + 1] as number); value += 1) {
        if ((this.#left -= 1) <= 0) return 0;
        point[hub] = value;
        let product = 1;
        for (const part of parts) {
          product *= this.#countPart(part, box, point);
          if (product === 0) break;
        }
        total += product;
      }
    }
    return total;
  }

  #search({ places, constraints }: Part, box: Box, point: Float64Array): boolean {
    const hub = places.length === 1 ? (places[0] as number) : hubOf(places, constraints, box);
    const rest = places.filter((place) => place !== hub);
    const [alone, others] = split(constraints, hub, rest);
    const stretches = this.#lineOf(hub, alone, box, point);
    if (stretches.length === 0) return false;
    const parts = partsOf(rest, others);
    for (const value of outwards(stretches, this.#space.dimensions[hub]?.usual ?? 0)) {
      if ((this.#left -= 1) <= 0) return false;
      point[hub] = value;
      if (parts.every((part) => this.#search(part, box, point))) return true;
      if (parts.length === 0) return true;
    }
    return false;
  }

  #lineOf(
    place: number,
    constraints: readonly Constraint[],
    { lows, highs }: Box,
    point: Float64Array,
  ): Stretches {
    let stretches: Stretches = [lows[place] as number, highs[place] as number];
    for (const constraint of constraints) stretches = shared(stretches, constraint.along(place, point));
    return stretches;
  }
}

/** Those that read nothing of the rest, which are settled along the hub alone; and the others. */
function split(
  constraints: readonly Constraint[],
  hub: number,
  rest: readonly number[],
): [Constraint[], Constraint[]] {
  const alone: Constraint[] = [];
  const others: Constraint[] = [];
  for (const each of constraints) {
    if (each.reads.some((place) => rest.includes(place))) others.push(each);
    else if (each.reads.includes(hub)) alone.push(each);
  }
  return [alone, others];
}

/** The dimension whose values are walked through: the one that most constraints read, then the shortest. */
function hubOf(places: readonly number[], constraints: readonly Constraint[], { lows, highs }: Box): number {
  let [best, most, shortest] = [places[0] as number, -1, Infinity];
  for (const place of places) {
    const reads = constraints.filter((each) => each.reads.includes(place)).length;
    const length = (highs[place] as number) - (lows[place] as number);
    if (reads > most || (reads === most && length < shortest))
      [best, most, shortest] = [place, reads, length];
  }
  return best;
}

const partsIn = (constraints: readonly Constraint[]): Part[] =>
  partsOf([...new Set(constraints.flatMap(({ reads }) => reads))], constraints);

function partsOf(places: readonly number[], constraints: readonly Constraint[]): Part[] {
  const open = new Set(places);
  const parts: Part[] = [];
  for (const first of places) {
    if (!open.delete(first)) continue;
    const own = [first];
    const kept = new Set<Constraint>();
    for (const place of own) {
      for (const each of constraints) {
        if (!each.reads.includes(place)) continue;
        kept.add(each);
        for (const other of each.reads) if (open.delete(other)) own.push(other);
      }
    }
    parts.push({ places: own, constraints: [...kept] });
  }
  return parts;
}

const keyOf = ({ places, constraints }: Part, { lows, highs }: Box): string =>
  `${places.map((place) => `${place} ${lows[place]} ${highs[place]}`).join()} ${constraints.map(({ key }) => key).join()}`;

function sizeOf(stretches: Stretches): number {
  let size = 0;
  for (let at = 0; at < stretches.length; at += 2)
    size += (stretches[at + 1] as number) - (stretches[at] as number) + 1;
  return size;
}

/** The values of some stretches, the nearest to a usual one first. */
function* outwards(stretches: Stretches, usual: number): Generator<number> {
  const [first, last] = [stretches[0] as number, stretches.at(-1) as number];
  const start = Math.min(last, Math.max(first, usual));
  const inside = (value: number): boolean => {
    for (let at = 0; at < stretches.length; at += 2)
      if (value >= (stretches[at] as number) && value <= (stretches[at + 1] as number)) return true;
    return false;
  };
  for (let away = 0; start - away >= first || start + away <= last; away += 1) {
    if (start + away <= last && inside(start + away)) yield start + away;
    if (away > 0 && start - away >= first && inside(start - away)) yield start - away;
  }
}
