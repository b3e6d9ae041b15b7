import type { Garden } from '../../src/engine/garden.ts';

/** The garden with a hot week in a dry month, after cool and wet days. */
export function unlikeUsual(garden: Garden): Garden {
  const days = 7 * garden.span.weeks;
  const eto = new Float64Array(days).fill(1).fill(1.4, 14, 21).fill(0.7, 0, 4);
  const rain = new Float64Array(days).fill(1).fill(0.25, 7, 35).fill(2, 0, 4);
  return { ...garden, site: { ...garden.site, timesUsual: { eto, rain } } };
}
