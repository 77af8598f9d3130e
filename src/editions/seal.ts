import { digestOfText } from '../protocol/digest.ts';

/** Closes the text of an edition with its seal: a last line with the digest of every byte before it. */
export const sealed = (body: string): string => `${body}seal: ${digestOfText(body)}\n`;

/**
 * The seal that a text ends with, and whether the text is as it was sealed. Null: its last line is no seal.
 *
 * `sealOf(sealed('title: x\n'))?.isWhole` is true.
 */
export function sealOf(text: string): { readonly seal: string; readonly isWhole: boolean } | null {
  const at = text.lastIndexOf('\nseal: ') + 1;
  const [, seal] = /^seal: (sha256:[0-9a-f]{64})\n$/.exec(text.slice(at)) ?? [];
  return seal === undefined ? null : { seal, isWhole: digestOfText(text.slice(0, at)) === seal };
}
