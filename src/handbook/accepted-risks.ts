import { toPlain, type Document } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import type { EditionFile } from '../shape/generated/types.ts';
import type { AcceptedRisk } from './input.ts';

type Plain = Readonly<Record<string, unknown>>;
const isMap = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every reason under `accepted` in a protocol, with the rule or the part that it stands in. */
export function risksOfProtocol(document: Document): AcceptedRisk[] {
  const file = toPlain(document.root) as Plain;
  const of = String(file['title'] ?? file['protocol']);
  const found: AcceptedRisk[] = [];
  const walk = (value: unknown, what: string): void => {
    if (Array.isArray(value)) for (const each of value as unknown[]) walk(each, what);
    if (!isMap(value)) return;
    const own = typeof value['rule'] === 'string' && 'when' in value ? ruleOf(value) : what;
    if (typeof value['accepted'] === 'string') found.push({ of, what: own, because: value['accepted'] });
    for (const [key, each] of Object.entries(value)) walk(each, what === '' ? key.replaceAll('_', ' ') : own);
  };
  walk(file, '');
  return found;
}

const ruleOf = (rule: Plain): string => `Rule “${String(rule['title'] ?? rule['rule'])}”`;

/** Each small change that no case notices and that was accepted with a reason. */
export function risksOfCases(document: Document, of: string): AcceptedRisk[] {
  const { unguarded } = toPlain(document.root) as { readonly unguarded?: unknown };
  const list = Array.isArray(unguarded) ? (unguarded as unknown[]) : [];
  return list.filter(isMap).map((each) => ({
    of,
    what: `No case notices this change: ${String(each['change'])}`,
    because: String(each['accepted']),
  }));
}

/** What the texts of an edition accept. */
export function risksOfEdition({ texts, cases, title }: EditionFile): AcceptedRisk[] {
  const documents = Object.entries(texts).map(([name, text]) => yamlToDocument(name, text).document);
  const ofCases = yamlToDocument('cases', cases).document;
  return [
    ...documents.flatMap((document) => (document ? risksOfProtocol(document) : [])),
    ...(ofCases ? risksOfCases(ofCases, title) : []),
  ];
}
