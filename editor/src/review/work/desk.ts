import {
  compareSides,
  comparisonToHtml,
  mostGroups,
  proofsOf,
  readDocument,
  type Comparison,
} from '../../../../src/index.ts';
import type { Answers, Opening } from '../messages.ts';
import { problemInWords } from '../../common/open-reader.ts';
import type { ProvingSoFar } from '../hold/hold-here.ts';
import type { LookedSoFar, LooseEnds } from '../loose/loose-here.ts';
import type { MapAsked } from '../map/map-here.ts';
import type { HandbookAsked } from '../papers/papers-here.ts';
import { changeMap } from './change-map.ts';
import { comparisonToPage, type ShownSet } from './comparison-to-page.ts';
import { handbookHere } from './handbook-here.ts';
import { draftedOf, findingsHere, unguardedHere, type Drafted } from './loose-ends.ts';
import { openSide, sideHere, type OpenedSide, type Side } from './open-side.ts';
import { proofToPage } from './proof-to-page.ts';
import { witnessInFull } from './witness-in-full.ts';

/** What a worker keeps: the two sides that are open, and what was found about them. */
export class Desk {
  private opening: Opening | null = null;
  private before: OpenedSide | null = null;
  private after: OpenedSide | null = null;
  private comparison: Comparison | null = null;
  private sets: readonly ShownSet[] = [];

  open(opening: Opening): Answers['open'] {
    this.opening = opening;
    this.before = opening.before && openSide(opening.before, opening);
    this.after = openSide(opening.after, opening);
    this.sets = [];
    this.comparison = null;
    return { before: this.before && sideHere(this.before), after: sideHere(this.after) };
  }

  /** The cases of the newer side are read by both; where it has none, those of the older. */
  compare(): Answers['compare'] {
    const sides = this.sides();
    if (!sides) return { changes: null };
    const [before, after] = sides;
    const text = after.cases ?? before.cases;
    const cases = text && readDocument(text.file, text.text).document;
    const comparison = compareSides(before.reader, after.reader, cases);
    const { page, sets } = comparisonToPage(comparison, [levelsOf(before), levelsOf(after)]);
    this.sets = sets;
    this.comparison = comparison;
    return { changes: page };
  }

  witness(at: number): Answers['witness'] {
    const sides = this.sides();
    const shown = this.sets[at];
    return { witness: sides && shown ? witnessInFull(shown, [sides[0].reader, sides[1].reader]) : null };
  }

  map(asked: MapAsked): Answers['map'] {
    const sides = this.sides();
    if (!sides) return { kind: 'none', why: 'One of the sides cannot be read.' };
    return changeMap(asked, [sides[0].reader, sides[1].reader], this.sets);
  }

  /** Answers every requirement of the newer side. */
  prove(tell: (soFar: ProvingSoFar) => void): Answers['prove'] {
    if (!this.after || 'problems' in this.after) throw new RangeError('the side is not open');
    let answered = 0;
    const progress = ({ requirement, looked }: { requirement: string; looked: number }): void =>
      tell({ kind: 'looking', requirement, looked, most: mostGroups });
    for (const proof of proofsOf(this.after.side.reader, { progress })) {
      answered += 1;
      tell({ kind: 'proof', proof: proofToPage(proof) });
    }
    return { answered };
  }

  findings(): Answers['findings'] {
    return this.ofDraft(findingsHere);
  }

  unguarded(tell: (soFar: LookedSoFar) => void): Answers['unguarded'] {
    return this.ofDraft((drafted, opening) => unguardedHere(drafted, opening, tell));
  }

  /** The comparison that was made last, as a page. */
  report(): Answers['report'] {
    if (!this.comparison) throw new RangeError('nothing was compared');
    return { html: comparisonToHtml(this.comparison) };
  }

  handbook(asked: HandbookAsked): Answers['handbook'] {
    const { opening, after } = this;
    if (!opening || !after || 'problems' in after) throw new RangeError('the side is not open');
    return { html: handbookHere(after.side, opening, asked) };
  }

  private ofDraft(ask: (drafted: Drafted, opening: Opening) => LooseEnds): LooseEnds {
    const { opening, after } = this;
    if (!opening || !after) throw new RangeError('nothing is open');
    if ('problems' in after) return { ends: [], problems: after.problems.map(problemInWords) };
    const { reader } = after.side;
    const drafted = 'members' in reader ? null : draftedOf(opening, reader);
    return drafted
      ? ask(drafted, opening)
      : { ends: [], problems: ['This cannot be asked of a ward policy.'] };
  }

  private sides(): readonly [Side, Side] | null {
    const { before, after } = this;
    return before && after && 'side' in before && 'side' in after ? [before.side, after.side] : null;
  }
}

const levelsOf = ({ reader }: Side): readonly string[] =>
  ('members' in reader ? reader.ladder : reader.protocol.ladder).levels.map(({ name }) => name);
