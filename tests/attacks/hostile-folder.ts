import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { Answer } from '../command-line/ask.ts';
import { bundledText } from '../bundled.ts';

interface HostileFolders {
  readonly place: string;
  /** A protocol whose title, sentences and reasons are one text; and a case of that name which does not come out as expected. */
  readonly folderWith: (text: string) => string;
  readonly removePlace: () => void;
}

/** A place of its own for folders with a hostile text in them. */
export function hostileFolders(): HostileFolders {
  const place = mkdtempSync(join(tmpdir(), 'hostile-'));
  const folderWith = (text: string): string => {
    const folder = mkdtempSync(join(place, 'one-'));
    const written = JSON.stringify(text);
    const protocol = bundledText('lessons/one_threshold/protocol.yaml');
    const put = protocol.replaceAll(
      /^( *(?:- )?(?:title|says|because): ).*$/gm,
      (_, key: string) => key + written,
    );
    expect(put.split(written).length).toBeGreaterThan(2);
    writeFileSync(join(folder, 'protocol.yaml'), put);
    copyFileSync('protocols/alder_ladder/ladder.yaml', join(folder, 'ladder.yaml'));
    writeFileSync(
      join(folder, 'cases.yaml'),
      `protocol: one_threshold\ncases:\n  - case: ${written}\n    set: { systolic: 88 }\n    expect: { not_met: [systolic_low] }\n`,
    );
    return folder;
  };
  return { place, folderWith, removePlace: () => rmSync(place, { recursive: true, force: true }) };
}

/** Nothing that a terminal obeys, or that hides what stands there. */
export function isPlain({ out, err }: Pick<Answer, 'out' | 'err'>): void {
  expect((out + err).replaceAll(/[\n\t]/g, '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
}
