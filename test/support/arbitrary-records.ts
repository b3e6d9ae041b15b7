/** Random records: weather of days and weeks inside and outside the season, minutes really run, and what was set by hand. */
import fc from 'fast-check';
import { dayNumber } from '../../src/engine/calendar.ts';
import type { Plan, PlanChoice, PlanDay, PlanLog, PlanWeek, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { amount, dayNear, type Frame, wordy } from './arbitrary-parts.ts';

export function arbitraryLog(frame: Frame, zones: readonly PlanZone[]): fc.Arbitrary<PlanLog> {
  const weekOf = ([day]: readonly [string, unknown]) => Math.floor((dayNumber(day) - frame.firstDay) / 7);
  return fc.record(
    {
      days: fc
        .uniqueArray(fc.tuple(dayNear(frame, 20, 20), arbitraryDay(frame)), { maxLength: 15, selector: ([day]) => day })
        .map((entries) => Object.fromEntries(entries)),
      weeks: fc
        .uniqueArray(fc.tuple(dayNear(frame, 14, 14), arbitraryWeek(frame)), { maxLength: 6, selector: weekOf })
        .map((entries) => Object.fromEntries(entries)),
      runs: byZone(zones, () =>
        fc.uniqueArray(fc.tuple(dayNear(frame, 0, 0), fc.integer({ min: 0, max: 900 })), {
          maxLength: Math.min(frame.weeks, 6),
          selector: weekOf,
        }),
      ),
    },
    { requiredKeys: [] },
  );
}

function arbitraryDay(frame: Frame): fc.Arbitrary<PlanDay> {
  return fc.record(
    {
      rain: fc.oneof(fc.constant(0), amount('depth', frame, 0, 60)),
      eto: amount('depth', frame, 0, 9),
      minTemperature: amount('temperature', frame, -10, 12),
      maxTemperature: amount('temperature', frame, 13, 40),
      dewPoint: amount('temperature', frame, -10, 12),
      minHumidityPercent: fc.integer({ min: 0, max: 60 }),
      maxHumidityPercent: fc.integer({ min: 61, max: 100 }),
      wind: amount('windSpeed', frame, 0, 10),
      radiationMj: fc.integer({ min: 0, max: 32 }),
      sunshineHours: fc.integer({ min: 0, max: 15 }),
    },
    { requiredKeys: [] },
  );
}

function arbitraryWeek(frame: Frame): fc.Arbitrary<PlanWeek> {
  return fc.record({ rain: amount('depth', frame, 0, 120), eto: amount('depth', frame, 0, 60) }, { requiredKeys: [] });
}

export function arbitraryChoices(frame: Frame, zones: readonly PlanZone[]): fc.Arbitrary<NonNullable<Plan['choices']>> {
  return byZone(zones, (zone) =>
    fc.uniqueArray(fc.tuple(dayNear(frame, 0, 0), arbitraryChoice(zone)), {
      maxLength: Math.min(frame.weeks, 6),
      selector: ([day]) => Math.floor((dayNumber(day) - frame.firstDay) / 7),
    }),
  );
}

function arbitraryChoice(zone: PlanZone): fc.Arbitrary<PlanChoice> {
  const ids = zone.plantings.map(({ id }) => id);
  return fc.record(
    {
      minutes: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 900 })),
      closed: fc.boolean(),
      openDays: fc.dictionary(
        ids.length > 0 ? fc.constantFrom(...ids) : fc.constant('none'),
        fc.integer({ min: 0, max: 7 }),
        {
          maxKeys: ids.length,
          noNullPrototype: true,
        },
      ),
      note: wordy,
    },
    { requiredKeys: [] },
  );
}

/** A record by zone id, each made from entries by day; zones without any are left out. */
function byZone<Value>(
  zones: readonly PlanZone[],
  entries: (zone: PlanZone) => fc.Arbitrary<(readonly [string, Value])[]>,
): fc.Arbitrary<Record<string, Record<string, Value>>> {
  return fc
    .tuple(...zones.map((zone) => entries(zone).map((list) => [zone.id, Object.fromEntries(list)] as const)))
    .map((all) => Object.fromEntries(all.filter(([, record]) => Object.keys(record).length > 0)));
}
