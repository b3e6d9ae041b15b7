/**
 * The ordinance counts 0.62 gal for an inch on a square foot, where 144/231 = 0.62338 is exact. The litres below follow
 * the ordinance, 0.54 % under the exact volume, so that they meet the printed allowances.
 */
const ORDINANCE_SHARE = 0.62 / (144 / 231);

/** California's landscape ordinance lets at most this share of a year's rain count. */
const RAIN_SHARE = 0.25;

export interface AllowanceSite {
  /** Reference ET of the year, mm; less the rain that may count, where that is chosen. */
  readonly etoMm: number;
  /** All landscape, special landscape included. */
  readonly landscapeAreaM2: number;
  /** Food gardens and other areas with an adjustment factor of 1. */
  readonly specialAreaM2: number;
  /** 0.55 for homes and 0.45 elsewhere (2015); 0.7 (2009). */
  readonly etAdjustmentFactor: number;
}

/**
 * Largest volume of water allowed in a year (MAWA), L: ETo (ETAF LA + (1 - ETAF) SLA).
 *
 * Source: California Code of Regulations, Title 23, Model Water Efficient Landscape Ordinance, s. 492.4, with its 0.62.
 * Local rules differ and come first.
 */
export function maximumAppliedWaterAllowanceL(site: AllowanceSite): number {
  const { etoMm, landscapeAreaM2, specialAreaM2, etAdjustmentFactor } = site;
  const adjustedAreaM2 = etAdjustmentFactor * landscapeAreaM2 + (1 - etAdjustmentFactor) * specialAreaM2;
  return ORDINANCE_SHARE * etoMm * adjustedAreaM2;
}

export interface Hydrozone {
  readonly plantFactor: number;
  readonly areaM2: number;
  /** Above 0 and at most 1. */
  readonly efficiency: number;
}

/**
 * Volume that a landscape is estimated to use in a year (ETWU), L: ETo (sum of PF HA / IE + SLA).
 *
 * Source: California Code of Regulations, Title 23, Model Water Efficient Landscape Ordinance (2009 and 2015 forms: one
 * efficiency for all, or one for each hydrozone), with its 0.62.
 */
export function estimatedTotalWaterUseL(
  etoMm: number,
  hydrozones: readonly Hydrozone[],
  specialAreaM2: number,
): number {
  const needM2 = hydrozones.reduce((sum, zone) => sum + (zone.plantFactor * zone.areaM2) / zone.efficiency, 0);
  return ORDINANCE_SHARE * etoMm * (needM2 + specialAreaM2);
}

/**
 * Reference ET left when a quarter of the year's rain is counted, mm, never below 0: it takes the place of ETo above.
 *
 * Source: California Code of Regulations, Title 23, Model Water Efficient Landscape Ordinance, effective precipitation.
 */
export function etoLessOrdinanceRainMm(etoMm: number, annualRainMm: number): number {
  return Math.max(0, etoMm - RAIN_SHARE * annualRainMm);
}
