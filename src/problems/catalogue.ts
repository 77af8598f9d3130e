import { textWording } from './wording/text.ts';
import { shapeWording } from './wording/shape.ts';
import { dictionaryWording } from './wording/dictionary.ts';
import { meaningWording } from './wording/meaning.ts';
import { basedOnWording } from './wording/based-on.ts';
import { setWording } from './wording/set.ts';
import { casesWording } from './wording/cases.ts';
import { faultsWording } from './wording/faults.ts';
import { wardWording } from './wording/ward.ts';
import { editionsWording } from './wording/editions.ts';
import { recordWording } from './wording/record.ts';
import { requirementsWording } from './wording/requirements.ts';
import { tableWording } from './wording/table.ts';

/**
 * All wording of problems.
 *
 * Facts are typed by their entry, so that a forgotten fact does not compile. Sentences are worded for a nurse: the author's
 * own words in quotation marks, numbers with their units.
 */
export const catalogue = {
  ...textWording,
  ...shapeWording,
  ...dictionaryWording,
  ...meaningWording,
  ...basedOnWording,
  ...setWording,
  ...casesWording,
  ...faultsWording,
  ...wardWording,
  ...editionsWording,
  ...recordWording,
  ...requirementsWording,
  ...tableWording,
} as const;

export type Code = keyof typeof catalogue;
export type Facts<C extends Code> = Parameters<(typeof catalogue)[C]['says']>[0];
