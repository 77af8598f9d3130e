import { emptyBackground, type Background, type SetInJson } from '../../../src/index.ts';
import {
  entriesToSet,
  noStatement,
  type Entries,
  type Entry,
  type Statement,
  type Statements,
} from './entries.ts';

/** Everything that is known of the patient in this room. It lives in memory alone. */
export interface Patient {
  readonly entries: Entries;
  readonly facts: Statements;
  readonly limits: Statements;
  readonly earlier: readonly SetInJson[];
  /** When the set was taken, with its offset; null until something is entered. */
  readonly takenAt: string | null;
  readonly background: Background;
}

export const newPatient: Patient = {
  entries: {},
  facts: {},
  limits: {},
  earlier: [],
  takenAt: null,
  background: emptyBackground,
};

export type Change =
  | { readonly does: 'enter'; readonly name: string; readonly entry: Entry | null; readonly now: string }
  | {
      readonly does: 'state';
      readonly what: 'facts' | 'limits';
      readonly name: string;
      readonly change: Partial<Statement>;
    }
  | { readonly does: 'take_at'; readonly at: string | null }
  | { readonly does: 'add_earlier'; readonly sets: readonly SetInJson[] }
  | { readonly does: 'drop_earlier'; readonly at: string }
  | { readonly does: 'next_set' }
  | { readonly does: 'fill'; readonly background: Partial<Background> }
  | { readonly does: 'new_patient' };

/** What is known after a change. */
export function changed(patient: Patient, change: Change): Patient {
  switch (change.does) {
    case 'enter':
      return entered(patient, change);
    case 'state': {
      const all = patient[change.what];
      const next = { ...(all[change.name] ?? noStatement), ...change.change };
      return { ...patient, [change.what]: { ...all, [change.name]: next } };
    }
    case 'take_at':
      return { ...patient, takenAt: change.at };
    case 'add_earlier':
      return { ...patient, earlier: [...patient.earlier, ...change.sets] };
    case 'drop_earlier':
      return { ...patient, earlier: patient.earlier.filter(({ at }) => at !== change.at) };
    case 'next_set':
      return nextSet(patient);
    case 'fill':
      return { ...patient, background: { ...patient.background, ...change.background } };
    case 'new_patient':
      return newPatient;
  }
}

function entered(patient: Patient, { name, entry, now }: Extract<Change, { does: 'enter' }>): Patient {
  const others = Object.entries(patient.entries).filter(([each]) => each !== name);
  const entries = Object.fromEntries(entry === null ? others : [...others, [name, entry]]) as Entries;
  return { ...patient, entries, takenAt: patient.takenAt ?? now };
}

/** The set goes to the earlier ones, and its place is free for the next. */
function nextSet(patient: Patient): Patient {
  const { takenAt, entries, earlier } = patient;
  if (takenAt === null) return patient;
  return { ...patient, entries: {}, takenAt: null, earlier: [...earlier, entriesToSet(entries, takenAt)] };
}

/** Whether anything at all was entered, so that there is something to lose. */
export const isBlank = (patient: Patient): boolean => JSON.stringify(patient) === JSON.stringify(newPatient);
