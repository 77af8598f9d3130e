import type { StatedRequirement } from '../../../src/index.ts';
import type { ChangesHere } from './changes/changes-here.ts';
import type { SiteProtocol, SiteText } from '../common/site-protocol.ts';
import type { LooseEnds } from './loose/loose-here.ts';
import type { MapAsked, MapHere } from './map/map-here.ts';
import type { HandbookAsked, PaperHere } from './papers/papers-here.ts';
import type { WitnessHere } from './witness/witness-here.ts';

/** One side as the page asks for it: the draft in the folder, or the text of a sealed edition. */
export type SideAsked =
  | { readonly kind: 'draft' }
  | { readonly kind: 'edition'; readonly edition: number; readonly text: SiteText };

/** All that a side is opened with. */
export interface Opening {
  readonly kind: 'open';
  readonly protocol: SiteProtocol;
  readonly all: readonly SiteProtocol[];
  /** Null: there is nothing to compare with. */
  readonly before: SideAsked | null;
  readonly after: SideAsked;
}

/** What the page asks of a worker. All that is checked, compared or proven, is there. */
export type Question =
  | Opening
  | { readonly kind: 'compare' }
  /** One of the sets that the comparison shows, by its place among them. */
  | { readonly kind: 'witness'; readonly at: number }
  | MapAsked
  /** What must always hold, of the newer side; told one by one, with how far it is. */
  | { readonly kind: 'prove' }
  /** Of the draft, which is then the newer side. */
  | { readonly kind: 'findings' }
  | { readonly kind: 'unguarded' }
  /** What changes, as a page. */
  | { readonly kind: 'report' }
  | HandbookAsked;

/** A side that was opened, as the page names it; or what is wrong with it, in sentences. */
export type SideHere =
  | {
      readonly kind: 'open';
      readonly name: string;
      readonly title: string;
      readonly edition: number;
      readonly digest: string;
      readonly isSealed: boolean;
      readonly requirements: readonly StatedRequirement[];
    }
  | { readonly kind: 'problems'; readonly problems: readonly string[] };

/** Each answer by the kind of its question. */
export interface Answers {
  readonly open: { readonly before: SideHere | null; readonly after: SideHere };
  /** Null in it: one of the sides is not open. */
  readonly compare: { readonly changes: ChangesHere | null };
  readonly witness: { readonly witness: WitnessHere | null };
  readonly map: MapHere;
  readonly prove: { readonly answered: number };
  readonly findings: LooseEnds;
  readonly unguarded: LooseEnds;
  readonly report: PaperHere;
  readonly handbook: PaperHere;
}
