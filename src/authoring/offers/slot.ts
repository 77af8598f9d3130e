import type { Path } from '../../problems/place.ts';
import { schemaAt, type Stated } from '../../shape/schema-at.ts';
import type { Known, WrittenKind } from '../known/known.ts';
import { partIn, type Part } from '../sketch/sketch.ts';

/** A place of a file: what can stand there is looked up by the part of the language that it belongs to. */
export interface Slot {
  readonly kind: WrittenKind;
  readonly known: Known;
  readonly sketch: Part;
  /** Of a key the path of its map; else of the value. */
  readonly path: Path;
  /** The definition of the map around it: `rule`, `comparison`; a map without one is named by its key: `ProtocolFile.limits`. */
  readonly owner: string;
  /** The key that leads to the value, through lists too; empty for a key itself. */
  readonly key: string;
  /** The map around it. */
  readonly around: Part | undefined;
  /** What is stated about the place itself; null where nothing can stand. */
  readonly stated: Stated | null;
}

/** Where a key can stand, in the map at a path. */
export function keySlot(kind: WrittenKind, path: Path, known: Known, sketch: Part): Slot {
  const stated = schemaAt(kind, path);
  return {
    kind,
    known,
    sketch,
    path,
    owner: ownerAt(kind, path),
    key: '',
    around: partIn(sketch, path),
    stated,
  };
}

/** Where a value or an item can stand, at a path. */
export function valueSlot(kind: WrittenKind, path: Path, known: Known, sketch: Part): Slot {
  const last = path.findLastIndex((step) => typeof step === 'string');
  const map = path.slice(0, Math.max(0, last));
  const owner = ownerAt(kind, map);
  const stated = schemaAt(kind, path);
  return {
    kind,
    known,
    sketch,
    path,
    owner,
    key: String(path[last] ?? ''),
    around: partIn(sketch, map),
    stated,
  };
}

/** What a map is called. */
function ownerAt(kind: WrittenKind, path: Path): string {
  const stated = schemaAt(kind, path);
  if (!stated) return '';
  const own = stated.definition ?? stated.schema.title;
  if (own !== undefined) return own;
  const last = path.findLastIndex((step) => typeof step === 'string');
  return last === -1 ? '' : `${ownerAt(kind, path.slice(0, last))}.${String(path[last])}`;
}

/** The name that stands as a key, so many steps above: whatever a comparison or a list of points is about. */
export const nameAbove = ({ path }: Slot, steps: number): string => String(path.at(-steps) ?? '');
