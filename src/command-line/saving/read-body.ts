import type { Readable } from 'node:stream';

/** The bytes of a body; or that they are too many, or too late; null: whoever sent it is gone. */
export type Body = Uint8Array | 'too_large' | 'too_slow' | null;

/**
 * Reads a body of at most `largest` bytes, that many included, within `patience` milliseconds for all of it. No more than that is ever
 * held; what comes after is not looked at.
 */
export async function readBody(stream: Readable, largest: number, patience: number): Promise<Body> {
  return new Promise((resolve) => {
    const parts: Uint8Array[] = [];
    let size = 0;
    const end = (body: Body): void => {
      clearTimeout(clock);
      stream.off('data', take);
      parts.length = 0;
      resolve(body);
    };
    const take = (part: Uint8Array): void => {
      size += part.length;
      if (size > largest) end('too_large');
      else parts.push(part);
    };
    const clock = setTimeout(() => end('too_slow'), patience);
    stream.on('data', take);
    stream.once('end', () => end(Buffer.concat(parts)));
    stream.once('error', () => end(null));
    stream.once('close', () => end(null));
  });
}
