import type { Field, LimitField, SetInJson } from '../../../src/index.ts';

/** What was entered for one observation. No entry at all: nobody has come to it yet. */
export type Entry =
  | { readonly kind: 'number'; readonly text: string; /** UCUM code. */ readonly unit: string }
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'several'; readonly choices: readonly string[] }
  | { readonly kind: 'not_taken' }
  | { readonly kind: 'unobtainable' | 'declined'; readonly because: string };

/** Something that somebody states: who, why, and until when (as a field for a time holds it). */
export interface Statement {
  readonly entry: Entry | null;
  readonly by: string;
  readonly reason: string;
  readonly until: string;
}

export const noStatement: Statement = { entry: null, by: '', reason: '', until: '' };

export type Entries = Readonly<Record<string, Entry>>;
export type Statements = Readonly<Record<string, Statement>>;

const number = /^-?\d{1,9}(?:[.,]\d{1,6})?$/;

/** Why a text is no number; null when it is one. A comma stands for the point of the decimals. */
export function whyNoNumber(text: string): string | null {
  if (number.test(text.trim())) return null;
  return `“${text.trim().slice(0, 20)}” is not a number, so it is not used. Write it again.`;
}

const asNumber = (text: string): number => Number(text.trim().replace(',', '.'));

/** What a set says of an observation, as JSON; undefined when it says nothing that can be used. */
function entryToJson(entry: Entry): unknown {
  switch (entry.kind) {
    case 'number':
      if (whyNoNumber(entry.text) !== null) return undefined;
      return { value: asNumber(entry.text), ...(entry.unit === '' ? {} : { unit: entry.unit }) };
    case 'choice':
      return entry.choice;
    case 'several':
      return entry.choices;
    case 'not_taken':
      return undefined;
    case 'unobtainable':
    case 'declined':
      return { [entry.kind]: entry.because.trim() === '' ? true : entry.because.trim() };
  }
}

/** Entries as one set of a series. */
export function entriesToSet(entries: Entries, at: string): SetInJson {
  const observed = Object.entries(entries).map(([name, entry]) => [name, entryToJson(entry)] as const);
  return { at, ...Object.fromEntries(observed.filter(([, value]) => value !== undefined)) };
}

/** Everything that was entered about a patient. */
export interface Given {
  readonly at: string;
  readonly entries: Entries;
  readonly facts: Statements;
  readonly limits: Statements;
  readonly earlier: readonly SetInJson[];
}

/** Who is named when nobody has to be: facts that no special person states. */
const atTheBedside = 'stated at the bedside';

/** The series that is asked about, as the JSON that `vitalwright read` also takes. */
export function givenToJson(
  { at, entries, facts, limits, earlier }: Given,
  patient: readonly Field[],
): string {
  const open = new Set(patient.filter(({ setBy }) => setBy === null).map(({ name }) => name));
  const standing = Object.entries(facts).flatMap(([name, fact]) =>
    statementToJson(name, fact, open.has(name)),
  );
  const changed = Object.entries(limits).flatMap(([name, limit]) => statementToJson(name, limit, false));
  return JSON.stringify({
    patient: { standing: Object.fromEntries(standing), limits: Object.fromEntries(changed) },
    at,
    sets: [...earlier, entriesToSet(entries, at)],
  });
}

function statementToJson(
  name: string,
  { entry, by, reason, until }: Statement,
  isOpen: boolean,
): [string, object][] {
  const plain = entry === null ? undefined : entryToJson(entry);
  const who = by.trim() === '' && isOpen ? atTheBedside : by.trim();
  if (plain === undefined || who === '') return [];
  const value =
    typeof plain === 'object' && plain !== null && !Array.isArray(plain) ? plain : { value: plain };
  const end = until === '' ? {} : { until };
  return [[name, { ...value, by: who, ...(reason.trim() === '' ? {} : { reason: reason.trim() }), ...end }]];
}

/** What was entered and cannot be used yet, with what is wanted. */
export interface HeldBack {
  readonly name: string;
  readonly title: string;
  readonly says: string;
}

/** What is entered, and not used: no number, nobody named who states it, or over when the set was taken. */
export function heldBack(
  { at, entries, facts, limits }: Given,
  fields: readonly Field[],
  patient: readonly Field[],
  changeable: readonly LimitField[],
): HeldBack[] {
  const inSet = fields.flatMap(({ name, title }) => noNumber(name, title, entries[name] ?? null));
  const stated = [
    ...patient.map((each) => ({ ...each, statement: facts[each.name] })),
    ...changeable.map((each) => ({
      ...each,
      setBy: each.setBy ?? 'prescriber',
      statement: limits[each.name],
    })),
  ].flatMap(({ name, title, setBy, statement }) => {
    if (!statement?.entry) return [];
    const says = `${title} is not used until it is said who stated it (${setBy ?? ''}).`;
    const needsName = setBy !== null && statement.by.trim() === '';
    const over = `${title} is not used: what was stated ended before this set was taken.`;
    return [
      ...noNumber(name, title, statement.entry),
      ...(needsName ? [{ name, title, says }] : []),
      ...(isOver(statement, at) ? [{ name, title, says: over }] : []),
    ];
  });
  return [...inSet, ...stated];
}

/** `until` itself is excluded. */
const isOver = ({ until }: Statement, at: string): boolean =>
  until !== '' && Date.parse(until) <= Date.parse(at);

function noNumber(name: string, title: string, entry: Entry | null): HeldBack[] {
  const why = entry?.kind === 'number' ? whyNoNumber(entry.text) : null;
  return why === null ? [] : [{ name, title, says: `${title}: ${why}` }];
}
