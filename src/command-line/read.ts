import type { Problem } from '../problems/problem.ts';
import { showProblem } from '../problems/show-problem.ts';
import { outcomeOf } from '../outcome/bounds-to-outcome.ts';
import type { Compiled } from '../outcome/compile.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Series } from '../series/series.ts';
import { textToSeries } from '../series/text-to-series.ts';
import { findProtocol, UnreadableFile } from './files.ts';
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
  const compiled = await readProtocol(asked, terminal);
  if (!compiled) return exit.couldNotAsk;
  const given = call.values.set === undefined ? await terminal.stdin() : String(call.values.set);
  const series = seriesOf(
    call.values.set === undefined ? 'standard input' : '--set',
    given,
    compiled,
    terminal,
  );
  if (!series) return exit.couldNotAsk;
  if (call.values.handoff) {
    const { handoffFor } = await import('./handoff.ts');
    terminal.out(handoffFor(compiled, series));
    return exit.well;
  }
  const outcome = outcomeOf(compiled, seriesToBounds(compiled.protocol, series));
  terminal.out(
    call.values.json
      ? `${JSON.stringify(outcome, null, 2)}\n`
      : showOutcome(outcome, compiled.protocol, { width: terminal.width, colour: terminal.colour }),
  );
  return exit.well;
};

async function readProtocol(asked: string, terminal: Terminal): Promise<Compiled | null> {
  const path = await findProtocol(asked);
  if (path === null) {
    terminal.err(
      `There is no protocol "${asked}": no such file, no such folder, and no such name below protocols/.\n`,
    );
    return null;
  }
  try {
    const { compiled, problems } = await loadProtocol(path, null);
    if (!compiled) say(problems, terminal);
    return compiled;
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    terminal.err(`${error.message}\n`);
    return null;
  }
}

function seriesOf(file: string, text: string, compiled: Compiled, terminal: Terminal): Series | null {
  const { series, problems } = textToSeries(file, text, compiled.protocol);
  say(problems, terminal);
  return series;
}

function say(problems: readonly Problem[], terminal: Terminal): void {
  for (const problem of problems) terminal.err(`${showProblem(problem)}\n\n`);
}
