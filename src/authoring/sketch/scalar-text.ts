const escapes: Readonly<Record<string, string>> = { n: '\n', t: '\t', '"': '"', '\\': '\\', '/': '/' };

/** What a text means without its quotation marks; lines that follow each other are one line, but for those of a literal text. */
export function scalarText(
  written: string,
  style: 'plain' | 'single' | 'double' | 'literal' = 'plain',
): string {
  if (style === 'literal') return withoutIndent(written);
  const joined = written.includes('\n') ? written.replace(/[ \t]*\r?\n[ \t]*/g, ' ') : written;
  if (style === 'single') return joined.replaceAll("''", "'");
  if (style === 'double') return joined.replace(/\\(.)/g, (whole, sign: string) => escapes[sign] ?? whole);
  return joined;
}

/** Lines without the spaces in which the first of them begins. */
function withoutIndent(written: string): string {
  const lines = written.split(/\r?\n/);
  const indent = (lines.find((line) => line.trim() !== '') ?? '').search(/\S|$/);
  return lines.map((line) => line.slice(indent)).join('\n');
}
