import type { HandSet } from './by-hand.ts';
import { count, patients } from './columns.ts';

/**
 * 47 comparisons of whole numbers in a straight line: as many as the function by hand, which makes 42 and, for the curve of a usual systolic,
 * 5 more, and joins them.
 */
export function straightLine(out: Int32Array): number {
  for (let row = 0; row < count; row += 1) {
    const set = patients[row] as HandSet;
    const {
      systolic: a,
      diastolic: b,
      heartRate: c,
      respiratoryRate: d,
      temperature: e,
      usualSystolic: f,
      saturation: g,
    } = set;
    const { consciousness: h, meanPressure: i, age: j, systolicChange: k, diastolicChange: l } = set;
    const met =
      (a <= 100 ? 1 : 0) |
      (a <= 90 ? 2 : 0) |
      (a < 80 ? 4 : 0) |
      (a >= 180 ? 8 : 0) |
      (a >= 220 ? 16 : 0) |
      (a < 140 ? 32 : 0) |
      (b >= 110 ? 64 : 0) |
      (b < 60 ? 128 : 0) |
      (c > 90 ? 256 : 0) |
      (c <= 40 ? 512 : 0) |
      (c >= 131 ? 1024 : 0) |
      (c < 60 ? 2048 : 0) |
      (d > 20 ? 4096 : 0) |
      (d <= 8 ? 8192 : 0) |
      (d >= 25 ? 16384 : 0) |
      (e <= 360 ? 32768 : 0) |
      (e > 380 ? 65536 : 0) |
      (e <= 350 ? 1 << 17 : 0);
    const more =
      (f >= 120 ? 1 : 0) |
      (f >= 140 ? 2 : 0) |
      (f < 110 ? 4 : 0) |
      (g <= 91 ? 8 : 0) |
      (g >= 88 ? 16 : 0) |
      (h >= 1 ? 32 : 0) |
      (h >= 3 ? 64 : 0) |
      (i < 65 ? 128 : 0) |
      (j >= 93504 ? 256 : 0) |
      (k >= 20 ? 512 : 0) |
      (l >= 15 ? 1024 : 0) |
      (a <= 20 ? 2048 : 0) |
      (a <= 60 ? 4096 : 0) |
      (a <= 108 ? 8192 : 0) |
      (a <= 120 ? 16384 : 0) |
      (b < 48 ? 32768 : 0) |
      (c < 100 ? 65536 : 0) |
      (d < 12 ? 1 << 17 : 0);
    const rest =
      (a <= 140 ? 1 : 0) |
      (b >= 90 ? 2 : 0) |
      (c >= 111 ? 4 : 0) |
      (d >= 21 ? 8 : 0) |
      (e > 390 ? 16 : 0) |
      (f >= 160 ? 32 : 0) |
      (g <= 93 ? 64 : 0) |
      (h >= 2 ? 128 : 0) |
      (i < 70 ? 256 : 0) |
      (k >= 40 ? 512 : 0) |
      (l >= 25 ? 1024 : 0);
    out[row * 3] = met ^ more;
    out[row * 3 + 1] = met;
    out[row * 3 + 2] = more ^ rest;
  }
  return count;
}
