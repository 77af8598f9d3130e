import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exists } from './files.ts';

/** The folder of the built rooms: beside the bundled command line, or in dist/ when it runs from its source. Null: not built. */
export async function builtSite(): Promise<string | null> {
  for (let folder = dirname(fileURLToPath(import.meta.url)); ; folder = dirname(folder)) {
    for (const place of [join(folder, 'site'), join(folder, 'dist', 'site')]) {
      if (await exists(join(place, 'index.html'))) return place;
    }
    if (dirname(folder) === folder) return null;
  }
}
