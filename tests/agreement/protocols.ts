import { stringify } from 'yaml';
import { drawCondition, observationsOnly, type Condition, type Reach } from './conditions.ts';
import type { Draw } from './draw.ts';
import { drawMeasure } from './measures.ts';
import { decimal, declared, drawSubjects, type Subject } from './observations.ts';
import { drawLimit, itself, ownDimension, type Stock } from './quantities.ts';

/** A ladder of invented levels, lowest first. */
export const levels = ['usual_round', 'look_again', 'tell_someone', 'call_now'] as const;

export const ladderText = stringify({
  ladder: 'made_up_ladder',
  edition: 1,
  title: 'A made-up ladder',
  levels: levels.map((level, index) => ({
    level,
    title: level.replace('_', ' '),
    ...(index ? { tell: [{ who: 'Nurse in charge' }], respond: `${60 / index} min` } : {}),
    reassess: `${12 / (index + 1)} h`,
  })),
});

export type Plain = Record<string, unknown>;

/** A protocol that `check` accepts, as a plain object, and the observations that it declares. */
export interface MadeProtocol {
  readonly protocol: Plain;
  readonly text: string;
  readonly subjects: readonly Subject[];
  readonly unit: string | null;
}

/** Sometimes explained by a condition, which may lower the level: never to the lowest. */
function explanation(draw: Draw, stock: Stock, reach: Reach, level: number | null): Plain {
  if (!draw.chance(30)) return {};
  const lower =
    level !== null && level >= 2 && draw.chance(60) ? { level: levels[draw.whole(1, level - 1)] } : {};
  return {
    explained_by: { when: drawCondition(draw, stock, reach, 0), says: 'This can explain it.', ...lower },
  };
}

/** One rule, which may name those before it. */
function drawRule(draw: Draw, stock: Stock, names: readonly string[]): Plain {
  const level = draw.chance(15) ? null : draw.chance(6) ? 0 : draw.whole(1, 3);
  const simple: Reach = { measures: draw.chance(20), rules: draw.chance(30) ? names : [] };
  const unless = draw.chance(35)
    ? {
        unless: {
          when: drawCondition(draw, stock, simple, draw.chance(15) ? 1 : 0),
          says: 'It is otherwise explained.',
          accepted: 'Agreed.',
        },
      }
    : {};
  return {
    rule: `r_${names.length + 1}`,
    title: `Rule ${names.length + 1}`,
    when: drawCondition(draw, stock, { measures: true, rules: names }, draw.whole(0, 2)),
    ...unless,
    ...explanation(draw, stock, simple, level),
    ...(draw.chance(12) ? { not_reliable_when: drawCondition(draw, stock, observationsOnly, 0) } : {}),
    ...(level === null ? {} : { level: levels[level] }),
    says: 'It suggests something.',
    source: ['council'],
  };
}

function drawRules(draw: Draw, stock: Stock): readonly Plain[] {
  const names: string[] = [];
  return Array.from({ length: draw.whole(2, 5) }, () => {
    const rule = drawRule(draw, stock, names);
    names.push(String(rule.rule));
    return rule;
  });
}

/** For whom the protocol is: what reads the observations of the scope, or now and then another. */
function drawScope(draw: Draw, stock: Stock): { applies_when?: Condition } {
  const scoped = stock.subjects.filter(({ role }) => role === 'scope');
  const parts = scoped.map((subject) =>
    drawCondition(draw, { ...stock, subjects: [subject] }, observationsOnly, 0),
  );
  if (draw.chance(8)) parts.push(drawCondition(draw, stock, observationsOnly, 0));
  return parts.length ? { applies_when: Object.assign({}, ...parts) as Condition } : {};
}

function factOf({ name, assumed }: Subject): readonly [string, Plain] {
  return [name, { set_by: 'prescriber', ...(assumed === null ? {} : { if_not_stated: assumed }) }];
}

const seen = (name: string, ...where: readonly unknown[]): boolean =>
  new RegExp(`\\b${name}\\b`).test(JSON.stringify(where));

/** What a protocol reads, without what it does not. */
function observationsOf(draw: Draw, stock: Stock, read: readonly Subject[]): Plain {
  const listed = (role: string): string[] =>
    read.filter((subject) => subject.role === role).map(({ name }) => name);
  const needs = [...listed('needs'), ...listed('standing').filter(() => draw.chance(25))];
  const helps = listed('helps');
  const standing = Object.fromEntries(read.filter(({ role }) => role === 'standing').map(factOf));
  return {
    observations: {
      ...(needs.length ? { needs } : {}),
      ...(helps.length ? { helps } : {}),
      declares: Object.fromEntries(read.map((subject) => [subject.name, declared(subject, stock.unit)])),
    },
    ...(Object.keys(standing).length ? { standing } : {}),
  };
}

function drawStock(draw: Draw): Stock {
  const unit = draw.one([null, null, 'mmHg', 'mmol/L']);
  const series = draw.chance(50);
  const subjects = drawSubjects(draw, unit === null, series, series ? 400 : 800);
  const stock: Stock = { subjects, unit, series, quantities: [], limits: {}, measures: {} };
  for (const subject of subjects.filter(({ kind }) => kind === 'number')) {
    const [low, high] = [decimal(subject, subject.low), decimal(subject, subject.high)];
    stock.quantities.push(itself(subject.name, ownDimension(stock), low, high, subject));
    if (draw.chance(30)) drawLimit(draw, stock, subject);
  }
  for (let count = draw.whole(1, 5); count > 0; count -= 1) drawMeasure(draw, stock);
  return stock;
}

/** A protocol, valid as it is made: names that are there, cuts inside ranges, like compared with like, no circles. */
export function drawProtocol(draw: Draw): MadeProtocol & { readonly series: boolean } {
  const stock = drawStock(draw);
  const scope = drawScope(draw, stock);
  const rules = drawRules(draw, stock);
  const read = stock.subjects.filter(({ name }) => seen(name, scope, stock.measures, rules));
  const inRules = (name: string): boolean => seen(name, scope, stock.measures, rules);
  const limits = Object.fromEntries(Object.entries(stock.limits).filter(([name]) => inRules(name)));
  const protocol: Plain = {
    protocol: 'made_up',
    edition: 1,
    title: 'A made-up protocol',
    ladder: 'made_up_ladder',
    ...scope,
    sources: { council: { cite: 'Common practice, no published source' } },
    ...observationsOf(draw, stock, read),
    ...(Object.keys(limits).length ? { limits } : {}),
    ...(Object.keys(stock.measures).length ? { measures: stock.measures } : {}),
    rules: rules.toReversed(),
  };
  return { protocol, text: stringify(protocol), subjects: read, unit: stock.unit, series: stock.series };
}
