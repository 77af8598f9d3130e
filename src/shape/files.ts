import { schemas } from './schemas.ts';
import type {
  ApproversFile,
  CasesFile,
  DictionaryFile,
  EditionFile,
  LadderFile,
  ProtocolFile,
  RecordEntry,
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
  readonly edition: EditionFile;
  readonly approvers: ApproversFile;
  readonly record_entry: RecordEntry;
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
  'edition',
  'approvers',
  'record_entry',
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
  edition: schemas.edition,
  approvers: schemas.approvers,
  record_entry: schemas.record_entry,
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
  edition: validators.edition,
  approvers: validators.approvers,
  record_entry: validators.record_entry,
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
  edition: 'this sealed edition',
  approvers: 'this list of approvers',
  record_entry: 'this entry of the record',
};
