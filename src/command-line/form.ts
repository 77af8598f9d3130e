/** How an answer is written. */
export type Form = 'json' | 'handoff' | 'words';
