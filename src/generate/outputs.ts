import { dictionaryOutput } from './dictionary-output.ts';
import { dictionaryTypesOutput, typesOutput } from './types-output.ts';
import { validatorTypesOutput, validatorsOutput } from './validators-output.ts';
import { measureKindsPage } from './measure-kinds-page.ts';
import { observationsPage } from './observations-page.ts';
import { problemsPage } from './problems-page.ts';
import type { Output } from './output.ts';

/** Every file that is generated. One more: a small file beside these, and a line here. */
export const outputs: readonly Output[] = [
  dictionaryTypesOutput,
  typesOutput,
  validatorsOutput,
  validatorTypesOutput,
  dictionaryOutput,
  observationsPage,
  problemsPage,
  measureKindsPage,
];
