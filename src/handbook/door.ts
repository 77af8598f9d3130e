/** What the library offers of the handbook: what it is made of, and its page. */
export { handbookToHtml } from './handbook.ts';
export { risksOfCases, risksOfEdition, risksOfProtocol } from './accepted-risks.ts';
export { inForceInWords, notKnownInForce, type SaidInForce } from './in-force-in-words.ts';
export type { AcceptedRisk, HandbookInput, SealedState } from './input.ts';
