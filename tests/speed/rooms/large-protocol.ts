/** A protocol of so many rules with so many cases, for figures of what stays usable. */
export function largeProtocol(rules: number, cases: number): { protocol: string; cases: string } {
  const head = `protocol: large\nedition: 1\ntitle: Large\nladder: alder_ladder\nowners: [nobody]\nsources:\n  made_up: { cite: "Common practice, no published source" }\nobservations:\n  needs: [systolic, heart_rate]\nrules:\n`;
  const rule = (_: unknown, at: number): string =>
    `  - rule: rule_${at}\n    title: Rule ${at}\n    when: { systolic: { below: ${40 + (at % 200)} }, heart_rate: { above: ${50 + (at % 97)} } }\n    level: call_doctor\n    says: Words of rule ${at}.\n    source: [made_up]\n`;
  const one = (_: unknown, at: number): string =>
    `  - case: Case ${at}\n    given: { systolic: ${60 + (at % 150)}, heart_rate: ${40 + (at % 120)} }\n    expect: { level: { settled: yes } }\n`;
  return {
    protocol: head + Array.from({ length: rules }, rule).join(''),
    cases: `protocol: large\ncases:\n${Array.from({ length: cases }, one).join('')}`,
  };
}
