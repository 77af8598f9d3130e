import type Fraction from 'fraction.js';
import type { Path } from '../problems/place.ts';
import type { Contradiction, ObservationEntry } from '../vocabulary/observation.ts';
import type { Dimension, Unit } from '../vocabulary/units.ts';
import type { Condition, NumberOperand, Operand } from './condition.ts';
import type { Hazard, Requirement, RequirementsFile } from './requirements/requirement.ts';

export type { Band, Contradiction, ObservationEntry } from '../vocabulary/observation.ts';
export type {
  ChoiceComparison,
  Comparison,
  Condition,
  FactComparison,
  NamedOperand,
  NumberComparison,
  NumberOperand,
  Operand,
} from './condition.ts';

/**
 * The checked form of a protocol: every name resolved, every number exact, ready to be turned into logic.
 *
 * Values of observations are whole numbers of steps. A path is where the part stands in the file; it names the step that
 * the part becomes in logic and leads back to the line that decided an outcome.
 */
export interface Protocol {
  readonly name: string;
  readonly edition: number;
  readonly title: string;
  /** What it is based on: that protocol, then the one that it is based on itself. Empty when it stands alone. */
  readonly basedOn: readonly Parent[];
  readonly about: string | null;
  readonly otherwise: string | null;
  readonly reviewBy: string | null;
  readonly owners: readonly string[];
  readonly sources: ReadonlyMap<string, Source>;
  readonly ladder: Ladder;
  readonly applies: Condition | null;
  /** What the protocol reads: needs in file order, then helps, then standing facts, then scope. */
  readonly observations: ReadonlyMap<string, Observation>;
  /** Everything that a set may name: the dictionary, and what the protocol declares itself. */
  readonly vocabulary: ReadonlyMap<string, ObservationEntry>;
  readonly contradictions: readonly Contradiction[];
  readonly limits: ReadonlyMap<string, Limit>;
  /** Faults of technique: what makes a reading unsure, in which direction and how far. */
  readonly faults: readonly Fault[];
  /** Each after those that it reads. */
  readonly measures: ReadonlyMap<string, Measure>;
  /** In file order. */
  readonly rules: readonly Rule[];
  /** The same rules, each after those that it names. */
  readonly rulesInOrder: readonly Rule[];
  readonly partitions: ReadonlyMap<string, Partition>;
  /** What the council calls an ordinary set; null when it does not say. Decides nothing. */
  readonly ordinary: Condition | null;
  /** Parts of which something must be said, by their names. Decide nothing. */
  readonly mustSay: ReadonlyMap<string, Condition>;
  readonly hazards: ReadonlyMap<string, Hazard>;
  /** What must hold for every possible set. It decides nothing of an outcome. */
  readonly requirements: readonly Requirement[];
  /** `sha256:` and 64 hexadecimal digits: of everything that the outcome depends on, wording too. */
  readonly digest: string;
  /** The same without the wording. */
  readonly logicDigest: string;
}

/** A protocol that is adapted, and what the one that is based on it changes of it. */
export interface Parent extends Origin {
  readonly title: string;
  readonly digest: string;
  readonly limits: readonly OtherValue[];
  readonly withdrawn: readonly Withdrawn[];
}

/** The protocol in whose file something stands. */
export interface Origin {
  readonly name: string;
  readonly edition: number;
}

/** A limit that has another value than in the protocol that is adapted. */
export interface OtherValue {
  readonly limit: Limit;
  readonly insteadOf: Limit;
  readonly because: string;
}

export interface Withdrawn {
  /** The rule's name. */
  readonly name: string;
  readonly title: string;
  readonly because: string;
}

export interface Source {
  readonly cite: string;
  readonly link: string | null;
  readonly fromMemory: boolean;
}

export interface Ladder {
  readonly name: string;
  readonly edition: number;
  readonly title: string;
  /** Lowest first. */
  readonly levels: readonly Level[];
  /** What it states that must always hold of whatever stands on it, as its file says it; not there where it states nothing. */
  readonly states?: RequirementsFile;
}

export interface Level {
  readonly name: string;
  readonly title: string;
  readonly says: string | null;
  readonly tell: readonly {
    readonly who: string;
    readonly from: string | null;
    readonly to: string | null;
  }[];
  /** The words of the file, for example `30 min`. */
  readonly respond: string | null;
  readonly reassess: string | null;
  readonly ifNoAnswer: { readonly after: string; readonly tell: string } | null;
  readonly stepDown: { readonly setsInARow: number; readonly over: string; readonly agreedBy: string } | null;
}

export type Role = 'needs' | 'helps' | 'scope';

/** An observation in the role that this protocol gives it. */
export interface Observation extends ObservationEntry {
  readonly role: Role;
}

export interface Limit {
  readonly name: string;
  readonly title: string;
  readonly unit: Unit | null;
  readonly stepsPerUnit: Fraction;
  /** In steps, as are its bounds. */
  readonly value: number;
  /** Both included; null when nobody may change it. */
  readonly between: readonly [number, number] | null;
  readonly setBy: string | null;
  readonly path: Path;
}

export type Expression =
  | Operand
  | { readonly kind: 'negative'; readonly of: Expression }
  | {
      readonly kind: 'plus' | 'minus' | 'times' | 'divided_by';
      readonly left: Expression;
      readonly right: Expression;
    };

/** What a number is measured in: its dimension, and one of it in the dimension's own unit. */
export interface Quantity {
  readonly dimension: Dimension;
  readonly factor: Fraction;
}

export interface Measure {
  readonly name: string;
  readonly title: string;
  readonly meaning: string | null;
  /** The unit that its value is shown in; null for a plain number and for what no unit of the table measures. */
  readonly unit: Unit | null;
  /** What its value is measured in. */
  readonly quantity: Quantity;
  readonly notReliableWhen: Condition | null;
  readonly how: MeasureHow;
  readonly path: Path;
}

export type MeasureHow =
  | { readonly kind: 'formula'; readonly formula: Expression; /** As written. */ readonly text: string }
  | {
      readonly kind: 'curve';
      readonly of: Operand;
      /** Rising; `at` in the unit of `of`, `value` in the measure's. */ readonly points: readonly {
        readonly at: Fraction;
        readonly value: Fraction;
      }[];
      readonly beyond: 'missing' | 'hold';
    }
  | { readonly kind: 'score'; readonly parts: readonly ScorePart[] }
  | {
      readonly kind: 'choose';
      readonly entries: readonly { readonly when: Condition | null; readonly use: Operand }[];
    }
  | { readonly kind: 'first_known'; readonly of: readonly Operand[] }
  | LookBack;

export type ScorePart =
  | {
      readonly kind: 'bands';
      readonly of: Operand;
      /** In order; `to` is null for the last. */ readonly bands: readonly {
        readonly to: NumberOperand | null;
        /** Whether `to` itself belongs to this band. */ readonly included: boolean;
        readonly points: number;
      }[];
      readonly path: Path;
    }
  | {
      readonly kind: 'choices';
      readonly observation: string;
      readonly points: ReadonlyMap<string, number>;
      readonly path: Path;
    };

export type LookBackKind =
  'highest' | 'lowest' | 'average' | 'earliest' | 'latest' | 'change' | 'count' | 'minutes_since' | 'held';

/** A look back over the series. `where` and `condition` read one set: observations against numbers, choices and limits. */
export interface LookBack {
  readonly kind: LookBackKind;
  /** Null for `held`. */
  readonly observation: string | null;
  /** Only for `held`. */
  readonly condition: Condition | null;
  readonly where: Condition | null;
  /** In milliseconds. */
  readonly over: number;
  readonly presentSet: 'included' | 'left_out';
  /** In milliseconds; only for `held`. */
  readonly longestGap: number | null;
}

/** Something to do. */
export interface Action {
  readonly id: string;
  readonly text: string;
  readonly under: string | null;
  /** Actions, by their ids, that must never be advised together with this one. */
  readonly excludes: readonly string[];
}

export interface Rule {
  readonly name: string;
  readonly title: string;
  /** The protocol in whose file the rule stands, when that is one that this protocol is based on. */
  readonly from: Origin | null;
  readonly when: Condition;
  readonly unless: { readonly when: Condition; readonly says: string | null } | null;
  readonly explainedBy: {
    readonly when: Condition;
    readonly says: string;
    /** Index on the ladder. */ readonly level: number | null;
  } | null;
  readonly notReliableWhen: Condition | null;
  /** Index on the ladder; null for a rule that only says. */
  readonly level: number | null;
  readonly says: string | null;
  readonly because: string | null;
  readonly ask: readonly string[];
  readonly do: readonly Action[];
  readonly sources: readonly string[];
  readonly path: Path;
}

/**
 * A fault of technique. Where it is known to hold in a set, the true value may be lower than was read by `readsHigh` of it, or
 * higher by `readsLow`. Its condition reads one set: observations against numbers and choices.
 */
export interface Fault {
  readonly name: string;
  readonly title: string;
  readonly when: Condition;
  /** In steps of each observation, above 0. */
  readonly readsHigh: ReadonlyMap<string, number>;
  readonly readsLow: ReadonlyMap<string, number>;
  readonly says: string;
  readonly do: Rule['do'];
  readonly sources: readonly string[];
  readonly path: Path;
}

export interface Partition {
  readonly name: string;
  readonly of: readonly Condition[];
  readonly path: Path;
}
