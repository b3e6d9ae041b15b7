/** Whether two plantings would use the same water on the same days. */
import type { ZoneSoil } from '../garden.ts';
import type { DemandPlanting } from './planting-demand.ts';

export interface Planted {
  readonly planting: DemandPlanting;
  readonly soil: Pick<ZoneSoil, 'availableWater'>;
}

/** By value: another line, valve or name leaves the demand as it was. Both stand under the same weather. */
export function isSameDemand(one: Planted, other: Planted): boolean {
  if (one.soil.availableWater !== other.soil.availableWater) return false;
  const [left, right] = [one.planting, other.planting];
  return left === right || DEMAND_FIELDS.every((field) => isSame(left[field], right[field]));
}

const DEMAND_FIELDS = Object.keys({
  coefficient: true,
  establishing: true,
  rootZone: true,
  from: true,
  to: true,
  container: true,
  wettedShare: true,
  wettedShareByWeek: true,
  rainFactor: true,
  leachingFraction: true,
  rest: true,
} satisfies Record<keyof DemandPlanting, true>) as readonly (keyof DemandPlanting)[];

/** By value; maps and sets in the order in which they were filled. */
export function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (isFilled(one) && isFilled(other)) return isSame([...one], [...other]);
  if (!isRecord(one) || !isRecord(other)) return false;
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => isSame(one[key], other[key]));
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

const isFilled = (value: unknown) => value instanceof Map || value instanceof Set;
