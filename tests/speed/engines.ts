import jsonLogic from 'json-logic-js';
import { readSet } from '../../src/index.ts';
import type * as Sources from '../../src/index.ts';
import { levelOf } from '../../src/outcome/answers.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import type { LogicFile } from '../../src/shape/generated/types.ts';
import { answersAlone } from '../../src/logic/used-steps.ts';
import { logicToEvaluator } from '../../src/targets/evaluator/logic-to-evaluator.ts';
import { logicToArtefact } from '../../src/targets/json-logic/logic-to-artefact.ts';
import { askable } from '../bundled.ts';
import { loadModule } from '../targets/typescript/load-module.ts';
import type { HandSet } from './by-hand.ts';
import { measure, type Measured } from './clock.ts';
import { allByHand, columnsOf, count, patients } from './columns.ts';
import type { Figure } from './figure.ts';
import { straightLine } from './straight-line.ts';

const compiled = askable('pressure_reading');
const { protocol, logic } = compiled;

/** A patient as a set of the module, with the trade's words and units. */
function given(set: HandSet): Readonly<Record<string, unknown>> {
  const choice = (name: string, place: number): string =>
    protocol.observations.get(name)?.choices[place]?.choice ?? '';
  const faults = protocol.observations.get('technique_faults')?.choices ?? [];
  return {
    systolic: set.systolic,
    diastolic: set.diastolic,
    heart_rate: set.heartRate,
    respiratory_rate: set.respiratoryRate,
    temperature: set.temperature / 10,
    consciousness: choice('consciousness', set.consciousness),
    mean_pressure: set.meanPressure,
    oxygen_saturation: set.saturation,
    vasodilator_last_6_h: choice('vasodilator_last_6_h', set.vasodilator),
    head_injury: choice('head_injury', set.headInjury),
    rate_slowing_medicine: 'no',
    paced: 'no',
    cord_injury: 'no',
    technique_faults: faults
      .filter((_, bit) => (set.techniqueFaults & (1 << bit)) !== 0)
      .map((each) => each.choice),
    usual_systolic: set.usualSystolic,
    oxygen_scale: choice('oxygen_scale', set.oxygenScale),
    age: set.age / 5844,
    pregnancy: choice('pregnancy', set.pregnancy),
    look_backs: { systolic_change: set.systolicChange, diastolic_change: set.diastolicChange },
  };
}

/** The same without what earlier sets say. */
const plain = (set: HandSet): object =>
  Object.fromEntries(Object.entries(given(set)).filter(([name]) => name !== 'look_backs'));

/** Bounds as the kit makes them, one for each of the first patients. */
function someBounds(): Float64Array[] {
  return patients.slice(0, 200).map((set, index) => {
    const rest = plain(set);
    const range = index % 2 === 0 ? { systolic: { value: set.systolic, low: set.systolic - 8 } } : {};
    const { series } = readSet('set.json', JSON.stringify({ ...rest, ...range }), compiled);
    if (!series) throw new Error('a patient cannot be read');
    return seriesToBounds(protocol, series).narrow;
  });
}

/** The library as it is delivered: the sources, run as they are, name every function that they make, which takes as long as the work. */
const library = (await import(new URL('../../dist/index.js', import.meta.url).href)) as typeof Sources;

export async function measureEngines(): Promise<readonly Figure[]> {
  const module = await loadModule(compiled);
  const [whole, holes] = [columnsOf(0), columnsOf(3)];
  const sets = patients.map(given);
  const bounds = someBounds();
  const file = JSON.parse(logicToArtefact(logic, protocol)) as LogicFile;
  const alone = answersAlone(logic);
  const evaluator = logicToEvaluator(alone);
  const readers = alone.rules.flatMap(({ certain, possible }) => [
    evaluator.reader(certain),
    evaluator.reader(possible),
  ]);
  const asData = bounds.map((each) =>
    Object.fromEntries(logic.inputs.map(({ name }, index) => [name, each[index] ?? 0])),
  );
  const texts = patients.slice(0, 200).map((set) => {
    const rest = plain(set);
    return readSet('set.json', JSON.stringify(rest), compiled).series;
  });
  const [hand, made] = [new Int32Array(3 * count), new Int32Array(3 * count)];
  allByHand(hand);
  module.packColumns(whole, count, made);
  if (String(hand) !== String(made))
    throw new Error('the function by hand and the module do not answer the same');
  sets.forEach((set, row) => module.pack(set, made, row * 3));
  if (String(hand) !== String(made))
    throw new Error('the function by hand and the module do not answer the same of sets');
  const out = new Int32Array(3 * count);
  const measured = measure([
    { name: 'line', run: () => straightLine(out) },
    { name: 'hand', run: () => allByHand(out) },
    {
      name: 'sets',
      run: () => sets.reduce((total, set, row) => total + (module.pack(set, out, row * 3) ? 1 : 1), 0),
    },
    { name: 'columns', run: () => module.packColumns(whole, count, out).length / 3 },
    { name: 'holes', run: () => module.packColumns(holes, count, out).length / 3 },
    {
      name: 'bounds',
      run: () => {
        for (const each of bounds) module.packBounds(each, out, 0);
        return bounds.length;
      },
    },
    {
      name: 'evaluator',
      run: () => {
        for (const each of bounds) {
          const result = evaluator.run(each);
          for (const reader of readers) reader(result);
        }
        return bounds.length;
      },
    },
    {
      name: 'json',
      run: () => {
        for (const each of asData.slice(0, 20)) {
          const data: Record<string, unknown> = { ...each };
          for (const { step, is } of file.steps)
            data[step] = jsonLogic.apply(is as Parameters<typeof jsonLogic.apply>[0], data);
        }
        return 20;
      },
    },
    {
      name: 'level',
      run: () => {
        for (const each of bounds)
          levelOf(compiled, { narrow: each, wide: each } as Parameters<typeof levelOf>[1]);
        return bounds.length;
      },
    },
    {
      name: 'outcomes',
      run: () => {
        for (const series of texts) if (series) library.evaluate(compiled, series);
        return texts.length;
      },
    },
  ]);
  return figuresOf(measured);
}

function figuresOf({ rate, ratio: ratioOf }: Measured): readonly Figure[] {
  const ratio = (what: string, name: string, to: string, aim: number): Figure => {
    const found = ratioOf(name, to);
    return { what, found: found.toFixed(found < 10 ? 2 : 0), aim: `at least ${aim}`, reached: found >= aim };
  };
  const perSecond = (what: string, name: string, aim: number): Figure => ({
    what,
    found: `${Math.round(rate(name)).toLocaleString('en')} /s`,
    aim: `at least ${aim.toLocaleString('en')} /s`,
    reached: rate(name) >= aim,
  });
  return [
    {
      what: 'the function by hand',
      found: `${Math.round(rate('hand')).toLocaleString('en')} sets/s`,
      aim: '',
      reached: null,
    },
    {
      what: 'json-logic-js',
      found: `${Math.round(rate('json')).toLocaleString('en')} sets/s`,
      aim: '',
      reached: null,
    },
    ratio('by hand to a straight line of 47 comparisons', 'hand', 'line', 0.8),
    ratio('module, complete sets as objects with units, to by hand', 'sets', 'hand', 0.9),
    ratio('module, columns, to by hand', 'columns', 'hand', 1.1),
    ratio('module, columns with 3 % of values missing, to by hand', 'holes', 'hand', 0.7),
    ratio('module, complete sets, to json-logic-js', 'sets', 'json', 300),
    ratio('module, columns, to json-logic-js', 'columns', 'json', 300),
    ratio('module, 3 % missing, to json-logic-js', 'holes', 'json', 300),
    ratio('the evaluator to json-logic-js', 'evaluator', 'json', 20),
    perSecond('module over bounds, every second one with a range', 'bounds', 100_000),
    perSecond('the evaluator over bounds, the level', 'level', 100_000),
    perSecond('full outcomes with sentences', 'outcomes', 10_000),
  ];
}
