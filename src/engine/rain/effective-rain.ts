import { faoMonthlyEffectiveRainMm } from './fao-monthly.ts';
import { fixedFractionEffectiveRainMm } from './fixed-fraction.ts';
import { scsSimplifiedMonthlyMm } from './scs-simplified.ts';
import { type Tr21Month, tr21EffectiveRainMm } from './tr21.ts';

export const RAIN_METHODS = ['tr21', 'fao', 'scs-simplified', 'fraction', 'balance'] as const;

/** How a month's rain becomes effective rain. */
export type RainMethod = (typeof RAIN_METHODS)[number];

export interface RainMonth extends Tr21Month {
  /** Share of the rain that counts, 0 to 1; read by the method 'fraction' alone. */
  readonly fraction: number;
}

/**
 * Effective rain of a month, mm, by the method a site has chosen; never below 0, never more than the rain.
 *
 * 'balance' credits all of it: the root-zone balance drains what the soil cannot hold. Each method's source stands with
 * its module; only 'tr21' reads ETc and storage.
 */
export function monthlyEffectiveRainMm(method: RainMethod, month: RainMonth): number {
  switch (method) {
    case 'tr21':
      return tr21EffectiveRainMm(month);
    case 'fao':
      return faoMonthlyEffectiveRainMm(month.rainMm);
    case 'scs-simplified':
      return scsSimplifiedMonthlyMm(month.rainMm);
    case 'fraction':
      return fixedFractionEffectiveRainMm(month.rainMm, month.fraction);
    case 'balance':
      return month.rainMm;
  }
}
