/** How much of the rain enters the root zone: by the day for what fell, by a relation of the month for normals. Depths in mm. */
import type { RainRule } from '../../src/engine/garden.ts';

const MM_PER_INCH = 25.4;

export type MonthlyMethod = Exclude<RainRule['method'], 'balance'>;

export interface Month {
  readonly rainMm: number;
  readonly etcMm: number;
  /** Depth that is drawn from the root zone between two waterings. */
  readonly storageMm: number;
}

/** FAO-56 p. 170: a day's rain below 0.2 ETo evaporates. Part of the rest may run off. */
export function soakedRain(rainMm: number, etoMm: number, rule: Pick<RainRule, 'runoffFraction'>): number {
  return rainMm < 0.2 * etoMm ? 0 : rainMm * (1 - rule.runoffFraction);
}

/**
 * Effective rain of a month: USDA-SCS TR-21 (1970), FAO Training Manual 3 (Brouwer and Heibloem 1986), the simplified
 * relation of the SCS, or a plain fraction. What a root zone's own balance keeps stands in kept-rain.ts.
 */
export function effectiveRain(rule: RainRule & { readonly method: MonthlyMethod }, month: Month): number {
  const { rainMm } = month;
  if (rule.method === 'tr21') return tr21(month);
  if (rule.method === 'fao') return Math.max(0, rainMm > 75 ? 0.8 * rainMm - 25 : 0.6 * rainMm - 10);
  if (rule.method === 'scs-simplified') {
    return rainMm <= 250 ? (rainMm * (125 - 0.2 * rainMm)) / 125 : 125 + 0.1 * rainMm;
  }
  return rule.fraction * rainMm;
}

/** In inches, as it was published. */
function tr21({ rainMm, etcMm, storageMm }: Month): number {
  const storage = Math.min(7, Math.max(0.75, storageMm / MM_PER_INCH));
  const rain = rainMm / MM_PER_INCH;
  const etc = etcMm / MM_PER_INCH;
  const storageFactor = 0.531747 + 0.295164 * storage - 0.057697 * storage ** 2 + 0.003804 * storage ** 3;
  const uncapped = storageFactor * (0.70917 * rain ** 0.82416 - 0.11556) * 10 ** (0.02426 * etc);
  return MM_PER_INCH * Math.max(0, Math.min(uncapped, rain, etc));
}
