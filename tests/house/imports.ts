import { dirname, posix } from 'node:path';
import { parseSync } from 'vite';
import { door, layers } from './layers.ts';

/** A source file by its path below `src/`, such as `document/document.ts`. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** What a syntax tree is to us: objects with a type, holding more of them. */
interface Part {
  readonly type: string;
  readonly [key: string]: unknown;
}

function isPart(value: unknown): value is Part {
  return typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';
}

const parsed = new WeakMap<SourceFile, Part[]>();

/** Every part of a file's syntax tree, from the outside in. Each file is parsed once. */
function partsOf(file: SourceFile): Part[] {
  const known = parsed.get(file);
  if (known) return known;
  const { path, text } = file;
  const lang = path.endsWith('.d.ts')
    ? 'dts'
    : path.endsWith('.js')
      ? 'js'
      : path.endsWith('.tsx')
        ? 'tsx'
        : 'ts';
  const { program, errors } = parseSync(path, text, { lang });
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]?.message}`);
  const parts: Part[] = [];
  const collect = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(collect);
    else if (typeof value === 'object' && value !== null) {
      if (isPart(value)) parts.push(value);
      Object.values(value).forEach(collect);
    }
  };
  collect(program);
  parsed.set(file, parts);
  return parts;
}

/** The text of a name or of a string; null for anything else. */
function textOf(part: unknown): string | null {
  if (!isPart(part)) return null;
  const text = part.type === 'Identifier' ? part['name'] : part.type === 'Literal' ? part['value'] : null;
  return typeof text === 'string' ? text : null;
}

const importing = [
  'ImportDeclaration',
  'ExportNamedDeclaration',
  'ExportAllDeclaration',
  'ImportExpression',
  'TSImportType',
];

/** All that a file imports, types too, as it is written: `./place.ts`, `yaml`. A computed import is an empty string. */
export function importsOf(file: SourceFile): string[] {
  return partsOf(file).flatMap((part) => {
    const source = part['source'];
    if (!importing.includes(part.type) || !isPart(source)) return [];
    return [source.type === 'Literal' ? (textOf(source) ?? '') : ''];
  });
}

/** Names that reach outside: the machine, the clock, the network, chance, or code made from text. */
const outside = new Set(
  [
    'process Buffer require globalThis window localStorage navigator console',
    'performance setTimeout setInterval setImmediate',
    'fetch XMLHttpRequest WebSocket crypto eval Function',
  ].flatMap((names) => names.split(' ')),
);
const outsideMembers = new Set(['Date.now', 'Math.random']);

/** Names that a file declares itself; they hide the outer ones. */
function declaredIn(parts: readonly Part[]): Set<string> {
  const declaring = ['VariableDeclarator', 'FunctionDeclaration', 'ImportSpecifier'];
  const names = parts.flatMap((part) => {
    const parameters = Array.isArray(part['params']) ? part['params'].map(textOf) : [];
    return declaring.includes(part.type) ? [textOf(part['id'] ?? part['local']), ...parameters] : parameters;
  });
  return new Set(names.filter((name) => name !== null));
}

/** Identifiers that only name a member or a key (`entry.document`, `{ process: 1 }`) and reach nothing. */
function onlyLabels(parts: readonly Part[]): Set<unknown> {
  return new Set(
    parts.flatMap((part) => {
      if (part['computed'] === true || part['shorthand'] === true) return [];
      return [part['property'], part['key'], part.type === 'ExportSpecifier' ? part['exported'] : null];
    }),
  );
}

/** Whatever in a file reaches outside, such as `Date.now` or `node:fs`: nothing may, where the code also runs in a page. */
export function reachesOutside(file: SourceFile): string[] {
  const parts = partsOf(file);
  const declared = declaredIn(parts);
  const labels = onlyLabels(parts);
  const typeNames = new Set(parts.flatMap((part) => (part.type.startsWith('TS') ? Object.values(part) : [])));
  const found = parts.flatMap((part) => {
    const name = textOf(part);
    if (part.type === 'Identifier' && name !== null && outside.has(name)) {
      return declared.has(name) || labels.has(part) || typeNames.has(part) ? [] : [name];
    }
    if (part.type === 'MemberExpression') {
      const member = `${textOf(part['object'])}.${textOf(part['property'])}`;
      return outsideMembers.has(member) ? [member] : [];
    }
    if (part.type === 'MetaProperty') return ['import.meta'];
    if (part.type === 'NewExpression' || part.type === 'CallExpression') {
      const now = textOf(part['callee']) === 'Date' && Array.isArray(part['arguments']);
      return now && (part['arguments'] as unknown[]).length === 0 ? ['new Date()'] : [];
    }
    return [];
  });
  const builtIn = importsOf(file).filter((name) => name.startsWith('node:'));
  return [...builtIn, ...found];
}

/** Types in a file that may be anything, each as its path and its offset. */
export function anyTypesOf(file: SourceFile): string[] {
  const found = partsOf(file).filter(({ type }) => type === 'TSAnyKeyword');
  return found.map((part) => `${file.path}: at ${String(part['start'])}`);
}

/** The file below `src/` that a relative import means; null for a package. `../` past `src/` is kept as it is. */
export function targetOf(from: string, name: string): string | null {
  return name.startsWith('.') ? posix.join(dirname(from), name) : null;
}

/** A file's place in the order: that of its folder; the public door comes after the last pure one. -1: in none. */
export function rank(path: string): number {
  const firstImpure = layers.findIndex(({ pure }) => !pure);
  return path === door ? firstImpure - 0.5 : layers.findIndex(({ folder }) => path.startsWith(`${folder}/`));
}

/** Imports that go against the order of the layers, each as `from → to`. Data of the schema is before everything. */
export function againstTheOrder(files: readonly SourceFile[]): string[] {
  const allowed = (from: string, to: string): boolean => {
    if (to.startsWith('..')) return /^\.\.\/(?:package|schema\/[\w./]+)\.json$/.test(to);
    return rank(to) !== -1 && rank(to) <= rank(from);
  };
  return files.flatMap((file) =>
    importsOf(file)
      .map((name) => (name === '' ? 'a name that is worked out' : targetOf(file.path, name)))
      .filter((to) => to !== null)
      .filter((to) => !allowed(file.path, to))
      .map((to) => `${file.path} → ${to}`),
  );
}

/** One circle of imports, as the files along it; empty when there is none. Types count: a circle of ideas is one too. */
export function circle(files: readonly SourceFile[]): string[] {
  const edges = new Map(
    files.map((file) => [file.path, importsOf(file).map((name) => targetOf(file.path, name) ?? '')]),
  );
  const done = new Set<string>();
  const visit = (path: string, way: readonly string[]): string[] => {
    const start = way.indexOf(path);
    if (start !== -1) return [...way.slice(start), path];
    if (done.has(path)) return [];
    for (const next of edges.get(path) ?? []) {
      const found = visit(next, [...way, path]);
      if (found.length > 0) return found;
    }
    done.add(path);
    return [];
  };
  for (const path of edges.keys()) {
    const found = visit(path, []);
    if (found.length > 0) return found;
  }
  return [];
}
