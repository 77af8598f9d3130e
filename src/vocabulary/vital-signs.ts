import { reporter, type Finding } from '../problems/problem.ts';
import { readDictionary, type Dictionary } from './dictionary.ts';
import { vitalSigns as file } from './generated/vital-signs.ts';

/** The kit's own dictionary, schema/vital_signs.yaml. */
export const vitalSigns: Dictionary = read();

function read(): Dictionary {
  const findings: Finding[] = [];
  const dictionary = readDictionary(file, reporter(findings));
  if (findings.length > 0)
    throw new Error(`schema/vital_signs.yaml has problems: ${JSON.stringify(findings[0])}`);
  return dictionary;
}
