/**
 * A number of the plan with its quantity: bounded by what is physically possible in a garden, worded in the plan's
 * own unit. One table holds the bounds in SI; both unit systems' schemas are made from it.
 */
import * as v from 'valibot';
import { fromSi, type Quantity, type UnitSystem, unitOf } from '../../engine/units.ts';
import { withMore } from './fields.ts';

/** Least and greatest value that a garden can have, in the quantity's SI unit. */
const BOUNDS = {
  area: [0.01, 100_000],
  length: [0.01, 5_000],
  spacing: [0.02, 5],
  diameter: [0.02, 30],
  rootDepth: [0.05, 4],
  bore: [2, 110],
  elevation: [-450, 6_000],
  height: [1, 200],
  emitterFlow: [0.05, 500],
  supplyFlow: [0.05, 2_000],
  volume: [0, 10_000_000],
  pressure: [0, 1_500],
  depth: [0, 2_000],
  temperature: [-70, 60],
  windSpeed: [0, 60],
} as const satisfies Partial<Record<Quantity, readonly [number, number]>>;

export type PlanQuantity = keyof typeof BOUNDS;

/** Least and greatest value of a quantity in the unit of a plan's system. */
export function boundsOf(kind: PlanQuantity, system: UnitSystem): readonly [number, number] {
  const [low, high] = BOUNDS[kind];
  return [fromSi(low, kind, system), fromSi(high, kind, system)];
}

/** A number of the given quantity, in the unit of the plan's system. The schema carries its quantity for conversion. */
export function quantity(kind: PlanQuantity, system: UnitSystem) {
  const [low, high] = boundsOf(kind, system);
  const unit = unitOf(kind, system).name;
  return once(`${kind} ${unit}`, () => withMore(range(low, high, unit), v.metadata({ quantity: kind, unit })));
}

/** A number from `low` to `high`; the fault names both and the unit. */
export function range(low: number, high: number, unit = '') {
  const expected = `a number from ${tidy(low, Math.ceil)} to ${tidy(high, Math.floor)}${unit === '' ? '' : ` ${unit}`}`;
  return once(`${expected}, ${low}, ${high}`, () =>
    v.pipe(v.number(expected), v.finite(expected), v.minValue(low, expected), v.maxValue(high, expected)),
  );
}

/** A whole number from `low` to `high`. */
export function whole(low: number, high: number, unit = '') {
  const expected = `a whole number from ${low} to ${high}${unit === '' ? '' : ` ${unit}`}`;
  return once(`${expected}, ${low}, ${high}`, () =>
    v.pipe(v.number(expected), v.integer(expected), v.minValue(low, expected), v.maxValue(high, expected)),
  );
}

const made = new Map<string, unknown>();

/** What is described by the same words is the same schema: it is never changed. */
function once<Schema>(words: string, make: () => Schema): Schema {
  const schema = (made.get(words) as Schema | undefined) ?? make();
  made.set(words, schema);
  return schema;
}

/** A whole number as it is, any other to three digits, rounded to the inner side: what the words offer is accepted. */
function tidy(value: number, inward: (value: number) => number): string {
  if (Number.isInteger(value)) return String(value);
  const short = Number(value.toPrecision(3));
  if (Math.abs(short - value) <= 1e-9 * Math.abs(value)) return String(short);
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2);
  return String(Number((inward(value / step) * step).toPrecision(3)));
}
