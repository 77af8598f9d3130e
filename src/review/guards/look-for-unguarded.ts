import { partAt } from '../../document/document.ts';
import { Lines } from '../../document/lines.ts';
import { changesOf } from '../changes/changes-of.ts';
import { guardsOf, type Guard, type Guarded } from './guards-of.ts';
import { reasonsIn } from './reasons.ts';

/** A small change of a protocol that no case notices. */
export interface UnguardedChange {
  /** What is changed, in the words of the file. */
  readonly name: string;
  /** The rule, the measure or the limit that it is made in; null outside of these. */
  readonly owner: string | null;
  /** Where it is made, from 1. */
  readonly line: number;
  /** A case that would notice it, ready to be put below `cases:`; null when none was found. */
  readonly yaml: string | null;
  /** Why none was found. */
  readonly because: string | null;
  /** The reason that the case file gives for leaving it so. */
  readonly accepted: string | null;
}

/** A search that can be left off and gone on with. */
export interface UnguardedSearch {
  /** How many changes there are to look at. */
  readonly of: number;
  /** One step for each change: null where something notices it. */
  readonly steps: Iterator<UnguardedChange | null>;
}

/** Looks for the changes that no case notices, one at a time, so that whoever asks can stop in between. */
export function lookForUnguarded(guarded: Guarded): UnguardedSearch {
  const { document, compiled } = guarded;
  return { of: changesOf(document, compiled.protocol).length, steps: stepsOf(guarded) };
}

function* stepsOf(guarded: Guarded): Generator<UnguardedChange | null> {
  const lines = new Lines(guarded.document.text);
  const reasons = reasonsIn(guarded.cases);
  for (const guard of guardsOf(guarded)) {
    if (guard.kind !== 'unguarded') {
      yield null;
      continue;
    }
    const { change, example } = guard;
    yield {
      name: change.name,
      owner: change.owner,
      line: lines.at(partAt(guarded.document, change.path).node.span.start).index + 1,
      yaml: example.kind === 'case' ? example.yaml : null,
      because: whyNone(example),
      accepted: reasons.get(change.name)?.accepted ?? null,
    };
  }
}

function whyNone(example: Extract<Guard, { kind: 'unguarded' }>['example']): string | null {
  if (example.kind === 'case') return null;
  return example.because === 'too_large'
    ? 'No case was found that would notice it: the search was too large. Write one, or give a reason.'
    : 'No case was found that would notice it: it may need earlier sets, or a limit changed for one patient. Write one, or give a reason.';
}
