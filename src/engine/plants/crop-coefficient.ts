import { numberOnly } from '../number-only.ts';
import type { CropStageLengths } from './crop-stages.data.ts';

export interface CropCoefficients {
  readonly kcIni: number;
  readonly kcMid: number;
  readonly kcEnd: number;
}

/**
 * Crop coefficient Kc on one day of growth: level at first, rising through development, level at mid-season, then
 * changing in a straight line to its end value. ETc = Kc x ETo.
 *
 * `dayNumber` is 1 on the day of planting (for a perennial, the day growth resumes), as FAO-56 counts; fractions of a
 * day are allowed. Up to 0, and after the last day of the last stage, nothing is in the ground and Kc is 0. A stage of
 * no length is passed over at once.
 *
 * Throws a RangeError where a number is missing or none.
 *
 * Source: FAO-56 eq. 66 and Example 28 (p. 133).
 */
export function cropCoefficient(dayNumber: number, stages: CropStageLengths, kc: CropCoefficients): number {
  return numberOnly(curve(dayNumber, stages, kc));
}

function curve(dayNumber: number, stages: CropStageLengths, kc: CropCoefficients): number {
  const iniEnd = stages.iniDays;
  const devEnd = iniEnd + stages.devDays;
  const midEnd = devEnd + stages.midDays;
  const lateEnd = midEnd + stages.lateDays;
  if (dayNumber <= 0 || dayNumber > lateEnd) return 0;
  if (dayNumber <= iniEnd) return kc.kcIni;
  if (dayNumber <= devEnd) return kc.kcIni + ((dayNumber - iniEnd) / stages.devDays) * (kc.kcMid - kc.kcIni);
  if (dayNumber <= midEnd) return kc.kcMid;
  return kc.kcMid + ((dayNumber - midEnd) / stages.lateDays) * (kc.kcEnd - kc.kcMid);
}
