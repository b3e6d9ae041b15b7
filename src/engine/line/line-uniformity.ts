import { lowestQuarterUniformity } from '../application/distribution-uniformity.ts';

/**
 * Distribution uniformity of a line's computed flows, 0..1: the lowest quarter's mean over the mean of all; with fewer
 * than four emitters, the least over the mean. 0 where nothing flows. It can feed a zone's efficiency: join the flows
 * of its lines, each over its emitter's nominal flow.
 *
 * It knows pressure alone. Emitters that differ as made or clog bring the figure in the ground down to 0.65-0.80 (field
 * evaluations in California, cited in the CIGR Handbook, Pereira and Trout 1999).
 *
 * @param flows flow of each emitter; any one unit
 */
export function lineUniformity(flows: ArrayLike<number>): number {
  const each = Array.from(flows);
  const total = each.reduce((sum, flow) => sum + flow, 0);
  if (!(total > 0)) return 0;
  return each.length < 4 ? Math.min(...each) / (total / each.length) : lowestQuarterUniformity(each);
}
