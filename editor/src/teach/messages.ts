import type { Drill, DrillAnswer, Handout, Lessons, MapGround } from '../../../src/index.ts';
import type { PlaneHere } from '../common/map/plane-here.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';

/** What the page asks of the worker. All that is checked or evaluated, is there. */
export type Question =
  | { readonly kind: 'open'; readonly protocol: SiteProtocol; readonly all: readonly SiteProtocol[] }
  | { readonly kind: 'drill'; readonly name: string }
  | { readonly kind: 'answer'; readonly name: string }
  /** The map with a case on it; of no case, as it is printed. */
  | { readonly kind: 'map'; readonly name: string | null };

/** What a protocol or a ward policy has to teach with; problems are sentences with their place. */
export type Opened =
  | { readonly kind: 'open'; readonly lessons: PageLessons; readonly handout: Handout }
  | { readonly kind: 'problems'; readonly problems: readonly string[] };

/** The same as plain data: problems of cases in words. */
export interface PageLessons extends Omit<Lessons, 'problems'> {
  readonly problems: readonly string[];
}

/** Each answer by the kind of its question. */
export interface Answers {
  readonly open: Opened;
  /** Null in it: there is no such case. */
  readonly drill: { readonly drill: Drill | null };
  readonly answer: { readonly answer: DrillAnswer | null };
  readonly map: { readonly map: TeachMap | { readonly why: string } };
}

/** A map, and what stands on it; in its place, a sentence that says why there is none. */
export interface TeachMap extends PlaneHere, Pick<MapGround, 'at' | 'heldAsIn' | 'isOfLastSet'> {}
