/** Whether two plantings would use the same water on the same days. */
import type { DemandPlanting } from './planting-demand.ts';

/** By value: another line, valve or name leaves the demand as it was. Both stand in the same soil and weather. */
export function isSameDemand(one: DemandPlanting, other: DemandPlanting): boolean {
  return one === other || DEMAND_FIELDS.every((field) => isSame(one[field], other[field]));
}

const DEMAND_FIELDS = Object.keys({
  coefficient: true,
  establishing: true,
  rootDepthM: true,
  allowedDepletion: true,
  adjustsDepletion: true,
  target: true,
  startDepletion: true,
  from: true,
  to: true,
} satisfies Record<keyof DemandPlanting, true>) as readonly (keyof DemandPlanting)[];

function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const [left, right] = [Object.entries(one), Object.entries(other)];
  return left.length === right.length && left.every(([key, value]) => isSame(value, other[key as keyof typeof other]));
}
