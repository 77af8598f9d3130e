import fc from 'fast-check';
import { expect, test } from 'vitest';
import { report } from './found.ts';
import { examples, type Example } from './generators.ts';
import { counts } from './said.ts';
import { seed, sets, targetRuns } from './settings.ts';
import { targetsApart } from './targets.ts';

const timeout = 60_000 + targetRuns * sets * 200;

test(
  'the closures, the generated module and json-logic-js say the same of every set',
  { timeout },
  async () => {
    const agrees = async (example: Example): Promise<void> => {
      const found = await targetsApart(example);
      if (found.length) throw new Error(found.join('\n'));
    };
    const property = fc.asyncProperty(examples(sets), agrees);
    report(await fc.check(property, { numRuns: targetRuns, seed }));
    process.stdout.write(
      `agreement of targets, seed ${seed}: ${counts.asked} sets, ${counts.rows} as columns too, ${counts.complete} of them complete, ${counts.plain} as programs give them\n`,
    );
    expect(counts.asked).toBeGreaterThanOrEqual(targetRuns * sets);
    expect(counts.rows).toBeGreaterThan(counts.asked / 4);
    expect(counts.complete).toBeGreaterThan(counts.asked / 8);
    expect(counts.plain).toBeGreaterThan(counts.asked / 4);
  },
);
