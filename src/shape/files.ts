import * as schemas from './generated/schemas.ts';
import type {
  CasesFile,
  DictionaryFile,
  LadderFile,
  ProtocolFile,
  SetFile,
  WardCasesFile,
  WardFile,
} from './generated/types.ts';
import * as validators from './generated/validators.js';
import type { Schema } from './schema.ts';
import type { Validator } from './validator.ts';

/** Every form of file that people write, by its kind. */
export interface Files {
  readonly protocol: ProtocolFile;
  readonly ladder: LadderFile;
  readonly ward: WardFile;
  readonly cases: CasesFile;
  readonly ward_cases: WardCasesFile;
  readonly set: SetFile;
  readonly dictionary: DictionaryFile;
}

export type Kind = keyof Files;

export const kinds: readonly Kind[] = [
  'protocol',
  'ladder',
  'ward',
  'cases',
  'ward_cases',
  'set',
  'dictionary',
];

/** The schema that states a form. */
export const schemaOf: Readonly<Record<Kind, Schema>> = {
  protocol: schemas.protocol,
  ladder: schemas.ladder,
  ward: schemas.ward,
  cases: schemas.cases,
  ward_cases: schemas.ward_cases,
  set: schemas.set,
  dictionary: schemas.dictionary,
};

/** The validator that was generated from it. */
export const validatorOf: Readonly<Record<Kind, Validator>> = {
  protocol: validators.protocol,
  ladder: validators.ladder,
  ward: validators.ward,
  cases: validators.cases,
  ward_cases: validators.ward_cases,
  set: validators.set,
  dictionary: validators.dictionary,
};

/** What one file is called in a sentence. */
export const titleOf: Readonly<Record<Kind, string>> = {
  protocol: 'this protocol',
  ladder: 'this ladder',
  ward: 'this ward policy',
  cases: 'this file of cases',
  ward_cases: 'this file of cases of a ward',
  set: 'this set',
  dictionary: 'this dictionary',
};
