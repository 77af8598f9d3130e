import type { Space } from './space.ts';
import { pieceAt, piecesOf, type Variable } from './variables.ts';

/** Which pieces of one variable may be taken, and how ordinary each is. */
export interface Preference {
  /** The value that is taken where nothing speaks against it. */
  readonly ordinary: number;
  /** The values that may be taken, from the first to the last; null for none. */
  readonly values: readonly [number, number] | null;
  /** The pieces without a value that may be taken, best first. */
  readonly lacks: readonly number[];
  /** Whether no value at all is rather taken: of what only helps, so that what is found is short. */
  readonly rathers: boolean;
}

export type Preferred = readonly Preference[];

/** Which values and which lacks of a variable may be taken; each value of a number is one stretch of them. */
export interface Allowed {
  readonly values: readonly [number, number] | null;
  readonly lacks: (piece: number) => boolean;
}

/** Values near the ordinary one first. `allowed` leaves pieces out. */
export function preferredPieces(
  { variables }: Space,
  allowed: (variable: Variable) => Allowed = everything,
): Preferred {
  return variables.map((variable) => {
    const { values, lacks } = allowed(variable);
    const { observation } = variable;
    const all = variable.lacks.map((_, index) => variable.values + index);
    return {
      ordinary: ordinaryPiece(variable),
      values,
      lacks: all.filter(lacks),
      rathers: observation.role === 'helps' || observation.ifNotStated !== null,
    };
  });
}

export const everything = ({ values }: Variable): Allowed => ({ values: [0, values - 1], lacks: () => true });

/** The most ordinary piece from one to another, both included, and how far it is from ordinary; null when none may be taken. */
export function bestIn(
  { ordinary, values, lacks, rathers }: Preference,
  from: number,
  to: number,
): { readonly piece: number; readonly far: number } | null {
  const lack = lacks.findIndex((piece) => piece >= from && piece <= to);
  const [low, high] = values ? [Math.max(from, values[0]), Math.min(to, values[1])] : [1, 0];
  const value = Math.min(high, Math.max(low, ordinary));
  const ofValue = low <= high ? { piece: value, far: Math.abs(value - ordinary) } : null;
  const ofLack = lack < 0 ? null : { piece: lacks[lack] as number, far: (rathers ? -1e9 : 1e9) + lack };
  if (!ofValue || !ofLack) return ofValue ?? ofLack;
  return ofLack.far < ofValue.far ? ofLack : ofValue;
}

/** The ordinary value of a variable; the first where there is none. */
export function ordinaryPiece(variable: Variable): number {
  const { observation, member } = variable;
  const { ordinary, kind, choices } = observation;
  if (kind === 'number') return typeof ordinary === 'number' ? pieceAt(variable, ordinary) : 0;
  const listed = Array.isArray(ordinary) ? (ordinary as readonly string[]) : [];
  if (member !== null) return listed.includes(member) ? 1 : 0;
  return kind === 'several'
    ? 0
    : Math.max(
        0,
        choices.findIndex(({ choice }) => listed.includes(choice)),
      );
}

/** A truth that no set decides may be either. */
export const eitherWay: Preference = { ordinary: 0, values: [0, 1], lacks: [], rathers: false };

/** The last piece of a variable. */
export const lastPiece = (variable: Variable | undefined): number => (variable ? piecesOf(variable) - 1 : 1);
