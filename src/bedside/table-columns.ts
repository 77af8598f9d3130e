import type { Protocol } from '../protocol/protocol.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import type { ObservationEntry } from '../vocabulary/observation.ts';
import { sameDimension, units, type Unit } from '../vocabulary/units.ts';
import { lettersOf } from '../vocabulary/words.ts';
import type { TellAt } from './tell-at.ts';
import type { Cell } from './text-to-table.ts';

/** What a column of a table holds. Null: nobody can tell, and a problem says so. */
export type Column =
  | { readonly holds: 'day' | 'time' }
  | { readonly holds: 'observation'; readonly entry: ObservationEntry; readonly unit: Unit | null }
  | null;

const times = ['time', 'at', 'when', 'taken', 'taken at', 'date and time', 'date time', 'timestamp'].map(
  lettersOf,
);
const days = ['date', 'day'].map(lettersOf);

/** Reads the names of the columns. An observation may be called as in the dictionary, by its title, or as people also call it. */
export function readColumns(
  cells: readonly Cell[],
  { vocabulary, observations }: Protocol,
  tell: TellAt,
): Column[] {
  const entries = [...new Map([...vocabulary, ...observations]).values()];
  const seen = new Map<string, string>();
  return cells.map((cell): Column => {
    const column = readColumn(cell, entries, tell);
    if (!column) return null;
    const key = column.holds === 'observation' ? column.entry.name : column.holds;
    const first = seen.get(key);
    if (first !== undefined) {
      tell('table_column_twice', cell, { name: cell.text, first });
      return null;
    }
    seen.set(key, cell.text);
    return column;
  });
}

function readColumn(cell: Cell, entries: readonly ObservationEntry[], tell: TellAt): Column {
  const [, name = '', word] = /^(.*?)\s*(?:[([]([^)\]]*)[)\]])?$/.exec(cell.text) ?? [];
  const letters = lettersOf(name);
  if (times.includes(letters)) return { holds: 'time' };
  if (days.includes(letters)) return { holds: 'day' };
  const entry = entries.find((each) => namesOf(each).includes(letters));
  if (!entry) {
    tell('table_unknown_column', cell, { name: cell.text }, nearMiss(name, entries));
    return null;
  }
  if (word === undefined || word.trim() === '') return { holds: 'observation', entry, unit: null };
  const unit = unitCalled(word.trim(), entry);
  if (!unit) tell('table_unknown_unit', cell, { name, unit: word });
  return unit ? { holds: 'observation', entry, unit } : null;
}

const namesOf = ({ name, title, short, alsoCalled }: ObservationEntry): string[] =>
  [name, title, short, ...alsoCalled].map(lettersOf);

/** A unit by its word or its code, in which the observation can be measured. */
export function unitCalled(word: string, entry: ObservationEntry): Unit | null {
  const same = (each: string): boolean => each.toLowerCase() === word.toLowerCase();
  const unit =
    units.find((each) => each.word === word || each.ucum === word) ?? units.find((each) => same(each.word));
  return unit && entry.unit && sameDimension(unit.dimension, entry.unit.dimension) ? unit : null;
}
