import type { Compiled } from '../outcome/compile.ts';
import type { Ward } from '../ward/ward.ts';
import { findEdition, loadEdition } from './edition-files.ts';
import { findProtocol, readText, UnreadableFile } from './files.ts';
import { kindOf } from './kind-of.ts';
import { loadProtocol } from './load.ts';
import { sayProblems } from './say.ts';
import type { Terminal } from './terminal.ts';

/** A protocol or ward policy that was asked for by its file, its folder, its name, or as a sealed edition. */
export interface NamedReader {
  readonly reader: Compiled | Ward;
  /** Whether it is a sealed edition; else it is a text that may change. */
  readonly isSealed: boolean;
  /** The text of its cases, and where it stands; null when there are none. */
  readonly cases: () => Promise<{ readonly file: string; readonly text: string } | null>;
}

/** The protocol, or the ward policy, that is asked for; null when it cannot be read, which is then said. */
export async function namedReader(asked: string, terminal: Terminal): Promise<NamedReader | null> {
  const path = (await findProtocol(asked)) ?? (await findEdition(asked))?.path ?? null;
  if (path === null) {
    terminal.err(
      `There is no protocol "${asked}": no such file, no such folder, and no such name below protocols/.\n`,
    );
    return null;
  }
  try {
    return await readAt(path, terminal);
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    terminal.err(`${error.message}\n`);
    return null;
  }
}

async function readAt(path: string, terminal: Terminal): Promise<NamedReader | null> {
  const kind = await kindOf(path);
  if (kind === 'edition') {
    const { edition, problems, file } = await loadEdition(path);
    if (!edition) sayProblems(problems, terminal);
    const cases = edition && { file: `${file} (cases)`, text: edition.file.cases };
    return edition && { reader: edition.asked, isSealed: true, cases: () => Promise.resolve(cases) };
  }
  const loaded = kind === 'ward' ? await loadPolicy(path) : await loadAlone(path);
  if (!loaded.reader) sayProblems(loaded.problems, terminal);
  const { reader, casesPath } = loaded;
  return (
    reader && {
      reader,
      isSealed: false,
      cases: () => (casesPath === null ? Promise.resolve(null) : readText(casesPath)),
    }
  );
}

async function loadPolicy(path: string) {
  const { loadWard } = await import('./load-ward.ts');
  const { ward: reader, problems, casesPath } = await loadWard(path, null);
  return { reader, problems, casesPath };
}

async function loadAlone(path: string) {
  const { compiled: reader, problems, casesPath } = await loadProtocol(path, null);
  return { reader, problems, casesPath };
}
