import type { Compiled } from '../../outcome/compile.ts';
import type { Condition, Rule } from '../../protocol/protocol.ts';
import { conditionsIn } from '../../protocol/walk.ts';
import { stands, type Atom, type Atoms } from './atoms.ts';
import type { RuleHere, RulePair } from './rule-pairs.ts';
import { standIn, type Node } from './node.ts';

/** Finds what is still to be settled in a node. */
export class OpenComparisons {
  readonly #atoms: Atoms;
  readonly #asked = new Map<Rule, readonly Atom[]>();
  readonly #askedBy = new Map<Condition, readonly Atom[]>();

  constructor(atoms: Atoms) {
    this.#atoms = atoms;
  }

  /** The first comparison of some conditions, and of the rules that they name, that is not settled. */
  in(conditions: readonly (Condition | null | undefined)[], member: Compiled, node: Node): Atom | null {
    for (const condition of conditions) {
      if (!condition) continue;
      const found = this.#inside(condition, member).find((atom) => isOpen(atom, node));
      if (found) return found;
    }
    return null;
  }

  /** A comparison that only one of two rules asks, and that is open. */
  oneSided({ before, after }: RulePair, node: Node): Atom | null {
    const [first, second] = [before, after].map((here) => (here ? this.ofRule(here) : [])) as [
      Atoms['all'],
      Atoms['all'],
    ];
    const only = [
      ...first.filter((atom) => !second.includes(atom)),
      ...second.filter((atom) => !first.includes(atom)),
    ];
    return only.find((atom) => isOpen(atom, node)) ?? null;
  }

  /** Every comparison that a rule asks, through the rules that it names. */
  ofRule({ rule, member }: RuleHere): readonly Atom[] {
    const known = this.#asked.get(rule);
    if (known) return known;
    const found = conditionsOfRule(rule).flatMap((each) => [...this.#inside(each, member)]);
    this.#asked.set(rule, found);
    return found;
  }

  #inside(condition: Condition, member: Compiled): readonly Atom[] {
    const known = this.#askedBy.get(condition);
    if (known) return known;
    const found = [...conditionsIn(condition)].flatMap((each): readonly Atom[] => {
      if (each.kind === 'rule') {
        const named = member.protocol.rules.find(({ name }) => name === each.rule);
        return [named?.when, named?.unless?.when].flatMap((inner) =>
          inner ? this.#inside(inner, member) : [],
        );
      }
      return 'of' in each ? [] : [this.#atoms.of(each, member) ?? []].flat();
    });
    this.#askedBy.set(condition, found);
    return found;
  }
}

/** What decides whether a rule is met, and whether it is explained. */
export const conditionsOfRule = ({ when, unless, explainedBy }: Rule): Condition[] =>
  [when, unless?.when, explainedBy?.when].flatMap((each) => each ?? []);

const isOpen = (atom: Atom, node: Node): boolean =>
  standIn(node, atom) === stands.open && atom.reads.some((place) => node.lows[place] !== node.highs[place]);
