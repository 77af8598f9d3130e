import type { DoubtedRule, OutcomeFault, UnsureReading as Reading } from '../shape/generated/types.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { FoundFault, UnsureReading } from '../series/bounds.ts';
import { actionInWords } from './advice.ts';
import { readByRules } from './read-by-rules.ts';
import type { RuleReaders } from './rule-readers.ts';
import { levelCalledFor } from './rule-to-json.ts';
import type { Situation } from './situation.ts';
import { stepsInJson, unitInJson } from './steps-in-json.ts';

/** The faults of technique that are there, each with the rules that would answer otherwise if the truth lay elsewhere. */
export function faultsToJson(situation: Situation): readonly OutcomeFault[] {
  const { compiled, bounds } = situation;
  const { faults } = bounds.facts;
  if (faults.length === 0) return [];
  const declared = new Map(compiled.protocol.faults.map((fault) => [fault.name, fault]));
  return faults.flatMap((found) => {
    const fault = declared.get(found.fault);
    if (!fault) return [];
    return {
      fault: fault.name,
      title: fault.title,
      says: fault.says,
      do: fault.do.map(actionInWords),
      readings: found.readings.map((reading) => readingToJson(reading, compiled.protocol)),
      changes: doubted(found, situation),
    };
  });
}

function readingToJson({ observation: name, read, truth }: UnsureReading, protocol: Protocol): Reading {
  const observation = protocol.observations.get(name);
  if (!observation) throw new RangeError(`the protocol does not read ${name}`);
  const inJson = (steps: number): number => stepsInJson(steps, observation);
  return {
    observation: name,
    ...(read[0] === read[1] ? { read: inJson(read[0]) } : {}),
    low: inJson(truth[0]),
    high: inJson(truth[1]),
    ...unitInJson(observation),
  };
}

function doubted({ readings }: FoundFault, { compiled, answers }: Situation): DoubtedRule[] {
  const unsure = new Set(readings.map(({ observation }) => observation));
  const { narrow, wide } = answers;
  const differs = ({ certain, possible }: RuleReaders): boolean =>
    certain(narrow.result) !== certain(wide.result) || possible(narrow.result) !== possible(wide.result);
  const reads = readByRules(compiled.protocol);
  return answers.rules.flatMap((answer): DoubtedRule[] => {
    const { name, title } = answer.rule;
    const readers = compiled.rules.get(name);
    if (!readers || !differs(readers)) return [];
    if (![...(reads.get(name) ?? [])].some((each) => unsure.has(each))) return [];
    const level = levelCalledFor(answer);
    const called = level === null ? undefined : compiled.protocol.ladder.levels[level]?.name;
    return [{ rule: name, title, ...(called === undefined ? {} : { level: called }) }];
  });
}
