import { wordsOfChoices } from '../../shape/plain-words.ts';
import type { Known } from '../known/known.ts';
import { entriesOf, partIn, textUnder, under, type Part } from '../sketch/sketch.ts';
import {
  choiceOffers,
  dimensionOf,
  durationOffers,
  isNumber,
  levelOffers,
  numberOffers,
  observationOffers,
  plainOffers,
  ruleOffers,
  unitOffers,
} from './named-offers.ts';
import type { Offer } from './offer.ts';
import { nameAbove, type Slot } from './slot.ts';

/** Everything that can stand as a value, or an item, at a place; units that can stand after a number are asked for apart. */
export function valuesAt(slot: Slot): Offer[] {
  if (slot.stated?.definition === 'expected_measure') return withoutValue();
  const special = named[`${slot.owner}.${slot.key}`] ?? named[`*.${slot.key}`];
  if (special) return special(slot);
  return slot.stated?.definition === 'observed' ? observed(slot) : stated(slot);
}

/** The words of the schema, where it allows only some. */
function stated({ stated: at }: Slot): Offer[] {
  if (!at?.schema.enum) return [];
  const says = at.own.description ?? at.schema.description ?? '';
  return wordsOfChoices(at.schema).map((label) => ({ label, what: 'word', says: [says] }));
}

const all = ({ known }: Slot): Offer[] => observationOffers(known, 'all');
const listed = ({ known }: Slot): Offer[] => observationOffers(known, 'listed');
const listedNumbers = ({ known }: Slot): Offer[] => observationOffers(known, 'listed', isNumber);
const rules = ({ known }: Slot): Offer[] => ruleOffers(known);
const levels = ({ known }: Slot): Offer[] => levelOffers(known);
const sources = ({ known }: Slot): Offer[] => plainOffers(known.sources, 'source');
const actions = ({ known }: Slot): Offer[] => plainOffers(known.actions, 'action');
const none: Offer = {
  label: 'none',
  what: 'word',
  says: ['No level: nothing calls for one, and nothing is settled.'],
};

/** A number to compare with: what measures the same as that which is compared. */
const compared = (slot: Slot): Offer[] => {
  const subject = subjectOf(slot);
  return numberOffers(slot.known, dimensionOf(subject, slot.known)).filter(({ label }) => label !== subject);
};

const protocols = ({ known }: Slot): Offer[] =>
  [...known.protocols.values()].map(({ name, title, edition }) => ({
    label: name,
    what: 'protocol',
    says: [title, `Edition ${edition}.`],
  }));

/** The edition of the protocol that is named beside it. */
const edition = ({ known, around }: Slot): Offer[] => {
  const named = known.protocols.get(textUnder(around, 'protocol'));
  return named
    ? [{ label: named.edition, what: 'word', says: [`The edition of ${named.name} as it stands.`] }]
    : [];
};

const ladder = ({ known }: Slot): Offer[] =>
  known.ladder === null
    ? []
    : [{ label: known.ladder, what: 'ladder', says: known.levels.map(({ title }) => title) }];

const subject = ({ known }: Slot): Offer[] =>
  known.subject === null
    ? []
    : [{ label: known.subject, what: 'protocol', says: ['What these cases are for.'] }];

/** The levels that an explanation can lower to: below the rule's own, never the lowest. */
const lowered = (slot: Slot): Offer[] => {
  const rule = textUnder(partIn(slot.sketch, slot.path.slice(0, 2)), 'level');
  const own = slot.known.levels.findIndex(({ name }) => name === rule);
  return levelOffers(slot.known).slice(1, own === -1 ? undefined : own);
};

/** Words that the file uses already for the same key: who sets a limit, on whose authority something is done. */
const used = (slot: Slot): Offer[] => {
  const words = new Set<string>();
  collect(slot.sketch, slot.key, words);
  return [...words].map((label) => ({ label, what: 'word', says: ['Used in this file already.'] }));
};

function collect(part: Part, key: string, into: Set<string>): void {
  if (part.kind === 'list') for (const item of part.items) collect(item, key, into);
  for (const entry of entriesOf(part)) {
    if (entry.key.text === key && entry.value.kind === 'text' && !/[\uE000]|^$/.test(entry.value.text))
      into.add(entry.value.text);
    else collect(entry.value, key, into);
  }
}

const units = (): Offer[] => unitOffers(null);

/** The unit of a limit or a measure: what is measured so where that can be seen, else any. */
const measureUnits = (slot: Slot): Offer[] => {
  const observation = ['highest', 'lowest', 'average', 'earliest', 'latest', 'change']
    .map((key) => textUnder(slot.around, key))
    .find((name) => name !== '');
  if (observation !== undefined) {
    const unit = slot.known.observations.get(observation)?.unit;
    return unitOffers(unit?.dimension ?? null, unit?.word ?? null);
  }
  const score = under(slot.around, 'score') ?? under(slot.around, 'count');
  return score ? unitOffers({}, 'points') : unitOffers(null);
};

/** What was observed, or stated: one of the choices of what it is about; a number is typed. */
function observed({ known, path }: Slot): Offer[] {
  const name = path.findLast((step) => typeof step === 'string' && known.observations.has(step));
  return choiceOffers(known, String(name ?? ''));
}

const withoutValue = (): Offer[] => [
  { label: 'missing', what: 'word', says: ['The measure has no value.'] },
  { label: 'never', what: 'word', says: ['Of minutes since: it never happened in the window.'] },
];

/** What is offered, by the part of the language and its key; `*` stands for any part. */
const named: Readonly<Record<string, (slot: Slot) => Offer[]>> = {
  'ProtocolFile.ladder': ladder,
  'WardFile.ladder': ladder,
  'observations.needs': all,
  'observations.helps': all,
  'condition.rule': rules,
  'comparison.below': compared,
  'comparison.above': compared,
  'comparison.at_most': compared,
  'comparison.at_least': compared,
  'comparison.between': compared,
  'comparison.is': (slot) => choiceOffers(slot.known, subjectOf(slot)),
  'comparison.one_of': (slot) => choiceOffers(slot.known, subjectOf(slot)),
  'limit.unit': units,
  'measure.unit': measureUnits,
  'observation.unit': units,
  'measure.formula': ({ known }) => numberOffers(known, null),
  'measure.first_known': ({ known }) => numberOffers(known, null),
  'measure.count': listed,
  'measure.minutes_since': listed,
  ...Object.fromEntries(
    ['highest', 'lowest', 'average', 'earliest', 'latest', 'change'].map((key) => [
      `measure.${key}`,
      listedNumbers,
    ]),
  ),
  'curve.of': ({ known }) => numberOffers(known, null, false),
  'choose_part.use': ({ known }) => numberOffers(known, null),
  'standing_fact.if_not_stated': (slot) => choiceOffers(slot.known, nameAbove(slot, 2)),
  'observed.value': observed,
  'stated.value': observed,
  'rule.level': levels,
  'explanation.level': lowered,
  '*.source': sources,
  'action.excludes': actions,
  'action.id': actions,
  '*.under': used,
  '*.set_by': used,
  '*.agreed_by': used,
  '*.who': used,
  'no_answer.tell': used,
  'based_on.protocol': protocols,
  'based_on.edition': edition,
  'withdrawal.rule': ({ known }) => ruleOffers(known).filter(({ label }) => known.inherited.rules.has(label)),
  'reads_with.protocol': protocols,
  'reads_with.edition': edition,
  'WardFile.never_together': actions,
  'CasesFile.protocol': subject,
  'WardCasesFile.ward': subject,
  'expect.met': rules,
  'expect.not_met': rules,
  'expect.undecided': rules,
  'expect.explained': rules,
  'expect.not_reliable': rules,
  'expect.faults': ({ known }) => plainOffers(known.faults, 'fault'),
  'expect.refused': listed,
  'expect.questioned': listed,
  'expect.take_first': listed,
  'expect.ask_first': listed,
  'expected_level.at_least': (slot) => [...levels(slot), none],
  'expected_level.could_be': levels,
  'expect.in_force': levels,
};

/** What a comparison is about: the key above the comparison's own. */
function subjectOf({ path }: Slot): string {
  const last = path.findLastIndex((step) => typeof step === 'string');
  return String(path[last - 1] ?? '');
}

/** Whether names stand inside the text at a place, among signs: in a formula. */
export const isFormula = ({ owner, key }: Slot): boolean => owner === 'measure' && key === 'formula';

/** The units that can stand after a number at a place; none where a plain number is meant. */
export function unitsAt(slot: Slot): Offer[] {
  const { owner, key, known, stated: at } = slot;
  if (at?.definition === 'duration') return durationOffers();
  const ofName = (name: string): Offer[] => {
    const dimension = dimensionOf(name, known);
    return dimension === null ? [] : unitOffers(dimension, unitOf(name, known));
  };
  if (owner === 'comparison') return ofName(subjectOf(slot));
  if (owner === 'amounts') return ofName(key);
  if (owner === 'band') return ofName(nameOfPart(slot));
  if (owner === 'SetFile' || owner === 'timed_set') return ofName(key);
  return [];
}

/** Of a band: what its points are given for. */
function nameOfPart({ path }: Slot): string {
  const score = path.lastIndexOf('score');
  return String(path[score + 1] ?? '');
}

function unitOf(name: string, { observations, limits, measures }: Known): string | null {
  return observations.get(name)?.unit?.word ?? limits.get(name)?.unit ?? measures.get(name)?.unit ?? null;
}
