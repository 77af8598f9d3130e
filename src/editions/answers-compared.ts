import type { SealedReading } from '../shape/generated/types.ts';
import { canonicalText } from './canonical.ts';

/** What of two answers differs first, in a few words; null when nothing does. */
export function firstDifference(
  was: SealedReading,
  is: SealedReading,
): { readonly what: string; readonly was: string; readonly is: string } | null {
  const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])] as (keyof SealedReading)[];
  for (const key of keys) {
    if (canonicalText(was[key]) === canonicalText(is[key])) continue;
    if (key !== 'reads') return { what: key.replaceAll('_', ' '), was: short(was[key]), is: short(is[key]) };
    const names = new Set([...Object.keys(was.reads ?? {}), ...Object.keys(is.reads ?? {})]);
    for (const name of names) {
      const [before, now] = [was.reads?.[name], is.reads?.[name]];
      if (!before || !now)
        return { what: name, was: before ? 'read' : 'not read', is: now ? 'read' : 'not read' };
      const inside = firstDifference(before, now);
      if (inside) return { ...inside, what: `${name}: ${inside.what}` };
    }
  }
  return null;
}

function short(value: unknown): string {
  const text = value === undefined ? 'nothing' : canonicalText(value).replaceAll('"', '');
  return text.length > 120 ? `${text.slice(0, 120)}…` : text;
}
