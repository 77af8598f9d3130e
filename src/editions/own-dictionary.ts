import type { Finding } from '../problems/problem.ts';
import { reporter } from '../problems/problem.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { readDictionary, type Dictionary } from '../vocabulary/dictionary.ts';
import type { DictionaryFile } from '../vocabulary/generated/dictionary-file.ts';
import { vitalSigns as kit } from '../vocabulary/generated/vital-signs.ts';
import { vitalSigns } from '../vocabulary/vital-signs.ts';
import { canonicalText } from './canonical.ts';

/** The part of a dictionary that some protocols read: their observations, the sources of these, the contradictions among them. */
export function dictionaryOf(protocols: readonly Protocol[], whole: DictionaryFile = kit): DictionaryFile {
  const read = new Set(protocols.flatMap(({ observations }) => [...observations.keys()]));
  const observations = picked(whole.observations, (name) => read.has(name));
  const cited = new Set(Object.values(observations).flatMap(({ source }) => source ?? []));
  const { dictionary, language, sources = {}, contradictions = [] } = whole;
  return {
    dictionary,
    language,
    sources: picked(sources, (name) => cited.has(name)),
    observations,
    contradictions: contradictions.filter(({ lower, higher }) => read.has(lower) && read.has(higher)),
  };
}

/**
 * The dictionary that an edition is read with: its own observations as they stood when it was sealed, in place of the kit's, and the
 * kit's for all that it does not read. Null when this kit cannot read its observations.
 */
export function dictionaryWith(own: DictionaryFile): Dictionary | null {
  const whole = laidOver(own);
  if (canonicalText(whole) === canonicalText(kit)) return vitalSigns;
  const findings: Finding[] = [];
  const dictionary = readDictionary(whole, reporter(findings));
  return findings.length === 0 ? dictionary : null;
}

/** The kit's dictionary with the observations of some editions in place of its own. */
export function laidOver(own: DictionaryFile): DictionaryFile {
  const isOwn = (name: string): boolean => Object.hasOwn(own.observations, name);
  const others = (kit.contradictions ?? []).filter(({ lower, higher }) => !(isOwn(lower) && isOwn(higher)));
  const [first, rest] = [own.contradictions ?? [], others];
  return {
    ...kit,
    sources: { ...kit.sources, ...own.sources },
    observations: { ...kit.observations, ...own.observations },
    contradictions: inKitOrder([...first, ...rest]),
  };
}

type Contradictions = NonNullable<DictionaryFile['contradictions']>;

/** In the order of the kit, so that what is the same is seen to be the same. */
function inKitOrder(all: Contradictions): Contradictions {
  const name = ({ lower, higher }: Contradictions[number]): string => `${lower} ${higher}`;
  const order = (kit.contradictions ?? []).map(name);
  return all.toSorted((left, right) => order.indexOf(name(left)) - order.indexOf(name(right)));
}

function picked<T>(all: Readonly<Record<string, T>>, isWanted: (name: string) => boolean): Record<string, T> {
  return Object.fromEntries(Object.entries(all).filter(([name]) => isWanted(name)));
}
