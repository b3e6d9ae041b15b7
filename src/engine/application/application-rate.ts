/**
 * Depth that emitters lay on an area each hour, mm/h: one litre on one square metre is one millimetre.
 *
 * An area that is not above 0 throws RangeError.
 */
export function applicationRateMmPerHour(flowLph: number, areaM2: number): number {
  if (!(areaM2 > 0)) throw new RangeError(`The watered area is ${areaM2} m2; it must be above 0.`);
  return flowLph / areaM2;
}

export interface DriplineLayout {
  readonly emitterFlowLph: number;
  readonly emitterSpacingM: number;
  readonly rowSpacingM: number;
}

/**
 * Depth that dripline in rows lays down each hour, mm/h: the flow of one emitter over its share of the ground.
 *
 * Source: in inches, 231 gph / (emitter spacing x row spacing), which handbooks also print with 231.1.
 * A spacing that is not above 0 throws RangeError.
 */
export function driplineRateMmPerHour({ emitterFlowLph, emitterSpacingM, rowSpacingM }: DriplineLayout): number {
  if (!(emitterSpacingM > 0)) throw new RangeError(`The emitter spacing is ${emitterSpacingM} m; it must be above 0.`);
  if (!(rowSpacingM > 0)) throw new RangeError(`The row spacing is ${rowSpacingM} m; it must be above 0.`);
  return applicationRateMmPerHour(emitterFlowLph, emitterSpacingM * rowSpacingM);
}
