/**
 * A number of the plan with its quantity: bounded by what is physically possible in a garden, in the plan's own unit.
 * One table holds the bounds in SI; both unit systems' schemas are made from it.
 */
import * as v from 'valibot';
import { fromSi, type Quantity, type UnitSystem } from '../../engine/units.ts';
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
  waterHeight: [0.05, 100],
  emitterFlow: [0.05, 500],
  supplyFlow: [0.05, 2_000],
  volume: [0, 10_000_000],
  waterPerArea: [0, 10_000],
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

/** What numbers of a plan count that are no quantity. */
export type CountUnit =
  | 'percent'
  | 'degrees'
  | 'seconds'
  | 'minutes'
  | 'minutesPerWeek'
  | 'hours'
  | 'hoursPerDay'
  | 'days'
  | 'daysPerWeek'
  | 'startsPerDay'
  | 'weeks'
  | 'rows'
  | 'loops'
  | 'emitters'
  | 'microSprays'
  | 'plants'
  | 'MJ/m²';

/** A number of the given quantity, in the unit of the plan's system. The schema carries both, for conversion and for faults. */
export function quantity(kind: PlanQuantity, system: UnitSystem) {
  const [low, high] = boundsOf(kind, system);
  return once(`${kind} ${system}`, () => withMore(range(low, high), v.metadata({ quantity: kind, units: system })));
}

/** What a water meter shows, in the unit of volume of the plan's system: more digits than any volume of a garden. */
export function meterReading(system: UnitSystem) {
  return once(['meter', system].join(), () =>
    withMore(range(0, MOST_ON_METER), v.metadata({ quantity: 'volume', units: system, isExact: true })),
  );
}

export const MOST_ON_METER = 999_999_999;

/** A number from `low` to `high`. */
export function range(low: number, high: number, unit?: CountUnit) {
  return once(['range', low, high, unit].join(), () =>
    withUnit(v.pipe(v.number(), v.finite(), v.minValue(low), v.maxValue(high)), unit),
  );
}

/** A whole number from `low` to `high`. */
export function whole(low: number, high: number, unit?: CountUnit) {
  return once(['whole', low, high, unit].join(), () =>
    withUnit(v.pipe(v.number(), v.integer(), v.minValue(low), v.maxValue(high)), unit),
  );
}

function withUnit<Schema extends v.GenericSchema>(schema: Schema, unit: CountUnit | undefined): Schema {
  return unit === undefined ? schema : withMore(schema, v.metadata({ unit }));
}

const made = new Map<string, unknown>();

/** What has the same key is the same schema: it is never changed. */
function once<Schema>(key: string, make: () => Schema): Schema {
  const schema = (made.get(key) as Schema | undefined) ?? make();
  made.set(key, schema);
  return schema;
}
