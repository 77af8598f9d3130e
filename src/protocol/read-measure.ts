import type * as File from '../shape/generated/types.ts';
import { parseDuration } from '../vocabulary/quantity.ts';
import { unitByWord } from '../vocabulary/units.ts';
import { nearestUnit } from '../vocabulary/unit-names.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import type { LookBack, LookBackKind, Measure, MeasureHow } from './protocol.ts';
import { noDimension } from './quantities.ts';
import { readFormula, type FormulaFault } from './formula.ts';
import { readCurve, readScore } from './read-table.ts';
import { numberNamed, numbers, type Names } from './names.ts';
import { readCondition } from './read-condition.ts';
import { readOperand } from './read-operand.ts';
import type { Reading } from './reading.ts';
import { plainWords } from './words.ts';

const lookBacks = [
  'highest',
  'lowest',
  'average',
  'earliest',
  'latest',
  'change',
  'count',
  'minutes_since',
] as const;

/** Every key that says what kind a measure is. A measure has exactly one of them. */
export const measureKinds = [
  'formula',
  'curve',
  'score',
  'choose',
  'first_known',
  ...lookBacks,
  'held',
] as const;

/** Reads one measure. Its quantity is worked out later, when every measure has been read. */
export function readMeasure(name: string, file: File.Measure, path: Path, context: Reading): Measure | null {
  const { report } = context;
  const kinds = measureKinds.filter((kind) => file[kind] !== undefined);
  const [kind] = kinds;
  if (kind === undefined || kinds.length > 1) {
    report('one_kind_of_measure', path, { name, kinds }, { part: 'key' });
    return null;
  }
  foreignKeys(kind, file, path, report);
  const unit = file.unit === undefined ? null : unitByWord(file.unit);
  if (unit === undefined) {
    const written = String(file.unit);
    report('unknown_unit', [...path, 'unit'], { unit: written }, { nearMiss: () => nearestUnit(written) });
  }
  const how = readHow(kind, file, path, context);
  const blind = file.not_reliable_when;
  const notReliableWhen = blind ? readCondition(blind, [...path, 'not_reliable_when'], context) : null;
  if (!how || unit === undefined) return null;
  return {
    name,
    title: file.title ?? plainWords(name),
    meaning: file.meaning ?? null,
    unit,
    quantity: noDimension,
    notReliableWhen,
    how,
    path,
  };
}

function foreignKeys(kind: string, file: File.Measure, path: Path, report: Report): void {
  const isLookBack = kind === 'held' || (lookBacks as readonly string[]).includes(kind);
  const foreign = (['over', 'where', 'present_set', 'longest_gap'] as const).filter((key) => {
    if (file[key] === undefined) return false;
    if (!isLookBack) return true;
    if (key === 'longest_gap') return kind !== 'held';
    return kind === 'held' && (key === 'where' || key === 'present_set');
  });
  for (const key of foreign) report('key_not_for_this_kind', [...path, key], { key, kind }, { part: 'key' });
  if (isLookBack && file.over === undefined)
    report('look_back_without_over', path, { kind }, { part: 'key' });
}

function readHow(kind: string, file: File.Measure, path: Path, context: Reading): MeasureHow | null {
  const at = [...path, kind];
  switch (kind) {
    case 'formula':
      return formula(String(file.formula), at, context);
    case 'curve':
      return readCurve(file.curve as File.Curve, at, context);
    case 'score':
      return readScore(file.score as Record<string, File.ScorePart>, at, context);
    case 'choose':
      return choose(file.choose as readonly File.ChoosePart[], at, context);
    case 'first_known':
      return firstKnown(file.first_known as readonly string[], at, context);
    default:
      return lookBack(kind as LookBackKind, file, at, path, context);
  }
}

function formula(text: string, path: Path, { names, report }: Reading): MeasureHow | null {
  const { expression, faults } = readFormula(text, (name) => numberNamed(names, name));
  for (const fault of faults) reportFault(fault, path, names, report);
  return expression && { kind: 'formula', formula: expression, text };
}

function reportFault(fault: FormulaFault, path: Path, names: Names, report: Report): void {
  if (fault.kind === 'unreadable') report('formula_unreadable', path, { near: fault.near });
  else if (fault.kind === 'not_arithmetic') report('formula_not_arithmetic', path, { part: fault.part });
  else {
    if (names.unreadable.has(fault.name)) return;
    const declared = names.declared.get(fault.name);
    if (declared && declared.kind !== 'number') report('formula_of_choice', path, { name: fault.name });
    else if (declared) report('observation_not_listed', path, { name: fault.name });
    else {
      const near = (): string | null => nearMiss(fault.name, numbers(names));
      report('unknown_number', path, { name: fault.name }, { nearMiss: near });
    }
  }
}

function choose(files: readonly File.ChoosePart[], path: Path, context: Reading): MeasureHow | null {
  const entries = files.map((file, index) => {
    const at = [...path, index];
    const last = index === files.length - 1;
    if (last && file.when) context.report('choose_without_rest', [...at, 'when'], {}, { part: 'key' });
    if (!last && !file.when) context.report('choose_without_when', at, {});
    const when = file.when ? readCondition(file.when, [...at, 'when'], context) : null;
    const use = readOperand(file.use, [...at, 'use'], context);
    return use && Boolean(when) === Boolean(file.when) ? { when, use } : null;
  });
  const read = entries.filter((entry) => entry !== null);
  return read.length < files.length ? null : { kind: 'choose', entries: read };
}

function firstKnown(written: readonly string[], path: Path, context: Reading): MeasureHow | null {
  const of = written.map((name, index) => readOperand(name, [...path, index], context));
  const read = of.filter((operand) => operand !== null);
  return read.length < of.length || read.length === 0 ? null : { kind: 'first_known', of: read };
}

function lookBack(
  kind: LookBackKind,
  file: File.Measure,
  at: Path,
  path: Path,
  context: Reading,
): LookBack | null {
  const over = file.over === undefined ? null : parseDuration(file.over);
  const longestGap = file.longest_gap === undefined ? null : parseDuration(file.longest_gap);
  const condition = file.held ? readCondition(file.held, at, context) : null;
  const where = file.where ? readCondition(file.where, [...path, 'where'], context) : null;
  const observation = kind === 'held' ? null : lookedAt(kind, String(file[kind]), at, context);
  const broken = (file.held && !condition) || (file.where && !where) || (kind !== 'held' && !observation);
  if (broken || over === null) return null;
  const presentSet = file.present_set ?? 'included';
  return { kind, observation, condition, where, over, presentSet, longestGap };
}

function lookedAt(kind: LookBackKind, name: string, path: Path, { names, report }: Reading): string | null {
  const observation = names.observations.get(name);
  const anyKind = kind === 'count' || kind === 'minutes_since';
  if (observation && (anyKind || observation.kind === 'number')) return name;
  if (observation) report('look_back_of_choice', path, { kind, name });
  else if (names.declared.has(name)) report('observation_not_listed', path, { name });
  else if (names.measures.has(name) || names.limits.has(name))
    report('look_back_of_measure', path, { kind, name });
  else {
    const fitting = [...names.declared.values()].filter((each) => anyKind || each.kind === 'number');
    report('unknown_observation', path, { name }, { nearMiss: () => nearMiss(name, fitting) });
  }
  return null;
}
