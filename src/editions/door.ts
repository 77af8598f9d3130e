/** What the library offers of sealed editions, and of the record of what is in force. */
export { beginReadEdition, readEdition } from './read-edition.ts';
export { rolesInWords } from './entry-in-words.ts';
export { signatureOf, textToKey, type Draft as EntryDraft, type PrivateKey } from './signatures.ts';
export type {
  SiteApprovals,
  SiteApprovers,
  SiteEdition,
  SiteEntry,
  SitePut,
  SiteRecord,
  SiteWithdrawn,
} from './site-record.ts';
