import { chanceOf } from './chance.ts';
import { mutated, type Material } from './mutations.ts';
import { judged, kinds, readers, type Kind } from './readers.ts';

/** A text that the reader did not stand. */
export interface Found {
  readonly kind: Kind;
  readonly text: string;
  readonly says: string;
}

/** Milliseconds of the processor's time for one text; reading the largest seed takes a twentieth of it. */
const patience = 10_000;

/** So many texts of a kind are kept to be changed further. */
const mostKept = 400;

interface Pool {
  readonly material: Material & { texts: string[] };
  readonly seen: Set<string>;
}

function poolOf(kind: Kind): Pool {
  const texts = [...readers[kind].seeds];
  const words = new Set(
    kinds.flatMap((each) => readers[each].seeds.flatMap((text) => text.match(/[A-Za-z_]\w*/g) ?? [])),
  );
  return { material: { texts, words: [...words] }, seen: new Set() };
}

/**
 * Tries texts one after another, each made of one that is known. A text that shows a problem where none of its kind was shown yet is kept,
 * and changed further. Yields the number of each text before it is tried, so that who watches knows when one does not end; returns what was
 * found, at most one of each message.
 */
export function* search(
  seed: number,
  before: (kind: Kind, text: string) => void = () => undefined,
): Generator<{
  readonly tried: number;
  readonly kept: number;
  readonly traits: number;
  readonly found: Found | null;
}> {
  const chance = chanceOf(seed);
  const pools = new Map(kinds.map((kind) => [kind, poolOf(kind)]));
  for (let tried = 1; ; tried += 1) {
    const kind = chance.pick(kinds);
    const { material, seen } = pools.get(kind) as Pool;
    const text = mutated(chance.pick(material.texts), chance, material);
    before(kind, text);
    const { traits, says } = tryOne(kind, text);
    const isNew = traits.some((trait) => !seen.has(trait));
    for (const trait of traits) seen.add(trait);
    if (isNew && material.texts.length < mostKept) material.texts.push(text);
    const all = [...pools.values()];
    yield {
      tried,
      kept: all.reduce((sum, pool) => sum + pool.material.texts.length, 0),
      traits: all.reduce((sum, pool) => sum + pool.seen.size, 0),
      found: says === null ? null : { kind, text, says },
    };
  }
}

function tryOne(kind: Kind, text: string): { traits: readonly string[]; says: string | null } {
  const start = process.cpuUsage();
  try {
    const { traits } = judged(kind, text);
    const { user, system } = process.cpuUsage(start);
    const taken = (user + system) / 1000;
    return { traits, says: taken < patience ? null : `It took ${Math.round(taken)} ms` };
  } catch (error) {
    return { traits: [], says: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
