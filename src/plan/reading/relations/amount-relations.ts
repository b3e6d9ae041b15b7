/** Numbers that must agree with one another: in the climate, in a day's weather. */
import { daysInMonth } from '../../../engine/calendar.ts';
import type { UnitSystem } from '../../../engine/units.ts';
import type { PlanQuantity } from '../../schema/quantity.ts';
import type { GreatestOf, Measure } from '../fault.ts';
import type { Issue } from '../issue.ts';
import { fieldsIn, listIn, numberIn } from '../loose.ts';
import type { Path } from '../place.ts';

const LEAP_YEAR = 2024;

export function climateRelations(climate: unknown, at: Path, units: UnitSystem | undefined): readonly Issue[] {
  const { eto, minTemperature, maxTemperature, rainDays } = fieldsIn(climate);
  const measure = measureOf('temperature', units);
  const issues: readonly Issue[] = [
    ...listIn(minTemperature).flatMap((low, month) => {
      const path = [...at, 'minTemperature', month];
      return atMost(low, listIn(maxTemperature)[month], { path, of: 'month-highest', measure });
    }),
    // A thirteenth is a fault of the list.
    ...listIn(rainDays)
      .slice(0, 12)
      .flatMap((days, month) => {
        const path = [...at, 'rainDays', month];
        return atMost(days, daysInMonth(LEAP_YEAR, month), { path, of: 'month-length', measure: { unit: 'days' } });
      }),
  ];
  if (eto !== undefined || (minTemperature !== undefined && maxTemperature !== undefined)) return issues;
  return [...issues, { path: [...at, 'eto'], value: eto, code: 'climate-without-eto', values: {} }];
}

export function dayRelations(day: unknown, at: Path, units: UnitSystem | undefined): readonly Issue[] {
  const { minTemperature, maxTemperature, minHumidityPercent, maxHumidityPercent } = fieldsIn(day);
  return [
    ...atMost(minTemperature, maxTemperature, {
      path: [...at, 'minTemperature'],
      of: 'day-highest',
      measure: measureOf('temperature', units),
    }),
    ...atMost(minHumidityPercent, maxHumidityPercent, {
      path: [...at, 'minHumidityPercent'],
      of: 'day-highest',
      measure: { unit: 'percent' },
    }),
  ];
}

export const measureOf = (quantity: PlanQuantity, units: UnitSystem | undefined): Measure => ({
  quantity,
  ...(units && { units }),
});

interface Greatest {
  readonly path: Path;
  readonly of: GreatestOf;
  readonly measure: Measure;
}

export function atMost(value: unknown, most: unknown, { path, of, measure }: Greatest): readonly Issue[] {
  const [low, high] = [numberIn(value), numberIn(most)];
  if (low === undefined || high === undefined || low <= high) return [];
  return [{ path, value, code: 'greater-than', values: { most: high, of, ...measure } }];
}
