import { schemaAt } from '../shape/schema-at.ts';
import type { Schema } from '../shape/schema.ts';
import { gatherKnown } from './known/gather-known.ts';
import type { AuthoringSurroundings, WrittenKind } from './known/known.ts';
import { keysAt } from './offers/keys-at.ts';
import type { Offer, OfferKind } from './offers/offer.ts';
import { rankedOffers } from './offers/ranked-offers.ts';
import { keySlot, valueSlot, type Slot } from './offers/slot.ts';
import { isFormula, unitsAt, valuesAt } from './offers/values-at.ts';
import { placeAt, type CaretPlace } from './sketch/place-at.ts';
import { entriesOf, textsOf } from './sketch/sketch.ts';
import { lineEndOf, plainText } from './yaml-text.ts';

/** A text with a caret in it, and what stands around it. */
export interface AuthoringQuestion {
  readonly kind: WrittenKind;
  readonly text: string;
  /** Of the caret, in UTF-16 units. */
  readonly offset: number;
  readonly surroundings: AuthoringSurroundings;
}

/** Something that can be put in where the caret is: it takes the place of what stands from `from` to before `to`. */
export interface Completion {
  readonly label: string;
  readonly insert: string;
  /** Where in `insert` the caret stands afterwards. */
  readonly caret: number;
  readonly from: number;
  readonly to: number;
  readonly what: OfferKind;
  /** What it is, in sentences. */
  readonly says: string;
}

/**
 * What can stand where the caret is, the likeliest first: the words of the language and the names, choices and units that the file and its
 * surroundings declare. Only what fits, and only what begins like the word that is half-typed; that word is replaced whole. The
 * text need not be well.
 *
 * In `when: { systolic: { bel` it is `below`, with what the schema says of it.
 */
export function completionsAt({
  kind,
  text,
  offset,
  surroundings,
}: AuthoringQuestion): readonly Completion[] {
  const place = placeAt(text, offset);
  if (!place || place.style === 'block') return [];
  const known = gatherKnown(kind, place.sketch, surroundings);
  if (place.role === 'key')
    return keyCompletions(keySlot(kind, place.path, known, place.sketch), place, text, null);
  const slot = valueSlot(kind, place.path, known, place.sketch);
  const types = [slot.stated?.schema.type ?? []].flat();
  const values = valuesAt(slot);
  if (isFormula(slot)) return inFormula(values, text, offset);
  const units = unitsAfterNumber(slot, place, text);
  if (units) return units;
  if (types.length === 1 && types[0] === 'array' && place.role !== 'item')
    return itemCompletions(slot, place, text);
  const keys =
    types.includes('object') && values.length === 0
      ? keyCompletions(
          keySlot(kind, place.path, known, place.sketch),
          place,
          text,
          place.ownLine || place.role === 'item',
        )
      : [];
  return [...valueCompletions(unlisted(values, place), place, text), ...keys];
}

/** Names that stand in a list already are not listed again. */
function unlisted(offers: readonly Offer[], { around }: CaretPlace): readonly Offer[] {
  if (around?.kind !== 'list') return offers;
  const there = new Set(textsOf(around));
  return offers.filter(({ label }) => !there.has(label));
}

function valueCompletions(offers: readonly Offer[], place: CaretPlace, text: string): Completion[] {
  const lead = needsSpace(text, place.from) ? ' ' : '';
  return rankedOffers(offers, place.before).map((offer) => {
    const insert = lead + plainText(offer.label);
    return completion(offer, insert, insert.length, place.from, place.to);
  });
}

/** Directly after a colon or a dash a space comes first. */
const needsSpace = (text: string, from: number): boolean => /[:-]/.test(text[from - 1] ?? '');

function completion(
  { label, what, says }: Offer,
  insert: string,
  caret: number,
  from: number,
  to: number,
): Completion {
  return { label, insert, caret, from, to, what, says: says.join(' ') };
}

/** A list where nothing stands yet: its first item, with the brackets or the dash that it needs. */
function itemCompletions(slot: Slot, place: CaretPlace, text: string): Completion[] {
  const { known, kind, path, sketch } = slot;
  const item = valueSlot(kind, [...path, 0], known, sketch);
  const lead = needsSpace(text, place.from) ? ' ' : '';
  const [open, close] = place.ownLine ? ['- ', ''] : [`${lead}[`, ']'];
  const values = rankedOffers(valuesAt(item), place.before).map((offer) => {
    const insert = open + plainText(offer.label);
    return completion(offer, insert + close, insert.length, place.from, place.to);
  });
  if (values.length > 0 || !place.ownLine) return values;
  const keys = keySlot(kind, [...path, 0], known, sketch);
  return rankedOffers(keysAt(keys), place.before).map((offer) => {
    const { insert, caret } = keyText(offer.label, keys, place.column + 2, false, text);
    return completion(offer, open + insert, open.length + caret, place.from, place.to);
  });
}

/**
 * Keys that can stand at the caret. `block` is null where the map is there already; else whether a new one is begun on a line of its
 * own, or in brackets.
 */
function keyCompletions(slot: Slot, place: CaretPlace, text: string, block: boolean | null): Completion[] {
  const map = block === null && place.around?.kind === 'map' ? place.around : null;
  const there = new Set(entriesOf(map ?? undefined).map(({ key }) => key.text));
  const offers = rankedOffers(
    keysAt(slot).filter(({ label }) => !there.has(label)),
    place.before,
  );
  const hasColon = block === null && place.entry?.colon === true;
  const flow = map ? map.flow : block === false;
  return offers.map((offer) => {
    if (hasColon) return completion(offer, offer.label, offer.label.length, place.from, place.to);
    const { insert, caret } = keyText(offer.label, slot, place.column, flow, text);
    if (block !== false) return completion(offer, insert, caret, place.from, place.to);
    const lead = needsSpace(text, place.from) ? ' { ' : '{ ';
    return completion(offer, `${lead}${insert} }`, lead.length + caret, place.from, place.to);
  });
}

/** A key with its colon and the brackets or the next line that its value begins with. */
function keyText(
  key: string,
  { kind, path }: Slot,
  column: number,
  flow: boolean,
  text: string,
): { insert: string; caret: number } {
  const stated = schemaAt(kind, [...path, key]);
  const types = [stated?.schema.type ?? []].flat();
  const items = schemaAt(kind, [...path, key, 0])?.schema;
  const deeper = `${lineEndOf(text)}${' '.repeat(column + 2)}`;
  const lead = (after: string, before = ''): { insert: string; caret: number } => ({
    insert: `${key}:${after}${before}`,
    caret: key.length + 1 + after.length,
  });
  if (types.length !== 1) return lead(' ');
  if (types[0] === 'array') {
    if (isPlain(items)) return lead(' [', ']');
    return flow ? lead(' [{ ', ' }]') : lead(`${deeper}- `);
  }
  if (types[0] !== 'object') return lead(' ');
  return !flow && path.length === 0 ? lead(deeper) : lead(' { ', ' }');
}

const isPlain = (items: Schema | undefined): boolean => {
  const types = [items?.type ?? []].flat();
  return !types.includes('object') && !types.includes('array');
};

/** In a formula the name around the caret is replaced; signs and numbers stay. */
function inFormula(offers: readonly Offer[], text: string, offset: number): Completion[] {
  const [before = ''] = /[a-z0-9_]*$/i.exec(text.slice(Math.max(0, offset - 80), offset)) ?? [];
  const [after = ''] = /^[a-z0-9_]*/i.exec(text.slice(offset, offset + 80)) ?? [];
  if (/^[0-9]/.test(before)) return [];
  const [from, to] = [offset - before.length, offset + after.length];
  const lead = needsSpace(text, from) && text[from - 1] === ':' ? ' ' : '';
  return rankedOffers(offers, before).map((offer) =>
    completion(offer, lead + offer.label, lead.length + offer.label.length, from, to),
  );
}

/** After a number the units that fit; null where no number stands. */
function unitsAfterNumber(slot: Slot, place: CaretPlace, text: string): Completion[] | null {
  const [number, , space = ''] = /^(-?[0-9]+(?:\.[0-9]+)?)( *)/.exec(place.before) ?? [];
  if (number === undefined) return null;
  const written = text.slice(place.from, place.to);
  const quote = /^["']/.exec(written)?.[0] ?? '';
  const from = place.from + quote.length + number.length;
  const closed = quote !== '' && written.length > 1 && written.endsWith(quote);
  const to = closed ? place.to - 1 : place.to;
  return rankedOffers(unitsAt(slot), place.before.slice(number.length)).map((offer) => {
    const insert = `${space === '' ? ' ' : ''}${offer.label}`;
    return completion(offer, insert, insert.length, from, Math.max(from, to));
  });
}
