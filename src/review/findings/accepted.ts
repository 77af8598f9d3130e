import type { Document } from '../../document/document.ts';
import { reasonsUnder, type Accepted } from '../reasons-under.ts';

/** The findings that a protocol answers, by their names. */
export const acceptedIn = (document: Document): ReadonlyMap<string, Accepted> =>
  reasonsUnder(document, 'findings', 'finding');
