/** A plan in the other unit system. */
import { fromSi, toSi, type UnitSystem } from '../../engine/units.ts';
import { convertedDays } from '../packed-days.ts';
import { PLAN_SCHEMAS, type Plan, type PlanYears } from '../schema/plan-schema.ts';
import { boundsOf, MOST_ON_METER, type PlanQuantity } from '../schema/quantity.ts';
import { mapQuantities, type SchemaNode } from '../schema/walk.ts';
import { roundByShare, roundForPerson } from './round-for-person.ts';

/** Four digits: 0.9 gph is 3.407 L/h, and that is 0.9 gph again. */
const RELATIVE_TOLERANCE = 4e-5;

/** Nine digits. */
const METER_TOLERANCE = 4e-10;

/** A scale with a shifted zero has no relative error: half a hundredth of a degree, and what that is on the other scale. */
const TEMPERATURE_TOLERANCE = { us: 0.009, metric: 0.005 } as const;

/** Every quantity converted and rounded to what a person would write; the same plan where it is in those units already. */
export function convertUnits(plan: Plan, units: UnitSystem): Plan {
  const { units: from } = plan;
  if (units === from || !Object.hasOwn(PLAN_SCHEMAS, units)) return units === from ? plan : { ...plan, units };
  const schema = PLAN_SCHEMAS[from] as unknown as SchemaNode;
  const next = mapQuantities(schema, plan, (value, quantity, isExact) =>
    isExact ? ofMeter(value, from, units) : converted(value, quantity, { from, to: units }),
  );
  const { years } = next.site;
  const site = years === undefined ? next.site : { ...next.site, years: convertedYears(years, from, units) };
  return { ...next, site, units };
}

function convertedYears({ source, stretches }: PlanYears, from: UnitSystem, to: UnitSystem): PlanYears {
  return {
    source,
    stretches: stretches.map((stretch) => ({
      from: stretch.from,
      rain: convertedDays(stretch.rain, from, to),
      eto: convertedDays(stretch.eto, from, to),
    })),
  };
}

function ofMeter(reading: number, from: UnitSystem, to: UnitSystem): number {
  return Math.min(MOST_ON_METER, roundByShare(fromSi(toSi(reading, 'volume', from), 'volume', to), METER_TOLERANCE));
}

function converted(
  value: number,
  quantity: PlanQuantity,
  { from, to }: { readonly from: UnitSystem; readonly to: UnitSystem },
): number {
  const exact = fromSi(toSi(value, quantity, from), quantity, to);
  const rounded =
    quantity === 'temperature'
      ? roundForPerson(exact, TEMPERATURE_TOLERANCE[to])
      : roundByShare(exact, RELATIVE_TOLERANCE);
  const [low, high] = boundsOf(quantity, to);
  // At the very edge of what is allowed the rounding must not step over it.
  return rounded >= low && rounded <= high ? rounded : Math.min(high, Math.max(low, exact));
}
