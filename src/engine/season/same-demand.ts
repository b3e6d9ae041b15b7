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
  if (!isRecord(one) || !isRecord(other)) return false;
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => isSame(one[key], other[key]));
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
