import { Code } from './code.ts';
import type { ModuleObservation } from './module-inputs.ts';

/** What a module calls the value of an observation or a look back in a row. */
export const ofObservation = (name: string): Code => Code.name(`o_${name}`);
export const ofLookBack = (name: string): Code => Code.name(`back_${name}`);

/** The lowest and the highest that an observation may be in an open row. */
export const ofEnd = (end: 'low' | 'high', name: string): Code => Code.name(`${end}_${name}`);

/** What a look back says in an open row; 0 where it has no value. */
export const lookedBack = (name: string): Code => Code.name(`said_${name}`);

/** Whether a row has it: 0 or 1. */
export const has = (name: string): Code => Code.name(`has_${name}`);

/** Whether the values of an observation fit into 16 bits, with room for what stands for nothing. */
export const short = ({ low, high }: ModuleObservation): boolean => low > -32_000 && high < 32_000;

/** What stands for *not taken* in a column; the next number stands for *unobtainable*. */
export const nothingIn = (observation: ModuleObservation): number =>
  short(observation) ? -32_768 : -2_147_483_648;
