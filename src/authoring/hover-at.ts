import { parseQuantity } from '../vocabulary/quantity.ts';
import type { AuthoringQuestion } from './completions-at.ts';
import { gatherKnown } from './known/gather-known.ts';
import type { Known } from './known/known.ts';
import { describeLimit, describeMeasure, describeObservation, describeRule } from './offers/describe.ts';
import { keysAt } from './offers/keys-at.ts';
import type { Offer } from './offers/offer.ts';
import { keySlot, nameAbove, valueSlot, type Slot } from './offers/slot.ts';
import { isFormula, valuesAt } from './offers/values-at.ts';
import { wordAt, type WordPlace } from './sketch/place-at.ts';
import type { TextPart } from './sketch/sketch.ts';
import { textToSketch } from './sketch/text-to-sketch.ts';

/** What a word of a text means, and where the word stands. */
export interface Hover {
  readonly from: number;
  readonly to: number;
  /** Sentence by sentence; never empty. */
  readonly says: readonly string[];
}

/**
 * What the word at an offset means: a key by the schema; a name by what declares it, with unit, step and ranges; a number by what it is
 * compared with. Null where there is nothing to say. The text need not be well.
 *
 * At `systolic` it is its title, its unit and step, its possible range and where it is questioned.
 */
export function hoverAt({ kind, text, offset, surroundings }: AuthoringQuestion): Hover | null {
  const sketch = textToSketch(text);
  const place = wordAt(sketch, offset);
  if (!place) return null;
  const known = gatherKnown(kind, sketch, surroundings);
  const slot =
    place.role === 'key'
      ? keySlot(kind, place.path, known, sketch)
      : valueSlot(kind, place.path, known, sketch);
  if (isFormula(slot)) return inFormula(slot, text, offset);
  const { from, to } = place.part;
  const says = place.role === 'key' ? ofKey(slot, place.part) : ofValue(slot, place);
  return says.length === 0 ? null : { from, to, says };
}

const saidOf = (offers: readonly Offer[], label: string): readonly string[] =>
  (offers.find((offer) => offer.label === label)?.says ?? []).filter((each) => each !== '');

/** A word of the language by the schema; a name that is declared here, or asked about here, by what it is. */
function ofKey(slot: Slot, { text }: TextPart): readonly string[] {
  const said = saidOf(keysAt(slot), text);
  if (said.length > 0) return said;
  const names = ['condition', 'measure.score', 'amounts', 'SetFile', 'timed_set', 'ProtocolFile.standing'];
  const declares = [
    'ProtocolFile.limits',
    'ProtocolFile.measures',
    'observations.declares',
    'based_on.limits',
  ];
  const named = [...names, ...declares].includes(slot.owner) ? ofName(text, slot.known) : [];
  if (named.length > 0) return named;
  const stated = slot.stated?.schema.properties?.[text];
  return stated?.description === undefined ? [] : [stated.description];
}

function ofName(name: string, known: Known): readonly string[] {
  const observation = known.observations.get(name);
  if (observation) return describeObservation(observation);
  const measure = known.measures.get(name);
  if (measure) return describeMeasure(measure);
  const limit = known.limits.get(name);
  return limit ? describeLimit(limit) : [];
}

function ofValue(slot: Slot, { part, role }: WordPlace): readonly string[] {
  const said = saidOf(valuesAt(slot), part.text);
  if (said.length > 0) return said;
  const { owner, key, known } = slot;
  const rule = owner === 'rule' && key === 'rule' ? known.rules.get(part.text) : undefined;
  if (rule) return describeRule(rule, known);
  const isCompared = ['comparison', 'amounts', 'SetFile', 'timed_set', 'band'].includes(owner);
  if (isCompared && !('problem' in parseQuantity(part.text))) return ofNumber(slot);
  const named = isCompared || ['observations', 'expect'].includes(owner) ? ofName(part.text, known) : [];
  if (named.length > 0) return named;
  // A long text needs no word about its key: the key itself has it.
  const isWord = role === 'value' && part.style === 'plain' && !part.text.includes(' ');
  const description = slot.stated?.own.description;
  return isWord && description !== undefined ? [description] : [];
}

/** A number by what it is a number of. */
function ofNumber(slot: Slot): readonly string[] {
  const { owner, path, known, key } = slot;
  if (owner === 'comparison') {
    const last = path.findLastIndex((step) => typeof step === 'string');
    return ofName(String(path[last - 1] ?? ''), known);
  }
  if (owner === 'band') return ofName(String(path[path.lastIndexOf('score') + 1] ?? ''), known);
  return ofName(owner === 'amounts' ? nameAbove(slot, 1) : key, known);
}

/** In a formula: the name that the pointer stands on. */
function inFormula({ known }: Slot, text: string, offset: number): Hover | null {
  const [before = ''] = /[a-z0-9_]*$/i.exec(text.slice(Math.max(0, offset - 80), offset)) ?? [];
  const [after = ''] = /^[a-z0-9_]*/i.exec(text.slice(offset, offset + 80)) ?? [];
  const says = ofName(before + after, known);
  return says.length === 0 ? null : { from: offset - before.length, to: offset + after.length, says };
}
