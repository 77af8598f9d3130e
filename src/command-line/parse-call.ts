import { parseArgs, type ParseArgsConfig } from 'node:util';
import { usage } from './usage.ts';
import type { Terminal } from './terminal.ts';

type Options = NonNullable<ParseArgsConfig['options']>;
type Parsed = {
  /** Options that are given at most once. */
  readonly values: Readonly<Record<string, string | boolean | undefined>>;
  /** Options that may be given several times. */
  readonly lists: Readonly<Record<string, readonly string[] | undefined>>;
  readonly positionals: readonly string[];
};

/** The options and the rest of a call; null, and said, when an option is unknown or lacks its value. */
export function parseCall(args: readonly string[], options: Options, terminal: Terminal): Parsed | null {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options,
      allowPositionals: true,
      strict: true,
    });
    const isList = (name: string): boolean => Array.isArray(values[name]);
    const picked = (wanted: boolean): object =>
      Object.fromEntries(Object.entries(values).filter(([name]) => isList(name) === wanted));
    return {
      values: picked(false) as Parsed['values'],
      lists: picked(true) as Parsed['lists'],
      positionals,
    };
  } catch (error) {
    const [reason] = (error as Error).message.split('. ');
    terminal.err(`${reason ?? ''}.\n\n${usage}`);
    return null;
  }
}
