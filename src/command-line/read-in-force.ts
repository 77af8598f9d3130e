import { banners, inForceSince, withPolicy } from '../editions/said-of-policy.ts';
import { textToTime } from '../series/text-to-time.ts';
import type { Series } from '../series/series.ts';
import { wardOutcomeOf } from '../ward/series-to-ward-outcome.ts';
import { folderOf } from './decision.ts';
import { readInForce, type Moment, type Reading } from './in-force.ts';
import { sayProblems } from './say.ts';
import { showWard } from './show-ward.ts';
import type { Form } from './form.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';

export type PolicyReading = Extract<Reading, { kind: 'policy' }>;

/** The policy that is in force at a time, with the exit that it leads to; null, and said, when there is none. */
export async function policyInForce(
  asked: string,
  at: string | undefined,
  terminal: Terminal,
): Promise<{ readonly policy: PolicyReading; readonly exit: Exit } | null> {
  const moment = momentOf(at ?? terminal.now, terminal);
  const folder = moment && (await folderOf(asked, terminal));
  if (!moment || folder === null) return null;
  const { reading, problems } = await readInForce(folder, moment, terminal);
  sayProblems(problems, terminal);
  if (reading.kind === 'policy')
    return { policy: reading, exit: problems.length > 0 ? exit.doesNotHold : exit.well };
  terminal.err('NO POLICY IN FORCE: use the paper policy.\n');
  if (reading.because !== null) terminal.err(`It was withdrawn: ${reading.because}\n`);
  if (reading.instead !== null) terminal.err(`Instead: ${reading.instead}\n`);
  return null;
}

function momentOf(written: string, terminal: Terminal): Moment | null {
  const at = textToTime(written);
  if (typeof at === 'number') return { at, day: written.slice(0, 10) };
  terminal.err(`"${written}" is no time with its offset: for example 2026-03-02T12:05:00Z.\n`);
  return null;
}

/** What a policy that is in force says of a series, with what must be said of it before everything else. */
export async function answerInForce(
  { ward, file, said }: PolicyReading,
  series: Series,
  form: Form,
  { width, colour }: Terminal,
): Promise<string> {
  if (form === 'handoff') {
    const { handoffFor } = await import('./handoff.ts');
    return handoffFor(ward, series, { warnings: banners(said), says: inForceSince(file.edition, said) });
  }
  const outcome = withPolicy(wardOutcomeOf(ward, series), said);
  return form === 'json'
    ? `${JSON.stringify(outcome, null, 2)}\n`
    : showWard(outcome, ward, { width, colour });
}
