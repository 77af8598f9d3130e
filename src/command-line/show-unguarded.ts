import { basename } from 'node:path';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { guardsOf, redCases, type Guarded } from '../review/unguarded.ts';
import { vitalSigns } from '../vocabulary/vital-signs.ts';
import { fileNames, filesBelow, readText } from './files.ts';
import { loadProtocol, type Loaded } from './load.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';

/** Prints what notices each small change of each protocol below some paths. */
export async function showUnguarded(paths: readonly string[], terminal: Terminal): Promise<Exit> {
  let unguarded = 0;
  for (const path of paths) {
    for (const file of await filesBelow(path)) {
      if (basename(file) === fileNames.protocol)
        unguarded += await showOne(await loadProtocol(file, null), terminal);
    }
  }
  return unguarded === 0 ? exit.well : exit.doesNotHold;
}

async function showOne({ file, document, compiled, casesPath }: Loaded, terminal: Terminal): Promise<number> {
  if (!document || !compiled) {
    terminal.err(`${file} has problems of its own; "vitalwright check" says which.\n`);
    return 1;
  }
  const cases = casesPath === null ? null : await readText(casesPath);
  const read = yamlToDocument(
    cases?.file ?? 'cases.yaml',
    cases?.text ?? `protocol: ${compiled.protocol.name}\ncases: []\n`,
  );
  if (!read.document) return 1;
  const { protocol } = compiled;
  const red = redCases(protocol, read.document);
  if (red.length > 0) {
    terminal.err(`${file}: a case is not as expected before anything is changed: ${red[0] as string}.\n`);
    return 1;
  }
  let [all, unguarded] = [0, 0];
  for (const guarded of guardsOf(document, protocol, read.document, {
    dictionary: vitalSigns,
    ladder: protocol.ladder,
    today: null,
  })) {
    all += 1;
    const noticed = guarded.cases.length > 0 || guarded.refused.length > 0;
    if (!noticed) unguarded += 1;
    terminal.out(`${line(guarded)}\n`);
  }
  terminal.out(`${protocol.name}: ${all} changes, ${unguarded} that nothing notices\n`);
  return unguarded;
}

function line({ change, cases, refused }: Guarded): string {
  if (refused.length > 0) return `${change.says}\n  refused: ${refused[0] as string}`;
  if (cases.length === 0) return `${change.says}\n  UNGUARDED: no case notices (${change.path.join('/')})`;
  const more = cases.length > 1 ? `, and ${cases.length - 1} more` : '';
  return `${change.says}\n  noticed by: ${cases[0] as string}${more}`;
}
