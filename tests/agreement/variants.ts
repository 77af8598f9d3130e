import type { Draw } from './draw.ts';
import type { Plain } from './protocols.ts';

function shuffled<T>(draw: Draw, list: readonly T[]): T[] {
  const left = [...list];
  return Array.from({ length: left.length }, () => left.splice(draw.whole(0, left.length - 1), 1)).flat();
}

/** Lists of which the order means nothing. */
const unordered = new Set(['rules', 'sets', 'all', 'any', 'none', 'of', 'one_of', 'needs', 'helps']);

/** The same with its keys, and what else has no order, in another order. */
export function reordered(draw: Draw, what: unknown, key = ''): unknown {
  if (Array.isArray(what)) {
    const parts = what.map((part: unknown) => reordered(draw, part));
    return unordered.has(key) ? shuffled(draw, parts) : parts;
  }
  if (typeof what !== 'object' || what === null) return what;
  const entries = Object.entries(what).map(([name, part]) => [name, reordered(draw, part, name)] as const);
  return Object.fromEntries(shuffled(draw, entries));
}

/** The name of the rule that is never met. */
export const neverMet = 'r_never_met';

/** The protocol with one rule more, of the highest level: it asks for something to be known and not to be known. */
export function withRuleNeverMet(protocol: Plain, name: string, level: string): Plain {
  const accepted = { accepted: 'A rule that is never met.' };
  const when = { all: ['yes', 'no'].map((known) => ({ [name]: { known, ...accepted } })) };
  const rule = {
    rule: neverMet,
    title: 'Never met',
    when,
    level,
    says: 'It suggests nothing.',
    source: ['council'],
  };
  return { ...protocol, rules: [...(protocol.rules as Plain[]), rule] };
}

/** A set as a series of one set; a series as it is. */
export function asSeries(set: Plain): Plain {
  if ('sets' in set) return set;
  const { at = '2026-03-02T08:00:00Z', patient, ...says } = set;
  return { ...(patient ? { patient } : {}), sets: [{ at, ...says }] };
}

/** The series with each of its sets told as two of the same time. */
export function splitSets(draw: Draw, series: Plain): Plain {
  const sets = (series.sets as Plain[]).flatMap(({ at, ...says }) => {
    const first = Object.keys(says).filter(() => draw.chance(50));
    const part = (inFirst: boolean): Plain => ({
      at,
      ...Object.fromEntries(Object.entries(says).filter(([name]) => first.includes(name) === inFirst)),
    });
    return [part(true), part(false)];
  });
  return { ...series, sets };
}
