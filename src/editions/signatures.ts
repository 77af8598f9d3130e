import type { EntrySignature, RecordEntry } from '../shape/generated/types.ts';
import { canonicalText } from './canonical.ts';

/** A private key as it is kept in its file: a JSON Web Key for Ed25519. */
export interface PrivateKey {
  readonly kty: 'OKP';
  readonly crv: 'Ed25519';
  /** The public part, which stands on the list of approvers. */
  readonly x: string;
  /** The private part. */
  readonly d: string;
}

/** An entry before its digest and signatures are on it. */
export type Draft = Omit<RecordEntry, 'digest' | 'signatures'>;

/** What is signed: the whole entry but its digest and signatures, so that a signature fits nowhere else. */
const signedText = (draft: Draft): Uint8Array => new TextEncoder().encode(canonicalText(draft));

/** One header for one key: nothing in it is left to whoever signs. */
const headerFor = (x: string) => ({ alg: 'EdDSA', kid: x }) as const;

/** A new pair of keys. */
export async function newKey(): Promise<PrivateKey> {
  const { generateKeyPair, exportJWK } = await import('jose');
  const { privateKey } = await generateKeyPair('EdDSA', { crv: 'Ed25519', extractable: true });
  const { x, d } = await exportJWK(privateKey);
  return { kty: 'OKP', crv: 'Ed25519', x: x ?? '', d: d ?? '' };
}

/** The private key that the text of its file holds; null when it is none. */
export function textToKey(text: string): PrivateKey | null {
  try {
    const key = JSON.parse(text) as Partial<PrivateKey> | null;
    const isKey =
      key?.kty === 'OKP' &&
      key.crv === 'Ed25519' &&
      [key.x, key.d].every((part) => typeof part === 'string' && /^[A-Za-z0-9_-]{43}$/.test(part));
    return isKey ? (key as PrivateKey) : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

/** Signs an entry: a detached JSON Web Signature over Ed25519. */
export async function signatureOf(draft: Draft, by: string, key: PrivateKey): Promise<EntrySignature> {
  const { FlattenedSign, importJWK } = await import('jose');
  const { protected: header, signature } = await new FlattenedSign(signedText(draft))
    .setProtectedHeader(headerFor(key.x))
    .sign(await importJWK(key, 'EdDSA'));
  return { by, jws: `${header ?? ''}..${signature}` };
}

/** Whether a signature was made with the private part of a key, over this very entry. */
export async function signatureHolds({ jws }: EntrySignature, draft: Draft, x: string): Promise<boolean> {
  const { base64url, flattenedVerify, importJWK } = await import('jose');
  const [header = '', payload, signature = ''] = jws.split('.');
  if (payload !== '' || header !== base64url.encode(canonicalText(headerFor(x)))) return false;
  try {
    // One signature has one text.
    if (base64url.encode(base64url.decode(signature)) !== signature) return false;
    const key = await importJWK({ kty: 'OKP', crv: 'Ed25519', x }, 'EdDSA');
    await flattenedVerify(
      { protected: header, payload: base64url.encode(signedText(draft)), signature },
      key,
      { algorithms: ['EdDSA'] },
    );
    return true;
  } catch {
    return false;
  }
}
