import type { Compiled } from '../../outcome/compile.ts';
import { logicOfSingleSet } from '../diagrams/single-set.ts';
import { asOneProtocol } from '../as-one-protocol.ts';
import type { Box } from '../box.ts';
import { atEnd, TooManyPieces, type Diagram } from '../diagrams/diagrams.ts';
import { findSetIn } from '../diagrams/find-set-in.ts';
import { eachPiece } from '../diagrams/input-diagrams.ts';
import { LogicDiagrams } from '../diagrams/logic-to-diagrams.ts';
import { piecesToBox } from '../diagrams/pieces-to-box.ts';
import { preferredPieces } from '../diagrams/preferred.ts';
import { reachOf } from '../diagrams/reach.ts';
import { Space } from '../diagrams/space.ts';
import type { Asking } from './asking.ts';
import { becomes, codeToChange, levelDiagram, levelsTogether } from './level-codes.ts';
import { isSame, type LevelChange } from './level-question.ts';
import type { RuleHere, RulePair } from './rule-pairs.ts';
import type { Section } from './space.ts';
import { standDiagram } from './stand-codes.ts';
import { sectionsWithin } from './within.ts';

/** A change of level that some set has, and one such set. */
export interface ChangeWithSet extends LevelChange {
  readonly box: Box;
}

/** Each change of level that there is, with a set: among complete sets, and among those in which something is missing. */
export interface ChangesOfEverySet {
  readonly complete: readonly ChangeWithSet[];
  readonly incomplete: readonly ChangeWithSet[];
  /** Changes that may happen, and that only earlier sets could show. */
  readonly open: readonly LevelChange[];
}

/**
 * What both sides say of every set, complete or not, as functions of the set. From that it is known at once which levels become which, and
 * where a search for regions has to look. Everything is null where these functions grow too large to be held.
 */
export class EverySet {
  readonly #asking: Asking;
  readonly #space: Space;
  readonly #complete: Diagram;
  /** With what looks back free, each protocol as its logic is. */
  readonly #diagrams: ReadonlyMap<Compiled, LogicDiagrams>;

  constructor(asking: Asking) {
    const all = [...asking.before, ...asking.after];
    const protocols = all.map(({ protocol }) => protocol);
    this.#asking = asking;
    this.#space = new Space(asOneProtocol(protocols), protocols);
    this.#complete = completeSets(this.#space);
    this.#diagrams = new Map(
      all.map((member) => [member, new LogicDiagrams(this.#space, member.logic, member.protocol)]),
    );
  }

  /** The changes of level that there are. */
  levelChanges = (): ChangesOfEverySet | null =>
    held(() => {
      const { store } = this.#space;
      const single = this.#levels(
        (member) =>
          new LogicDiagrams(this.#space, logicOfSingleSet(member.logic, member.protocol), member.protocol),
      );
      const [complete, incomplete] = [this.#complete, store.not(this.#complete)].map((which) =>
        this.#changes(which, single),
      ) as [ChangeWithSet[], ChangeWithSet[]];
      const shown = new Set([...complete, ...incomplete].map(keyOf));
      const every = this.#everyLevel();
      const open = every === single ? [] : this.#changes(store.yes, every);
      return { complete, incomplete, open: open.filter((each) => !shown.has(keyOf(each))) };
    });

  /** Where a complete set can get another level: nowhere else does one. */
  whereLevelsChange = (): readonly Section[] | null =>
    held(() => {
      const { store } = this.#space;
      const every = this.#everyLevel();
      const others = this.#ends(every).filter((code) => !isSame(codeToChange(code), this.#asking));
      return this.#within(
        store.or(...others.map((code) => store.not(store.differ(every, store.leaf(code))))),
      );
    });

  /** Where a rule can stand otherwise for a complete set. */
  whereRuleStandsOtherwise = ({ before, after }: RulePair): readonly Section[] | null =>
    held(() => {
      const { store } = this.#space;
      const stand = (here: RuleHere | null): Diagram =>
        here ? standDiagram(here, this.#of(here.member), store) : store.leaf(0);
      return this.#within(store.differ(stand(before), stand(after)));
    });

  #of = (member: Compiled): LogicDiagrams => this.#diagrams.get(member) as LogicDiagrams;

  #within(truth: Diagram): readonly Section[] {
    const reach = reachOf(this.#space.store.and(truth, this.#complete), this.#space);
    return sectionsWithin(this.#asking.space, reach, this.#space);
  }

  #everyLevel = (): Diagram => this.#levels(this.#of);

  /** Both sides' levels, side by side. */
  #levels(of: (member: Compiled) => LogicDiagrams): Diagram {
    const { store } = this.#space;
    const side = (members: readonly Compiled[]): Diagram =>
      levelsTogether(
        members.map((member) => levelDiagram(member.logic, of(member), store)),
        store,
      );
    return store.pair(becomes, side(this.#asking.before), side(this.#asking.after));
  }

  #changes(which: Diagram, levels: Diagram): ChangeWithSet[] {
    const { store } = this.#space;
    const preferred = preferredPieces(this.#space);
    return this.#ends(levels).flatMap((code) => {
      const change = codeToChange(code);
      if (isSame(change, this.#asking)) return [];
      const is = store.not(store.differ(levels, store.leaf(code)));
      const pieces = findSetIn(this.#space, [is, which], preferred);
      return pieces ? [{ ...change, box: piecesToBox(this.#space, pieces) }] : [];
    });
  }

  /** Every number that a diagram ends in, in order. */
  #ends(diagram: Diagram): readonly number[] {
    const { store } = this.#space;
    const [seen, ends] = [new Set([diagram]), new Set<number>()];
    for (const next of seen) {
      if (store.variableOf(next) === atEnd) ends.add(store.valueOf(next));
      else for (const end of store.endsOf(next)) seen.add(store.at(next, end));
    }
    return [...ends].sort((left, right) => left - right);
  }
}

const keyOf = ({ from, to }: LevelChange): string => JSON.stringify([from, to]);

/** Sets in which every observation has a value. */
function completeSets({ variables, store }: Space): Diagram {
  return store.and(
    ...variables.map((variable, place) =>
      eachPiece(place, variable, (_, lack) => (lack ? store.no : store.yes), store),
    ),
  );
}

function held<T>(make: () => T): T | null {
  try {
    return make();
  } catch (error) {
    if (error instanceof TooManyPieces) return null;
    throw error;
  }
}
