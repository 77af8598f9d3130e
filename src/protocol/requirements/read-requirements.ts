import type * as File from '../../shape/generated/types.ts';
import type { Path } from '../../problems/place.ts';
import { nearestOf } from '../names.ts';
import { readCondition } from '../read-condition.ts';
import { checkSources } from '../read-rule.ts';
import type { Reading } from '../reading.ts';
import { plainWords } from '../words.ts';
import { readAsks } from './read-asks.ts';
import type { Hazard, Requirement, RequirementsFile } from './requirement.ts';

/** What must always hold, and the hazards that this controls. */
export interface Requirements {
  readonly hazards: ReadonlyMap<string, Hazard>;
  readonly requirements: readonly Requirement[];
}

/** Reads both; what cannot be read is reported and left out. */
export function readRequirements(file: RequirementsFile, reading: Reading): Requirements {
  const written = Object.entries(file.hazards ?? {});
  const hazards = new Map(written.map(([name, each]): [string, Hazard] => [name, { name, ...each }]));
  const seen = new Set<string>();
  const all = file.must_always ?? [];
  const requirements = all.flatMap((each, index): Requirement[] => {
    const path = ['must_always', index];
    const { requirement: name } = each;
    if (seen.has(name)) reading.report('requirement_twice', [...path, 'requirement'], { name });
    seen.add(name);
    checkHazards(each.controls, hazards, path, reading);
    const read = readRequirement(each, path, reading);
    return read ? [read] : [];
  });
  const controlled = new Set(all.flatMap(({ controls }) => controls));
  for (const name of hazards.keys()) {
    if (controlled.has(name)) continue;
    reading.report('hazard_not_controlled', ['hazards', name], { name }, { part: 'key' });
  }
  return { hazards, requirements };
}

function checkHazards(
  controls: readonly string[],
  hazards: ReadonlyMap<string, Hazard>,
  path: Path,
  { report }: Reading,
): void {
  controls.forEach((name, index) => {
    if (hazards.has(name)) return;
    const nearMiss = nearestOf(name, [...hazards.keys()]);
    report('unknown_hazard', [...path, 'controls', index], { name }, { nearMiss });
  });
}

function readRequirement(
  file: File.Requirement | File.WardRequirement,
  path: Path,
  reading: Reading,
): Requirement | null {
  const where = file.where ? readCondition(file.where, [...path, 'where'], reading) : null;
  const asks = readAsks(file, path, reading);
  checkSources(file.source ?? [], [...path, 'source'], reading);
  if (!asks || (file.where && !where)) return null;
  return {
    name: file.requirement,
    from: null,
    title: file.title ?? plainWords(file.requirement),
    controls: file.controls,
    because: file.because ?? null,
    sources: file.source ?? [],
    where,
    limits: file.limits ?? 'within_bounds',
    asks,
    path,
  };
}
