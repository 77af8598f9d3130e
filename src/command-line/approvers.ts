import { join } from 'node:path';
import { canonicalText } from '../editions/canonical.ts';
import { listAfter } from '../editions/record.ts';
import { textToFile } from '../shape/text-to-file.ts';
import { isYes } from '../vocabulary/read-choices.ts';
import { checkApprovers } from './check-kept.ts';
import { folderOf, keysIn, needed } from './decision.ts';
import { enterAndSay } from './entering.ts';
import { exists, fileNames, readText } from './files.ts';
import { openOrSay } from './open-record.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable, sayProblems } from './say.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

const options = {
  'agreed-by': { type: 'string', multiple: true },
  key: { type: 'string', multiple: true },
  minute: { type: 'string' },
  on: { type: 'string' },
} as const;

/** `vitalwright approvers POLICY --agreed-by NAME… --minute REF [--on DAY] [--key FILE]…`: who may approve, from its file into the record. */
export const approvers: Call = async (args, terminal) => {
  const call = parseCall(args, options, terminal);
  if (!call) return exit.couldNotAsk;
  const [asked, ...more] = call.positionals;
  if (asked === undefined || more.length > 0)
    return cannotAsk('One protocol or ward policy is to be named.', terminal);
  const given = needed(call.values, { minute: 'where the decision stands in the minutes' }, terminal);
  const agreedBy = call.lists['agreed-by'] ?? [];
  if (!given) return exit.couldNotAsk;
  if (agreedBy.length === 0)
    return cannotAsk('Who agreed is to be named with --agreed-by, once for each person.', terminal);
  const on = typeof call.values.on === 'string' ? call.values.on : terminal.today;
  const agreed = { agreed_by: agreedBy, minute: given.minute, on };
  return orUnreadable(async () => enterList(asked, agreed, call.lists['key'] ?? [], terminal), terminal);
};

async function enterList(
  asked: string,
  agreed: { readonly agreed_by: readonly string[]; readonly minute: string; readonly on: string },
  keyPaths: readonly string[],
  terminal: Terminal,
): Promise<Exit> {
  const folder = await folderOf(asked, terminal);
  const keys = await keysIn(keyPaths, terminal);
  if (folder === null || keys === null) return exit.couldNotAsk;
  const path = join(folder, fileNames.approvers);
  if (!(await exists(path)))
    return cannotAsk(`There is no ${fileNames.approvers} in ${folder} that says who may approve.`, terminal);
  const { problems } = await checkApprovers(path);
  const { file, text } = await readText(path);
  const { value } = textToFile('approvers', file, text);
  if (!value || problems.length > 0) {
    sayProblems(problems, terminal);
    return exit.doesNotHold;
  }
  const opened = await openOrSay(folder, terminal);
  if (!opened) return exit.doesNotHold;
  const list = {
    signing: isYes(value.signing) ? 'yes' : 'no',
    needs: value.needs,
    people: value.people,
  } as const;
  const now = listAfter(opened.record)?.list;
  if (
    now &&
    canonicalText({ ...list }) ===
      canonicalText({ signing: now.signing, needs: now.needs, people: now.people })
  ) {
    terminal.out('This list is entered already; nothing was changed.\n');
    return exit.well;
  }
  const body = { approvers: { ...list, ...agreed } };
  const said = (): string =>
    `Entered: who may approve editions of "${value.approvers}": ${list.people.map(({ name }) => name).join(', ')}.`;
  return enterAndSay({ folder, opened, body, keys }, said, terminal);
}
