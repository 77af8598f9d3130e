import type { OpenDesk } from '../desk/use-desk.ts';
import type { GivenSet, RuleHere } from '../messages.ts';

/** What every panel beside the texts is given. */
export interface SideProps {
  readonly open: OpenDesk;
  readonly kind: 'protocol' | 'ward';
  /** The rule that the caret stands in; null outside of rules. */
  readonly ruleAtCaret: RuleHere | null;
  /** The case that is chosen, by its name. */
  readonly chosen: string | null;
  readonly onChoose: (name: string | null) => void;
  /** Shows a place of a text in the field. */
  readonly onShow: (part: 'protocol' | 'cases', line: number) => void;
  /** Adds a case, as YAML, to the text of the cases. */
  readonly onAddCase: (yaml: string) => void;
  readonly onNewCase: () => void;
  /** The axes of the map, as the address has them. */
  readonly axes: readonly [string, string] | null;
  readonly onAxes: (axes: readonly [string, string]) => void;
  /** Begins a case with what is observed at a point of the map. */
  readonly onCaseOf: (given: GivenSet) => void;
}
