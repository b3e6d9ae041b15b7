/**
 * A number of the plan with its quantity: bounded by what is physically possible in a garden, worded in the plan's
 * own unit. One table holds the bounds in SI; both unit systems' schemas are made from it.
 */
import * as v from 'valibot';
import { fromSi, type Quantity, type UnitSystem, unitOf } from '../../engine/units.ts';

/** Least and greatest value that a garden can have, in the quantity's SI unit. */
const BOUNDS = {
  area: [0.01, 100_000],
  length: [0.01, 5_000],
  spacing: [0.02, 5],
  diameter: [0.02, 30],
  rootDepth: [0.05, 4],
  bore: [2, 110],
  elevation: [-450, 6_000],
  emitterFlow: [0.05, 500],
  supplyFlow: [0.05, 2_000],
  volume: [0, 10_000_000],
  pressure: [0, 1_500],
  depth: [0, 2_000],
  temperature: [-70, 60],
  windSpeed: [0, 60],
} as const satisfies Partial<Record<Quantity, readonly [number, number]>>;

export type PlanQuantity = keyof typeof BOUNDS;

/** A number of the given quantity, in the unit of the plan's system. */
export function quantity(kind: PlanQuantity, system: UnitSystem) {
  const [lowSi, highSi] = BOUNDS[kind];
  return range(fromSi(lowSi, kind, system), fromSi(highSi, kind, system), unitOf(kind, system).name);
}

/** A number from `low` to `high`; the fault names both and the unit. */
export function range(low: number, high: number, unit = '') {
  const expected = `a number from ${tidy(low)} to ${tidy(high)}${unit === '' ? '' : ` ${unit}`}`;
  return v.pipe(v.number(expected), v.finite(expected), v.minValue(low, expected), v.maxValue(high, expected));
}

/** A whole number from `low` to `high`. */
export function whole(low: number, high: number, unit = '') {
  const expected = `a whole number from ${low} to ${high}${unit === '' ? '' : ` ${unit}`}`;
  return v.pipe(v.number(expected), v.integer(expected), v.minValue(low, expected), v.maxValue(high, expected));
}

function tidy(value: number): string {
  return String(Number(value.toPrecision(3)));
}
