// Generated from schema/dictionary.schema.json; do not edit. npm run generate

/**
 * A dictionary of observations: what can be observed or known about a patient, in which unit, on which step and inside which ranges.
 */
export interface DictionaryFile {
  /**
   * The name of the dictionary.
   */
  readonly dictionary: Name;
  /**
   * The number of the language that the dictionary is written in.
   */
  readonly language: 1;
  /**
   * Where the figures come from. Every source that an observation names stands here.
   */
  readonly sources?: {
    readonly [k: string]: Source;
  };
  /**
   * The observations, in the order in which a nurse usually takes them.
   */
  readonly observations: {
    readonly [k: string]: Observation;
  };
  /**
   * Pairs of observations that cannot both be right. When a set holds such a pair, both are refused.
   */
  readonly contradictions?: readonly Contradiction[];
}

/**
 * A name: small letters, digits and underscores, starting with a letter.
 */
export type Name = string;

/**
 * Plain words for a person to read.
 */
export type Text = string;

/**
 * A number, with its unit where it has one.
 */
export type Quantity = number | string;

/**
 * A length of time: a number and min, h, d, wk, mo or y.
 */
export type Duration = string;

/**
 * yes or no.
 */
export type Yes = 'yes' | 'no' | true | false;

/**
 * Where something comes from.
 */
export interface Source {
  /**
   * The work, with authors, year and place in it; or "Common practice, no published source".
   */
  readonly cite: Text;
  /**
   * Where it can be read.
   */
  readonly link?: string;
  /**
   * yes while nobody has yet looked the figure up in the work itself.
   */
  readonly from_memory?: Yes;
}

/**
 * One of the values that an observation can take.
 */
export interface Choice {
  /**
   * The name of the value, as rules and sets write it.
   */
  readonly choice: Name;
  /**
   * The value in plain words.
   */
  readonly title: Text;
  /**
   * When to choose it.
   */
  readonly meaning?: Text;
}

/**
 * The lowest and the highest value, both included. Where the range changes with age: a list of bands, youngest first, the last without age_below.
 */
export type Range = readonly RangePart[];

/**
 * An end of the range, or a band of ages with its own range.
 */
export type RangePart =
  | number
  | {
      /**
       * The band holds below this age; at this age the next band begins.
       */
      readonly age_below?: Quantity;
      /**
       * The lowest value, included.
       */
      readonly from: number;
      /**
       * The highest value, included.
       */
      readonly to: number;
    };

/**
 * One thing observed, or known about the patient.
 */
export interface Observation {
  /**
   * The plain name, as it stands in a sentence.
   */
  readonly title: Text;
  /**
   * A shorter name for tables.
   */
  readonly short?: Text;
  /**
   * number; choice (one of several); several (any number of several); yes_no.
   */
  readonly kind: 'number' | 'choice' | 'several' | 'yes_no';
  /**
   * What it is and how it is taken, where the name does not say enough.
   */
  readonly meaning?: Text;
  /**
   * The unit, in the trade's words.
   */
  readonly unit?: string;
  /**
   * The smallest difference that is written down. Values between two steps are rounded to the nearest, ties away from zero.
   */
  readonly step?: Quantity;
  /**
   * Outside this range no body or device gives the value: it is refused and counts as missing.
   */
  readonly possible?: Range;
  /**
   * Outside this range the value is used and questioned.
   */
  readonly plausible?: Range;
  /**
   * What an ordinary adult at rest shows.
   */
  readonly ordinary?: number | string | boolean | readonly Name[];
  /**
   * The values that a choice, or several of a choice, can take.
   */
  readonly choices?: readonly Choice[];
  /**
   * The LOINC code, where there is one.
   */
  readonly loinc?: string;
  /**
   * How long a value may stand in when a later set lacks it. Exactly at this age it still does.
   */
  readonly good_for?: Duration;
  /**
   * A group that comes from the same set or not at all.
   */
  readonly taken_with?: Name;
  /**
   * yes when it holds until it is changed.
   */
  readonly standing?: Yes;
  /**
   * Who may state it.
   */
  readonly set_by?: Text;
  /**
   * What a standing fact counts as while nobody has stated it.
   */
  readonly if_not_stated?: number | string | boolean;
  /**
   * Other names that people write for it; used only to say what was meant.
   */
  readonly also_called?: readonly string[];
  /**
   * Where the ranges come from: names from sources.
   */
  readonly source?: readonly Name[];
}

/**
 * Two observations of one set of which the first must be lower than the second.
 */
export interface Contradiction {
  /**
   * The one that must be lower.
   */
  readonly lower: Name;
  /**
   * The one that must be higher.
   */
  readonly higher: Name;
  /**
   * yes when the two may be equal.
   */
  readonly may_be_equal?: Yes;
  /**
   * What is wrong with such a pair, in a sentence.
   */
  readonly says: Text;
}
