import type { Parents } from '../../protocol/based-on/basis.ts';
import { plainWords } from '../../protocol/words.ts';
import { vitalSigns } from '../../vocabulary/vital-signs.ts';
import { caretMark } from '../sketch/reading.ts';
import { entriesOf, itemsOf, textsOf, textUnder, under, type Entry, type Part } from '../sketch/sketch.ts';
import { textToSketch } from '../sketch/text-to-sketch.ts';
import { declaredInPlace } from './declared-in-place.ts';
import type { AuthoringSurroundings, Known, KnownMeasure, KnownProtocol, WrittenKind } from './known.ts';

/** So many protocols stand one on the other, at most. */
const mostParents = 3;

/** What a measure can be worked out by. */
const hows: ReadonlySet<string> = new Set([
  'formula',
  'curve',
  'score',
  'choose',
  'first_known',
  'highest',
  'lowest',
  'average',
  'earliest',
  'latest',
  'change',
  'count',
  'minutes_since',
  'held',
]);

type Gathered = {
  -readonly [K in keyof Known]: Known[K] extends ReadonlyMap<string, infer V> ? Map<string, V> : Known[K];
};

/** Gathers every name that a text can use, from its sketch and from what stands around it. */
export function gatherKnown(kind: WrittenKind, sketch: Part, around: AuthoringSurroundings): Known {
  const { dictionary = vitalSigns, ladder, parents = new Map() as Parents, beside } = around;
  const known: Gathered = {
    observations: new Map(dictionary.observations),
    listed: new Map(),
    limits: new Map(),
    measures: new Map(),
    rules: new Map(),
    sources: new Map(),
    actions: new Map(),
    faults: new Map(),
    levels: ladder?.levels ?? [],
    ladder: ladder?.name ?? null,
    protocols: new Map(),
    inherited: { limits: new Set(), rules: new Set() },
    subject: null,
  };
  if (kind === 'protocol') addProtocol(sketch, parents, known);
  if (kind === 'ward') addWard(sketch, parents, known);
  if (kind === 'protocol' || kind === 'ward') addProtocols(parents, known);
  if (kind !== 'cases' && kind !== 'ward_cases') return known;
  const other = textToSketch(beside ?? '');
  if (kind === 'cases') addProtocol(other, parents, known);
  else addWard(other, parents, known);
  known.subject = textUnder(other, kind === 'cases' ? 'protocol' : 'ward') || null;
  return known;
}

/** The heads of the protocols that there are; only their first lines are looked at. */
function addProtocols(parents: Parents, known: Gathered): void {
  for (const [name, { text }] of parents) {
    const line = (key: string): string =>
      new RegExp(`^${key}:[ \\t]*(.*?)[ \\t]*\\r?$`, 'm').exec(text)?.[1]?.replace(/^(["'])(.*)\1$/, '$2') ??
      '';
    known.protocols.set(name, {
      name,
      title: line('title'),
      edition: line('edition'),
    } satisfies KnownProtocol);
  }
}

function addWard(sketch: Part, parents: Parents, known: Gathered): void {
  addSources(sketch, known);
  for (const member of itemsOf(under(sketch, 'reads_with'))) {
    const parent = parents.get(textUnder(member, 'protocol'));
    if (!parent) continue;
    const own = new Map(known.sources);
    addProtocol(textToSketch(parent.text), parents, known);
    known.sources = own;
  }
}

/** What a protocol declares, after what it is based on. */
function addProtocol(sketch: Part, parents: Parents, known: Gathered): void {
  const line = lineage(sketch, parents);
  for (const each of line) addParts(each, known);
  const rules = new Set(known.rules.keys());
  known.inherited = { limits: new Set(known.limits.keys()), rules };
  for (const withdrawn of itemsOf(under(under(sketch, 'based_on'), 'withdraws')))
    known.rules.delete(textUnder(withdrawn, 'rule'));
  addParts(sketch, known);
}

/** What a protocol is based on, the furthest first. */
function lineage(sketch: Part, parents: Parents): Part[] {
  const found: Part[] = [];
  let part = sketch;
  for (let depth = 0; depth < mostParents; depth += 1) {
    const parent = parents.get(textUnder(under(part, 'based_on'), 'protocol'));
    if (!parent) break;
    part = textToSketch(parent.text);
    found.unshift(part);
  }
  return found;
}

/** The entries of a map that are written, without the one at the caret. */
const written = (part: Part | undefined): Entry[] =>
  entriesOf(part).filter(({ key }) => !key.text.includes(caretMark));

const sure = (text: string): boolean => text !== '' && !text.includes(caretMark);

function addParts(sketch: Part, known: Gathered): void {
  addObservations(sketch, known);
  addSources(sketch, known);
  for (const { key, value } of written(under(sketch, 'limits'))) {
    known.limits.set(key.text, {
      name: key.text,
      title: textUnder(value, 'title') || plainWords(key.text),
      value: textUnder(value, 'value'),
      unit: textUnder(value, 'unit'),
      between: textsOf(under(value, 'between')),
      setBy: textUnder(value, 'set_by'),
    });
  }
  for (const { key, value } of written(under(sketch, 'measures')))
    known.measures.set(key.text, measure(key.text, value));
  addRules(sketch, known);
}

function addSources(sketch: Part, known: Gathered): void {
  for (const { key, value } of written(under(sketch, 'sources')))
    known.sources.set(key.text, textUnder(value, 'cite'));
}

function measure(name: string, part: Part): KnownMeasure {
  return {
    name,
    title: textUnder(part, 'title') || plainWords(name),
    meaning: textUnder(part, 'meaning'),
    unit: textUnder(part, 'unit'),
    how: entriesOf(part).find(({ key }) => hows.has(key.text))?.key.text ?? '',
    part,
  };
}

function addObservations(sketch: Part, known: Gathered): void {
  const observations = under(sketch, 'observations');
  for (const [name, entry] of declaredInPlace(under(observations, 'declares')))
    known.observations.set(name, entry);
  const list = (name: string, role: string): void => {
    if (sure(name) && !known.listed.has(name)) known.listed.set(name, role);
  };
  for (const role of ['needs', 'helps'])
    for (const name of textsOf(under(observations, role))) list(name, role);
  for (const { key } of written(under(sketch, 'standing'))) list(key.text, 'standing');
  for (const name of namesAsked(under(sketch, 'applies_when')))
    if (known.observations.has(name)) list(name, 'applies_when');
}

/** The names that a condition asks about. */
function namesAsked(part: Part | undefined): string[] {
  if (part?.kind === 'list') return part.items.flatMap(namesAsked);
  return written(part).flatMap(({ key, value }) =>
    ['all', 'any', 'none', 'at_least_of', 'of'].includes(key.text) ? namesAsked(value) : [key.text],
  );
}

function addRules(sketch: Part, known: Gathered): void {
  for (const part of itemsOf(under(sketch, 'rules'))) {
    const name = textUnder(part, 'rule');
    addActions(part, known);
    if (!sure(name)) continue;
    const title = textUnder(part, 'title') || plainWords(name);
    const level = textUnder(part, 'level');
    known.rules.set(name, { name, title, level, says: textUnder(part, 'says'), when: under(part, 'when') });
  }
  for (const part of itemsOf(under(sketch, 'faults'))) {
    const name = textUnder(part, 'fault');
    addActions(part, known);
    if (sure(name)) known.faults.set(name, textUnder(part, 'title') || textUnder(part, 'says'));
  }
}

function addActions(part: Part, known: Gathered): void {
  for (const action of itemsOf(under(part, 'do'))) {
    const id = textUnder(action, 'id');
    if (sure(id)) known.actions.set(id, textUnder(action, 'text'));
  }
}
