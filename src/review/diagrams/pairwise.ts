/** An operation on two values at the ends of diagrams. */
export interface Pairwise {
  readonly name: string;
  readonly of: (left: number, right: number) => number;
  /** Whether it is the same the other way round. */
  readonly commutes: boolean;
  /** What the result is as soon as two diagrams are so, by their numbers; −1 while nobody can tell. 0 and 1 are the two truths. */
  readonly settles?: (left: number, right: number) => number;
}

/** Of truths, as are those below. */
export const both: Pairwise = {
  name: 'and',
  of: (left, right) => (left !== 0 && right !== 0 ? 1 : 0),
  commutes: true,
  settles: (left, right) => (left === 0 ? 0 : left === 1 || left === right ? right : -1),
};

export const either: Pairwise = {
  name: 'or',
  of: (left, right) => (left !== 0 || right !== 0 ? 1 : 0),
  commutes: true,
  settles: (left, right) => (left === 1 ? 1 : left === 0 || left === right ? right : -1),
};

/** Of any numbers. */
export const differs: Pairwise = {
  name: 'differs',
  of: (left, right) => (left === right ? 0 : 1),
  commutes: true,
  settles: (left, right) => (left === right ? 0 : -1),
};

export const plus: Pairwise = { name: '+', of: (left, right) => left + right, commutes: true };
export const minus: Pairwise = { name: '-', of: (left, right) => left - right, commutes: false };
export const times: Pairwise = { name: '*', of: (left, right) => left * right, commutes: true };
export const lower: Pairwise = { name: 'min', of: (left, right) => Math.min(left, right), commutes: true };
export const higher: Pairwise = { name: 'max', of: (left, right) => Math.max(left, right), commutes: true };
export const below: Pairwise = { name: '<', of: (left, right) => (left < right ? 1 : 0), commutes: false };
export const atMost: Pairwise = {
  name: '<=',
  of: (left, right) => (left <= right ? 1 : 0),
  commutes: false,
};
