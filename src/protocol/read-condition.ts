import type * as File from '../shape/generated/types.ts';
import type { Path } from '../problems/place.ts';
import { nearestOf, type Names } from './names.ts';
import type { Condition } from './protocol.ts';
import { readComparisons } from './read-comparison.ts';
import type { Reading } from './reading.ts';

/** Reads a condition; several keys are several conditions that must all hold. Null, and reported, when a part cannot be read. */
export function readCondition(file: File.Condition, path: Path, reading: Reading): Condition | null {
  const parts = Object.keys(file).flatMap((key) => readKey(file, key, [...path, key], reading));
  const read = parts.filter((part) => part !== null);
  if (read.length < parts.length) return null;
  const [only] = read;
  return only && read.length === 1 ? only : { kind: 'all', of: read, path };
}

/** The conditions of a list that could be read. */
export function readConditions(files: readonly File.Condition[], path: Path, reading: Reading): Condition[] {
  return files
    .map((each, index) => readCondition(each, [...path, index], reading))
    .filter((read) => read !== null);
}

function readKey(file: File.Condition, key: string, path: Path, reading: Reading): (Condition | null)[] {
  if (key === 'all' || key === 'any' || key === 'none') {
    const of = everyOne(file[key] ?? [], path, reading);
    return [of && { kind: key, of, path }];
  }
  if (key === 'at_least_of') {
    const { count, of: files } = file.at_least_of as File.AtLeastOf;
    const of = everyOne(files, [...path, 'of'], reading);
    return [of && { kind: 'at_least_of', count, of, path }];
  }
  if (key === 'rule') return [ruleNamed(String(file.rule), path, reading)];
  return readComparisons(key, file[key] as File.Comparison, path, reading);
}

function everyOne(files: readonly File.Condition[], path: Path, reading: Reading): Condition[] | null {
  const read = readConditions(files, path, reading);
  return read.length === files.length ? read : null;
}

function ruleNamed(rule: string, path: Path, { names, report }: Reading): Condition | null {
  if (names.rules.has(rule)) return { kind: 'rule', rule, path };
  if (names.basis?.withdrawn.has(rule)) {
    report('withdrawn_rule_named', path, { name: rule, by: namedBy(path, names) });
    return null;
  }
  report('unknown_rule', path, { name: rule }, { nearMiss: () => nearestOf(rule, names.rules) });
  return null;
}

/** What a condition belongs to: a rule by its name, anything else by its key. */
function namedBy([section, at]: Path, { ruleAt }: Names): string {
  if (section === 'rules') return ruleAt[Number(at)] ?? '';
  return String(section === 'applies_when' ? section : at);
}
