import { usage } from './usage.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

/** Each call is loaded only when it is made, so that the others do not wait for it. */
const calls: Readonly<Record<string, () => Promise<Call>>> = {
  check: async () => (await import('./check.ts')).check,
  read: async () => (await import('./read.ts')).read,
  build: async () => (await import('./build.ts')).build,
  serve: async () => (await import('./serve.ts')).serve,
  seal: async () => (await import('./seal.ts')).seal,
  approvers: async () => (await import('./approvers.ts')).approvers,
  approve: async () => (await import('./approve.ts')).approve,
  'put-in-force': async () => (await import('./put-in-force.ts')).putInForce,
  withdraw: async () => (await import('./withdraw.ts')).withdraw,
  key: async () => (await import('./key.ts')).key,
  new: async () => (await import('./new.ts')).newProtocol,
};

/** Runs one command line. Never throws at a user: what goes wrong is said on stderr, and the exit code is 2. */
export async function runCall(args: readonly string[], terminal: Terminal): Promise<Exit> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    terminal.out(usage);
    return name === undefined ? exit.couldNotAsk : exit.well;
  }
  const call = Object.hasOwn(calls, name) ? calls[name] : undefined;
  if (!call) {
    const { nearMiss } = await import('../vocabulary/near-miss.ts');
    const near = nearMiss(
      name,
      Object.keys(calls).map((each) => ({ name: each })),
    );
    terminal.err(`There is no call "${name}".${near === null ? '' : ` Did you mean "${near}"?`}\n\n${usage}`);
    return exit.couldNotAsk;
  }
  return (await call())(rest, terminal);
}
