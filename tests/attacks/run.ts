import { randomInt } from 'node:crypto';
import { keep } from './reader/kept.ts';
import { search, type Found } from './reader/search.ts';

/**
 * `npm run attacks`: changed and random texts into the whole reader, from a new seed each time, which is printed. 5,000 of them, or a million
 * with --long, which takes hours; with a number after --inputs, so many; after --seed, from that seed.
 */
const args = process.argv.slice(2);
const numberAfter = (name: string, otherwise: number): number => {
  const at = args.indexOf(name);
  return at === -1 ? otherwise : Number(args.splice(at, 2)[1]);
};
const seed = numberAfter('--seed', randomInt(2 ** 31));
const inputs = numberAfter('--inputs', args.includes('--long') ? 1_000_000 : 5000);
const isKnown =
  args.every((arg) => arg === '--long') && Number.isSafeInteger(seed) && Number.isSafeInteger(inputs);
if (!isKnown) {
  process.stderr.write('npm run attacks -- [--long] [--inputs NUMBER] [--seed NUMBER]\n');
  process.exit(2);
}

/** More than this is kept by nothing that a run needs, in MiB. */
const mostMemory = 1024;
const say = (text: string): void => void process.stdout.write(`${text}\n`);
const start = performance.now();
const messages = new Set<string>();

say(`Seed ${seed}, ${inputs} texts`);
for (const { tried, kept, traits, found } of search(seed)) {
  if (found) tell(found, tried);
  const isLast = tried >= inputs;
  if (tried % 1000 === 0 || isLast) {
    const memory = Math.round(process.memoryUsage().heapUsed / 2 ** 20);
    const rate = tried / ((performance.now() - start) / 1000);
    say(
      `${tried} tried, ${rate.toFixed(1)} a second, ${kept} kept, ${traits} kinds of problems, ${memory} MiB`,
    );
    if (memory > mostMemory) {
      say(`More than ${mostMemory} MiB are kept.`);
      process.exit(1);
    }
  }
  if (isLast) break;
}
say(
  messages.size === 0
    ? 'Every text was taken or refused with its problems.'
    : `${messages.size} faults were found.`,
);
process.exitCode = messages.size === 0 ? 0 : 1;

/** Says and keeps a fault, once for each that goes wrong at the same place. */
function tell(found: Found, tried: number): void {
  const key = found.says.split('\n').slice(0, 2).join('\n');
  if (messages.has(key)) return;
  messages.add(key);
  say(`\n${found.kind}: ${key}\nKept in ${keep(found, `seed_${seed}_${tried}`)}\n`);
}
