import type { SiteText } from '../../common/site-protocol.ts';

/** What a handbook is asked for with. */
export interface HandbookAsked {
  readonly kind: 'handbook';
  /** The edition that was sealed before; null: there is none. */
  readonly last: SiteText | null;
  /** This moment, as RFC 3339 writes it. */
  readonly now: string;
}

/** A page of HTML that needs nothing beside itself. */
export interface PaperHere {
  readonly html: string;
}
