const escapes: Readonly<Record<string, string>> = { n: '\n', t: '\t', '"': '"', '\\': '\\', '/': '/' };

/** What a text means without its quotation marks; lines that follow each other are one line. */
export function scalarText(written: string, style: 'plain' | 'single' | 'double' = 'plain'): string {
  const joined = written.includes('\n') ? written.replace(/[ \t]*\r?\n[ \t]*/g, ' ') : written;
  if (style === 'single') return joined.replaceAll("''", "'");
  if (style === 'double') return joined.replace(/\\(.)/g, (whole, sign: string) => escapes[sign] ?? whole);
  return joined;
}
