// Generated from schema/*.schema.json; do not edit. npm run generate

import type {
  DictionaryFile,
  Duration,
  Name,
  Observation,
  Quantity,
  Source,
  Text,
  Yes,
} from '../../vocabulary/generated/dictionary-file.ts';

export type {
  DictionaryFile,
  Name,
  Text,
  Quantity,
  Duration,
  Yes,
  Source,
  Choice,
  Range,
  RangePart,
  Observation,
  Contradiction,
} from '../../vocabulary/generated/dictionary-file.ts';

/**
 * Who may approve editions of a protocol or a ward policy. It holds once it is entered in the record ("vitalwright approvers").
 */
export interface ApproversFile {
  /**
   * The protocol or ward policy.
   */
  readonly approvers: Name;
  /**
   * yes: every entry of the record is signed with the keys of those who make it. no: it names them.
   */
  readonly signing: Yes;
  /**
   * Which roles approve an edition, and how many people of each. One person counts once. The same people agree on a change of this list.
   */
  readonly needs: readonly NeededRole[];
  /**
   * Who may approve, put in force and withdraw.
   */
  readonly people: readonly Approver[];
}

/**
 * A role in words.
 */
export type Role = string;

/**
 * The public key of a person, as "vitalwright key new" prints it.
 */
export type Key = string;

/**
 * A role, and how many people of it.
 */
export interface NeededRole {
  /**
   * The role.
   */
  readonly role: Role;
  /**
   * How many people at least.
   */
  readonly people: number;
}

/**
 * A person.
 */
export interface Approver {
  /**
   * The name.
   */
  readonly name: Person;
  /**
   * The roles in which this person may approve.
   */
  readonly roles: readonly Role[];
  /**
   * The public key, where entries are signed.
   */
  readonly key?: Key;
}

/**
 * Cases of one protocol: stories, observations, and the outcome that the council expects.
 */
export interface CasesFile {
  /**
   * The protocol that the cases are for.
   */
  readonly protocol: Name;
  /**
   * The cases.
   */
  readonly cases: readonly Case[];
  /**
   * Small changes of the protocol that no case notices and that need none, each with the reason.
   */
  readonly unguarded?: readonly UnguardedChange[];
}

/**
 * One small change that no case notices, and why that is accepted.
 */
export interface UnguardedChange {
  /**
   * The name of the change, as check --unguarded prints it.
   */
  readonly change: Text;
  /**
   * Why no case needs to notice it, and who says so.
   */
  readonly accepted: Text;
}

/**
 * One case: what is given, and what is expected. It has either given or series.
 */
export interface Case {
  /**
   * The case in a few words.
   */
  readonly case: Text;
  /**
   * The story around it.
   */
  readonly story?: Text;
  /**
   * Where the expectation comes from: a name from the protocol's sources.
   */
  readonly source?: Name;
  /**
   * One set: observations with their values.
   */
  readonly given?: SetFile;
  /**
   * A series of sets with their times.
   */
  readonly series?: SetFile;
  /**
   * What the council expects.
   */
  readonly expect: Expect;
  /**
   * For the drill.
   */
  readonly teach?: Teach;
}

/**
 * What is expected. Lists say "at least these"; nothing_else_met closes them.
 */
export interface Expect {
  /**
   * The level.
   */
  readonly level?: ExpectedLevel;
  /**
   * Whether the protocol is for this patient: yes, no or unsure.
   */
  readonly applies?: 'yes' | 'no' | 'unsure' | true | false;
  /**
   * Rules that are met.
   */
  readonly met?: CaseNames;
  /**
   * Rules that are not met.
   */
  readonly not_met?: CaseNames;
  /**
   * Rules that are undecided.
   */
  readonly undecided?: CaseNames;
  /**
   * Rules whose explanation is known to hold.
   */
  readonly explained?: CaseNames;
  /**
   * Faults of technique that are there.
   */
  readonly faults?: CaseNames;
  /**
   * From where to where the truth may lie, with the faults of technique that are there.
   */
  readonly truth?: {
    readonly [k: string]: ExpectedRange;
  };
  /**
   * Rules that are not met but reassure nobody.
   */
  readonly not_reliable?: CaseNames;
  /**
   * Observations that are refused.
   */
  readonly refused?: CaseNames;
  /**
   * Observations that are used and questioned.
   */
  readonly questioned?: CaseNames;
  /**
   * What is to be taken first: the list begins with these.
   */
  readonly take_first?: CaseNames;
  /**
   * What is to be asked first: at least these.
   */
  readonly ask_first?: CaseNames;
  /**
   * Measures and their values, compared at the decimals that are written here; { low, high } for a range, missing for none.
   */
  readonly measures?: {
    readonly [k: string]: ExpectedMeasure;
  };
  /**
   * yes: no other rule is met.
   */
  readonly nothing_else_met?: Yes;
}

/**
 * A list of names.
 */
export type CaseNames = readonly Name[];

/**
 * The level that is expected.
 */
export interface ExpectedLevel {
  /**
   * The highest level that is called for by a rule that is met; none when nothing is.
   */
  readonly at_least?: Name;
  /**
   * The highest level that it could be once the missing is known.
   */
  readonly could_be?: Name;
  /**
   * yes when nothing that is missing could change it.
   */
  readonly settled?: Yes;
}

/**
 * A range of values, both ends included, in the unit of the observation.
 */
export interface ExpectedRange {
  /**
   * The lowest that it can truly be.
   */
  readonly low: number;
  /**
   * The highest that it can truly be.
   */
  readonly high: number;
}

/**
 * A value, a range, or missing.
 */
export type ExpectedMeasure =
  | number
  | string
  | {
      /**
       * The lowest that it can be.
       */
      readonly low: number;
      /**
       * The highest that it can be.
       */
      readonly high: number;
    };

/**
 * For the drill: what to ask the learner first, and the mistake that is often made.
 */
export interface Teach {
  /**
   * The question to begin with.
   */
  readonly ask_first?: Text;
  /**
   * The mistake that is often made.
   */
  readonly common_mistake?: Text;
  /**
   * What the one who wrote the case reads in it, by the case's own source: the output is falling and the vessels squeeze; the vessels have let go; both fail; neither; or nobody can say from this set. It is shown beside the learner's answer and is no rule.
   */
  readonly output_and_vessels?:
    'output_falls_vessels_squeeze' | 'vessels_have_let_go' | 'both_fail' | 'neither' | 'cannot_say';
}

/**
 * A sealed edition of a protocol or of a ward policy, written by "vitalwright seal" and never edited: everything that it is read with, and what it answers to each of its cases. Its last line is the seal, over every byte before it.
 */
export interface EditionFile {
  /**
   * What is sealed.
   */
  readonly sealed: 'protocol' | 'ward';
  /**
   * The name of the protocol or of the ward policy.
   */
  readonly name: Name;
  /**
   * The number of the edition.
   */
  readonly edition: number;
  /**
   * What it is for.
   */
  readonly title: Text;
  /**
   * The number of the language that it is written in.
   */
  readonly language: number;
  /**
   * The number of the kit that sealed it.
   */
  readonly kit: string;
  /**
   * The day on which it was sealed.
   */
  readonly sealed_on: CalendarDay;
  /**
   * Who wrote it. None of them can approve it.
   */
  readonly authors?: readonly Person[];
  /**
   * The entry of the record that said, when this was sealed, who may approve it. Without this nobody can approve it.
   */
  readonly approvers?: Digest;
  /**
   * The digest of what it means, as every outcome names it.
   */
  readonly digest: Digest;
  /**
   * The same without the wording.
   */
  readonly logic_digest: Digest;
  /**
   * The last day before its review is overdue.
   */
  readonly review_by?: CalendarDay;
  /**
   * Of a ward policy: the sealed editions that it reads with.
   */
  readonly reads_with?: readonly SealedMember[];
  /**
   * The observations that it reads, as they stood in the dictionary.
   */
  readonly dictionary: DictionaryFile;
  /**
   * The text of the ladder.
   */
  readonly ladder: Whole;
  /**
   * By name, the text of the protocol or ward policy itself, of everything that it is based on, and of the protocols that it reads with.
   */
  readonly texts: {
    readonly [k: string]: Whole;
  };
  /**
   * The text of its cases.
   */
  readonly cases: Whole;
  /**
   * What it answers to each case, in the order of the cases. A kit that answers otherwise refuses the edition.
   */
  readonly outcomes: readonly SealedAnswer[];
  /**
   * SHA-256 over every byte of this file before this line.
   */
  readonly seal: Digest;
}

/**
 * SHA-256 in 64 hexadecimal digits.
 */
export type Digest = string;

/**
 * A day, year-month-day.
 */
export type CalendarDay = string;

/**
 * The whole text of a file.
 */
export type Whole = string;

/**
 * The name of a person, as colleagues write it.
 */
export type Person = string;

/**
 * A protocol that a sealed ward policy reads with.
 */
export interface SealedMember {
  /**
   * Its name.
   */
  readonly protocol: Name;
  /**
   * Its edition.
   */
  readonly edition: number;
  /**
   * Its digest.
   */
  readonly digest: Digest;
}

/**
 * A case, and what is answered.
 */
export interface SealedAnswer {
  /**
   * The name of the case.
   */
  readonly case: Text;
  /**
   * What decides what a nurse does. Wording is not held.
   */
  readonly answers: SealedReading;
}

/**
 * What one protocol, or a ward policy, answers. A list that is empty is left out.
 */
export interface SealedReading {
  /**
   * Whether the protocol is for this patient.
   */
  readonly applies?: 'yes' | 'no' | 'unsure';
  /**
   * The level; null when nothing is for this patient.
   */
  readonly level: OutcomeLevel;
  /**
   * Rules that are met.
   */
  readonly met?: readonly Name[];
  /**
   * Rules that are undecided.
   */
  readonly undecided?: readonly Name[];
  /**
   * Rules that are undecided and count in full.
   */
  readonly counts?: readonly Name[];
  /**
   * Rules with an explanation that is known to hold.
   */
  readonly explained?: readonly Name[];
  /**
   * Rules that are not met, and reassure nobody.
   */
  readonly not_reliable?: readonly Name[];
  /**
   * The numbers that were worked out.
   */
  readonly measures?: {
    readonly [k: string]: OutcomeMeasure;
  };
  /**
   * What is to be asked before anything else.
   */
  readonly ask_first?: readonly Name[];
  /**
   * What is to be taken first.
   */
  readonly take_first?: readonly Name[];
  /**
   * What is missing of what is needed.
   */
  readonly missing?: readonly Name[];
  /**
   * What was not used.
   */
  readonly refused?: readonly Name[];
  /**
   * What was used and questioned.
   */
  readonly questioned?: readonly Name[];
  /**
   * Faults of technique that were there.
   */
  readonly faults?: readonly Name[];
  /**
   * A higher level of earlier sets that is still in force.
   */
  readonly in_force?: Name;
  /**
   * Whether the sets allow stepping down from it.
   */
  readonly may_step_down?: boolean;
  /**
   * The escalation plan that changes whom to tell.
   */
  readonly plan?: Name;
  /**
   * Who is told.
   */
  readonly tell?: readonly Text[];
  /**
   * Of a ward policy: what each of its protocols answers.
   */
  readonly reads?: {
    readonly [k: string]: SealedReading;
  };
}

/**
 * A hospital's escalation ladder: its levels, lowest first.
 */
export interface LadderFile {
  /**
   * The ladder's name.
   */
  readonly ladder: Name;
  /**
   * The number of the edition.
   */
  readonly edition: number;
  /**
   * What the ladder is, as a heading.
   */
  readonly title?: Text;
  /**
   * Whose ladder it is, in a few sentences.
   */
  readonly about?: Text;
  /**
   * The levels, lowest first. A higher level never answers or reassesses later than a lower one.
   */
  readonly levels: readonly Level[];
  /**
   * The hazards that the safety requirements control: what can go wrong for a patient, by name.
   */
  readonly hazards?: {
    readonly [k: string]: Hazard;
  };
  /**
   * Safety requirements of every protocol and every ward policy on this ladder. One that names an observation is asked of those that read it, one about faults of technique of those that have some.
   */
  readonly must_always?: readonly WardRequirement[];
}

/**
 * One level: whom to tell, how soon they come, when to reassess, what if nobody answers, how to step down.
 */
export interface Level {
  /**
   * The level's name.
   */
  readonly level: Name;
  /**
   * The level in plain words, as it is read out.
   */
  readonly title?: Text;
  /**
   * What the level means, in a sentence.
   */
  readonly says?: Text;
  /**
   * Whom to tell.
   */
  readonly tell?: readonly Tell[];
  /**
   * How soon the one who is told is at the bedside.
   */
  readonly respond?: Duration;
  /**
   * When the next full set is due, at the latest.
   */
  readonly reassess?: Duration;
  /**
   * What to do when nobody answers.
   */
  readonly if_no_answer?: NoAnswer;
  /**
   * How the patient comes down from this level.
   */
  readonly step_down?: StepDown;
}

/**
 * Someone to tell, and between which hours.
 */
export interface Tell {
  /**
   * The role.
   */
  readonly who: Text;
  /**
   * From this time of day, included.
   */
  readonly from?: TimeOfDay;
  /**
   * Until this time of day, not included.
   */
  readonly to?: TimeOfDay;
}

/**
 * A time of day, hours and minutes, in quotation marks.
 */
export type TimeOfDay = string;

/**
 * What to do when nobody answers.
 */
export interface NoAnswer {
  /**
   * After this long.
   */
  readonly after: Duration;
  /**
   * Whom to tell then.
   */
  readonly tell: Text;
}

/**
 * How the patient comes down from a level.
 */
export interface StepDown {
  /**
   * So many sets in a row below this level.
   */
  readonly sets_in_a_row: number;
  /**
   * Spread over at least this long.
   */
  readonly over: Duration;
  /**
   * Who agrees to it.
   */
  readonly agreed_by: Text;
}

/**
 * A protocol as logic: whole numbers and flags go in, named steps follow in order, and answers point at steps. Steps are JSON Logic with a closed list of operators. What a protocol is based on is already worked in. Faults of technique stand beside the steps: one that is there makes the bounds of what was read wider.
 */
export interface LogicFile {
  /**
   * The number of the form of this file.
   */
  readonly logic: 1;
  /**
   * The protocol.
   */
  readonly protocol: Name;
  /**
   * Its edition.
   */
  readonly edition: number;
  /**
   * The digest of the protocol that this was made from.
   */
  readonly digest: string;
  /**
   * The levels of the ladder by name, lowest first; a level in the answers is a place in this list, from 0.
   */
  readonly levels: readonly Name[];
  /**
   * What a set may give, for whoever makes inputs from a set.
   */
  readonly observations: readonly LogicObservation[];
  /**
   * Pairs of observations that cannot both be right; both are then refused and count as missing.
   */
  readonly contradictions: readonly LogicContradiction[];
  /**
   * Steps that stand before all others: they read what a set gives, and find out what of it fits, contradicts, counts and is refused. Beside earlier ones they read name:given and name:tried (a value, or unobtainable: 0 or 1), name:from and name:to (the ends of a number in steps) and name:gave:choice (0 or 1).
   */
  readonly reading?: readonly LogicStep[];
  /**
   * What goes in, in this order.
   */
  readonly inputs: readonly LogicInput[];
  /**
   * The steps; each reads inputs and earlier steps.
   */
  readonly steps: readonly LogicStep[];
  /**
   * Faults of technique. Where one is there, what was read is asked about twice: as it was read, and with room for the truth.
   */
  readonly faults?: readonly LogicFault[];
  /**
   * Where the answers stand.
   */
  readonly answers: LogicAnswers;
}

/**
 * One observation that a set may give.
 */
export interface LogicObservation {
  /**
   * Its name.
   */
  readonly observation: Name;
  /**
   * A number, one of several choices, several of them, or yes or no.
   */
  readonly kind: 'number' | 'choice' | 'several' | 'yes_no';
  /**
   * The unit of a number, as a UCUM code.
   */
  readonly unit?: string;
  /**
   * Of a number: how many steps one unit has, a whole number or a fraction.
   */
  readonly steps_per_unit?: string;
  /**
   * Of a number: what any body or device can give, a band for each range of ages, youngest first. What is outside is refused and counts as missing.
   */
  readonly possible?: readonly LogicBand[];
  /**
   * Of anything but a number: what it can be.
   */
  readonly choices?: readonly Name[];
  /**
   * Of a standing fact: what holds while nobody has stated it, in steps or as a choice. It is then not known, and not missing.
   */
  readonly assumed?: number | string;
}

/**
 * A range for a range of ages.
 */
export interface LogicBand {
  /**
   * The age at which it ends, itself excluded, in steps of the observation age; left out in the last band. It begins where the one before ends.
   */
  readonly age_below?: number;
  /**
   * The lowest step, included.
   */
  readonly low: number;
  /**
   * The highest step, included.
   */
  readonly high: number;
}

/**
 * Refused when even the lowest of the one is not below the highest of the other: scale times lower is to be below factor times higher plus shift, in steps.
 */
export interface LogicContradiction {
  /**
   * What is to be lower.
   */
  readonly lower: Name;
  /**
   * What is to be higher.
   */
  readonly higher: Name;
  /**
   * Whether both may be the same.
   */
  readonly may_be_equal: boolean;
  /**
   * What the steps of the lower are multiplied by.
   */
  readonly scale: number;
  /**
   * What the steps of the higher are multiplied by.
   */
  readonly factor: number;
  /**
   * What is then added to them.
   */
  readonly shift: number;
}

/**
 * One fault of technique.
 */
export interface LogicFault {
  /**
   * Its name.
   */
  readonly fault: Name;
  /**
   * Whether it surely is there, from what was read.
   */
  readonly is_there: LogicExpression;
  /**
   * By how many steps each observation may be read too high: the truth may be so much lower, inside what is possible. Of several faults they add up.
   */
  readonly reads_high: {
    readonly [k: string]: number;
  };
  /**
   * By how many steps each may be read too low: the truth may be so much higher.
   */
  readonly reads_low: {
    readonly [k: string]: number;
  };
}

/**
 * One number that goes in: a whole number of steps, or a flag of 0 or 1.
 */
export interface LogicInput {
  /**
   * Its name in the steps.
   */
  readonly input: string;
  /**
   * What it belongs to.
   */
  readonly of: 'observation' | 'limit' | 'look_back';
  /**
   * The observation, the limit, or the measure that looks back.
   */
  readonly name: Name;
  /**
   * low and high: the ends of a number. known, unobtainable, missing: facts of the set. may: whether a choice is still possible; sure: whether one of several is surely in, or a look back surely has a value; maybe: whether it can have one. open: whether taking a need now could decide that the present set counts in a look back. value: of a limit. count: what an average is divided by.
   */
  readonly part:
    | 'low'
    | 'high'
    | 'known'
    | 'unobtainable'
    | 'missing'
    | 'may'
    | 'sure'
    | 'maybe'
    | 'open'
    | 'value'
    | 'count';
  /**
   * The choice, with may, and with sure of several.
   */
  readonly choice?: Name;
  /**
   * The unit of a number, as a UCUM code.
   */
  readonly unit?: string;
  /**
   * How many steps one unit has: a whole number or a fraction.
   */
  readonly steps_per_unit?: string;
  /**
   * What goes in while nothing is known: a missing number has its whole possible range, a choice may be anything. Left out with look backs, which need the earlier sets.
   */
  readonly otherwise?: number;
  /**
   * What it is, over the steps of reading; left out with limits and look backs, which a set does not give.
   */
  readonly is?: LogicExpression;
  /**
   * What it is with room for the truth, where faults of technique are there; over inputs and steps. Left out where no fault touches it.
   */
  readonly wide?: LogicExpression;
}

/**
 * One step: its name, and what it is.
 */
export interface LogicStep {
  /**
   * Its name: where the part stands in the protocol, and which of its logics this is.
   */
  readonly step: string;
  /**
   * What it is.
   */
  readonly is: LogicExpression;
}

/**
 * A whole number, a truth, a variable, or one operator with its parts.
 */
export type LogicExpression =
  | number
  | boolean
  | {
      /**
       * The value of an input or an earlier step.
       */
      readonly var?: string;
      /**
       * The sum.
       */
      readonly '+'?: LogicParts;
      /**
       * The first less the second; of one, its negative.
       */
      readonly '-'?: LogicParts;
      /**
       * The product.
       */
      readonly '*'?: LogicParts;
      /**
       * The lowest.
       */
      readonly min?: LogicParts;
      /**
       * The highest.
       */
      readonly max?: LogicParts;
      /**
       * The first is lower than the second.
       */
      readonly '<'?: LogicParts;
      /**
       * The first is lower than the second, or the same.
       */
      readonly '<='?: LogicParts;
      /**
       * Every one holds.
       */
      readonly and?: LogicParts;
      /**
       * At least one holds.
       */
      readonly or?: LogicParts;
      /**
       * It does not hold.
       */
      readonly '!'?: LogicParts;
      /**
       * The part after the first truth that holds; else the last.
       */
      readonly if?: LogicParts;
    };

/**
 * The parts of an operator.
 */
export type LogicParts = readonly LogicExpression[];

/**
 * Where the answers stand.
 */
export interface LogicAnswers {
  /**
   * Whether the protocol is for this patient.
   */
  readonly applies: LogicTruth;
  /**
   * Indices on the ladder; -1 where no rule calls for a level.
   */
  readonly levels: LogicLevels;
  /**
   * Each rule's answers.
   */
  readonly rules: {
    readonly [k: string]: LogicRule;
  };
  /**
   * Each measure's value.
   */
  readonly measures: {
    readonly [k: string]: LogicMeasure;
  };
}

/**
 * Whether something holds for every set that is still possible, and for some.
 */
export interface LogicTruth {
  /**
   * For every one.
   */
  readonly certain: LogicExpression;
  /**
   * For some.
   */
  readonly possible: LogicExpression;
}

/**
 * Levels as indices on the ladder.
 */
export interface LogicLevels {
  /**
   * The highest level of the rules that count.
   */
  readonly raised: LogicExpression;
  /**
   * The highest level of the rules that could be met.
   */
  readonly could: LogicExpression;
  /**
   * The highest level of the rules that are met whatever is missing.
   */
  readonly floor: LogicExpression;
}

/**
 * One rule's answers.
 */
export interface LogicRule {
  /**
   * It is met.
   */
  readonly certain: LogicExpression;
  /**
   * It may be met; else it is not met.
   */
  readonly possible: LogicExpression;
  /**
   * It counts towards the level, exceptions that are not known left aside.
   */
  readonly counts: LogicExpression;
  /**
   * Values of what is needed could make it met.
   */
  readonly could: LogicExpression;
  /**
   * Whether it is explained.
   */
  readonly explained: LogicTruth;
  /**
   * It is not met, and that reassures nobody.
   */
  readonly not_reliable: LogicExpression;
}

/**
 * A measure's value: low and high over scale, divided by the bottom over its own scale.
 */
export interface LogicMeasure {
  /**
   * The lowest.
   */
  readonly low: LogicExpression;
  /**
   * The highest.
   */
  readonly high: LogicExpression;
  /**
   * What both are divided by.
   */
  readonly scale: string;
  /**
   * The lowest divisor.
   */
  readonly bottom_low: LogicExpression;
  /**
   * The highest divisor.
   */
  readonly bottom_high: LogicExpression;
  /**
   * What the divisor is divided by.
   */
  readonly bottom_scale: string;
  /**
   * It surely has a value.
   */
  readonly sure: LogicExpression;
  /**
   * It may have a value.
   */
  readonly maybe: LogicExpression;
}

/**
 * What an edition of a protocol says about a set in its series: the level, each rule with the sentences that explain it, what to do, and what is missing.
 */
export interface Outcome {
  /**
   * The protocol's name.
   */
  readonly protocol: Name;
  /**
   * The number of its edition.
   */
  readonly edition: number;
  /**
   * What the protocol is for, as a heading.
   */
  readonly title: Text;
  /**
   * The digest of everything that the outcome depends on: protocol, what it is based on, ladder and the observations that it reads.
   */
  readonly digest: string;
  /**
   * Of a protocol that is based on another: that one, then the one that it is based on itself, each with what was changed of it. Without this it is based on none.
   */
  readonly based_on?: readonly OutcomeParent[];
  /**
   * The time for which the question was asked, as written; null for a set without a time.
   */
  readonly at: string | null;
  /**
   * Whether the protocol is for this patient. While that is unsure, nothing is settled.
   */
  readonly applies: 'yes' | 'no' | 'unsure';
  /**
   * When it is not for this patient, or that is unsure: why.
   */
  readonly applies_because?: Sentences;
  /**
   * When it is not for this patient: what to use instead.
   */
  readonly otherwise?: Text;
  /**
   * The level. Null when the protocol is not for this patient.
   */
  readonly level: OutcomeLevel;
  /**
   * Every rule, in the order of the file, those of a protocol that it is based on first. Empty when the protocol is not for this patient.
   */
  readonly rules: readonly OutcomeRule[];
  /**
   * The numbers that were worked out, by name.
   */
  readonly measures: {
    readonly [k: string]: OutcomeMeasure;
  };
  /**
   * What the rules say that are met, or that count in full: the highest level first.
   */
  readonly advice: readonly Advice[];
  /**
   * What is to be asked before anything else: whether the protocol is for this patient, and exceptions that nobody has answered.
   */
  readonly ask_first: OutcomeNames;
  /**
   * The needed observations that are missing and can still be taken, the most telling first.
   */
  readonly take_first: OutcomeNames;
  /**
   * The needed observations of which the present set has no value. For some of them an earlier value may stand in.
   */
  readonly missing: OutcomeNames;
  /**
   * What was tried and could not be obtained. It counts as missing, and can itself be a finding.
   */
  readonly unobtainable: readonly WithoutValue[];
  /**
   * What the patient declined. It counts as missing.
   */
  readonly declined: readonly WithoutValue[];
  /**
   * Observations that only help, are missing, and could still decide something.
   */
  readonly would_tell_more: OutcomeNames;
  /**
   * Values of earlier sets that stand in for what the present set lacks. They may raise the level and never settle a lower one.
   */
  readonly stands_in: readonly EarlierValue[];
  /**
   * Faults of technique that are known to be there, what each may hide, and the rules that would answer otherwise if the truth lay elsewhere. The level that the numbers call for stands. Left out when there are none.
   */
  readonly faults?: readonly OutcomeFault[];
  /**
   * A higher level that an earlier set reached and that has not been stepped down from. Left out when there is none.
   */
  readonly in_force?: OutcomeInForce;
  /**
   * Standing facts that nobody has stated, and what they count as.
   */
  readonly assumed: readonly AssumedValue[];
  /**
   * Limits that were changed for this patient.
   */
  readonly limits: readonly ChangedLimit[];
  /**
   * Values that were converted, or moved to their step.
   */
  readonly taken: readonly TakenValue[];
  /**
   * Values that are not used.
   */
  readonly refused: readonly Remark[];
  /**
   * Values that are used although they are hardly plausible.
   */
  readonly questioned: readonly Remark[];
  /**
   * Observations that were given and that the protocol does not read.
   */
  readonly unused: OutcomeNames;
  /**
   * What the outcome is not.
   */
  readonly caution: Text;
}

/**
 * A list of names.
 */
export type OutcomeNames = readonly Name[];

/**
 * A sentence for a person to read. Its numbers are values, limits or their exact differences.
 */
export type Sentence = string;

/**
 * Sentences, each one reason.
 */
export type Sentences = readonly Sentence[];

/**
 * The unit, as a UCUM code. Without one it is a plain number.
 */
export type Unit = string;

/**
 * How far up the ladder. What is at least so is never shown without what it could be.
 */
export type OutcomeLevel = {
  /**
   * The highest level that is called for. Null while nothing is settled and no rule calls for more than the lowest: then complete the set.
   */
  readonly at_least: string | null;
  /**
   * The highest level that it could be once what is missing is known.
   */
  readonly could_be: Name;
  /**
   * Whether nothing that is missing, and no answer that is open, could change it.
   */
  readonly settled: boolean;
} | null;

/**
 * How one rule stands, and why.
 */
export interface OutcomeRule {
  /**
   * The rule's name.
   */
  readonly rule: Name;
  /**
   * Its name in plain words.
   */
  readonly title: Text;
  /**
   * Of a rule that stands in a protocol that this one is based on: which. Without this the rule is the protocol's own.
   */
  readonly from?: OutcomeOrigin;
  /**
   * Whether it holds. undecided: what is missing could still decide it.
   */
  readonly state: 'met' | 'not_met' | 'undecided';
  /**
   * The level that it calls for when it is met: with a known explanation, the level that the explanation states. Without one it only says.
   */
  readonly level?: Name;
  /**
   * The level that it would call for without the explanation.
   */
  readonly lowered_from?: Name;
  /**
   * true: undecided, and it counts in full, because nothing holds it back but an exception that nobody has answered.
   */
  readonly counts?: true;
  /**
   * What decided it, or what makes it count.
   */
  readonly decided_by?: Sentences;
  /**
   * Of an undecided rule: the observations that could still decide it.
   */
  readonly waits_for?: OutcomeNames;
  /**
   * Of an undecided rule: values that would decide it, each on its own.
   */
  readonly decided_if?: readonly DecidedIf[];
  /**
   * Of an undecided rule: numbers in it that have no value, and why.
   */
  readonly no_value?: Sentences;
  /**
   * The explanation that is known to hold.
   */
  readonly explained_by?: Sentence;
  /**
   * An explanation that nobody has answered.
   */
  readonly could_be_explained_by?: Sentence;
  /**
   * The exception that is known to take the rule back.
   */
  readonly taken_back_by?: Sentence;
  /**
   * An exception that nobody has answered, and that alone holds the rule back.
   */
  readonly could_be_taken_back_by?: Sentence;
  /**
   * The rule is not met, but that reassures nobody: why.
   */
  readonly not_reliable?: Sentences;
}

/**
 * The protocol in whose file something stands.
 */
export interface OutcomeOrigin {
  /**
   * Its name.
   */
  readonly protocol: Name;
  /**
   * Its edition.
   */
  readonly edition: number;
}

/**
 * A protocol that is adapted, and what the one that is based on it changes of it.
 */
export interface OutcomeParent {
  /**
   * Its name.
   */
  readonly protocol: Name;
  /**
   * Its edition.
   */
  readonly edition: number;
  /**
   * What it is for, as a heading.
   */
  readonly title: Text;
  /**
   * Its digest.
   */
  readonly digest: string;
  /**
   * Its limits that have another value.
   */
  readonly limits: readonly OutcomeOtherValue[];
  /**
   * Its rules that are withdrawn.
   */
  readonly withdrawn: readonly OutcomeWithdrawn[];
}

/**
 * A limit that has another value than in the protocol that is adapted, for every patient.
 */
export interface OutcomeOtherValue {
  /**
   * The limit.
   */
  readonly limit: Name;
  /**
   * Its value.
   */
  readonly value: number;
  /**
   * Its value in the protocol that is adapted.
   */
  readonly instead_of: number;
  /**
   * The unit of both.
   */
  readonly unit?: Unit;
  /**
   * Why.
   */
  readonly because: Text;
}

/**
 * A rule that is withdrawn.
 */
export interface OutcomeWithdrawn {
  /**
   * The rule's name.
   */
  readonly rule: Name;
  /**
   * Its name in plain words.
   */
  readonly title: Text;
  /**
   * Why.
   */
  readonly because: Text;
}

/**
 * Values of one observation that decide a rule, whatever else is missing: a range with both ends included, or any one of some choices.
 */
export interface DecidedIf {
  /**
   * The observation.
   */
  readonly observation: Name;
  /**
   * The lowest such value, included.
   */
  readonly from?: number;
  /**
   * The highest such value, included.
   */
  readonly to?: number;
  /**
   * true: no value below from would be used.
   */
  readonly is_lowest?: true;
  /**
   * true: no value above to would be used.
   */
  readonly is_highest?: true;
  /**
   * The unit of from and to.
   */
  readonly unit?: Unit;
  /**
   * Any one of these choices; of an observation that can hold several, any one of them among the others. An empty list: none at all.
   */
  readonly choices?: OutcomeNames;
  /**
   * What the rule then is.
   */
  readonly state: 'met' | 'not_met';
}

/**
 * A value; or the lowest and the highest that it can still be; or none.
 */
export interface OutcomeMeasure {
  /**
   * The value. Where it has more than six decimals it is rounded, and exact says what it is.
   */
  readonly value?: number;
  /**
   * The value as a fraction, where it was rounded.
   */
  readonly exact?: ExactFraction;
  /**
   * The lowest that it can be.
   */
  readonly low?: number;
  /**
   * The same as a fraction, where it was rounded.
   */
  readonly low_exact?: ExactFraction;
  /**
   * The highest that it can be.
   */
  readonly high?: number;
  /**
   * The same as a fraction, where it was rounded.
   */
  readonly high_exact?: ExactFraction;
  /**
   * Its unit.
   */
  readonly unit?: Unit;
  /**
   * true: what it counts the minutes since has never happened in its window; beside low, it may be that it never has.
   */
  readonly never?: true;
  /**
   * true: it has no value.
   */
  readonly missing?: true;
  /**
   * Observations without a value that it is made of, while it is a range.
   */
  readonly waits_for?: OutcomeNames;
  /**
   * true: it may be that it has no value.
   */
  readonly may_be_missing?: true;
}

/**
 * An exact number.
 */
export type ExactFraction = string;

/**
 * What one rule says.
 */
export interface Advice {
  /**
   * The rule's name.
   */
  readonly rule: Name;
  /**
   * Its name in plain words.
   */
  readonly title: Text;
  /**
   * The level that it calls for.
   */
  readonly level?: Name;
  /**
   * What it suggests.
   */
  readonly says?: Text;
  /**
   * Why.
   */
  readonly because?: Text;
  /**
   * The explanation that is known to hold.
   */
  readonly explained_by?: Sentence;
  /**
   * What to ask or look for.
   */
  readonly ask: Sentences;
  /**
   * What to do, and on whose authority. What several rules ask for is said once, with the first of them.
   */
  readonly do: Sentences;
}

/**
 * An observation that has no value although somebody tried.
 */
export interface WithoutValue {
  /**
   * The observation.
   */
  readonly observation: Name;
  /**
   * Why, where that was said.
   */
  readonly because?: string;
}

/**
 * A value of an earlier set, with its time.
 */
export interface EarlierValue {
  /**
   * The observation.
   */
  readonly observation: Name;
  /**
   * When it was taken.
   */
  readonly at: string;
  /**
   * The value.
   */
  readonly value?: number | string | readonly Name[];
  /**
   * The lowest that it can truly be.
   */
  readonly low?: number;
  /**
   * The highest that it can truly be.
   */
  readonly high?: number;
  /**
   * Its unit.
   */
  readonly unit?: Unit;
}

/**
 * A fault of technique that is known to be there.
 */
export interface OutcomeFault {
  /**
   * The fault's name.
   */
  readonly fault: Name;
  /**
   * The fault in plain words.
   */
  readonly title: Text;
  /**
   * What it does to the reading.
   */
  readonly says: Text;
  /**
   * What to do so that the next reading is free of it.
   */
  readonly do: Sentences;
  /**
   * What was read, and what the truth may be: with all faults of the set together.
   */
  readonly readings: readonly UnsureReading[];
  /**
   * Rules that would answer otherwise somewhere in that range, with the level that each calls for. Empty: the fault does not matter here.
   */
  readonly changes: readonly DoubtedRule[];
}

/**
 * What was read, and from where to where the truth may lie.
 */
export interface UnsureReading {
  /**
   * The observation.
   */
  readonly observation: Name;
  /**
   * The value that was read; left out where it was itself a range.
   */
  readonly read?: number;
  /**
   * The lowest that it can truly be.
   */
  readonly low: number;
  /**
   * The highest that it can truly be.
   */
  readonly high: number;
  /**
   * Its unit.
   */
  readonly unit?: Unit;
}

/**
 * A rule whose answer a fault puts in doubt.
 */
export interface DoubtedRule {
  /**
   * The rule's name.
   */
  readonly rule: Name;
  /**
   * The rule in plain words.
   */
  readonly title: Text;
  /**
   * The level that it calls for when it is met.
   */
  readonly level?: Name;
}

/**
 * A level from earlier sets that still holds. Its words and times hold until its role agrees to step down.
 */
export interface OutcomeInForce {
  /**
   * The level.
   */
  readonly level: Name;
  /**
   * When a set first reached it.
   */
  readonly since: string;
  /**
   * When a set last called for it.
   */
  readonly last_at: string;
  /**
   * How many sets in a row lie below it, with nothing missing that could reach it.
   */
  readonly sets_below: number;
  /**
   * How many the ladder asks for.
   */
  readonly sets_asked?: number;
  /**
   * Minutes from the first to the latest of these sets.
   */
  readonly minutes: number;
  /**
   * How many the ladder asks for.
   */
  readonly minutes_asked?: number;
  /**
   * The role that agrees to step down.
   */
  readonly agreed_by?: Text;
  /**
   * Whether the sets show what the ladder asks for. The role still has to agree.
   */
  readonly may_step_down: boolean;
}

/**
 * What a standing fact counts as while nobody has stated it.
 */
export interface AssumedValue {
  /**
   * The observation.
   */
  readonly observation: Name;
  /**
   * What it counts as.
   */
  readonly value: number | string;
  /**
   * Its unit.
   */
  readonly unit?: Unit;
}

/**
 * A limit as it was changed for this patient.
 */
export interface ChangedLimit {
  /**
   * The limit.
   */
  readonly limit: Name;
  /**
   * What it is now.
   */
  readonly value: number;
  /**
   * Its unit.
   */
  readonly unit?: Unit;
  /**
   * Who changed it.
   */
  readonly by: string;
  /**
   * Why.
   */
  readonly reason?: string;
  /**
   * Until when; at that time it no longer holds.
   */
  readonly until?: string;
}

/**
 * A value as it was given, and as it is used.
 */
export interface TakenValue {
  /**
   * The observation, or the limit.
   */
  readonly observation: Name;
  /**
   * As it was written.
   */
  readonly given: string;
  /**
   * As it is used.
   */
  readonly as: string;
}

/**
 * A value, and what is to be said of it.
 */
export interface Remark {
  /**
   * The observation, or the limit.
   */
  readonly observation: Name;
  /**
   * As it was written.
   */
  readonly given: string;
  /**
   * Why.
   */
  readonly because: Sentence;
}

/**
 * A protocol: how one unit reads a set of observations, and what it does about it.
 */
export interface ProtocolFile {
  /**
   * The protocol's own name. Its folder has the same name.
   */
  readonly protocol: Name;
  /**
   * The number of the edition; each change that is put in force has a higher one.
   */
  readonly edition: number;
  /**
   * What the protocol is for, as a heading.
   */
  readonly title: Text;
  /**
   * What the protocol does and does not do, in a few sentences; acknowledgements stand here too.
   */
  readonly about?: Text;
  /**
   * The protocol that this one adapts. Everything of it holds here too, but for what is changed or withdrawn here; what stands in this file is added to it.
   */
  readonly based_on?: BasedOn;
  /**
   * The escalation ladder whose levels the rules call for. A protocol that is based on another has that one's ladder.
   */
  readonly ladder: Name;
  /**
   * For whom the protocol is. Outside it no level is given. While this is unsure, nothing is settled and it is asked first. Of a protocol that is based on another, both must hold.
   */
  readonly applies_when?: Condition;
  /**
   * What to use for a patient for whom this protocol is not.
   */
  readonly otherwise?: Text;
  /**
   * The day by which the council looks at the protocol again: year-month-day.
   */
  readonly review_by?: string;
  /**
   * Who answers for the protocol.
   */
  readonly owners?: readonly Text[];
  /**
   * Where the rules come from: published work, or "Common practice, no published source".
   */
  readonly sources?: {
    readonly [k: string]: Source;
  };
  /**
   * What the protocol reads. Only a protocol that is based on another can do without.
   */
  readonly observations?: ProtocolObservations;
  /**
   * Standing facts that the protocol reads: they hold until they are changed.
   */
  readonly standing?: {
    readonly [k: string]: StandingFact;
  };
  /**
   * Named numbers that rules compare with. A ward, or a prescriber for one patient, may change them inside their bounds.
   */
  readonly limits?: {
    readonly [k: string]: Limit;
  };
  /**
   * Faults of technique: what makes a reading unsure, in which direction and how far. A fault never lowers a level.
   */
  readonly faults?: readonly Fault[];
  /**
   * Numbers that are worked out from the observations.
   */
  readonly measures?: {
    readonly [k: string]: Measure;
  };
  /**
   * The rules. Their order means nothing. Only a protocol that is based on another can do without.
   */
  readonly rules?: readonly Rule[];
  /**
   * Named partitions: for every possible set exactly one of the conditions holds. A hole or an overlap is a problem.
   */
  readonly exactly_one_of?: {
    readonly [k: string]: Conditions;
  };
  /**
   * What the council calls ordinary, for check --findings: such a set should settle at the lowest level. It decides nothing. What it does not name has the dictionary's ordinary value.
   */
  readonly ordinary?: Condition;
  /**
   * Named parts of which something must be said, for check --findings: each set in one meets a rule. It decides nothing.
   */
  readonly must_say?: {
    readonly [k: string]: Condition;
  };
  /**
   * What check --findings finds and is meant so, with the reason. It decides nothing.
   */
  readonly findings?: readonly AcceptedFinding[];
  /**
   * The hazards that the safety requirements control: what can go wrong for a patient, by name.
   */
  readonly hazards?: {
    readonly [k: string]: Hazard;
  };
  /**
   * Safety requirements: what must hold for every possible set, not only for the cases. vitalwright prove answers each; an edition is sealed only when all hold.
   */
  readonly must_always?: readonly Requirement[];
}

/**
 * A list of names.
 */
export type Names = readonly Name[];

/**
 * A list of sentences.
 */
export type Texts = readonly Text[];

/**
 * What the protocol reads: what it needs, and what helps.
 */
export interface ProtocolObservations {
  /**
   * Observations without which the outcome is not settled, most telling first.
   */
  readonly needs?: Names;
  /**
   * Observations that would tell more. Without them the outcome can still be settled.
   */
  readonly helps?: Names;
  /**
   * Observations that the dictionary does not have, declared here in the dictionary's own form.
   */
  readonly declares?: {
    readonly [k: string]: Observation;
  };
}

/**
 * Which protocol is adapted, and what is changed of it.
 */
export interface BasedOn {
  /**
   * The name of the protocol that is adapted.
   */
  readonly protocol: Name;
  /**
   * The edition of it that was read and agreed. While it is another one, this protocol is refused.
   */
  readonly edition: number;
  /**
   * Its limits that have another value here, each inside the bounds that it states.
   */
  readonly limits?: {
    readonly [k: string]: OtherValue;
  };
  /**
   * Its rules that do not hold here.
   */
  readonly withdraws?: readonly Withdrawal[];
}

/**
 * Another value of a limit, and why.
 */
export interface OtherValue {
  /**
   * The number that holds here, in the unit of the limit.
   */
  readonly value: Quantity;
  /**
   * Why it is another one here.
   */
  readonly because: Text;
  /**
   * Where the number comes from: names from the sources of either protocol. Without it the limit keeps its sources.
   */
  readonly source?: Names;
}

/**
 * A rule that does not hold here, and why.
 */
export interface Withdrawal {
  /**
   * The rule's name. No rule that stays may name it.
   */
  readonly rule: Name;
  /**
   * Why it does not hold here.
   */
  readonly because: Text;
}

/**
 * A standing fact: who may state it, and what it counts as while nobody has.
 */
export interface StandingFact {
  /**
   * Who may state it.
   */
  readonly set_by?: Text;
  /**
   * What it counts as while nobody has stated it. Without this an unstated fact is missing.
   */
  readonly if_not_stated?: number | string | boolean;
}

/**
 * A named number, and the bounds inside which it may be changed.
 */
export interface Limit {
  /**
   * The number that holds while nobody has changed it.
   */
  readonly value: Quantity;
  /**
   * Its unit, in the trade's words.
   */
  readonly unit?: string;
  /**
   * The lowest and the highest number that it may be changed to, both included.
   *
   * @minItems 2
   * @maxItems 2
   */
  readonly between?: readonly [Quantity, Quantity];
  /**
   * Who may change it for one patient.
   */
  readonly set_by?: Text;
  /**
   * What it is, in plain words.
   */
  readonly title?: Text;
  /**
   * Where the number comes from.
   */
  readonly source?: Names;
}

/**
 * A finding, and why it is meant so.
 */
export interface AcceptedFinding {
  /**
   * Its name, as check --findings prints it.
   */
  readonly finding: Text;
  /**
   * Why it is meant so.
   */
  readonly accepted: Text;
}

/**
 * When something holds: names with comparisons. Several keys mean and. all, any, none and at_least_of hold further conditions.
 */
export interface Condition {
  /**
   * Holds when every one of these holds.
   */
  readonly all?: Conditions;
  /**
   * Holds when at least one of these holds.
   */
  readonly any?: Conditions;
  /**
   * Holds when none of these holds.
   */
  readonly none?: Conditions;
  /**
   * Holds when at least so many of these hold.
   */
  readonly at_least_of?: AtLeastOf;
  /**
   * Holds when the named rule is met.
   */
  readonly rule?: Name;
  readonly [k: string]: Comparison | Conditions | AtLeastOf | Name | undefined;
}

/**
 * A list of conditions.
 */
export type Conditions = readonly Condition[];

/**
 * How many of the conditions must hold.
 */
export interface AtLeastOf {
  /**
   * How many of them, at least.
   */
  readonly count: number;
  /**
   * The conditions that are counted.
   */
  readonly of: Conditions;
}

/**
 * What is asked of an observation or a measure. Several keys mean and. A number may carry its unit; the name of a limit, a measure or an observation may stand in its place.
 */
export interface Comparison {
  /**
   * Lower than this; this value itself does not count.
   */
  readonly below?: Quantity;
  /**
   * Higher than this; this value itself does not count.
   */
  readonly above?: Quantity;
  /**
   * This or lower.
   */
  readonly at_most?: Quantity;
  /**
   * This or higher.
   */
  readonly at_least?: Quantity;
  /**
   * From the first to the second, both included.
   *
   * @minItems 2
   * @maxItems 2
   */
  readonly between?: readonly [Quantity, Quantity];
  /**
   * Exactly this choice; or yes, or no.
   */
  readonly is?: string | boolean;
  /**
   * One of these choices. Of an observation that can hold several: at least one of these is among them.
   */
  readonly one_of?: Names;
  /**
   * yes: a value was given. no: none was.
   */
  readonly known?: Yes;
  /**
   * yes: it was tried and could not be obtained.
   */
  readonly unobtainable?: Yes;
  /**
   * Why the council accepts what the check warns of here.
   */
  readonly accepted?: Text;
}

/**
 * A number that is worked out. It has exactly one of formula, curve, score, choose, first_known, highest, lowest, average, earliest, latest, change, count, minutes_since, held.
 */
export interface Measure {
  /**
   * What it is, in plain words, as it stands in a sentence.
   */
  readonly title?: Text;
  /**
   * What the number tells.
   */
  readonly meaning?: Text;
  /**
   * Its unit, in the trade's words.
   */
  readonly unit?: string;
  /**
   * Where it comes from.
   */
  readonly source?: Names;
  /**
   * Arithmetic with + - * / and ( ) over observations, limits and measures, on one line. A plain number that is added takes the unit of what it is added to.
   */
  readonly formula?: string | number;
  /**
   * Straight lines through points, for what a formula does not say.
   */
  readonly curve?: Curve;
  /**
   * Points for each observation or measure, added up.
   */
  readonly score?: {
    readonly [k: string]: ScorePart;
  };
  /**
   * The first entry whose condition holds; the last entry has no condition.
   */
  readonly choose?: readonly ChoosePart[];
  /**
   * The first of these that is known.
   */
  readonly first_known?: Names;
  /**
   * Look back: the highest value in the window.
   */
  readonly highest?: Name;
  /**
   * Look back: the lowest value in the window.
   */
  readonly lowest?: Name;
  /**
   * Look back: the average of the values in the window.
   */
  readonly average?: Name;
  /**
   * Look back: the earliest value in the window.
   */
  readonly earliest?: Name;
  /**
   * Look back: the latest value in the window.
   */
  readonly latest?: Name;
  /**
   * Look back: the latest value less the earliest in the window. It needs two values.
   */
  readonly change?: Name;
  /**
   * Look back: how many sets in the window have a value of this; of a yes-or-no observation, how many say yes.
   */
  readonly count?: Name;
  /**
   * Look back: minutes since there was last a value of this; of a yes-or-no observation, since it was last yes. What never happened in the window is never: beyond any number.
   */
  readonly minutes_since?: Name;
  /**
   * Look back: for how many minutes this has held without a break, up to the present set.
   */
  readonly held?: Condition;
  /**
   * How far the look back reaches. A set exactly as old as this is no longer in it.
   */
  readonly over?: Duration;
  /**
   * Only the sets for which this holds count.
   */
  readonly where?: Condition;
  /**
   * Whether the present set counts too: included (when nothing is said) or left_out.
   */
  readonly present_set?: 'included' | 'left_out';
  /**
   * Of held: a longer time between two sets breaks the run.
   */
  readonly longest_gap?: Duration;
  /**
   * What makes the measure blind. Rules that read it and are not met then reassure nobody.
   */
  readonly not_reliable_when?: Condition;
}

/**
 * Straight lines through points.
 */
export interface Curve {
  /**
   * The observation or measure that the curve is read at.
   */
  readonly of: Name;
  /**
   * The points, each as [at, value], rising.
   */
  readonly points: readonly (readonly [Quantity, Quantity])[];
  /**
   * Outside the points: missing (no value) or hold (the value of the nearest point).
   */
  readonly beyond?: 'missing' | 'hold';
}

/**
 * Points of one part: a list of bands for a number, or the points for each choice, or for yes and no.
 */
export type ScorePart =
  | readonly Band[]
  | {
      readonly [k: string]: number;
    };

/**
 * One band of a score: up to where it reaches, and its points. The last band is open.
 */
export interface Band {
  /**
   * The band reaches up to this value, which belongs to it.
   */
  readonly at_most?: Quantity;
  /**
   * The band reaches up to this value, which belongs to the next.
   */
  readonly below?: Quantity;
  /**
   * The points.
   */
  readonly points: number;
}

/**
 * A measure, an observation, a limit or a number to use, and when.
 */
export interface ChoosePart {
  /**
   * When it is used.
   */
  readonly when?: Condition;
  /**
   * What is used.
   */
  readonly use: Quantity;
}

/**
 * A fault of technique. While it is known to be there, the true value may lie on one side of what was read; every rule is then asked over that range, and the level that the numbers call for stands.
 */
export interface Fault {
  /**
   * The fault's name.
   */
  readonly fault: Name;
  /**
   * The fault in plain words.
   */
  readonly title?: Text;
  /**
   * When the fault is there, asked of the set itself: observations compared with numbers or choices. What is not known is no fault.
   */
  readonly when: Condition;
  /**
   * How far it may read too high, for each observation: the truth may be as much lower.
   */
  readonly reads_high?: Amounts;
  /**
   * How far it may read too low, for each observation: the truth may be as much higher.
   */
  readonly reads_low?: Amounts;
  /**
   * What the fault does to the reading, in a sentence.
   */
  readonly says: Text;
  /**
   * What to do so that the next reading is free of it.
   */
  readonly do?: readonly Action[];
  /**
   * Where the direction and the size come from; names from sources.
   */
  readonly source: Names;
}

/**
 * An amount for each observation, in its unit.
 */
export interface Amounts {
  readonly [k: string]: Quantity;
}

/**
 * A rule: when something holds, what it suggests, why, what to ask, what to do, and the level that it calls for.
 */
export interface Rule {
  /**
   * The rule's name.
   */
  readonly rule: Name;
  /**
   * The rule's name in plain words.
   */
  readonly title?: Text;
  /**
   * When the rule is met.
   */
  readonly when: Condition;
  /**
   * An exception that takes the rule back. It counts only when it is known.
   */
  readonly unless?: Exception;
  /**
   * An explanation: the rule stays met, the sentence is added, and the level may be lowered to a stated one, never to the lowest.
   */
  readonly explained_by?: Explanation;
  /**
   * What makes the rule blind. When it is then not met, that reassures nobody, and the outcome says so.
   */
  readonly not_reliable_when?: Condition;
  /**
   * The level of the ladder that the rule calls for.
   */
  readonly level?: Name;
  /**
   * What it suggests, in a sentence: "suggests", never "is".
   */
  readonly says?: Text;
  /**
   * Why: the reasoning that a learner should see.
   */
  readonly because?: Text;
  /**
   * What to ask or look for.
   */
  readonly ask?: Texts;
  /**
   * What to do.
   */
  readonly do?: readonly Action[];
  /**
   * Where the rule comes from: names from sources.
   */
  readonly source?: Names;
  /**
   * Why the council accepts what the check warns of here.
   */
  readonly accepted?: Text;
}

/**
 * A safety requirement: what must hold for every possible set. It has exactly one kind.
 */
export interface Requirement {
  /**
   * The requirement's name.
   */
  readonly requirement: Name;
  /**
   * The requirement in plain words.
   */
  readonly title?: Text;
  /**
   * The hazards that it controls: names from hazards.
   */
  readonly controls: readonly Name[];
  /**
   * Why it must hold.
   */
  readonly because?: Text;
  /**
   * Where it comes from: names from sources.
   */
  readonly source?: readonly Name[];
  /**
   * For which sets it must hold; without it for every one of the patients whom this is for. It may name whatever a rule may name.
   */
  readonly where?: Condition;
  /**
   * as_written: it must hold at the limits as they are written. Without this it must hold for every value of each limit inside its bounds.
   */
  readonly limits?: 'as_written';
  /**
   * Kind: the level of the set is this one or a higher one.
   */
  readonly level_at_least?: Name;
  /**
   * Kind: the level of the set is this one or a lower one, and could be no higher.
   */
  readonly level_at_most?: Name;
  /**
   * Kind: this rule is met.
   */
  readonly rule_met?: Name;
  /**
   * Kind: these rules are never all met in one set.
   */
  readonly never_together?: readonly Name[];
  /**
   * Kind: of two sets that differ in one observation alone, the one with the worse value never has the lower level.
   */
  readonly getting_worse_never_lowers?: GettingWorse;
  /**
   * Kind: what is left blank never gives a calmer headline than an answer would: what the level could be is never below the level with the answer.
   */
  readonly nothing_hides?: NothingHides;
  /**
   * Kind: these sets never get a level, because this is not for such patients.
   */
  readonly no_level?: 'yes' | true;
  /**
   * Kind: a fault of technique never lowers the level: with any fault it is no lower than without one.
   */
  readonly fault_never_lowers?: 'yes' | true;
  /**
   * Kind: some rule that says, asks or does something is met.
   */
  readonly always_some_advice?: 'yes' | true;
}

/**
 * What can go wrong for a patient, how bad that is, and who answers for it.
 */
export interface Hazard {
  /**
   * What would happen to the patient.
   */
  readonly harm: Text;
  /**
   * How bad that is at its worst.
   */
  readonly severity: 'slight' | 'serious' | 'life_threatening';
  /**
   * Who answers for it.
   */
  readonly owner: Text;
}

/**
 * The one observation in which two sets differ, and which way is worse: going with a number, through with choices.
 */
export interface GettingWorse {
  /**
   * The observation that gets worse; everything else stays unchanged.
   */
  readonly observation: Name;
  /**
   * Which way is worse, for a number.
   */
  readonly going?: 'up' | 'down';
  /**
   * Inside which range, for a number: both ends included. Without it, over all that is possible.
   *
   * @minItems 2
   * @maxItems 2
   */
  readonly between?: readonly [Quantity, Quantity];
  /**
   * The choices, each worse than the one before; for yes or no as well.
   */
  readonly through?: (string | boolean)[];
}

/**
 * Which observations may be left blank. Without blank: all that are needed, what tells for whom this is, and what only an exception reads.
 */
export interface NothingHides {
  /**
   * The observations that may be left blank, alone or together.
   */
  readonly blank?: readonly Name[];
  /**
   * Of these, the ones that are not left blank, because a rule asks whether they are known, or a measure takes the first that is known. The answer shows the worst set of each.
   */
  readonly except?: readonly Name[];
}

/**
 * What takes a rule back, with the reason.
 */
export interface Exception {
  /**
   * When the rule is taken back.
   */
  readonly when: Condition;
  /**
   * Why the rule is taken back.
   */
  readonly says?: Text;
  /**
   * Why the council accepts that the exception can bring the outcome down to the lowest level.
   */
  readonly accepted?: Text;
}

/**
 * What explains a rule that stays met.
 */
export interface Explanation {
  /**
   * When the explanation holds.
   */
  readonly when: Condition;
  /**
   * The sentence that is added.
   */
  readonly says: Text;
  /**
   * The level that the rule then calls for; never the lowest, never higher than the rule's own.
   */
  readonly level?: Name;
}

/**
 * Something to do.
 */
export interface Action {
  /**
   * The name of the action; the same action named twice is advised once.
   */
  readonly id: Name;
  /**
   * What to do, in plain words.
   */
  readonly text: Text;
  /**
   * On whose authority.
   */
  readonly under?: Text;
  /**
   * Actions of this protocol that must never be advised together with this one. The check looks for a set that would advise both.
   */
  readonly excludes?: Names;
}

/**
 * One entry of the record of a policy: who may approve, who approved, what is in force from when, what was withdrawn. A file of its own, never edited; each names the one before it. It has one of approvers, approved, in_force, withdrawn.
 */
export interface RecordEntry {
  /**
   * The protocol or ward policy that the record is of.
   */
  readonly record: Name;
  /**
   * The number of the entry, from 1.
   */
  readonly entry: number;
  /**
   * The digest of the entry before; null in the first.
   */
  readonly before: string | null;
  /**
   * When it was entered.
   */
  readonly at: Moment;
  /**
   * Who may approve from now on.
   */
  readonly approvers?: ApproversEntry;
  /**
   * An approval.
   */
  readonly approved?: ApprovedEntry;
  /**
   * An edition is put in force.
   */
  readonly in_force?: InForceEntry;
  /**
   * What is in force is withdrawn.
   */
  readonly withdrawn?: WithdrawnEntry;
  /**
   * Where entries are signed: the signature of each person who makes the entry.
   */
  readonly signatures?: readonly EntrySignature[];
  /**
   * SHA-256 over the rest of this entry.
   */
  readonly digest: Digest;
}

/**
 * A time with its offset.
 */
export type Moment = string;

/**
 * Where the decision stands in the minutes.
 */
export type Minute = string;

/**
 * In plain words.
 */
export type Words = string;

/**
 * Who may approve, agreed by those who could before.
 */
export interface ApproversEntry {
  /**
   * yes: every entry of the record is signed with the keys of those who make it. no: it names them.
   */
  readonly signing: Yes;
  /**
   * Which roles approve an edition, and how many people of each. One person counts once. The same people agree on a change of this list.
   */
  readonly needs: readonly NeededRole[];
  /**
   * Who may approve, put in force and withdraw.
   */
  readonly people: readonly Approver[];
  /**
   * The minute.
   */
  readonly minute: Minute;
  /**
   * The day of the decision.
   */
  readonly on: CalendarDay;
  /**
   * Who agreed.
   */
  readonly agreed_by: readonly Person[];
}

/**
 * One person approves one edition.
 */
export interface ApprovedEntry {
  /**
   * The number of the edition.
   */
  readonly edition: number;
  /**
   * Its digest.
   */
  readonly digest: Digest;
  /**
   * Its seal.
   */
  readonly seal: Digest;
  /**
   * Who approves.
   */
  readonly by: Person;
  /**
   * In which role.
   */
  readonly role: Role;
  /**
   * The minute.
   */
  readonly minute: Minute;
  /**
   * The day of the approval.
   */
  readonly on: CalendarDay;
}

/**
 * An approved edition is in force from a time on, until another one is or it is withdrawn.
 */
export interface InForceEntry {
  /**
   * The number of the edition.
   */
  readonly edition: number;
  /**
   * Its digest.
   */
  readonly digest: Digest;
  /**
   * Its seal.
   */
  readonly seal: Digest;
  /**
   * From when, included.
   */
  readonly from: Moment;
  /**
   * Who puts it in force.
   */
  readonly by: Person;
  /**
   * Why.
   */
  readonly because: Words;
}

/**
 * Nothing that was entered before is in force from this time on.
 */
export interface WithdrawnEntry {
  /**
   * From when, included.
   */
  readonly from: Moment;
  /**
   * Who withdraws.
   */
  readonly by: Person;
  /**
   * Why.
   */
  readonly because: Words;
  /**
   * What applies instead.
   */
  readonly instead: Words;
}

/**
 * A JSON Web Signature over the entry without its digest and signatures; the text that is signed is left out of it.
 */
export interface EntrySignature {
  /**
   * Whose.
   */
  readonly by: Person;
  /**
   * Header and signature.
   */
  readonly jws: string;
}

/**
 * A set of observations, or a series: sets with their times, and what is known of the patient.
 */
export interface SetFile {
  /**
   * Of one set: when it was taken. Of a series: the time for which the question is asked, by default the time of the last set.
   */
  readonly at?: Time;
  /**
   * What holds for the patient until it is changed.
   */
  readonly patient?: Patient;
  /**
   * The sets of the series. Their order means nothing.
   */
  readonly sets?: readonly TimedSet[];
  readonly [k: string]: Observed | Time | Patient | readonly TimedSet[] | undefined;
}

/**
 * A time with its offset (RFC 3339).
 */
export type Time = string;

/**
 * Observations taken together at one time.
 */
export interface TimedSet {
  /**
   * When the set was taken.
   */
  readonly at: Time;
  readonly [k: string]: Observed | Time;
}

/**
 * What was observed: a number, a choice, several choices, yes or no (true or false); or what is known when there is no plain value.
 */
export type Observed =
  | number
  | string
  | boolean
  | readonly Name[]
  | {
      /**
       * The value.
       */
      readonly value?: number | string | boolean | readonly Name[];
      /**
       * The unit of the value, as a UCUM code (in YAML: in the trade's words).
       */
      readonly unit?: string;
      /**
       * The lowest that it can truly be.
       */
      readonly low?: number;
      /**
       * The highest that it can truly be.
       */
      readonly high?: number;
      /**
       * It was tried and could not be obtained: why, or yes.
       */
      readonly unobtainable?: string | boolean;
      /**
       * The patient declined: why, or yes.
       */
      readonly declined?: string | boolean;
      /**
       * The device showed only that it is above this.
       */
      readonly above_device?: number;
      /**
       * The device showed only that it is below this.
       */
      readonly below_device?: number;
    };

/**
 * What holds for the patient until it is changed.
 */
export interface Patient {
  /**
   * Standing facts.
   */
  readonly standing?: {
    readonly [k: string]: Stated;
  };
  /**
   * Limits of the protocol, changed for this patient.
   */
  readonly limits?: {
    readonly [k: string]: Stated;
  };
}

/**
 * A fact or a limit, with who stated it and until when it holds.
 */
export interface Stated {
  /**
   * The value.
   */
  readonly value: number | string | boolean | readonly Name[];
  /**
   * Its unit.
   */
  readonly unit?: string;
  /**
   * Who stated it.
   */
  readonly by: Text;
  /**
   * Why.
   */
  readonly reason?: Text;
  /**
   * From when it holds; without this it has always held.
   */
  readonly at?: Time;
  /**
   * Until when it holds; at that time it no longer does.
   */
  readonly until?: Time;
}

/**
 * A ward policy: the protocols that a ward reads with, together, on one ladder, and what changes for a patient with a plan.
 */
export interface WardFile {
  /**
   * The ward's name. Its folder has the same name.
   */
  readonly ward: Name;
  /**
   * The number of the edition; each change that is put in force has a higher one.
   */
  readonly edition: number;
  /**
   * The ward, as a heading.
   */
  readonly title: Text;
  /**
   * What kind of ward it is and what the policy does not do, in a few sentences.
   */
  readonly about?: Text;
  /**
   * The ladder of the ward. Every protocol that it reads with is on this ladder; another ladder is refused, never mapped.
   */
  readonly ladder: Name;
  /**
   * Where the ward is, as a name of the time zone database. It decides who is on duty at the hours of the ladder.
   */
  readonly time_zone?: string;
  /**
   * The day by which the ward looks at its policy again: year-month-day.
   */
  readonly review_by?: string;
  /**
   * Who answers for the policy.
   */
  readonly owners?: readonly Text[];
  /**
   * Where the policy comes from: published work, or "Common practice, no published source".
   */
  readonly sources?: {
    readonly [k: string]: Source;
  };
  /**
   * The protocols that the ward reads with.
   */
  readonly reads_with: readonly ReadsWith[];
  /**
   * What changes for a patient with an escalation plan, by the choice of escalation_plan: whom to tell and how soon. The level that is shown does not change.
   */
  readonly plans?: {
    readonly [k: string]: Plan;
  };
  /**
   * Pairs of actions, of whatever protocol, that must never be advised together. The check looks for a set that would advise both.
   */
  readonly never_together?: readonly ActionPair[];
  /**
   * The hazards that the safety requirements control: what can go wrong for a patient, by name.
   */
  readonly hazards?: {
    readonly [k: string]: Hazard;
  };
  /**
   * Safety requirements of all protocols together: what must hold for every possible set of every patient whom one of them is for.
   */
  readonly must_always?: readonly WardRequirement[];
}

/**
 * One protocol of the ward.
 */
export interface ReadsWith {
  /**
   * The protocol's name.
   */
  readonly protocol: Name;
  /**
   * Which edition of it was read and agreed. Another one is a problem.
   */
  readonly edition: number;
  /**
   * For which patients the ward reads with it, beside the protocol's own applies_when: observations compared with numbers or choices.
   */
  readonly when?: Condition;
}

/**
 * What one escalation plan changes.
 */
export interface Plan {
  /**
   * What the plan means at the bedside, in a sentence.
   */
  readonly says: Text;
  /**
   * By level: whom to tell and how soon in place of the ladder's own. A level that is not named stays as it is.
   */
  readonly levels: {
    readonly [k: string]: PlanLevel;
  };
  /**
   * Where it comes from; names from sources.
   */
  readonly source: readonly Name[];
}

/**
 * What a plan puts in place of a level's own words. What is not named stays as it is on the ladder.
 */
export interface PlanLevel {
  /**
   * What the level asks for.
   */
  readonly says?: Text;
  /**
   * Whom to tell.
   */
  readonly tell?: readonly Tell[];
  /**
   * How soon they come.
   */
  readonly respond?: Duration;
  /**
   * When the next full set is taken.
   */
  readonly reassess?: Duration;
  /**
   * What to do when nobody answers.
   */
  readonly if_no_answer?: NoAnswer;
}

/**
 * Two actions, by their names.
 *
 * @minItems 2
 * @maxItems 2
 */
export type ActionPair = readonly [Name, Name];

/**
 * A safety requirement of the whole ward policy: what must hold for every possible set. It has exactly one kind.
 */
export interface WardRequirement {
  /**
   * The requirement's name.
   */
  readonly requirement: Name;
  /**
   * The requirement in plain words.
   */
  readonly title?: Text;
  /**
   * The hazards that it controls: names from hazards.
   */
  readonly controls: readonly Name[];
  /**
   * Why it must hold.
   */
  readonly because?: Text;
  /**
   * Where it comes from: names from sources.
   */
  readonly source?: readonly Name[];
  /**
   * For which sets it must hold; without it for every one of the patients whom this is for. It reads observations against numbers and choices.
   */
  readonly where?: Condition;
  /**
   * as_written: it must hold at the limits as they are written. Without this it must hold for every value of each limit inside its bounds.
   */
  readonly limits?: 'as_written';
  /**
   * Kind: the level of the set is this one or a higher one.
   */
  readonly level_at_least?: Name;
  /**
   * Kind: the level of the set is this one or a lower one, and could be no higher.
   */
  readonly level_at_most?: Name;
  /**
   * Kind: of two sets that differ in one observation alone, the one with the worse value never has the lower level.
   */
  readonly getting_worse_never_lowers?: GettingWorse;
  /**
   * Kind: what is left blank never gives a calmer headline than an answer would: what the level could be is never below the level with the answer.
   */
  readonly nothing_hides?: NothingHides;
  /**
   * Kind: these sets never get a level, because this is not for such patients.
   */
  readonly no_level?: 'yes' | true;
  /**
   * Kind: a fault of technique never lowers the level: with any fault it is no lower than without one.
   */
  readonly fault_never_lowers?: 'yes' | true;
  /**
   * Kind: some rule that says, asks or does something is met.
   */
  readonly always_some_advice?: 'yes' | true;
}

/**
 * Cases of one ward policy: stories, observations, and the outcome that the ward expects of all its protocols together.
 */
export interface WardCasesFile {
  /**
   * The ward policy that the cases are for.
   */
  readonly ward: Name;
  /**
   * The cases.
   */
  readonly cases: readonly WardCase[];
}

/**
 * One case: what is given, and what is expected. It has either given or series.
 */
export interface WardCase {
  /**
   * The case in a few words.
   */
  readonly case: Text;
  /**
   * The story around it.
   */
  readonly story?: Text;
  /**
   * Where the expectation comes from: a name from the policy's sources.
   */
  readonly source?: Name;
  /**
   * One set: observations with their values.
   */
  readonly given?: SetFile;
  /**
   * A series of sets with their times.
   */
  readonly series?: SetFile;
  /**
   * What the ward expects.
   */
  readonly expect: WardExpect;
  /**
   * For the drill.
   */
  readonly teach?: Teach;
}

/**
 * What is expected of all protocols together, and of each of them.
 */
export interface WardExpect {
  /**
   * The level of the ward.
   */
  readonly level?: ExpectedLevel;
  /**
   * Who is told: exactly these, in this order.
   */
  readonly tell?: readonly Text[];
  /**
   * The escalation plan that changes the answer; none when none does.
   */
  readonly plan?: Name;
  /**
   * The higher level that is still in force from earlier sets; none when there is none.
   */
  readonly in_force?: Name;
  /**
   * Whether the sets show what the ladder asks for to step down from the level in force.
   */
  readonly may_step_down?: Yes;
  /**
   * What is expected of each protocol.
   */
  readonly protocols?: {
    readonly [k: string]: Expect;
  };
}

/**
 * What a ward policy says about a set in its series: one level of all its protocols, how it is answered here, each piece of advice once, and the outcome of each protocol.
 */
export interface WardOutcome {
  /**
   * The ward's name.
   */
  readonly ward: Name;
  /**
   * The edition of the policy.
   */
  readonly edition: number;
  /**
   * The ward.
   */
  readonly title: Text;
  /**
   * SHA-256 over the policy, its protocols and its ladder.
   */
  readonly digest: string;
  /**
   * Of a policy that is read because it is in force: since when, and what must be said of it. Left out when a policy is read that may be in force nowhere.
   */
  readonly policy?: WardPolicyInForce;
  /**
   * The time that was asked about; null when no time is known.
   */
  readonly at: string | null;
  /**
   * The highest level of all protocols; null when none of them is for this patient.
   */
  readonly level: OutcomeLevel;
  /**
   * The escalation plan that changes whom to tell and how soon. Left out when none does.
   */
  readonly plan?: WardPlan;
  /**
   * How the level is answered here, or the higher one that is still in force: with the plan, and with those who are on duty. Left out while there is no level.
   */
  readonly response?: WardResponse;
  /**
   * A higher level that an earlier set reached and that has not been stepped down from. Left out when there is none.
   */
  readonly in_force?: OutcomeInForce;
  /**
   * The outcome of each protocol, in the order of the policy; also of those that are not for this patient.
   */
  readonly reads: readonly Outcome[];
  /**
   * What the rules say that are met or count, the highest level first, each action and each question once.
   */
  readonly advice: readonly WardAdvice[];
  /**
   * What to ask first.
   */
  readonly ask_first: OutcomeNames;
  /**
   * What to take first.
   */
  readonly take_first: OutcomeNames;
  /**
   * What is missing of what the protocols need.
   */
  readonly missing: OutcomeNames;
  /**
   * What was tried and could not be obtained.
   */
  readonly unobtainable: readonly WithoutValue[];
  /**
   * What the patient declined.
   */
  readonly declined: readonly WithoutValue[];
  /**
   * What only helps, is missing, and could still decide something.
   */
  readonly would_tell_more: OutcomeNames;
  /**
   * Faults of technique that are known to be there, with the rules of all protocols that each puts in doubt. Left out when there are none.
   */
  readonly faults?: readonly WardFault[];
  /**
   * Values that are not used.
   */
  readonly refused: readonly Remark[];
  /**
   * Values that are used although they are hardly plausible.
   */
  readonly questioned: readonly Remark[];
  /**
   * What the outcome is not.
   */
  readonly caution: Text;
}

/**
 * The plan that holds.
 */
export interface WardPlan {
  /**
   * The choice of escalation_plan.
   */
  readonly plan: Name;
  /**
   * The plan in plain words.
   */
  readonly title: Text;
  /**
   * What it means at the bedside.
   */
  readonly says: Text;
}

/**
 * How a level is answered.
 */
export interface WardResponse {
  /**
   * The level.
   */
  readonly level: Name;
  /**
   * What it asks for.
   */
  readonly says?: Text;
  /**
   * Whom to tell: those who are on duty at this time.
   */
  readonly tell: readonly Tell[];
  /**
   * How soon they come.
   */
  readonly respond?: Duration;
  /**
   * When the next full set is due.
   */
  readonly reassess?: Duration;
  /**
   * What to do when nobody answers.
   */
  readonly if_no_answer?: NoAnswer;
  /**
   * How the patient comes down from this level.
   */
  readonly step_down?: StepDown;
}

/**
 * What one rule of one protocol says.
 */
export interface WardAdvice {
  /**
   * The protocol that the rule stands in.
   */
  readonly protocol: Name;
  /**
   * The rule's name.
   */
  readonly rule: Name;
  /**
   * Its name in plain words.
   */
  readonly title: Text;
  /**
   * The level that it calls for.
   */
  readonly level?: Name;
  /**
   * What it suggests.
   */
  readonly says?: Text;
  /**
   * Why.
   */
  readonly because?: Text;
  /**
   * The explanation that is known to hold.
   */
  readonly explained_by?: Sentence;
  /**
   * What to ask or look for.
   */
  readonly ask: Sentences;
  /**
   * What to do, and on whose authority. What several rules ask for is said once, with the first of them.
   */
  readonly do: Sentences;
}

/**
 * A fault of technique that is known to be there.
 */
export interface WardFault {
  /**
   * The fault's name.
   */
  readonly fault: Name;
  /**
   * The fault in plain words.
   */
  readonly title: Text;
  /**
   * What it does to the reading.
   */
  readonly says: Text;
  /**
   * What to do so that the next reading is free of it.
   */
  readonly do: Sentences;
  /**
   * What was read, and what the truth may be: with all faults of the set together.
   */
  readonly readings: readonly UnsureReading[];
  /**
   * Rules that would answer otherwise somewhere in that range, with the level that each calls for. Empty: the fault does not matter here.
   */
  readonly changes: readonly WardDoubtedRule[];
}

/**
 * A rule of one protocol whose answer a fault puts in doubt.
 */
export interface WardDoubtedRule {
  /**
   * The protocol that the rule stands in.
   */
  readonly protocol: Name;
  /**
   * The rule's name.
   */
  readonly rule: Name;
  /**
   * The rule in plain words.
   */
  readonly title: Text;
  /**
   * The level that it calls for when it is met.
   */
  readonly level?: Name;
}

/**
 * What must be said of a policy that is in force.
 */
export interface WardPolicyInForce {
  /**
   * Since when it is in force.
   */
  readonly in_force_from: string;
  /**
   * Who put it in force.
   */
  readonly by: string;
  /**
   * The day by which its review was due, when it is overdue. It still answers.
   */
  readonly review_overdue?: string;
  /**
   * What failed when it was checked, and what is read with instead. It comes before everything else.
   */
  readonly warning?: string;
}
