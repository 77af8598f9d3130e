import type { Compiled } from '../../outcome/compile.ts';
import type { Handout } from '../../teach/handout.ts';
import type { Ward } from '../../ward/ward.ts';
import type { Html } from '../html.ts';
import type { HandbookInput } from '../input.ts';
import type { Spoken } from '../sentences/spoken.ts';

/** All that a section can tell of, worked out once. */
export interface Contents extends HandbookInput {
  readonly handout: Handout;
  /** One for a protocol; of a ward policy, one for each protocol that it reads with. */
  readonly parts: readonly Part[];
  readonly ward: Ward | null;
}

/** One protocol, with its sentences; every one of them was read back. */
export interface Part {
  readonly compiled: Compiled;
  readonly spoken: Spoken;
}

/** One section: null where it has nothing to tell, and then it has no heading either. */
export type Section = (contents: Contents) => Html | null;
