import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import type { Dictionary } from '../vocabulary/dictionary.ts';
import { declaredObservations, listedObservations } from './list-observations.ts';
import type { Basis } from './based-on/basis.ts';
import type { Names } from './names.ts';
import type { Ladder } from './protocol.ts';
import { readLimits } from './read-limits.ts';
import type { WholeFile } from './based-on/whole-file.ts';

/** Words of the language, and of formulas, that cannot be names. */
export const reservedWords: ReadonlySet<string> = new Set(
  (
    'all any none at_least_of rule yes no true false null never missing at patient sets ' +
    'await break case catch class const continue debugger default delete do else enum export extends finally for function if import in ' +
    'instanceof new return super switch this throw try typeof var void while with yield let static implements interface package private ' +
    'protected public arguments eval'
  ).split(' '),
);

/** What stands beside a protocol's own text. */
interface Beside {
  readonly dictionary: Dictionary;
  readonly ladder: Ladder | null;
  readonly basis: Basis | null;
}

/** Gathers every name that a protocol declares or lists, and reports names that are used for two things. */
export function gatherNames(file: WholeFile, { dictionary, ladder, basis }: Beside, report: Report): Names {
  const declared = declaredObservations(file, dictionary, report);
  const observations = listedObservations(file, declared, report);
  const limits = readLimits(file, report);
  const ruleAt = file.rules.map(({ rule }) => rule);
  const names: Names = {
    declared,
    observations,
    unreadable: new Set([
      ...Object.keys(file.observations.declares ?? {}).filter((name) => !declared.has(name)),
      ...Object.keys(file.limits ?? {}).filter((name) => !limits.has(name)),
    ]),
    contradictions: dictionary.contradictions,
    limits,
    measures: new Set(Object.keys(file.measures ?? {})),
    rules: new Set(ruleAt),
    ruleAt,
    basis,
    sources: new Set(Object.keys(file.sources ?? {})),
    ladder,
  };
  if (!ladder) report('ladder_not_found', ['ladder'], { name: file.ladder });
  reportDoubleNames(file, dictionary, report);
  return names;
}

function reportDoubleNames(file: WholeFile, dictionary: Dictionary, report: Report): void {
  const first = new Map<string, string>();
  const use = (name: string, as: string, path: Path, part: 'key' | 'value'): void => {
    const before =
      first.get(name) ??
      (as !== 'rule' && as !== 'fault' && dictionary.observations.has(name)
        ? 'observation of the dictionary'
        : null);
    if (reservedWords.has(name)) report('reserved_word', path, { name }, { part });
    if (before !== null && before !== as)
      report('name_used_twice', path, { name, first: before, second: as }, { part });
    else if (before !== null) report(as === 'fault' ? 'fault_twice' : 'rule_twice', path, { name }, { part });
    first.set(name, as);
  };
  for (const name of Object.keys(file.observations.declares ?? {})) {
    use(name, 'observation', ['observations', 'declares', name], 'key');
  }
  for (const name of Object.keys(file.limits ?? {})) use(name, 'limit', ['limits', name], 'key');
  for (const name of Object.keys(file.measures ?? {})) use(name, 'measure', ['measures', name], 'key');
  file.faults?.forEach(({ fault }, index) => use(fault, 'fault', ['faults', index, 'fault'], 'value'));
  file.rules.forEach(({ rule }, index) => use(rule, 'rule', ['rules', index, 'rule'], 'value'));
}
