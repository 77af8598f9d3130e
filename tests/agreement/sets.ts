import type { Draw } from './draw.ts';
import { edgesOf } from './edges.ts';
import { decimal, type Subject } from './observations.ts';
import type { MadeProtocol, Plain } from './protocols.ts';

/** How much of a set is there. */
type Mood = 'complete' | 'nearly' | 'sparse';

interface Ward {
  readonly draw: Draw;
  readonly made: MadeProtocol;
  readonly edges: ReadonlyMap<string, readonly number[]>;
}

const codes: Record<string, string> = { mmHg: 'mm[Hg]', 'mmol/L': 'mmol/L' };

/** A whole number of steps: most often on an edge, or one step beside it. */
function stepsOf({ draw, edges }: Ward, subject: Subject): number {
  const near = (edges.get(subject.name) ?? []).map((edge) => Math.round(edge * subject.perUnit));
  const steps =
    near.length && draw.chance(65)
      ? draw.one(near) + draw.whole(-1, 1)
      : draw.whole(subject.low, subject.high);
  return Math.min(subject.high, Math.max(subject.low, steps));
}

/** A number, now and then with its unit, or between two steps. */
function plainNumber(ward: Ward, subject: Subject): unknown {
  const { draw, made } = ward;
  const steps = stepsOf(ward, subject);
  const between =
    draw.chance(4) && steps < subject.high ? decimal({ perUnit: subject.perUnit }, steps + 0.5) : null;
  const value = between ?? decimal(subject, steps);
  return made.unit && draw.chance(6) ? { value, unit: codes[made.unit] } : value;
}

/** A number that is only roughly known. */
function roughNumber(ward: Ward, subject: Subject): unknown {
  const { draw } = ward;
  const at = (steps: number): number =>
    decimal(subject, Math.min(subject.high, Math.max(subject.low, steps)));
  const steps = stepsOf(ward, subject);
  const [low, high] = [at(steps - draw.whole(0, 2)), at(steps + draw.whole(0, 2))];
  const bound = Math.min(subject.high - 1, Math.max(subject.low + 1, steps));
  return draw.one<unknown>([
    { value: at(steps), low, high },
    { low, high },
    { value: at(steps), low },
    { value: at(steps), high },
    draw.chance(50) ? { low } : { high },
    draw.chance(50) ? { above_device: at(bound) } : { below_device: at(bound) },
  ]);
}

function valueOf(ward: Ward, subject: Subject): unknown {
  const { draw } = ward;
  if (subject.kind === 'number') return plainNumber(ward, subject);
  if (subject.kind === 'several') return draw.some(subject.choices, 0, subject.choices.length);
  const choice = draw.one(subject.choices);
  return subject.kind === 'yes_no' && draw.chance(50) ? choice === 'yes' : choice;
}

const nothings: readonly unknown[] = [
  { unobtainable: 'cold fingers' },
  { unobtainable: true },
  { declined: 'asleep' },
  { declined: true },
];

/** What a set says of one observation; undefined when it says nothing. */
function said(ward: Ward, subject: Subject, mood: Mood): unknown {
  const { draw } = ward;
  const lacks = { complete: 0, nearly: 22, sparse: 55 }[mood];
  if (draw.chance(lacks)) return draw.chance(30) ? draw.one(nothings) : undefined;
  const rough = subject.kind === 'number' && mood !== 'complete' && draw.chance(14);
  return rough ? roughNumber(ward, subject) : valueOf(ward, subject);
}

function oneSet(ward: Ward, mood: Mood): Plain {
  const told = ward.made.subjects.map((subject) => [subject.name, said(ward, subject, mood)] as const);
  return Object.fromEntries(told.filter(([, what]) => what !== undefined));
}

const moodOf = (draw: Draw): Mood => draw.one<Mood>(['complete', 'complete', 'nearly', 'nearly', 'sparse']);
const start = Date.UTC(2026, 2, 2, 8);

/** A time some minutes after the start, as written in one of two offsets. */
function timeText(draw: Draw, minutes: number): string {
  const time = start + minutes * 60_000;
  if (!draw.chance(20)) return new Date(time).toISOString().replace('.000', '');
  const local = new Date(time + 345 * 60_000).toISOString();
  return local.replace('.000Z', '+05:45');
}

/** Facts and limits that someone has stated for this patient. */
function patientOf(ward: Ward): Plain {
  const { draw, made } = ward;
  const when = (): Plain => ({
    ...(draw.chance(50) ? { at: timeText(draw, draw.one([-600, 0, 15, 120])) } : {}),
    ...(draw.chance(30) ? { until: timeText(draw, draw.one([180, 240, 330, 600])) } : {}),
  });
  const facts = made.subjects.filter(({ role }) => role === 'standing' && draw.chance(60));
  const standing = facts.map((subject) => [
    subject.name,
    { value: simple(ward, subject), by: 'Dr Ash', ...when() },
  ]);
  const limits = Object.entries((made.protocol.limits ?? {}) as Record<string, { between?: number[] }>);
  const changed = limits.flatMap(([name, { between }]) =>
    between && draw.chance(30)
      ? [[name, { value: draw.one(between), by: 'Dr Ash', reason: 'long known', ...when() }]]
      : [],
  );
  const patient = {
    ...(standing.length ? { standing: Object.fromEntries(standing) } : {}),
    ...(changed.length ? { limits: Object.fromEntries(changed) } : {}),
  };
  return Object.keys(patient).length ? { patient } : {};
}

const simple = (ward: Ward, subject: Subject): unknown =>
  subject.kind === 'number' ? decimal(subject, stepsOf(ward, subject)) : valueOf(ward, subject);

/** One to four sets, half an hour apart or more, entered in any order. */
function seriesOf(ward: Ward, mood: Mood): Plain {
  const { draw } = ward;
  const minutes = draw.some([0, 30, 60, 120, 150, 180, 240, 300], 1, 4);
  const sets = minutes.map((minute, index) => {
    const own =
      index === minutes.length - 1
        ? mood
        : mood === 'complete'
          ? mood
          : draw.one<Mood>(['complete', 'complete', 'nearly']);
    return { at: timeText(draw, minute), ...oneSet(ward, own) };
  });
  const late = mood !== 'complete' && minutes.length > 1 && draw.chance(30);
  const at = timeText(draw, (minutes.at(-1) ?? 0) + draw.one([-15, 0, 30, 60]));
  return { ...patientOf(ward), ...(late ? { at } : {}), sets: draw.chance(30) ? sets.toReversed() : sets };
}

/** How many values are left open, at most, when everything that is missing or rough is counted over all sets. */
function openIn({ made }: Ward, sets: readonly Plain[], read: (name: string) => boolean): number {
  const present = sets.length - 1;
  const sizes = sets.flatMap((set, index) =>
    made.subjects
      .filter(({ name }) => index === present || read(name))
      .map(({ name, size }) => {
        const what = set[name];
        const given = typeof what !== 'object' || Array.isArray(what) || (what && 'unit' in what);
        return what === undefined || !given ? size : 1;
      }),
  );
  return sizes.reduce((a, b) => a * b, 1);
}

/** A set, or a series of sets, whose completions stay few. */
export function drawSet(draw: Draw, made: MadeProtocol, series: boolean, most: number): Plain {
  const ward = { draw, made, edges: edgesOf(made.protocol) };
  const mood = moodOf(draw);
  if (!series || draw.chance(12))
    return { ...(draw.chance(30) ? { at: timeText(draw, 0) } : {}), ...oneSet(ward, mood) };
  const backs = JSON.stringify(
    Object.values((made.protocol.measures ?? {}) as Record<string, Plain>).filter(
      (measure) => 'over' in measure,
    ),
  );
  const read = (name: string): boolean => new RegExp(`\\b${name}\\b`).test(backs);
  const found = seriesOf(ward, mood);
  const sets = (found.sets as Plain[]).toSorted(
    (a, b) => Date.parse(String(a.at)) - Date.parse(String(b.at)),
  );
  if (openIn(ward, sets, read) <= most) return found;
  return seriesOf(ward, 'complete');
}
