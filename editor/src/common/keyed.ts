/** Lines with keys that are never the same, also where two lines are: a line that stays on the page by mistake would mislead. */
export const keyed = (lines: readonly string[]): { readonly key: string; readonly line: string }[] =>
  lines.map((line, index) => ({ key: `${index} ${line}`, line }));
