/**
 * Most that the flows of plain emitters along a line should differ: 10 % (common design allowance, from memory: Keller
 * and Karmeli 1975).
 */
export const FLOW_VARIATION_LIMIT = 0.1;

/**
 * Spread of emitter flows along a line: (most - least) / most, 0..1. An orifice whose pressure falls by 20 % gives 10.6
 * % less. 0 where nothing flows at all or there is no flow to compare.
 *
 * @param flowsLph flow of each outlet; any unit, the spread has none
 */
export function flowVariation(flowsLph: ArrayLike<number>): number {
  let most = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let outlet = 0; outlet < flowsLph.length; outlet += 1) {
    const flow = flowsLph[outlet] as number;
    most = Math.max(most, flow);
    least = Math.min(least, flow);
  }
  return most > 0 ? (most - least) / most : 0;
}
