import { schemaAt } from '../../shape/schema-at.ts';
import type { ObservationEntry } from '../../vocabulary/observation.ts';
import { entriesOf, textUnder } from '../sketch/sketch.ts';
import {
  choiceOffers,
  isNumber,
  levelOffers,
  limitOffers,
  measureOffers,
  observationOffers,
} from './named-offers.ts';
import type { Offer } from './offer.ts';
import { nameAbove, type Slot } from './slot.ts';

/** Everything that can stand as a key at a place: names first, then the words of the language. */
export function keysAt(slot: Slot): Offer[] {
  return [...namedKeys(slot), ...fixedKeys(slot)];
}

/** The words that the schema states, with what it says of each; those that fit beside what stands there. */
function fixedKeys(slot: Slot): Offer[] {
  const properties = slot.stated?.schema.properties ?? {};
  const fits = fitting(slot);
  return Object.entries(properties).flatMap(([label, schema]): Offer[] =>
    fits(label)
      ? [
          {
            label,
            what: slot.owner === 'comparison' ? 'comparison' : 'key',
            says: [schemaAt(slot.kind, [...slot.path, label])?.own.description ?? schema.description ?? ''],
          },
        ]
      : [],
  );
}

/** Names that can stand as keys. */
function namedKeys(slot: Slot): Offer[] {
  const { known, owner } = slot;
  switch (owner) {
    case 'condition':
      return subjects(slot);
    case 'ProtocolFile.standing':
      return observationOffers(known, 'all').filter(({ label }) => isFree(label, slot));
    case 'amounts':
    case 'expect.truth':
      return observationOffers(known, 'listed', isNumber);
    case 'measure.score':
      return [
        ...observationOffers(known, 'listed', ({ kind }) => kind !== 'several'),
        ...measureOffers(known),
      ];
    case 'score_part':
      return choiceOffers(known, nameAbove(slot, 1));
    case 'based_on.limits':
      return limitOffers(known).filter(({ label }) => known.inherited.limits.has(label));
    case 'SetFile':
    case 'timed_set':
      return observationOffers(known, 'all');
    case 'patient.standing':
      return observationOffers(
        known,
        'all',
        ({ standing, name }) => standing || known.listed.get(name) === 'standing',
      );
    case 'patient.limits':
      return limitOffers(known).filter(({ label }) => known.limits.get(label)?.between.length === 2);
    case 'expect.measures':
      return measureOffers(known);
    case 'WardFile.plans':
      return choiceOffers(known, 'escalation_plan');
    case 'plan.levels':
      return levelOffers(known);
    default:
      return [];
  }
}

/** An observation has one role: what is listed already is not listed as standing, unless it stands there. */
const isFree = (name: string, { known }: Slot): boolean =>
  (known.listed.get(name) ?? 'standing') === 'standing';

/** What a condition can ask about: before any rule of what one set says, else of the whole protocol. */
function subjects(slot: Slot): Offer[] {
  const { known, kind, path } = slot;
  if (kind === 'ward' || path[0] === 'applies_when') return observationOffers(known, 'all');
  const observations = observationOffers(known, 'listed');
  return readsOneSet(path) ? observations : [...observations, ...measureOffers(known)];
}

const readsOneSet = (path: Slot['path']): boolean =>
  path[0] === 'faults' || path.includes('where') || path.includes('held');

/** Which words of the language fit beside what stands there. */
function fitting(slot: Slot): (key: string) => boolean {
  const { owner, around, known, path, kind } = slot;
  switch (owner) {
    case 'condition': {
      const beforeRules = kind === 'ward' || path[0] !== 'rules';
      return (key) => key !== 'rule' || !beforeRules || path[0] === 'exactly_one_of';
    }
    case 'comparison':
      return comparisonsFor(
        known.observations.get(nameAbove(slot, 1)),
        known.measures.has(nameAbove(slot, 1)),
      );
    case 'measure':
      return measureKeys(entriesOf(around).map(({ key }) => key.text));
    case 'observation':
      return observationKeys(textUnder(around, 'kind'));
    case 'band':
      return oneOfTwo('at_most', 'below', slot);
    case 'case':
      return oneOfTwo('given', 'series', slot);
    case 'SetFile':
      return (key) => key !== 'sets' || nameAbove(slot, 1) === 'series';
    default:
      return () => true;
  }
}

/** Two keys of which only one can stand there. */
function oneOfTwo(first: string, second: string, { around }: Slot): (key: string) => boolean {
  const has = (key: string): boolean => entriesOf(around).some((entry) => entry.key.text === key);
  return (key) => !(key === first && has(second)) && !(key === second && has(first));
}

const ofNumbers = ['below', 'above', 'at_most', 'at_least', 'between'];

function comparisonsFor(entry: ObservationEntry | undefined, isMeasure: boolean): (key: string) => boolean {
  if (isMeasure) return (key) => ofNumbers.includes(key) || key === 'accepted';
  if (!entry) return () => true;
  const fit = ['known', 'unobtainable', 'accepted'];
  if (entry.kind === 'number') fit.push(...ofNumbers);
  else fit.push('one_of', ...(entry.kind === 'several' ? [] : ['is']));
  return (key) => fit.includes(key);
}

const worked = ['formula', 'curve', 'score', 'choose', 'first_known'];
const lookBacks = [
  'highest',
  'lowest',
  'average',
  'earliest',
  'latest',
  'change',
  'count',
  'minutes_since',
  'held',
];
const ofLookBacks = ['over', 'where', 'present_set', 'longest_gap'];

function measureKeys(beside: readonly string[]): (key: string) => boolean {
  const kind = beside.find((key) => worked.includes(key) || lookBacks.includes(key));
  if (kind === undefined) return (key) => !ofLookBacks.includes(key);
  return (key) => {
    if (worked.includes(key) || lookBacks.includes(key)) return key === kind;
    if (key === 'longest_gap') return kind === 'held';
    if (key === 'where' || key === 'present_set') return lookBacks.includes(kind) && kind !== 'held';
    return key !== 'over' || lookBacks.includes(kind);
  };
}

const ofNumberEntries = ['unit', 'step', 'possible', 'plausible'];

function observationKeys(kind: string): (key: string) => boolean {
  if (kind === '') return () => true;
  if (kind === 'number') return (key) => key !== 'choices';
  return (key) =>
    !ofNumberEntries.includes(key) &&
    !(key === 'choices' && kind === 'yes_no') &&
    !(key === 'if_not_stated' && kind === 'several');
}
