import manifest from '../../package.json' with { type: 'json' };
import { plainTerminal } from './plain-terminal.ts';
import { usage } from './usage.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

/** Each call is loaded only when it is made, so that the others do not wait for it. */
const calls: Readonly<Record<string, () => Promise<Call>>> = {
  check: async () => (await import('./check.ts')).check,
  read: async () => (await import('./read.ts')).read,
  compare: async () => (await import('./compare.ts')).compare,
  build: async () => (await import('./build.ts')).build,
  handbook: async () => (await import('./handbook.ts')).handbook,
  serve: async () => (await import('./serve.ts')).serve,
  prove: async () => (await import('./prove.ts')).prove,
  seal: async () => (await import('./seal.ts')).seal,
  approvers: async () => (await import('./approvers.ts')).approvers,
  approve: async () => (await import('./approve.ts')).approve,
  'put-in-force': async () => (await import('./put-in-force.ts')).putInForce,
  withdraw: async () => (await import('./withdraw.ts')).withdraw,
  key: async () => (await import('./key.ts')).key,
  new: async () => (await import('./new.ts')).newProtocol,
};

/** Everything that can be asked. */
export const callNames: readonly string[] = Object.keys(calls);

/**
 * Runs one command line. Never throws at a user: what goes wrong is said on stderr, and the exit code is 2. What is said there may hold a
 * name from a disk or from the line itself, so that all of it is made visible here.
 */
export async function runCall(args: readonly string[], given: Terminal): Promise<Exit> {
  const terminal = plainTerminal(given);
  const [name, ...rest] = args;
  if (name === undefined) {
    terminal.out(usage);
    return exit.couldNotAsk;
  }
  const plain = Object.hasOwn(answers, name) ? answers[name] : undefined;
  if (plain !== undefined) return alone(name, plain, rest, terminal);
  const call = Object.hasOwn(calls, name) ? calls[name] : undefined;
  if (!call) return noSuchCall(name, terminal);
  if (rest.length === 1 && (rest[0] === '--help' || rest[0] === '-h')) {
    terminal.out(usage);
    return exit.well;
  }
  return (await call())(rest, terminal);
}

/** What is answered without looking at any file. */
const answers: Readonly<Record<string, string>> = {
  help: usage,
  '--help': usage,
  '-h': usage,
  '--version': `vitalwright ${manifest.version}\n`,
};

function alone(name: string, answer: string, rest: readonly string[], terminal: Terminal): Exit {
  if (rest.length > 0) {
    terminal.err(`${name} takes nothing beside it.\n`);
    return exit.couldNotAsk;
  }
  terminal.out(answer);
  return exit.well;
}

async function noSuchCall(name: string, terminal: Terminal): Promise<Exit> {
  const { nearMiss } = await import('../vocabulary/near-miss.ts');
  const known = callNames.map((each) => ({ name: each }));
  const near = nearMiss(name, known);
  terminal.err(`There is no call "${name}".${near === null ? '' : ` Did you mean "${near}"?`}\n\n${usage}`);
  return exit.couldNotAsk;
}
