import type { LookBack, Measure } from '../protocol/protocol.ts';
import { sentences } from './sentences.ts';
import type { Situation } from './situation.ts';
import { alone, formatOf } from './shown-number.ts';
import { durationInWords } from './time-in-words.ts';

/** Why measures have no value, each in a sentence. */
export function withoutValue(measures: Iterable<string>, situation: Situation): readonly string[] {
  return [...measures].flatMap((name) => {
    const measure = situation.compiled.protocol.measures.get(name);
    if (!measure) return [];
    if ('over' in measure.how) return [lookBack(measure, measure.how, situation)];
    return measure.how.kind === 'curve' ? [curve(measure, measure.how, situation)] : [];
  });
}

function curve(
  { title }: Measure,
  { of, points }: Extract<Measure['how'], { kind: 'curve' }>,
  { compiled, answers }: Situation,
): string {
  const { unit, amount } = compiled.amounts.of(of);
  const format = formatOf(unit);
  const { low, high } = amount(answers.wide);
  const value = low === high ? alone(low, format) : `${alone(low, format)} to ${alone(high, format)}`;
  const [from = '', to = ''] = [points[0], points.at(-1)].map((point) => point?.at.toString());
  return sentences.curveWithoutValue({
    subject: title,
    of: compiled.wording.numbers.title(of, false),
    value,
    from,
    to,
  });
}

function lookBack({ title }: Measure, how: LookBack, { compiled }: Situation): string {
  return sentences.lookBackWithoutValue({
    subject: title,
    count: how.kind === 'change' ? 2 : 1,
    of: compiled.protocol.observations.get(how.observation ?? '')?.title ?? '',
    over: durationInWords(how.over),
    where: how.where !== null,
    earlier: how.presentSet === 'left_out',
  });
}
