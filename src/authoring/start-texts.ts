import { reservedWords } from '../protocol/gather-names.ts';
import { textToYaml } from '../review/examples/node-to-yaml.ts';
import { firstCases, firstProtocol, schemaLine } from './first-protocol.ts';

/** Whether a protocol, or anything else that people name, can have a name: small letters, digits and underscores. */
export const isName = (name: string): boolean =>
  /^[a-z][a-z0-9_]{0,59}$/.test(name) && !reservedWords.has(name);

/** What a new protocol is begun from: nothing, a copy of another one to be changed at will, or another one that it adapts. */
export type StartFrom =
  /** `schema`: the way from the new folder to that of the schemas; null where there is none. */
  | { readonly kind: 'nothing'; readonly ladder: string; readonly schema: string | null }
  | { readonly kind: 'copy' | 'based_on'; readonly protocol: string; readonly cases: string | null };

/** The first texts of a new protocol. */
export function startTexts(
  name: string,
  title: string,
  from: StartFrom,
): { readonly protocol: string; readonly cases: string } {
  if (from.kind === 'nothing') {
    const { ladder, schema } = from;
    return {
      protocol: retitled(firstProtocol(name, ladder, schema), title),
      cases: firstCases(name, schema),
    };
  }
  const cases = from.cases === null ? firstCases(name, schemaNear(from.protocol)) : renamed(from.cases, name);
  const protocol =
    from.kind === 'copy'
      ? retitled(renamed(from.protocol, name), title)
      : adapting(name, title, from.protocol);
  return { protocol, cases };
}

/** The way from a folder at the top to that of the schemas. */
const fromTheTop = '../../schema';

/** The way from a new folder to that of the schemas, where another protocol names one; else null. */
export const schemaNear = (protocol: string): string | null =>
  /^# yaml-language-server: \$schema=(?:\.\.\/)+schema\//.test(protocol) ? fromTheTop : null;

const renamed = (text: string, name: string): string =>
  text
    .replace(/^(# yaml-language-server: \$schema=)(?:\.\.\/)+schema\//, `$1${fromTheTop}/`)
    .replace(/^protocol:.*$/m, `protocol: ${name}`);

const retitled = (text: string, title: string): string =>
  text.replace(/^title:.*$/m, () => `title: ${textToYaml(title)}`);

/** What stands behind a key at the top of a text, as written; null when it is not there on one line. */
const written = (key: string, text: string): string | null =>
  new RegExp(`^${key}: *([a-z0-9_]+)[ \\t]*(?:#.*)?\\r?$`, 'm').exec(text)?.[1] ?? null;

/** A protocol that says what another one says until it is told otherwise. */
const adapting = (
  name: string,
  title: string,
  parent: string,
): string => `${schemaLine(schemaNear(parent), 'protocol')}protocol: ${name}
edition: 1
title: ${textToYaml(title)}

# Everything of the other protocol holds here too, but for what is changed here. Its file stays as it is.
based_on:
  protocol: ${written('protocol', parent) ?? 'the_name_of_the_other_protocol'}
  # The edition that was read and agreed. While it is another one, this protocol is refused.
  edition: ${written('edition', parent) ?? '1'}
  # A limit with another value, inside the bounds that the other protocol states:
  #   limits: { name_of_the_limit: { value: 70, because: Why it is another one here. } }
  # A rule that does not hold here:
  #   withdraws: [{ rule: name_of_the_rule, because: Why it does not hold here. }]

# Always that of the other protocol.
ladder: ${written('ladder', parent) ?? 'alder_ladder'}
`;
