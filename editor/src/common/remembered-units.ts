const key = 'vitalwright.units';

/** Units that people on this machine enter, by the word of the dictionary's own unit. Nothing else is ever kept. */
export type RememberedUnits = Readonly<Record<string, string>>;

/** Units of ages are chosen for each patient, so they are not remembered. */
const remembered: Readonly<Record<string, readonly string[]>> = {
  mmHg: ['kPa'],
  '°C': ['°F'],
  kg: ['lb'],
  cm: ['in'],
};

export function readUnits(): RememberedUnits {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(
      Object.entries(kept).filter(([own, unit]) => remembered[own]?.includes(String(unit))),
    );
  } catch {
    return {};
  }
}

/** The units with another one for one dimension. They are kept where the browser lets the page keep anything. */
export function rememberUnit(units: RememberedUnits, own: string, unit: string): RememberedUnits {
  const others = Object.entries(units).filter(([each]) => each !== own);
  const next = Object.fromEntries(
    remembered[own]?.includes(unit) ? [...others, [own, unit]] : others,
  ) as RememberedUnits;
  try {
    localStorage.setItem(key, JSON.stringify(next));
  } catch {
    return next;
  }
  return next;
}
