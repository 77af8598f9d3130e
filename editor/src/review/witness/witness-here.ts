/** One set that shows a change, with what each side makes of it. */
export interface WitnessHere {
  /** Whether the whole way of a set, from its text on, comes out as the comparison says. */
  readonly confirmed: boolean;
  readonly inWords: string;
  /** What the set says, in the order in which it is taken. */
  readonly observed: readonly { readonly title: string; readonly words: string }[];
  readonly before: SideSays;
  readonly after: SideSays;
}

/** What one side says of a set. */
export interface SideSays {
  /** The level in words; never without what it could be, where it is not settled. */
  readonly level: string;
  readonly couldBe: string | null;
  readonly tell: readonly string[];
  readonly byWhen: string | null;
  /** The rules that it comes from, with their reasons. */
  readonly why: readonly { readonly title: string; readonly decidedBy: readonly string[] }[];
}
