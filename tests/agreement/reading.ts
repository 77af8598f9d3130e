import type { Plain } from './protocols.ts';

const namesIn = (what: unknown): readonly string[] => JSON.stringify(what ?? null).match(/[a-z]\w*/g) ?? [];

/** Everything that a rule reads, through the measures and rules that it names, each mention once for each way to it. */
export function mentionsOf(protocol: Plain, name: string): readonly string[] {
  const measures = (protocol.measures ?? {}) as Record<string, Plain>;
  const rules = new Map((protocol.rules as Plain[]).map((rule) => [String(rule.rule), rule]));
  const mentions = (part: string): readonly string[] => {
    const named = measures[part] ?? rules.get(part);
    if (!named) return [part];
    const read = { ...named, not_reliable_when: null };
    return [part, ...namesIn(read).flatMap((each) => (each === part ? [] : mentions(each)))];
  };
  return mentions(name);
}

/** The rule itself and every rule that it names, directly or through others. */
export function rulesReadBy(protocol: Plain, name: string): readonly Plain[] {
  const mentions = new Set(mentionsOf(protocol, name));
  return (protocol.rules as Plain[]).filter((rule) => mentions.has(String(rule.rule)));
}

/** What only helps: listed there, or a standing fact that is not listed under needs. */
export function helpsOf(protocol: Plain): readonly string[] {
  const { needs = [], helps = [] } = protocol.observations as { needs?: string[]; helps?: string[] };
  return [...helps, ...Object.keys(protocol.standing ?? {})].filter((name) => !needs.includes(name));
}
