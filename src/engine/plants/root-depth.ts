import { numberOnly } from '../number-only.ts';
import type { CropStageLengths } from './crop-stages.data.ts';

/**
 * How deep an annual crop roots on a day of growth (1 on the day of planting), m: as deep as at planting through the initial stage,
 * then deeper in a straight line, and full from mid-season on.
 *
 * Source: FAO-56 ch. 8, root depth grows with the stages; in the initial period 0.15 to 0.20 m; from memory.
 */
export function rootDepthM(
  dayNumber: number,
  { iniDays, devDays }: Pick<CropStageLengths, 'iniDays' | 'devDays'>,
  { initialM, fullM }: { readonly initialM: number; readonly fullM: number },
): number {
  const left = Math.min(1, Math.max(0, 1 - (dayNumber - iniDays) / devDays));
  return numberOnly(fullM - (fullM - initialM) * left);
}
