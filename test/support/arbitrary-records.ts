/** Random records: weather of days and weeks inside and outside the season, minutes really run, and what was set by hand. */
import fc from 'fast-check';
import { dayNumber, isoDate } from '../../src/engine/calendar.ts';
import type {
  Plan,
  PlanChoice,
  PlanDay,
  PlanDayRun,
  PlanForecast,
  PlanLog,
  PlanWeek,
  PlanWeekRun,
  PlanZone,
} from '../../src/plan/schema/plan-schema.ts';
import { READING_SOURCES } from '../../src/plan/schema/records.ts';
import { amount, dayNear, type Frame, wordy } from './arbitrary-parts.ts';

export function arbitraryLog(frame: Frame, zones: readonly PlanZone[]): fc.Arbitrary<PlanLog> {
  const weekFirst = (day: string) => frame.firstDay + 7 * Math.floor((dayNumber(day) - frame.firstDay) / 7);
  const weekOf = ([day]: readonly [string, unknown]) => Math.floor((dayNumber(day) - frame.firstDay) / 7);
  return fc.record(
    {
      days: fc
        .uniqueArray(fc.tuple(dayNear(frame, 20, 20), arbitraryDay(frame)), { maxLength: 15, selector: ([day]) => day })
        .map((entries) => Object.fromEntries(entries)),
      weeks: fc
        .uniqueArray(fc.tuple(dayNear(frame, 14, 14), arbitraryWeek(frame)), { maxLength: 6, selector: weekOf })
        .map((entries) => Object.fromEntries(entries.map(([day, week]) => [day, week(weekFirst(day))]))),
      runs: byZone(zones, (zone) =>
        fc
          .uniqueArray(fc.tuple(fc.integer({ min: 0, max: frame.weeks - 1 }), arbitraryRun(zone)), {
            maxLength: Math.min(frame.weeks, 6),
            selector: ([week]) => week,
          })
          .map((runs) => runs.map(([week, run]) => run(frame.firstDay + 7 * week))),
      ),
      meter: fc
        .uniqueArray(fc.tuple(dayNear(frame, 5, 5), fc.integer({ min: 0, max: 999_999 })), {
          maxLength: 4,
          selector: ([day]) => day,
        })
        .map((entries) => Object.fromEntries(entries)),
      forecasts: fc
        .uniqueArray(arbitraryForecast(frame), { maxLength: 3, selector: ({ issued }) => issued })
        .map((forecasts) => forecasts.toSorted((left, right) => (left.issued < right.issued ? -1 : 1))),
    },
    { requiredKeys: [] },
  );
}

function arbitraryDay(frame: Frame): fc.Arbitrary<PlanDay> {
  return fc
    .record(
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
    )
    .map(sourced);
}

/** Of some days it says where the readings come from, by a figure that it has. */
function sourced(day: PlanDay): PlanDay {
  const { sunshineHours: hours } = day;
  if (hours === undefined) return day;
  const source = READING_SOURCES[hours % READING_SOURCES.length];
  return { ...day, source: hours % 2 === 0 ? source : { rain: source, minTemperature: 'file' } };
}

/** By the first day of its week. */
function arbitraryWeek(frame: Frame): fc.Arbitrary<(firstDay: number) => PlanWeek> {
  return fc
    .record(
      {
        rain: amount('depth', frame, 0, 120),
        eto: amount('depth', frame, 0, 60),
        note: wordy,
        through: fc.integer({ min: 0, max: 6 }),
      },
      { requiredKeys: [] },
    )
    .map(({ through, ...week }) => (firstDay) => ({
      ...week,
      ...(week.rain !== undefined && through !== undefined && { rainThrough: isoDate(firstDay + through) }),
    }));
}

/** Minutes of the week, or what ran on some of its days: by the week's first day, under one of its days. */
function arbitraryRun({ plantings }: PlanZone): fc.Arbitrary<(firstDay: number) => [string, PlanWeekRun]> {
  const total = fc.integer({ min: 0, max: 900 });
  const ofDay: fc.Arbitrary<PlanDayRun> = fc.record(
    { minutes: fc.integer({ min: 0, max: 200 }), open: fc.subarray(plantings.map(({ id }) => id)) },
    { requiredKeys: ['minutes'] },
  );
  const days = fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 6 }), ofDay), {
    maxLength: 4,
    selector: ([day]) => day,
  });
  const isSome = fc.boolean();
  return fc
    .tuple(fc.integer({ min: 0, max: 6 }), fc.oneof(total, days), isSome)
    .map(([under, run, rest]) => (firstDay) => [
      isoDate(firstDay + under),
      typeof run === 'number'
        ? run
        : {
            days: Object.fromEntries(
              run.toSorted(([left], [right]) => left - right).map(([day, each]) => [isoDate(firstDay + day), each]),
            ),
            ...(rest && { rest: 'computed' }),
          },
    ]);
}

function arbitraryForecast(frame: Frame): fc.Arbitrary<PlanForecast> {
  const ofDay = fc.record(
    { rain: amount('depth', frame, 0, 60), eto: amount('depth', frame, 0, 9) },
    { requiredKeys: [] },
  );
  return fc
    .record({ issued: dayNear(frame, 5, 5), days: fc.array(ofDay, { maxLength: 4 }) })
    .map(({ issued, days }) => ({
      issued,
      days: Object.fromEntries(days.map((day, ahead) => [isoDate(dayNumber(issued) + ahead), day])),
    }));
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
