import type { HandbookInput } from '../handbook/input.ts';
import type { Exit } from './terminal.ts';

/** What a handbook is made of, and the exit that what was found on the way leads to. */
export interface FoundInput {
  readonly input: HandbookInput;
  readonly exit: Exit;
}
