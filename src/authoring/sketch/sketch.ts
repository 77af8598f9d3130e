/**
 * A sketch of a YAML text that may be half-typed: what can be made out of it, each part with its place.
 *
 * A sketch is only for completion, hover and the names that are offered there. Whether a text is well, and what it means, is
 * asked of the document alone.
 */
export type Part = MapPart | ListPart | TextPart;

interface Placed {
  /** Offset of the first character. */
  readonly from: number;
  /** Offset after the last character. */
  readonly to: number;
}

export interface MapPart extends Placed {
  readonly kind: 'map';
  readonly flow: boolean;
  readonly entries: readonly Entry[];
}

export interface ListPart extends Placed {
  readonly kind: 'list';
  readonly flow: boolean;
  readonly items: readonly Part[];
}

export interface TextPart extends Placed {
  readonly kind: 'text';
  /** Without its quotation marks; empty where nothing is written. */
  readonly text: string;
  /** How it is written; `none` where nothing is. */
  readonly style: 'plain' | 'single' | 'double' | 'block' | 'none';
}

/** A key, half-typed perhaps: then there is no colon yet. */
export interface Entry {
  readonly key: TextPart;
  readonly colon: boolean;
  readonly value: Part;
}

/** The part under a key of a map. */
export function under(part: Part | undefined, key: string): Part | undefined {
  if (part?.kind !== 'map') return undefined;
  return part.entries.find((entry) => entry.key.text === key)?.value;
}

/** The part at a path. */
export function partIn(root: Part, path: readonly (string | number)[]): Part | undefined {
  let part: Part | undefined = root;
  for (const step of path) {
    part = part?.kind === 'list' ? part.items[Number(step)] : under(part, String(step));
  }
  return part;
}

/** The text under a key; empty where there is none. */
export function textUnder(part: Part | undefined, key: string): string {
  const found = under(part, key);
  return found?.kind === 'text' ? found.text : '';
}

/** The texts of a list; none where there is no list. */
export function textsOf(part: Part | undefined): string[] {
  if (part?.kind !== 'list') return [];
  return part.items.flatMap((item) => (item.kind === 'text' && item.text !== '' ? [item.text] : []));
}

/** The entries of a map whose key has been written. */
export function entriesOf(part: Part | undefined): readonly Entry[] {
  return part?.kind === 'map' ? part.entries.filter(({ key }) => key.text !== '') : [];
}

/** The items of a list. */
export const itemsOf = (part: Part | undefined): readonly Part[] => (part?.kind === 'list' ? part.items : []);
