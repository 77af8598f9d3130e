import { transformWithOxc } from 'vite';
import type { Protocol } from '../../../src/protocol/protocol.ts';
import type { Logic } from '../../../src/logic/logic.ts';
import { logicToTypescript } from '../../../src/targets/typescript/logic-to-typescript.ts';

/** What every generated module offers, with the names of its protocol left open. */
export interface AnyModule {
  readonly words: number;
  readonly rules: readonly string[];
  readonly evaluate: (
    set: Readonly<Record<string, unknown>>,
    limits?: Readonly<Record<string, number>> | null,
  ) => AnyOutcome;
  readonly pack: (set: Readonly<Record<string, unknown>>, out: Int32Array, at: number) => boolean;
  readonly packColumns: (
    columns: Readonly<Record<string, ArrayLike<number>>>,
    count: number,
    out?: Int32Array,
  ) => Int32Array;
  readonly packBounds: (narrow: Float64Array, out: Int32Array, at: number, wide?: Float64Array) => void;
  readonly unpack: (out: Int32Array, at: number) => AnyOutcome;
  readonly measuresOfBounds?: (bounds: Float64Array) => Readonly<Record<string, Ends | null>>;
}

interface Ends {
  readonly low: number;
  readonly high: number;
}

export interface AnyOutcome {
  readonly applies: 'yes' | 'no' | 'unsure';
  readonly level: {
    readonly at_least: string | null;
    readonly could_be: string;
    readonly settled: boolean;
  } | null;
  readonly rules: Readonly<Record<string, 'met' | 'not_met' | 'undecided'>>;
  readonly refused: readonly string[];
}

/** The text of a module without its types. */
export const plainModule = async (text: string): Promise<string> =>
  (await transformWithOxc(text, 'module.ts', { sourcemap: false })).code;

/** Runs the text of a module, as a program would import it. */
export async function runModule(text: string): Promise<AnyModule> {
  const plain = await plainModule(text);
  const url = `data:text/javascript;base64,${Buffer.from(plain).toString('base64')}`;
  return (await import(/* @vite-ignore */ url)) as AnyModule;
}

/** A protocol as the module that is generated of it. */
export const loadModule = ({ logic, protocol }: { logic: Logic; protocol: Protocol }): Promise<AnyModule> =>
  runModule(logicToTypescript(logic, protocol));
