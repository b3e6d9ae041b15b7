/** The catalogue's goods as a plan states them. */
import type { Catalogue } from '../../engine/line/catalogue.ts';
import type { Emitter } from '../../engine/line/emitter.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { roundForPerson } from '../../plan/edits/round-for-person.ts';
import type { PlanLine } from '../../plan/schema/plan-schema.ts';
import type { PlanQuantity } from '../../plan/schema/quantity.ts';

/** A size of the trade is its label's, so that 0.6 gph is sold as 2.3 L/h and 12 in as 30 cm. */
const LABEL_TOLERANCE = 0.02;

/** Two sizes that differ by less are the same goods. */
const SAME_SIZE = 0.05;

/** What is on the label in a plan's unit system. */
export function labelled(si: number, quantity: PlanQuantity, units: UnitSystem): number {
  const exact = fromSi(si, quantity, units);
  return roundForPerson(exact, LABEL_TOLERANCE * exact);
}

export function isSameSize(one: number, other: number): boolean {
  return Math.abs(one - other) <= SAME_SIZE * Math.max(one, other);
}

type Dripline = Extract<PlanLine, { kind: 'dripline' }>;

/** How an emitter answers to pressure; nothing where it is the plan's default. */
export function emitterInPlan(emitter: Emitter, units: UnitSystem): Pick<Dripline, 'emitter'> {
  if (emitter.kind === 'plain') return { emitter: { kind: 'plain', exponent: emitter.exponent } };
  if (isSameSize(emitter.leastPressureKpa, DEFAULTS.leastPressureKpa)) return {};
  const leastPressure = labelled(emitter.leastPressureKpa, 'pressure', units);
  return { emitter: { kind: 'compensating', leastPressure } };
}

/** The bore of a tubing; nothing where it is the plan's default, or not in the catalogue. */
export function boreInPlan(
  tubingId: string,
  { tubing }: Catalogue,
  units: UnitSystem,
): Pick<Dripline, 'insideDiameter'> {
  const insideDiameterMm = tubing.find(({ id }) => id === tubingId)?.insideDiameterMm;
  if (insideDiameterMm === undefined || isSameSize(insideDiameterMm, DEFAULTS.insideDiameterMm)) return {};
  return { insideDiameter: labelled(insideDiameterMm, 'bore', units) };
}
