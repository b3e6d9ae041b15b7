/** Typed values in the engine's units; what is left out stays so. */
import { type Quantity, toSi, type UnitSystem } from '../../engine/units.ts';

export function inSi(value: number, quantity: Quantity, units: UnitSystem): number;
export function inSi(value: number | undefined, quantity: Quantity, units: UnitSystem): number | undefined;
export function inSi(value: number | undefined, quantity: Quantity, units: UnitSystem): number | undefined {
  return value === undefined ? undefined : toSi(value, quantity, units);
}

export function listInSi(
  values: readonly number[] | undefined,
  quantity: Quantity,
  units: UnitSystem,
): readonly number[] | undefined {
  return values?.map((value) => toSi(value, quantity, units));
}

/** The fields of an object that have a value. */
export function present<Whole extends object>(whole: Whole): Whole {
  return Object.fromEntries(Object.entries(whole).filter(([, value]) => value !== undefined)) as Whole;
}
