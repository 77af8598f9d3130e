import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** A secret of one start of the server: 32 bytes of chance. Whoever loaded the rooms from it has it in a cookie. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** Cookies do not know ports, so the name does: two servers on one machine keep theirs apart. */
const nameOf = (port: number): string => `vitalwright_${port}`;

/** The cookie as the rooms are given it: no script reads it, and no other site's page sends it. */
export const tokenCookie = (port: number, token: string): string =>
  `${nameOf(port)}=${token}; SameSite=Strict; HttpOnly; Path=/`;

/**
 * Whether a `Cookie` header holds the token. Another server on this machine could have set a second cookie of the name; one that is right
 * is enough, as nobody else knows it. How long the comparison takes tells nothing of the token.
 */
export function hasToken(header: string | undefined, port: number, token: string): boolean {
  const start = `${nameOf(port)}=`;
  return (header ?? '')
    .split(';')
    .map((each) => each.trim())
    .filter((each) => each.startsWith(start))
    .some((each) => timingSafeEqual(hashOf(each.slice(start.length)), hashOf(token)));
}

/** Two texts of any length become comparable. */
const hashOf = (text: string): Buffer => createHash('sha256').update(text).digest();
