import type { ReactNode } from 'react';
import type { LevelChange } from './changes-here.ts';

const step = 9;
const [left, right, width] = [4, 34, 62];

/** A ladder with the rung that was and the rung that is, and the way between them: where, besides the words, it stands on the ladder. */
export function RungShift({ rungs }: Pick<LevelChange, 'rungs'>): ReactNode {
  if (!rungs) return null;
  const { of, from, to } = rungs;
  const height = of * step + 8;
  const y = (rung: number): number => height - 8 - rung * step;
  const [start, end] = [y(from), y(to)];
  const tip = end > start ? end - 3 : end + 3;
  return (
    <svg
      className="rung-shift"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      <path d={`M${left} 2V${height - 2}M${right} 2V${height - 2}`} className="rung-posts" />
      {Array.from({ length: of }, (_, rung) => (
        <path key={rung} d={`M${left} ${y(rung)}H${right}`} className="rung-line" />
      ))}
      <path d={`M${left} ${start}H${right}`} className="rung-was" />
      <path d={`M${left} ${end}H${right}`} className="rung-is" />
      {from !== to && (
        <>
          <path d={`M${right + 4} ${start}H48V${end}H${right + 9}`} className="rung-way" />
          <path d={`M${right + 5} ${end}l7 -5v10z`} className="rung-tip" data-tip={tip} />
        </>
      )}
    </svg>
  );
}
