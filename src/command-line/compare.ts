import { yamlToDocument } from '../document/yaml-to-document.ts';
import { compareSides } from '../review/compare/compare.ts';
import type { Comparison } from '../review/compare/comparison.ts';
import { jsonText } from './json-text.ts';
import { namedReader, type NamedReader } from './named-reader.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable } from './say.ts';
import { showComparison } from './show-comparison.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';
import { UnwritableFile, writeWhole } from './write-whole.ts';

/** `vitalwright compare OLD NEW [--json] [--html FILE]`. */
export const compare: Call = async (args, terminal) => {
  const call = parseCall(args, { json: { type: 'boolean' }, html: { type: 'string' } }, terminal);
  if (!call) return exit.couldNotAsk;
  const [old, now, ...more] = call.positionals;
  if (old === undefined || now === undefined || more.length > 0)
    return cannotAsk(
      'Two protocols or two ward policies are to be named, the older first: by file, folder or name, or as NAME@N.',
      terminal,
    );
  return orUnreadable(
    () =>
      orUnwritable(async () => {
        const [before, after] = [await namedReader(old, terminal), await namedReader(now, terminal)];
        if (!before || !after) return exit.couldNotAsk;
        if ('members' in before.reader !== 'members' in after.reader)
          return cannotAsk(
            'A protocol is compared with a protocol, and a ward policy with a ward policy.',
            terminal,
          );
        const comparison = await compared(before, after);
        const { html } = call.values;
        // The report first: where it cannot be written, nothing seems to have been answered.
        if (typeof html === 'string') await writeReport(html, comparison);
        terminal.out(call.values.json ? jsonText(comparison) : showComparison(comparison, terminal));
        return comparison.verdict === 'nothing_changes' ? exit.well : exit.doesNotHold;
      }, terminal),
    terminal,
  );
};

async function orUnwritable(run: () => Promise<Exit>, terminal: Terminal): Promise<Exit> {
  try {
    return await run();
  } catch (error) {
    if (!(error instanceof UnwritableFile)) throw error;
    return cannotAsk(error.message, terminal);
  }
}

/** The cases of the newer side are read by both; where it has none, those of the older. */
async function compared(before: NamedReader, after: NamedReader): Promise<Comparison> {
  const text = (await after.cases()) ?? (await before.cases());
  const cases = text && yamlToDocument(text.file, text.text).document;
  return compareSides(before.reader, after.reader, cases);
}

async function writeReport(file: string, comparison: Comparison): Promise<void> {
  const { comparisonToHtml } = await import('../review/compare/report/comparison-to-html.ts');
  await writeWhole(file, comparisonToHtml(comparison));
}
