import type { Asking } from './asking.ts';
import { stands } from './atoms.ts';
import { standIn, type Node } from './node.ts';
import type { Question, Region } from './partitioner.ts';
import type { Section } from './space.ts';

/** A region made as wide as it can be: every set that it holds, if any, comes out in the one way. */
export interface Wide {
  readonly node: Node;
  readonly section: Section;
}

/**
 * Regions as few and as wide as may be, which hold all sets of some regions of one change; they may overlap. The largest come first;
 * when there are `most` of them, the rest is left: `left` says how many of the regions they do not hold.
 */
export function widened<Change>(
  regions: readonly Region<Change>[],
  question: Question<Change>,
  asking: Asking,
  most: number,
): { readonly wide: readonly Wide[]; readonly left: readonly Region<Change>[] } {
  const wide: Wide[] = [];
  let left = regions;
  while (left.length > 0 && wide.length < most) {
    const [first] = left as [Region<Change>];
    const section = sectionOf(first.node, asking);
    const node = widest(first, section, question, asking);
    wide.push({ node, section });
    left = left.filter((each) => each !== first && !holds(node, each.node, asking));
  }
  return { wide, left };
}

const sectionOf = ({ lows, highs }: Node, { space }: Asking): Section =>
  space.sections.find((each) =>
    lows.every(
      (low, place) =>
        low >= (each.lows[place] as number) && (highs[place] as number) <= (each.highs[place] as number),
    ),
  ) as Section;

function widest<Change>(
  { node, change }: Region<Change>,
  section: Section,
  question: Question<Change>,
  asking: Asking,
): Node {
  const wanted = JSON.stringify(change);
  let best = node;
  const attempt = (lows: Float64Array, highs: Float64Array, settled: Uint8Array): boolean => {
    const wider = { lows, highs, stands: settled, seen: new Uint8Array(node.seen.length) };
    const verdict = question(wider, () => null);
    if (verdict.kind !== 'other' || JSON.stringify(verdict.change) !== wanted) return false;
    best = wider;
    return true;
  };
  const reach = (place: number, low: number, high: number): boolean => {
    const [lows, highs] = [best.lows.slice(), best.highs.slice()];
    [lows[place], highs[place]] = [low, high];
    return attempt(lows, highs, best.stands);
  };
  const loosen = (): void => {
    for (const { index } of asking.atoms.all) {
      if (best.stands[index] === stands.open) continue;
      const settled = best.stands.slice();
      settled[index] = stands.open;
      attempt(best.lows, best.highs, settled);
    }
  };
  loosen();
  asking.space.dimensions.forEach(({ kind }, place) => {
    const [least, most] = [section.lows[place] as number, section.highs[place] as number];
    const [low, high] = [best.lows[place] as number, best.highs[place] as number];
    if ((low === least && high === most) || reach(place, least, most)) return;
    const cuts = kind === 'choice' ? [...Array(most + 1).keys()] : (asking.cuts[place] ?? []);
    for (const start of [least, ...cuts.filter((at) => at < low)]) {
      if (start < low && reach(place, start, best.highs[place] as number)) break;
    }
    for (const end of [
      most,
      ...cuts
        .map((at) => at - 1)
        .filter((at) => at > high)
        .reverse(),
    ]) {
      if (end > high && reach(place, best.lows[place] as number, end)) break;
    }
  });
  // A comparison that was needed beside narrower values may not be any more.
  loosen();
  return best;
}

/** Whether a node holds another, surely. */
function holds(outer: Node, inner: Node, { atoms }: Asking): boolean {
  for (let place = 0; place < outer.lows.length; place += 1) {
    if ((inner.lows[place] as number) < (outer.lows[place] as number)) return false;
    if ((inner.highs[place] as number) > (outer.highs[place] as number)) return false;
  }
  return atoms.all.every((atom) => {
    const stand = outer.stands[atom.index];
    return stand === stands.open || standIn(inner, atom) === stand;
  });
}
