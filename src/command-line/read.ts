import type { Problem } from '../problems/problem.ts';
import { showProblem } from '../problems/show-problem.ts';
import type { Compiled } from '../outcome/compile.ts';
import { seriesToOutcome } from '../outcome/series-to-outcome.ts';
import type { Series } from '../series/series.ts';
import { setVocabularyOf } from '../series/set-reading.ts';
import { textToSeries } from '../series/text-to-series.ts';
import type { Ward } from '../ward/ward.ts';
import { findProtocol, UnreadableFile } from './files.ts';
import { jsonText } from './json-text.ts';
import { kindOf } from './kind-of.ts';
import { loadProtocol } from './load.ts';
import { parseCall } from './parse-call.ts';
import { showOutcome } from './show-outcome.ts';
import { exit, type Call, type Terminal } from './terminal.ts';

/** `vitalwright read PROTOCOL [--set JSON] [--json | --handoff]`. */
export const read: Call = async (args, terminal) => {
  const call = parseCall(
    args,
    { set: { type: 'string' }, json: { type: 'boolean' }, handoff: { type: 'boolean' } },
    terminal,
  );
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
  const reader = await readReader(asked, terminal);
  if (!reader) return exit.couldNotAsk;
  const given = call.values.set === undefined ? await standardInput(terminal) : String(call.values.set);
  if (given === null) return exit.couldNotAsk;
  const series = seriesOf(
    call.values.set === undefined ? 'standard input' : '--set',
    given,
    reader,
    terminal,
  );
  if (!series) return exit.couldNotAsk;
  const form = call.values.json ? 'json' : call.values.handoff ? 'handoff' : 'words';
  terminal.out(await answer(reader, series, form, terminal));
  return exit.well;
};

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
  reader: Compiled | Ward,
  series: Series,
  form: 'json' | 'handoff' | 'words',
  { width, colour }: Terminal,
): Promise<string> {
  if (form === 'handoff') {
    const { handoffFor } = await import('./handoff.ts');
    return handoffFor(reader, series);
  }
  if ('members' in reader) {
    const { answerOfWard } = await import('./answer-of-ward.ts');
    return answerOfWard(reader, series, form === 'json', { width, colour });
  }
  const outcome = seriesToOutcome(reader, series);
  return form === 'json' ? jsonText(outcome) : showOutcome(outcome, reader.protocol, { width, colour });
}

/** The protocol, or the ward policy, that is asked for; null when it cannot be read, which is then said. */
async function readReader(asked: string, terminal: Terminal): Promise<Compiled | Ward | null> {
  const path = await findProtocol(asked);
  if (path === null) {
    terminal.err(
      `There is no protocol "${asked}": no such file, no such folder, and no such name below protocols/.\n`,
    );
    return null;
  }
  try {
    if ((await kindOf(path)) === 'ward') {
      const { loadWard } = await import('./load-ward.ts');
      const { ward, problems } = await loadWard(path, null);
      if (!ward) say(problems, terminal);
      return ward;
    }
    const { compiled, problems } = await loadProtocol(path, null);
    if (!compiled) say(problems, terminal);
    return compiled;
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    terminal.err(`${error.message}\n`);
    return null;
  }
}

function seriesOf(file: string, text: string, reader: Compiled | Ward, terminal: Terminal): Series | null {
  const vocabulary = 'members' in reader ? reader.vocabulary : setVocabularyOf(reader.protocol);
  const { series, problems } = textToSeries(file, text, vocabulary);
  if (!series) terminal.err(`${nothingRead}\n\n`);
  say(problems, terminal);
  return series;
}

/** Stands first, so that nobody takes a list of slips for an answer about a patient. */
const nothingRead =
  'NOTHING HAS BEEN READ: this is not a result. Where the patient looks unwell or worries you, call now; do not wait to correct this.';

function say(problems: readonly Problem[], terminal: Terminal): void {
  for (const problem of problems) terminal.err(`${showProblem(problem)}\n\n`);
}
