/**
 * The protocol pressure_reading as somebody would write it by hand, for complete sets in whole steps (temperature in tenths of a degree,
 * age in sixteenths of a day) and the limits of the file. Only the measurement uses it: it must answer as the kit does.
 */
export function byHand(set: HandSet, out: Int32Array, at: number): void {
  const { systolic, diastolic, heartRate, respiratoryRate, temperature, consciousness } = set;
  const lowish = systolic <= 100;
  const belowUsual = set.usualSystolic - systolic;
  const shares = 4 * (systolic - diastolic) < systolic;
  const wide = expectedTimes90(systolic) - 90 * diastolic >= 1260;
  const meanLow = systolic + 2 * diastolic < 195;
  const floor = systolic <= 90;
  const measuredLow = set.meanPressure < 65;
  const fastRate = heartRate > 90;
  const fastBreathing = respiratoryRate > 20;
  const temperatureOff = temperature <= 360 || temperature > 380;
  const notClear = consciousness >= 1;
  const others = (fastRate ? 1 : 0) + (fastBreathing ? 1 : 0) + (temperatureOff ? 1 : 0) + (notClear ? 1 : 0);
  const notCoping = (floor || meanLow || measuredLow) && others >= 2;
  const lowForThisPatient = lowish && belowUsual >= 10;
  const lowNarrow = lowish && shares;
  const lowWide = lowish && wide;
  const narrowHolds = !lowish && shares;
  const openHolds = !lowish && systolic < 140 && wide;
  const sign = lowForThisPatient || lowNarrow || lowWide || narrowHolds || openHolds;
  const high = systolic >= 180 || diastolic >= 110;
  const farOut =
    heartRate <= 40 ||
    heartRate >= 131 ||
    respiratoryRate <= 8 ||
    respiratoryRate >= 25 ||
    temperature <= 350 ||
    systolic >= 220;
  const belowOwn = belowUsual >= 20;
  const company = sign && (others > 0 || belowOwn);
  const companyExplained = openHolds && set.vasodilator === 0 && !fastBreathing && !temperatureOff;
  const converge = (sign ? 1 : 0) + others + (belowOwn ? 1 : 0) >= 3;
  const outruns = 10 * heartRate > 9 * systolic;
  const injured = set.headInjury === 0;
  const response =
    injured && heartRate < 60 && set.systolicChange >= 20 && set.systolicChange - set.diastolicChange >= 15;
  const saturationLow = set.saturation <= 91;
  const saturationExplained = set.oxygenScale === 1 && set.saturation >= 88;
  const veryLow = systolic < 80;
  const hardToRouse = consciousness >= 3;
  const farBelow = belowUsual >= 40;
  let level = -1;
  if (veryLow || notCoping || hardToRouse || response) level = 4;
  else if (
    floor ||
    meanLow ||
    measuredLow ||
    notClear ||
    farOut ||
    farBelow ||
    converge ||
    (saturationLow && !saturationExplained)
  )
    level = 3;
  else if (high || outruns || (company && !companyExplained)) level = 2;
  else if (sign || fastRate || fastBreathing || temperatureOff || belowOwn || injured || saturationLow)
    level = 1;
  const applies = set.age >= 93_504 && set.pregnancy === 0;
  const shown = Math.max(level, 0);
  out[at] = applies ? 2 | 4 | ((shown + 1) << 3) | (shown << 11) : 0;
  out[at + 1] =
    (veryLow ? 1 : 0) |
    (floor ? 1 << 1 : 0) |
    (lowForThisPatient ? 1 << 2 : 0) |
    (meanLow ? 1 << 3 : 0) |
    (measuredLow ? 1 << 4 : 0) |
    (notCoping ? 1 << 6 : 0) |
    ((set.techniqueFaults & lowering) !== 0 ? 1 << 7 : 0) |
    (lowNarrow ? 1 << 8 : 0) |
    (lowish && !shares && !wide ? 1 << 9 : 0) |
    (lowWide ? 1 << 10 : 0) |
    (narrowHolds ? 1 << 11 : 0) |
    (openHolds ? 1 << 12 : 0) |
    (systolic >= 140 && systolic - diastolic >= 80 ? 1 << 13 : 0) |
    (high ? 1 << 14 : 0) |
    (sign ? 1 << 15 : 0) |
    (fastRate ? 1 << 16 : 0) |
    (fastBreathing ? 1 << 17 : 0) |
    (temperatureOff ? 1 << 18 : 0) |
    (notClear ? 1 << 19 : 0) |
    (hardToRouse ? 1 << 20 : 0) |
    (farOut ? 1 << 21 : 0) |
    (belowOwn ? 1 << 22 : 0) |
    (farBelow ? 1 << 23 : 0) |
    (company ? 1 << 24 : 0) |
    (converge ? 1 << 25 : 0) |
    (outruns ? 1 << 26 : 0) |
    ((floor || meanLow) && !fastRate ? 1 << 27 : 0) |
    (injured ? 1 << 28 : 0) |
    (response ? 1 << 29 : 0) |
    (saturationLow ? 1 << 31 : 0);
  out[at + 2] = 0;
}

/** Too small a cuff, a cuff over clothing, an arm below the heart: the truth may be lower than what was read. */
const lowering = 1 | 4 | 16;

/** The diastolic that this systolic ought to have, times 90. */
function expectedTimes90(systolic: number): number {
  if (systolic <= 20) return 1080;
  if (systolic <= 60) return 63 * systolic - 180;
  if (systolic <= 90) return 60 * systolic;
  if (systolic <= 108) return 40 * systolic + 1800;
  if (systolic <= 120) return 90 * systolic - 3600;
  if (systolic <= 140) return 9 * systolic + 6120;
  if (systolic <= 220) return 27 * systolic + 3600;
  return 9540;
}

/** One complete set, in whole steps; choices by their place in the list. */
export interface HandSet {
  systolic: number;
  diastolic: number;
  heartRate: number;
  respiratoryRate: number;
  temperature: number;
  consciousness: number;
  meanPressure: number;
  saturation: number;
  vasodilator: number;
  headInjury: number;
  techniqueFaults: number;
  usualSystolic: number;
  oxygenScale: number;
  age: number;
  pregnancy: number;
  systolicChange: number;
  diastolicChange: number;
}
