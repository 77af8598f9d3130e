import type { Compiled } from '../outcome/compile.ts';
import { seriesToOutcome } from '../outcome/series-to-outcome.ts';
import type { Series } from '../series/series.ts';
import { setVocabularyOf } from '../series/set-reading.ts';
import { textToSeries } from '../series/text-to-series.ts';
import type { Ward } from '../ward/ward.ts';
import { UnreadableFile } from './files.ts';
import type { Form } from './form.ts';
import { jsonText } from './json-text.ts';
import { namedReader, type NamedReader } from './named-reader.ts';
import { parseCall } from './parse-call.ts';
import { sayProblems } from './say.ts';
import { showOutcome } from './show-outcome.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

const options = {
  set: { type: 'string' },
  json: { type: 'boolean' },
  handoff: { type: 'boolean' },
  'in-force': { type: 'boolean' },
  at: { type: 'string' },
} as const;

/** `vitalwright read PROTOCOL [--in-force [--at TIME]] [--set JSON] [--json | --handoff]`. */
export const read: Call = async (args, terminal) => {
  const call = parseCall(args, options, terminal);
  if (!call) return exit.couldNotAsk;
  const [asked, ...more] = call.positionals;
  if (asked === undefined || more.length > 0) {
    terminal.err('One protocol is to be named: its file, its folder, or its name below protocols/.\n');
    return exit.couldNotAsk;
  }
  if (call.values.json && call.values.handoff) {
    terminal.err('Either --json or --handoff is to be given, not both.\n');
    return exit.couldNotAsk;
  }
  const { at } = call.values;
  const form = call.values.json ? 'json' : call.values.handoff ? 'handoff' : 'words';
  if (call.values['in-force'])
    return readPolicy(asked, typeof at === 'string' ? at : undefined, call.values.set, form, terminal);
  if (at !== undefined) {
    terminal.err('--at says when a policy is in force; it stands beside --in-force.\n');
    return exit.couldNotAsk;
  }
  const found = await namedReader(asked, terminal);
  if (!found) return exit.couldNotAsk;
  const series = await seriesGiven(call.values.set, found.reader, terminal);
  if (!series) return exit.couldNotAsk;
  terminal.out(await answer(found, series, form, terminal));
  return exit.well;
};

/** Reads with what is in force; a check that fails does not silence the answer, but is said, and ends the call otherwise. */
async function readPolicy(
  asked: string,
  at: string | undefined,
  set: string | boolean | undefined,
  form: Form,
  terminal: Terminal,
): Promise<Exit> {
  const { answerInForce, policyInForce } = await import('./read-in-force.ts');
  const found = await policyInForce(asked, at, terminal);
  if (!found) return exit.couldNotAsk;
  const series = await seriesGiven(set, found.policy.ward, terminal);
  if (!series) return exit.couldNotAsk;
  terminal.out(await answerInForce(found.policy, series, form, terminal));
  return found.exit;
}

/** The set or series that is given, or stands on standard input. */
async function seriesGiven(
  set: string | boolean | undefined,
  reader: Compiled | Ward,
  terminal: Terminal,
): Promise<Series | null> {
  if (set !== undefined) return seriesOf('--set', String(set), reader, terminal);
  const given = await standardInput(terminal);
  return given === null ? null : seriesOf('standard input', given, reader, terminal);
}

/** All of standard input; null when the system does not give it, which is then said. */
async function standardInput(terminal: Terminal): Promise<string | null> {
  try {
    return await terminal.stdin();
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === undefined) throw error;
    terminal.err(`${nothingRead}\n\n${new UnreadableFile('standard input', code).message}\n`);
    return null;
  }
}

async function answer(
  { reader, isSealed }: NamedReader,
  series: Series,
  form: Form,
  { width, colour }: Terminal,
): Promise<string> {
  if (form === 'handoff') {
    const { draftSaid, handoffFor } = await import('./handoff.ts');
    return isSealed ? handoffFor(reader, series) : handoffFor(reader, series, draftSaid);
  }
  if ('members' in reader) {
    const { answerOfWard } = await import('./answer-of-ward.ts');
    return answerOfWard(reader, series, form === 'json', { width, colour });
  }
  const outcome = seriesToOutcome(reader, series);
  return form === 'json' ? jsonText(outcome) : showOutcome(outcome, reader.protocol, { width, colour });
}

function seriesOf(file: string, text: string, reader: Compiled | Ward, terminal: Terminal): Series | null {
  const vocabulary = 'members' in reader ? reader.vocabulary : setVocabularyOf(reader.protocol);
  const { series, problems } = textToSeries(file, text, vocabulary);
  if (!series) terminal.err(`${nothingRead}\n\n`);
  sayProblems(problems, terminal);
  return series;
}

/** Stands first, so that nobody takes a list of slips for an answer about a patient. */
const nothingRead =
  'NOTHING HAS BEEN READ: this is not a result. Where the patient looks unwell or worries you, call now; do not wait to correct this.';
