import { repositoryFiles, textOfFile } from './repository.ts';

/** A fenced example in a page: what stands between two lines of three backticks. */
export interface Example {
  readonly page: string;
  /** The line of the opening fence, from 1. */
  readonly line: number;
  /** The first word after the opening backticks, such as `yaml`; empty when there is none. */
  readonly language: string;
  /** The words after it, each `name=value`: `file=protocols/x.yaml` says which file the example shows. */
  readonly about: ReadonlyMap<string, string>;
  readonly text: string;
}

/** The pages of the repository that explain it. */
export function pages(): string[] {
  return repositoryFiles().filter((path) =>
    /^(?:README|DEVELOPERS|schema\/reference\/[\w-]+)\.md$/.test(path),
  );
}

/** All fenced examples of a page. Throws when a fence is left open. */
export function examplesOf(page: string, text: string): Example[] {
  const examples: Example[] = [];
  let open: { line: number; info: string; lines: string[] } | null = null;
  for (const [index, line] of text.split('\n').entries()) {
    if (open === null) {
      if (line.startsWith('```')) open = { line: index + 1, info: line.slice(3).trim(), lines: [] };
    } else if (line.trimEnd() === '```') {
      const [language = '', ...about] = open.info.split(/\s+/);
      const pairs = about.map(
        (word) => [word.split('=')[0] ?? '', word.slice(word.indexOf('=') + 1)] as const,
      );
      examples.push({
        page,
        line: open.line,
        language,
        about: new Map(pairs),
        text: `${open.lines.join('\n')}\n`,
      });
      open = null;
    } else open.lines.push(line);
  }
  if (open !== null) throw new Error(`${page}:${open.line}: the example does not end`);
  return examples;
}

export function allExamples(): Example[] {
  return pages().flatMap((page) => examplesOf(page, textOfFile(page)));
}

/** A command shown in an example, and what it prints there. */
export interface Shown {
  readonly command: string;
  readonly output: string;
}

/** The commands of a `console` example: lines that begin with `$ `, each with the lines below it. */
export function commandsOf(example: Example): Shown[] {
  const [before = '', ...parts] = `\n${example.text}`.split('\n$ ');
  if (before.trim() !== '') throw new Error(`${example.page}:${example.line}: text before the first command`);
  return parts.map((part) => {
    const [command = '', ...output] = part.split('\n');
    return { command, output: output.join('\n').trimEnd() };
  });
}
