/**
 * Types in which nothing can be changed: what was checked stays as it was checked.
 *
 * `points?: Quantity[]` becomes `readonly points?: readonly Quantity[]`. Works on one property a line; comments are left alone.
 */
export function readOnly(types: string): string {
  return types
    .split('\n')
    .map((line) => (/^\s*(\/\*|\*)/.test(line) ? line : readOnlyLine(line)))
    .join('\n');
}

function readOnlyLine(line: string): string {
  return line
    .replace(/\[(\w+(?:, \w+)+)\]\[\]/g, 'readonly (readonly <$1>)[]')
    .replace(/\[(\w+(?:, \w+)+)\]/g, 'readonly <$1>')
    .replace(/<(\w+(?:, \w+)+)>/g, '[$1]')
    .replace(/(\w+)\[\]/g, 'readonly $1[]')
    .replace(/^(\s*)((?:\w+|"[^"]+")\??:|\[k: string\]:)/, '$1readonly $2');
}
