import type { Input } from '../../../logic/inputs.ts';
import { operation, type Logical } from '../../../logic/operators.ts';
import { TooManyPieces, type Diagram } from '../../diagrams/diagrams.ts';
import { added, linearSum, type LinearSum } from '../../diagrams/linear-sum.ts';
import type { LookBacks } from '../../diagrams/logic-to-diagrams.ts';
import { numbersBehind, stepsOfLogic, type Named } from '../../diagrams/numbers-behind.ts';
import type { Space } from '../../diagrams/space.ts';
import type { LookBack, Protocol } from '../../../protocol/protocol.ts';
import { observationsBehindLookBack } from '../bind.ts';
import { turnOf, widerOf } from './earlier-sums.ts';
import type { Part } from '../subject.ts';

/** A truth about earlier sets that no set decides. */
export interface Free {
  readonly diagram: Diagram;
  /** Whether look backs compare so, or whether one has a value at all. */
  readonly asks: 'comparison' | 'has_value';
  readonly looksBack: readonly LookBack[];
  /** The observations of the present set that it reads beside them. */
  readonly beside: readonly string[];
  /** For each look back the way it turns the truth when it grows: above zero on, below zero off; null where that is not known. */
  readonly turns: readonly number[] | null;
}

type Comparison = '<' | '<=';

/**
 * What earlier sets may say, of a present set that may lack some observations. Each comparison that reads a look back is a truth of its own:
 * what holds for every answer to it holds for every series. Of a set that lacks something, the answer is the one of everything given or
 * wider, where what is lacking is needed.
 */
export class FreeLookBacks implements LookBacks {
  readonly found = new Map<Diagram, Free>();
  readonly #space: Space;
  readonly #protocol: Protocol;
  readonly #named: ReadonlyMap<string, Named>;
  readonly #numberOf: (logical: Logical) => number;
  readonly #mayLack: ReadonlySet<string>;

  constructor(space: Space, { protocol, logic }: Part, mayLack: ReadonlySet<string>) {
    [this.#space, this.#protocol, this.#mayLack] = [space, protocol, mayLack];
    this.#named = stepsOfLogic(logic);
    this.#numberOf = space.same.of({ logic, protocol });
  }

  input({ owner, part, name }: Input): Diagram {
    const { store } = this.#space;
    const how = this.#how(owner);
    const counts = ['count', 'minutes_since', 'held'].includes(how.kind);
    switch (part) {
      case 'sure':
      case 'maybe': {
        const own = counts
          ? store.yes
          : this.#free(`has ${this.#key({ var: `${owner}:low` })}`, {
              asks: 'has_value',
              looksBack: [how],
              beside: [],
              turns: null,
            });
        if (this.#staysAMember(how)) return own;
        const wider = part === 'sure' ? 'certain' : 'possible';
        return this.#lacking([how], own, wider, `widened ${this.#key({ var: name })}`);
      }
      case 'open':
        return this.#lacking([how], store.no, null, `open ${this.#key({ var: `${owner}:low` })}`);
      case 'count':
        return store.leaf(1);
      default:
        // A number that is compared with nothing has no truth; nothing in logic asks so.
        throw new TooManyPieces();
    }
  }

  comparison(operator: Comparison, left: Logical, right: Logical): Diagram {
    const behind = numbersBehind([left, right], this.#named);
    const looks = behind.filter(({ of }) => of === 'look_back');
    const all = [...new Set(looks.map(({ owner }) => owner))].map((owner) => this.#how(owner));
    const beside = behind.filter(({ of }) => of === 'observation').map(({ owner }) => owner);
    const sum = this.#difference(left, right);
    const own = sum
      ? this.#ofSum(operator, sum, all, beside)
      : this.#free(`earlier ${this.#key({ [operator]: [this.#settled(left), this.#settled(right)] })}`, {
          asks: 'comparison',
          looksBack: all,
          beside,
          turns: null,
        });
    const widened = `widened ${this.#key({ [operator]: [left, right] })}`;
    if (beside.some((name) => this.#mayLack.has(name))) return this.#space.free(widened);
    return this.#lacking(all, own, sum && widerOf(sum), widened);
  }

  /**
   * Where a sum is zero or more, with everything given: a look back is then one number, so that its two ends are the same. Written one way round,
   * so that a comparison and its opposite are opposites here.
   */
  #ofSum(
    operator: Comparison,
    { terms, constant }: LinearSum,
    looksBack: readonly LookBack[],
    beside: readonly string[],
  ): Diagram {
    const { store } = this.#space;
    const merged = new Map<string, number>();
    for (const [{ of, owner }, factor] of terms) {
      const name = of === 'look_back' ? this.#key({ var: `${owner}:low` }) : owner;
      merged.set(name, (merged.get(name) ?? 0) + factor);
    }
    const open = [...merged]
      .filter(([, factor]) => factor !== 0)
      .sort(([left], [right]) => (left < right ? -1 : 1));
    const least = operator === '<' ? constant - 1 : constant;
    const [first] = open;
    if (!first) return store.leaf(Number(least >= 0));
    const way = Math.sign(first[1]);
    const above = way > 0 ? least : -least - 1;
    const name = `earlier ${open.map(([of, factor]) => `${of} ${factor * way}`).join()} ${above}`;
    const turns = looksBack.map(
      (how) => way * turnOf({ terms, constant }, (owner) => this.#how(owner) === how),
    );
    const free = this.#free(name, { asks: 'comparison', looksBack, beside, turns });
    return way > 0 ? free : store.not(free);
  }

  #how(owner: string): LookBack {
    return this.#protocol.measures.get(owner)?.how as LookBack;
  }

  /** What is needed and lacking still counts as a member of the sets that are looked at, with whatever it may be. */
  #staysAMember(how: LookBack): boolean {
    const read = observationsBehindLookBack(how).filter((each) => this.#mayLack.has(each));
    const isNeeded = this.#protocol.observations.get(how.observation ?? '')?.role !== 'helps';
    return isNeeded && how.where === null && read.every((each) => each === how.observation);
  }

  #key(logical: Logical): string {
    return String(this.#numberOf(logical));
  }

  #free(name: string, what: Omit<Free, 'diagram'>): Diagram {
    const diagram = this.#space.free(name);
    this.found.set(diagram, { ...what, diagram });
    return diagram;
  }

  /** A truth where something that the look backs read may be lacking in the present set. */
  #lacking(
    all: readonly LookBack[],
    own: Diagram,
    wider: 'certain' | 'possible' | null,
    name: string,
  ): Diagram {
    const { store, placeOf, variables } = this.#space;
    const read = [...new Set(all.flatMap(observationsBehindLookBack))].filter((each) =>
      this.#mayLack.has(each),
    );
    if (read.length === 0) return own;
    const other = this.#space.free(name);
    const needed = read.every((each) => this.#protocol.observations.get(each)?.role !== 'helps');
    const wide =
      !needed || wider === null ? other : wider === 'certain' ? store.and(own, other) : store.or(own, other);
    const lacks = read.map((each) => {
      const place = placeOf.get(each) as number;
      const { values = 0, lacks: ways = [] } = variables[place] ?? {};
      return store.node(place, [values - 1, values + ways.length - 1], [store.no, store.yes]);
    });
    return store.choose(store.or(...lacks), wide, own);
  }

  #difference(left: Logical, right: Logical): LinearSum | null {
    const limit = ({ owner }: Input): number => this.#protocol.limits.get(owner)?.value ?? 0;
    const [one, two] = [left, right].map((each) => linearSum(each, this.#named, limit));
    return one && two ? added(two, one, -1) : null;
  }

  /** With everything given a look back is one number, so that its two ends are the same. */
  #settled(logical: Logical): Logical {
    if (typeof logical !== 'object') return logical;
    const inner = operation(logical);
    if (inner) return { [inner[0]]: inner[1].map((each) => this.#settled(each)) };
    const what = this.#named.get((logical as { readonly var: string }).var);
    if (what?.kind === 'step') return this.#settled(what.is);
    return what?.input.of === 'look_back' && what.input.part === 'high'
      ? { var: `${what.input.owner}:low` }
      : logical;
  }
}
