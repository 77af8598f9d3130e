/**
 * The places in a text at which `separator` stands outside quotation marks and brackets, so that a title never splits a sentence.
 *
 * `“a or b” or c` has one ` or `.
 */
function placesOf(text: string, separator: string): number[] {
  const places: number[] = [];
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    const letter = text[at];
    if (letter === '“' || letter === '[') depth += 1;
    else if (letter === '”' || letter === ']') depth -= 1;
    else if (depth === 0 && text.startsWith(separator, at)) places.push(at);
  }
  return places;
}

/** What stands before and after the first such place; null when there is none. */
export function cutAt(text: string, separator: string): readonly [string, string] | null {
  const [at] = placesOf(text, separator);
  return at === undefined ? null : [text.slice(0, at), text.slice(at + separator.length)];
}

/** The parts between all such places. */
export function partsOf(text: string, separator: string): string[] {
  const places = placesOf(text, separator);
  const starts = [0, ...places.map((at) => at + separator.length)];
  return starts.map((start, index) => text.slice(start, places[index]));
}

/** Every part read, or null when one cannot be. */
export function every<From, To>(parts: readonly From[], read: (part: From) => To | null): To[] | null {
  const all = parts.map(read);
  const done = all.filter((each) => each !== null);
  return done.length === all.length ? done : null;
}

/** What a text says between a start and an end; null when it has not both. */
export const between = (text: string, start: string, end = ''): string | null =>
  text.length >= start.length + end.length && text.startsWith(start) && text.endsWith(end)
    ? text.slice(start.length, text.length - end.length)
    : null;
