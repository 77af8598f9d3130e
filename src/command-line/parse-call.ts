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

/** The options and the rest of a call; null, and said, when an option is unknown, is there twice, or lacks its value. */
export function parseCall(args: readonly string[], options: Options, terminal: Terminal): Parsed | null {
  try {
    const { values, positionals, tokens } = parseArgs({
      args: [...args],
      options,
      allowPositionals: true,
      strict: true,
      tokens: true,
    });
    const isList = (name: string): boolean => Array.isArray(values[name]);
    const names = tokens.flatMap((token) => (token.kind === 'option' ? [token.name] : []));
    const twice = names.find((name, index) => names.indexOf(name) !== index && !isList(name));
    if (twice !== undefined) {
      terminal.err(`Option '--${twice}' is given more than once.\n\n${usage}`);
      return null;
    }
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
