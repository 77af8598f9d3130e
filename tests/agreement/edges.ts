import type { Plain } from './protocols.ts';

const numberIn = (what: unknown): number[] => (/^-?\d/.test(String(what)) ? [parseFloat(String(what))] : []);

const known = new WeakMap<Plain, ReadonlyMap<string, readonly number[]>>();

/** The numbers at which a protocol changes its mind, for each observation that it compares, scores or reads a curve at. */
export function edgesOf(protocol: Plain): ReadonlyMap<string, readonly number[]> {
  const before = known.get(protocol);
  if (before) return before;
  const edges = new Map<string, number[]>();
  const limits = (protocol.limits ?? {}) as Record<string, Plain>;
  const cut = (what: unknown): number[] => numberIn(limits[String(what)]?.value ?? what);
  const add = (name: string, numbers: readonly number[]): void => {
    edges.set(name, [...(edges.get(name) ?? []), ...numbers]);
  };
  const walk = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    for (const [key, what] of Object.entries(part)) {
      if (Array.isArray(what))
        add(
          key,
          what.flatMap((band: Plain) => [...cut(band?.at_most), ...cut(band?.below)]),
        );
      else if (typeof what === 'object' && what !== null) {
        const { of, points, between, ...asked } = what as {
          of?: string;
          points?: unknown[][];
          between?: unknown[];
        };
        if (typeof of === 'string' && points)
          add(
            of,
            points.flatMap(([at]) => cut(at)),
          );
        add(key, [...(between ?? []), ...Object.values(asked)].flatMap(cut));
      }
      walk(what);
    }
  };
  walk([protocol.applies_when, protocol.measures, protocol.rules]);
  known.set(protocol, edges);
  return edges;
}
