import type * as File from '../../shape/generated/types.ts';
import type { Path } from '../../problems/place.ts';
import { nearestOf } from '../names.ts';
import { readLevel } from '../read-rule.ts';
import type { Reading } from '../reading.ts';
import { isObservation } from './is-observation.ts';
import { readWay } from './read-way.ts';
import { requirementKinds, type Asks } from './requirement.ts';

type Kind = (typeof requirementKinds)[number];

/** What a requirement asks; null, and reported, when it has no kind, several, or one that cannot be read. */
export function readAsks(
  written: File.Requirement | File.WardRequirement,
  path: Path,
  reading: Reading,
): Asks | null {
  const file: File.Requirement = written;
  const kinds = requirementKinds.filter((kind) => file[kind] !== undefined);
  const [kind] = kinds;
  if (kind === undefined || kinds.length > 1) {
    reading.report('one_kind_of_requirement', [...path, 'requirement'], { name: file.requirement, kinds });
    return null;
  }
  return ofKind(kind, file, [...path, kind], reading);
}

function ofKind(kind: Kind, file: File.Requirement, path: Path, reading: Reading): Asks | null {
  switch (kind) {
    case 'level_at_least':
    case 'level_at_most': {
      const level = readLevel(file[kind], path, reading);
      return level === null ? null : { kind, level };
    }
    case 'rule_met': {
      const rule = file.rule_met ?? '';
      return isRule(rule, path, reading) ? { kind, rule } : null;
    }
    case 'never_together': {
      const rules = file.never_together ?? [];
      const known = rules.map((rule, index) => isRule(rule, [...path, index], reading));
      return known.includes(false) ? null : { kind, rules };
    }
    case 'getting_worse_never_lowers': {
      const worse = file.getting_worse_never_lowers as File.GettingWorse;
      const way = readWay(worse, path, reading);
      return way && { kind, observation: worse.observation, way };
    }
    case 'nothing_hides':
      return readNothingHides(file.nothing_hides ?? {}, path, reading);
    default:
      if (kind === 'no_level' && file.where === undefined)
        reading.report('no_level_of_whom', path, { name: file.requirement }, { part: 'key' });
      return { kind };
  }
}

function isRule(name: string, path: Path, { names, report }: Reading): boolean {
  if (names.rules.has(name)) return true;
  report('unknown_rule', path, { name }, { nearMiss: () => nearestOf(name, names.rules) });
  return false;
}

function readNothingHides(
  { blank, except = [] }: File.NothingHides,
  path: Path,
  reading: Reading,
): Asks | null {
  const known = [
    ...(blank ?? []).map((name, index) => isObservation(name, [...path, 'blank', index], reading)),
    ...except.map((name, index) => isObservation(name, [...path, 'except', index], reading)),
  ];
  return known.includes(false) ? null : { kind: 'nothing_hides', blank: blank ?? null, except };
}
