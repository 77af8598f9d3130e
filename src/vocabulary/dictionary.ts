import type { Report } from '../problems/problem.ts';
import type { DictionaryFile, Contradiction as ContradictionInFile } from './generated/dictionary-file.ts';
import { nearMiss } from './near-miss.ts';
import type { Contradiction, ObservationEntry } from './observation.ts';
import { isYes } from './read-choices.ts';
import { readObservation } from './read-observation.ts';

export { readObservation } from './read-observation.ts';

/** Everything that can be observed of a patient, in the order in which a nurse takes it. */
export interface Dictionary {
  readonly name: string;
  readonly observations: ReadonlyMap<string, ObservationEntry>;
  readonly contradictions: readonly Contradiction[];
}

/**
 * Reads a dictionary whose shape was checked. What could not be read is left out; the report has every problem, so a
 * dictionary with errors must not be used.
 *
 * `readDictionary(plain, report).observations.get('heart_rate')?.unit?.word` is `'/min'`.
 */
export function readDictionary(plain: DictionaryFile, report: Report): Dictionary {
  const sources = Object.keys(plain.sources ?? {});
  const observations = new Map<string, ObservationEntry>();
  for (const [name, each] of Object.entries(plain.observations)) {
    const path = ['observations', name];
    const entry = readObservation(name, each, path, report);
    if (entry) observations.set(name, entry);
    each.source?.forEach((source, index) => {
      if (sources.includes(source)) return;
      const near = nearMiss(
        source,
        sources.map((known) => ({ name: known })),
      );
      report('unknown_source', [...path, 'source', index], { name: source }, { nearMiss: near });
    });
  }
  const declared = new Set(Object.keys(plain.observations));
  const contradictions = (plain.contradictions ?? []).map((each, index) =>
    readContradiction(each, index, observations, declared, report),
  );
  return Object.freeze({
    name: plain.dictionary,
    observations,
    contradictions: Object.freeze(contradictions),
  });
}

function readContradiction(
  plain: ContradictionInFile,
  index: number,
  observations: ReadonlyMap<string, ObservationEntry>,
  declared: ReadonlySet<string>,
  report: Report,
): Contradiction {
  const path = ['contradictions', index];
  const { lower, higher, says } = plain;
  for (const key of ['lower', 'higher'] as const) {
    const name = plain[key];
    const entry = observations.get(name);
    if (entry && entry.kind !== 'number') report('contradiction_of_choice', [...path, key], { name });
    if (declared.has(name)) continue;
    const offered = [...observations.values()].filter(({ kind }) => kind === 'number');
    report('unknown_observation', [...path, key], { name }, { nearMiss: nearMiss(name, offered) });
  }
  const [low, high] = [observations.get(lower), observations.get(higher)];
  const numbers = low?.kind === 'number' && high?.kind === 'number';
  if (lower === higher) report('contradiction_of_one', [...path, 'higher'], { name: lower });
  else if (numbers && !(low.unit === high.unit && low.stepsPerUnit.equals(high.stepsPerUnit))) {
    report('contradiction_units', [...path, 'lower'], { lower, higher });
  }
  return Object.freeze({ lower, higher, mayBeEqual: isYes(plain.may_be_equal), says });
}
