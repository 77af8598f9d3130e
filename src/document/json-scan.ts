import { limits } from './limits.ts';

/** What a look over the signs of a JSON text found first, and where; null when nothing stands in the way of parsing it. */
export type JsonObstacle = { readonly kind: 'too_deep' | 'comment'; readonly at: number } | null;

/**
 * Looks over a JSON text once, before anything recursive does: for nesting past the limit, and for a comment, which could hide a
 * quotation mark from this look but not from the parser. A text ends at its quotation mark or at the end of the line.
 */
export function scanJson(text: string): JsonObstacle {
  let depth = 0;
  let isInside = false;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at];
    if (isInside) {
      if (sign === '\\') at += 1;
      else if (sign === '"' || sign === '\n' || sign === '\r') isInside = false;
    } else if (sign === '"') isInside = true;
    else if (sign === '/') return { kind: 'comment', at };
    else if (sign === '[' || sign === '{') depth += 1;
    else if (sign === ']' || sign === '}') depth -= 1;
    if (depth > limits.depth) return { kind: 'too_deep', at };
  }
  return null;
}
