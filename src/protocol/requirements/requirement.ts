import type * as File from '../../shape/generated/types.ts';
import type { Path } from '../../problems/place.ts';
import type { Condition } from '../condition.ts';

/** The part of a file, of a protocol, a ladder or a ward policy, that states what must always hold. */
export interface RequirementsFile {
  readonly hazards?: Readonly<Record<string, File.Hazard>>;
  readonly must_always?: readonly (File.Requirement | File.WardRequirement)[];
}

/** What can go wrong for a patient. */
export interface Hazard {
  readonly name: string;
  readonly harm: string;
  readonly severity: 'slight' | 'serious' | 'life_threatening';
  readonly owner: string;
}

/** What must hold for every possible set. */
export interface Requirement {
  readonly name: string;
  /** The ladder that states it; null when the file itself does. */
  readonly from: string | null;
  readonly title: string;
  /** Names of hazards. */
  readonly controls: readonly string[];
  readonly because: string | null;
  readonly sources: readonly string[];
  /** Null: every set of the patients whom this is for. */
  readonly where: Condition | null;
  readonly limits: 'as_written' | 'within_bounds';
  readonly asks: Asks;
  readonly path: Path;
}

/** The kind of a requirement, with what belongs to it. Levels are indices on the ladder, numbers are in steps. */
export type Asks =
  | { readonly kind: 'level_at_least' | 'level_at_most'; readonly level: number }
  | { readonly kind: 'rule_met'; readonly rule: string }
  | { readonly kind: 'never_together'; readonly rules: readonly string[] }
  | { readonly kind: 'getting_worse_never_lowers'; readonly observation: string; readonly way: Way }
  | {
      readonly kind: 'nothing_hides';
      /** Null: all that are needed, what tells for whom this is, and what only an exception reads. */
      readonly blank: readonly string[] | null;
      readonly except: readonly string[];
    }
  | { readonly kind: 'no_level' }
  | { readonly kind: 'fault_never_lowers' }
  | { readonly kind: 'always_some_advice' };

/** Which way is worse: with a number inside a range, both ends included, or through choices, each worse than the one before. */
export type Way =
  | { readonly going: 'up' | 'down'; readonly low: number; readonly high: number }
  | { readonly through: readonly string[] };

/** Every key that says what kind a requirement is. A requirement has exactly one of them. */
export const requirementKinds = [
  'level_at_least',
  'level_at_most',
  'rule_met',
  'never_together',
  'getting_worse_never_lowers',
  'nothing_hides',
  'no_level',
  'fault_never_lowers',
  'always_some_advice',
] as const;

/** The name of a requirement among all that is asked of a file: a ladder may state one of a name that the file has too. */
export const requirementKey = ({ name, from }: Pick<Requirement, 'name' | 'from'>): string =>
  from === null ? name : `${from} ${name}`;
