import type * as File from '../shape/generated/types.ts';
import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import { nearestOf } from '../protocol/names.ts';
import type { Ladder, Protocol } from '../protocol/protocol.ts';
import type { ExpectedMeasure, Expectation } from './case.ts';

/** Reads what a case expects: every name exists, and nothing contradicts itself. */
export function readExpectation(
  file: File.Expect,
  path: Path,
  protocol: Protocol,
  report: Report,
): Expectation {
  const rules = new Set(protocol.rules.map(({ name }) => name));
  const observations = [...protocol.vocabulary.keys()];
  const names = (key: 'met' | 'not_met' | 'undecided' | 'explained' | 'not_reliable'): readonly string[] => {
    file[key]?.forEach((name, index) => {
      if (!rules.has(name))
        report('unknown_rule', [...path, key, index], { name }, { nearMiss: nearestOf(name, rules) });
    });
    return file[key] ?? [];
  };
  const observed = (key: 'refused' | 'questioned' | 'take_first' | 'ask_first'): readonly string[] => {
    file[key]?.forEach((name, index) => {
      if (observations.includes(name)) return;
      report(
        'unknown_observation',
        [...path, key, index],
        { name },
        { nearMiss: nearestOf(name, observations) },
      );
    });
    return file[key] ?? [];
  };
  const expectation = {
    level: readExpectedLevel(file.level ?? {}, [...path, 'level'], protocol.ladder, report),
    applies: applies(file.applies),
    met: names('met'),
    notMet: names('not_met'),
    undecided: names('undecided'),
    explained: names('explained'),
    faults: readFaults(file.faults ?? [], [...path, 'faults'], protocol, report),
    truth: readTruth(file.truth ?? {}, [...path, 'truth'], protocol, report),
    notReliable: names('not_reliable'),
    refused: observed('refused'),
    questioned: observed('questioned'),
    takeFirst: observed('take_first'),
    askFirst: observed('ask_first'),
    measures: readMeasures(file.measures ?? {}, [...path, 'measures'], protocol, report),
    nothingElseMet: yesNo(file.nothing_else_met) ?? false,
  };
  contradictions(expectation, path, report);
  return expectation;
}

/** The level that is expected: each name stands on the ladder. */
export function readExpectedLevel(
  file: File.ExpectedLevel,
  path: Path,
  ladder: Ladder,
  report: Report,
): Expectation['level'] {
  const levels = ladder.levels.map(({ name }) => name);
  const level = (key: 'at_least' | 'could_be'): string | null => {
    const name = file[key];
    if (name === undefined) return null;
    if (!levels.includes(name) && !(key === 'at_least' && name === 'none'))
      report('unknown_level', [...path, key], { name, levels }, { nearMiss: nearestOf(name, levels) });
    return name;
  };
  return { atLeast: level('at_least'), couldBe: level('could_be'), settled: yesNo(file.settled) };
}

/** Of numbers that the protocol reads. */
function readTruth(
  file: NonNullable<File.Expect['truth']>,
  path: Path,
  { observations }: Protocol,
  report: Report,
): Expectation['truth'] {
  const numbers = [...observations.values()].filter(({ kind }) => kind === 'number');
  const names = numbers.map(({ name }) => name);
  for (const name of Object.keys(file)) {
    if (names.includes(name)) continue;
    const extra = { part: 'key', nearMiss: nearestOf(name, names) } as const;
    report('unknown_observation', [...path, name], { name }, extra);
  }
  return new Map(Object.entries(file));
}

function readFaults(
  names: readonly string[],
  path: Path,
  { faults }: Protocol,
  report: Report,
): readonly string[] {
  const declared = new Set(faults.map(({ name }) => name));
  names.forEach((name, index) => {
    if (!declared.has(name))
      report('unknown_fault', [...path, index], { name }, { nearMiss: nearestOf(name, declared) });
  });
  return names;
}

function readMeasures(
  file: Record<string, File.ExpectedMeasure>,
  path: Path,
  { measures }: Protocol,
  report: Report,
): ReadonlyMap<string, ExpectedMeasure> {
  for (const name of Object.keys(file)) {
    if (measures.has(name)) continue;
    report(
      'unknown_measure',
      [...path, name],
      { name },
      { part: 'key', nearMiss: nearestOf(name, measures.keys()) },
    );
  }
  return new Map(Object.entries(file) as [string, ExpectedMeasure][]);
}

/** A rule is met, not met or undecided, and only one of these. */
function contradictions({ met, notMet, undecided }: Expectation, path: Path, report: Report): void {
  const states = [
    ['met', 'met', met],
    ['not_met', 'not met', notMet],
    ['undecided', 'undecided', undecided],
  ] as const;
  const seen = new Map<string, string>();
  for (const [key, words, names] of states) {
    names.forEach((name, index) => {
      const first = seen.get(name);
      if (first !== undefined)
        report('case_contradicts_itself', [...path, key, index], { name, first, second: words });
      seen.set(name, words);
    });
  }
}

export const yesNo = (written: unknown): boolean | null =>
  written === undefined ? null : written === 'yes' || written === true;

function applies(written: File.Expect['applies']): Expectation['applies'] {
  if (written === undefined || written === 'unsure') return written ?? null;
  return written === 'yes' || written === true ? 'yes' : 'no';
}
