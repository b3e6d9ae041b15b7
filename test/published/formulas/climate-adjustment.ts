export interface CropClimate {
  /** Mean wind speed at 2 m during the stage, m/s; taken as 1 to 6. */
  readonly windMs: number;
  /** Mean of the daily least relative humidity during the stage, %; taken as 20 to 80. */
  readonly rhMinPercent: number;
  /** Mean crop height during the stage, m; taken as 0.1 to 10. */
  readonly heightM: number;
}

/** Kc end below this is left as the table prints it: the plants are drying and the climate no longer tells. */
const LEAST_ADJUSTED_KC_END = 0.45;

const clamp = (value: number, min: number, max: number): number => Math.min(Math.max(value, min), max);

function climateTerm({ windMs, rhMinPercent, heightM }: CropClimate): number {
  const wind = clamp(windMs, 1, 6);
  const humidity = clamp(rhMinPercent, 20, 80);
  const height = clamp(heightM, 0.1, 10);
  return (0.04 * (wind - 2) - 0.004 * (humidity - 45)) * (height / 3) ** 0.3;
}

/**
 * Kc mid for a climate unlike the table's (wind 2 m/s, least humidity 45 %): wind and dry air raise it, more for tall
 * crops.
 *
 * Source: FAO-56 eq. 62, Box 15. Wind, humidity and height outside the equation's limits are taken at the limit.
 */
export function adjustedKcMid(kcMid: number, climate: CropClimate): number {
  return kcMid + climateTerm(climate);
}

/**
 * Kc end for a climate unlike the table's. Below 0.45 it is returned as printed.
 *
 * Source: FAO-56 eq. 65, with the limits of eq. 62.
 */
export function adjustedKcEnd(kcEnd: number, climate: CropClimate): number {
  return kcEnd < LEAST_ADJUSTED_KC_END ? kcEnd : kcEnd + climateTerm(climate);
}
