import type { SiteProtocol } from '../../common/site-protocol.ts';

/** Enough of a digest to tell two editions apart, as the command line prints it. */
export const shortDigest = (digest: string): string => digest.slice(0, 'sha256:'.length + 12);

/** The number of the edition that a draft says it is; null when its text says none. */
export function draftEdition({ text }: Pick<SiteProtocol, 'text'>): number | null {
  const [, number] = /^edition:[ \t]*([1-9][0-9]{0,3})[ \t]*(?:#.*)?\r?$/m.exec(text) ?? [];
  return number === undefined ? null : Number(number);
}

/** The names on the lines of a text; empty lines are none. */
export const namesOn = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
