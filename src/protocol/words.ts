/** A name in plain words: `wide_for_this_systolic` is `wide for this systolic`. */
export const plainWords = (name: string): string => name.replaceAll('_', ' ');

/** Words in a list: `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[], and = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${and} ${words.at(-1) as string}`;
}
