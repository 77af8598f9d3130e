import { reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import type { Document, MapEntry, MapNode, Node } from '../document/document.ts';
import { findingToProblem } from '../document/finding-to-problem.ts';
import type { Limit, ObservationEntry, Protocol } from '../protocol/protocol.ts';

/** The names that a set may say something about. */
export interface SetVocabulary {
  /** With what the protocol declares in place, and `standing` where the protocol lists them under `standing:`. */
  readonly observations: ReadonlyMap<string, ObservationEntry>;
  readonly limits: ReadonlyMap<string, Limit>;
}

const remembered = new WeakMap<Protocol, SetVocabulary>();

/** What a set for this protocol may name; what it lists under `standing:` is standing, whatever the dictionary says. */
export function setVocabularyOf(protocol: Protocol): SetVocabulary {
  const known = remembered.get(protocol);
  if (known) return known;
  const observations = new Map(protocol.vocabulary);
  for (const [name, entry] of protocol.observations) observations.set(name, entry);
  const vocabulary = { observations, limits: protocol.limits };
  remembered.set(protocol, vocabulary);
  return vocabulary;
}

/** UCUM codes and plain numbers, as in JSON; or the trade's words, as in YAML, where `58 y` is a number too. */
export type UnitWords = 'ucum' | 'trade';

/** What every part of a set is read with. */
export interface SetReading extends SetVocabulary {
  readonly units: UnitWords;
  readonly report: Report;
}

/** So many problems are shown; a file with more of them is not the file that was meant. */
const most = 200;

/** Collects problems of a set, and gives them their places at the end. */
export function problemCollector(document: Document): { report: Report; problems: () => Problem[] } {
  const findings: Finding[] = [];
  const add = reporter(findings);
  let more = 0;
  const report: Report = (code, path, facts, extra) => {
    if (findings.length < most) add(code, path, facts, extra);
    else more += 1;
  };
  const problems = (): Problem[] => {
    if (more > 0) add('set_more_problems', [], { more });
    return findings.map((finding) => findingToProblem(document, finding));
  };
  return { report, problems };
}

/** The entry of a key; undefined when there is none. */
export const entryOf = (map: MapNode, key: string): MapEntry | undefined =>
  map.entries.find((each) => each.key === key);

/** The value of a scalar; undefined for a list, a map, and nothing at all. */
export const scalarOf = (node: Node | undefined): string | number | boolean | null | undefined =>
  node?.kind === 'scalar' ? node.value : undefined;

/** How a value of the wrong kind is named in a sentence that begins with it. */
export function nameOfNode(node: Node): string {
  if (node.kind === 'list') return 'A list';
  if (node.kind === 'map') return 'A group of keys';
  return typeof node.value === 'string' ? `"${shortened(node.value)}"` : String(node.value);
}

/** A text, short enough for a sentence. */
export const shortened = (text: string): string => (text.length <= 60 ? text : `${text.slice(0, 60)}…`);
