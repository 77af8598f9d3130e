import { timeInWords } from '../../outcome/time-in-words.ts';
import type { WithdrawnEntry } from '../../shape/generated/types.ts';
import type { Meant } from './meant.ts';

/** What must be said with a withdrawal, and what each is. */
export const withdrawalSays = {
  by: 'who withdraws it',
  because: 'why',
  instead: 'what applies instead',
} as const;

/** One person withdraws what is in force, at once or from a time on. */
export function withdrawalMeant(name: string, withdrawn: WithdrawnEntry): Meant {
  const said = `Withdrawn from ${timeInWords(withdrawn.from)}: ${name}. Instead: ${withdrawn.instead}`;
  return { kind: 'meant', body: { withdrawn }, said: () => said };
}
