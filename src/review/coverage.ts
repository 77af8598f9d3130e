import { documentToCases } from '../cases/document-to-cases.ts';
import type { Document } from '../document/document.ts';
import { answersOf, type Answers, type State } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import { SameLogic } from './guards/same-logic.ts';
import { edgesOf, type Edge } from './edges.ts';

/** What the cases of a protocol show, and what they do not. */
export interface Coverage {
  /** Of each rule, in which states the cases see it, and in which not; one that asks for facts alone is never undecided. */
  readonly rules: readonly {
    readonly rule: string;
    readonly seen: readonly State[];
    readonly unseen: readonly State[];
  }[];
  /** Of each comparison of numbers, whether a case sees it just on the side where it holds, and just on the other. */
  readonly edges: readonly { readonly edge: string; readonly holds: boolean; readonly fails: boolean }[];
}

const everyState = ['met', 'not_met', 'undecided'] as const satisfies readonly State[];

/** Runs every case of a file, and looks at what was seen. */
export function coverageOf(compiled: Compiled, document: Document, cases: Document): Coverage {
  const { protocol } = compiled;
  const all = documentToCases(cases, protocol).cases.map(({ series }) =>
    answersOf(compiled, seriesToBounds(protocol, series)),
  );
  const maybeUndecided = rulesThatMayBeUndecided(compiled);
  const rules = protocol.rules.map(({ name }, index) => {
    const states = new Set(all.map(({ rules: answers }) => answers[index]?.state));
    const [seen, unseen] = [true, false].map((is) => everyState.filter((state) => states.has(state) === is));
    const open = unseen?.filter((state) => state !== 'undecided' || maybeUndecided.has(name)) ?? [];
    return { rule: name, seen: seen ?? [], unseen: open };
  });
  return { rules, edges: edgesOf(compiled, document).map((edge) => seenBeside(edge, all)) };
}

function seenBeside({ name, side }: Edge, all: readonly Answers[]): Coverage['edges'][number] {
  const sides = new Set(all.map(({ narrow }) => side(narrow)));
  return { edge: name, holds: sides.has('holds'), fails: sides.has('fails') };
}

/** A rule that is certain exactly when it is possible has no third state. */
function rulesThatMayBeUndecided(compiled: Compiled): ReadonlySet<string> {
  const { logic } = compiled;
  const numberOf = new SameLogic().of(compiled);
  return new Set(
    logic.rules
      .filter(({ certain, possible }) => numberOf(certain) !== numberOf(possible))
      .map(({ rule }) => rule),
  );
}
