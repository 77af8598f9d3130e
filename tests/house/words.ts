/** Something that no file of the repository may say. */
export interface Forbidden {
  readonly what: string;
  readonly pattern: RegExp;
  /** A text that must be caught: the test of the test. */
  readonly example: string;
  /** A text near it that must be let through. */
  readonly harmless: string;
  /** Paths in which it may stand after all, with the reason beside it here. */
  readonly except?: readonly string[];
}

export const forbidden: readonly Forbidden[] = [
  {
    what: 'a path of one machine',
    pattern: /(?<![\w.@-])\/(?:work|tmp|root|home|Users)\/[\w.]/,
    example: 'cd /work/main',
    harmless: 'docs/work/plan, and network/tmp/x',
  },
  {
    what: 'a folder beside the repository',
    pattern: /\.\.\/shared\b/,
    example: 'see ../shared/notes',
    harmless: 'from ./shared/words.ts',
    // Looks for the community's conformance set there, and says so when it is missing.
    except: ['.ci/run'],
  },
  {
    what: 'something left undone',
    pattern: /\b(?:TODO|FIXME|XXX|HACK)\b/,
    example: '// TODO: later',
    harmless: 'a todo list',
  },
  {
    what: 'how the text came to be',
    pattern:
      /\b(?:sub-?agents?|(?:this|last|previous|next|another|earlier) session|session transcripts?|co-authored-by)\b/i,
    example: 'decided in an earlier session',
    harmless: 'a teaching session for nurses',
  },
  {
    what: 'the number of a ticket',
    pattern: /\bissues?\s+#?\d/i,
    example: 'as issue 2 asks',
    harmless: 'the issue is the rate',
  },
  {
    what: 'the address of a package registry',
    pattern: /https?:\/\/[\w.-]*(?:registry|npmjs)/i,
    example: '"resolved": "https://registry.example.org/x.tgz"',
    harmless: 'https://www.iana.org/time-zones',
  },
  {
    what: 'a check switched off by a comment',
    pattern:
      /@ts-(?:ignore|nocheck|expect-error)|(?:eslint|oxlint)-disable|prettier-ignore|(?:v8|c8|istanbul) ignore/,
    example: '// eslint-disable-next-line',
    harmless: 'disable the button',
  },
  {
    what: 'a test that is left out, or that leaves out the others',
    pattern:
      /\b(?:test|it|describe|suite|bench)(?:\.\w+)*\.(?:only|skip|todo)\b|\b(?:xtest|xit|xdescribe|fdescribe|fit)\(/,
    example: `test.skip('x', run)`,
    harmless: 'fits(x); skip(test)',
  },
  {
    what: 'a letter that cannot be seen or that turns the writing round',
    pattern: /[\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/u,
    example: 'one\u200btwo',
    harmless: 'ein Maß — naïve',
  },
  {
    what: 'a control character',
    // Made from text, because a pattern that holds control characters is taken for a slip.
    pattern: new RegExp(`[${String.raw`\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f`}]`, 'u'),
    example: 'red \u001b[31m',
    harmless: 'two\tcolumns\r\n',
  },
];

/** The file that holds the list, which must say what it forbids. */
const list = 'tests/house/words.ts';

/** What a text says that it may not, each as `path:line: what`. */
export function saysForbidden(path: string, text: string): string[] {
  if (path === list) return [];
  const rules = forbidden.filter(({ except }) => !except?.includes(path));
  return text.split('\n').flatMap((line, index) => {
    const found = rules.filter(({ pattern }) => pattern.test(line));
    return found.map(({ what }) => `${path}:${index + 1}: ${what}`);
  });
}
