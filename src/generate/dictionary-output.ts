import { schemaChecker } from './validators-output.ts';
import { toPlain } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { showProblem } from '../problems/show-problem.ts';
import { banner, type Inputs, type Output } from './output.ts';

const file = 'schema/vital_signs.yaml';

/** The dictionary as plain data, so that nothing reads a file to know what a heart rate is. */
export const dictionaryOutput: Output = {
  path: 'src/vocabulary/generated/vital-signs.ts',
  make(inputs) {
    return `${banner(file)}import type { DictionaryFile } from './dictionary-file.ts';

export const vitalSigns: DictionaryFile = frozen(${JSON.stringify(plainDictionary(inputs))});

function frozen<Part>(part: Part): Part {
  if (typeof part === 'object' && part !== null) Object.values(part).forEach(frozen);
  return Object.freeze(part);
}
`;
  },
};

/** schema/vital_signs.yaml as plain data, its shape checked. */
export function plainDictionary(inputs: Inputs): unknown {
  const { document, problems } = yamlToDocument(file, inputs.vitalSigns);
  if (!document) throw new Error(problems.map(showProblem).join('\n'));
  const plain = toPlain(document.root);
  const checker = schemaChecker(inputs);
  if (!checker.validate('dictionary.schema.json', plain)) {
    throw new Error(`${file}: ${checker.errorsText(undefined, { separator: '\n' })}`);
  }
  return plain;
}
