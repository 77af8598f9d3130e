import { yamlToDocument } from '../document/yaml-to-document.ts';
import { compareSides } from '../review/compare/compare.ts';
import type { Comparison } from '../review/compare/comparison.ts';
import { jsonText } from './json-text.ts';
import { namedReader, type NamedReader } from './named-reader.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable } from './say.ts';
import { showComparison } from './show-comparison.ts';
import { exit, type Call } from './terminal.ts';

/** `vitalwright compare OLD NEW [--json]`. */
export const compare: Call = async (args, terminal) => {
  const call = parseCall(args, { json: { type: 'boolean' } }, terminal);
  if (!call) return exit.couldNotAsk;
  const [old, now, ...more] = call.positionals;
  if (old === undefined || now === undefined || more.length > 0)
    return cannotAsk(
      'Two protocols or two ward policies are to be named, the older first: by file, folder or name, or as NAME@N.',
      terminal,
    );
  return orUnreadable(async () => {
    const [before, after] = [await namedReader(old, terminal), await namedReader(now, terminal)];
    if (!before || !after) return exit.couldNotAsk;
    if ('members' in before.reader !== 'members' in after.reader)
      return cannotAsk(
        'A protocol is compared with a protocol, and a ward policy with a ward policy.',
        terminal,
      );
    const comparison = await compared(before, after);
    terminal.out(call.values.json ? jsonText(comparison) : showComparison(comparison, terminal));
    return comparison.verdict === 'nothing_changes' ? exit.well : exit.doesNotHold;
  }, terminal);
};

/** The cases of the newer side are read by both; where it has none, those of the older. */
async function compared(before: NamedReader, after: NamedReader): Promise<Comparison> {
  const text = (await after.cases()) ?? (await before.cases());
  const cases = text && yamlToDocument(text.file, text.text).document;
  return compareSides(before.reader, after.reader, cases);
}
