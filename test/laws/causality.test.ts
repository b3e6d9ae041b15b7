/**
 * No morning knows what is not known yet: a day's readings are known on the morning after it, a forecast on the morning of its issue.
 * Totals are the exception: a total falls on all the days that it covers, and says of the first of them what was read on the last. So no
 * total lies in the week of the reading that is changed.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Forecast, Garden, ObservedDay, ObservedWeather } from '../../src/engine/garden.ts';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { between, some } from '../support/garden-numbers.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { expectSame } from '../support/same-figures.ts';
import { law } from './law.ts';
import { MINUTES_BY_DAY } from './weeks-of.ts';

interface Change {
  readonly before: Garden;
  readonly after: Garden;
  /** First morning that may know of the change, counted from the season's first day. */
  readonly knownOn: number;
}

const gardens = fc.oneof(arbitraryGarden({ mostWeeks: 6 }), arbitraryLimitedGarden({ mostWeeks: 6 }));

const reading: fc.Arbitrary<ObservedDay | undefined> = fc.option(
  fc.record({
    rainMm: some(fc.oneof(fc.constant(0), between(0, 60))),
    etoMm: some(between(0, 11)),
    minTemperatureC: some(between(-5, 15)),
    maxTemperatureC: some(between(15, 38)),
  }),
  { nil: undefined, freq: 3 },
);

/** A day's readings: others, some where there were none, or none where there were some. */
const changedReading: fc.Arbitrary<Change> = fc
  .tuple(gardens, fc.nat(), reading)
  .map(([garden, place, seen]): Change => {
    const { firstDay } = garden.span;
    const index = place % (7 * garden.span.weeks);
    const week = Math.floor(index / 7);
    const isElsewhere = ([day]: readonly [number, unknown]) => Math.floor((day - firstDay) / 7) !== week;
    const observed = { ...garden.observed, weeks: new Map([...garden.observed.weeks].filter(isElsewhere)) };
    const days = new Map(observed.days);
    if (seen === undefined) days.delete(firstDay + index);
    else days.set(firstDay + index, seen);
    return {
      before: { ...garden, observed },
      after: { ...garden, observed: { ...observed, days } },
      knownOn: index + 1,
    };
  });

const forecastDays = fc.array(
  fc.record({ ahead: fc.integer({ min: 0, max: 9 }), rainMm: some(between(0, 40)), etoMm: some(between(0, 11)) }),
  { maxLength: 6 },
);

/** A forecast of some morning: one more, or another in the place of those issued then, or none. */
const changedForecast: fc.Arbitrary<Change> = fc
  .tuple(gardens, fc.nat(), fc.option(forecastDays, { nil: undefined, freq: 3 }), fc.boolean())
  .map(([garden, place, days, isAdded]): Change => {
    const index = place % (7 * garden.span.weeks);
    const issued = garden.span.firstDay + index;
    const told: readonly Forecast[] =
      days === undefined ? [] : [{ issued, days: new Map(days.map(({ ahead, ...day }) => [issued + ahead, day])) }];
    const others = (garden.observed.forecasts ?? []).filter((each) => isAdded || each.issued !== issued);
    const forecasts = [...others, ...told].sort((one, other) => one.issued - other.issued);
    const observed: ObservedWeather = { ...garden.observed, forecasts };
    return { before: garden, after: { ...garden, observed }, knownOn: index };
  });

/**
 * All that was decided on the mornings before a day, zone by zone: of each morning its minutes, whether they were decided anew, and of each planting
 * whether it was due and whether its line was open. A morning is skipped where it runs no minutes; whether the week's mask says so
 * hangs on later days, too, and so does the mask of open days, which is 0 in a week without a run.
 */
function decidedBefore({ zones }: Season, end: number): readonly number[] {
  const decided: number[] = [];
  for (const zone of zones) {
    for (let day = 0; day < end; day++) {
      const week = Math.floor(day / 7);
      const minutes = zoneFigure(zone, MINUTES_BY_DAY[day % 7] as (typeof MINUTES_BY_DAY)[number], week);
      const bitOf = (mask: number) => (mask >> (day % 7)) & 1;
      decided.push(minutes, bitOf(zoneFigure(zone, 'decidedMask', week)));
      for (const planting of zone.plantings) {
        const isOpen = minutes > 0 ? bitOf(plantingFigure(planting, 'openMask', week)) : 0;
        decided.push(bitOf(plantingFigure(planting, 'dueMask', week)), isOpen);
      }
    }
  }
  return decided;
}

/** Days of shut-offs are named on the week's first watering morning, for all of the week; of a planting at rest, once it is over. */
function expectDaysNamed(one: Season, other: Season, knownOn: number): void {
  const { firstDay, weeks } = one.garden.span;
  const week = Math.floor(knownOn / 7);
  if (week >= weeks) return;
  for (const [place, zone] of one.zones.entries()) {
    const changed = other.zones[place] as (typeof other.zones)[number];
    const firstMorning = 7 * week + 31 - Math.clz32(lowestBit(zoneFigure(zone, 'decidedMask', week)));
    const bothRun = zoneFigure(zone, 'minutes', week) > 0 && zoneFigure(changed, 'minutes', week) > 0;
    if (!bothRun || firstMorning >= knownOn) continue;
    for (const [at, planting] of zone.plantings.entries()) {
      const { from, rest = [] } = planting.planting;
      const named = firstDay + firstMorning;
      if (from > named || rest.some((each) => each.from <= named && each.to >= named)) continue;
      const same = changed.plantings[at] as (typeof changed.plantings)[number];
      expect(plantingFigure(same, 'openMask', week)).toBe(plantingFigure(planting, 'openMask', week));
    }
  }
}

function lowestBit(mask: number): number {
  return mask & -mask;
}

const later = { readings: 0, forecasts: 0, inCuts: 0 };

function expectNoneKnew({ before, after, knownOn }: Change, what: 'readings' | 'forecasts'): void {
  const [one, other] = [runSeason(before), runSeason(after)];
  expectSame(decidedBefore(other, knownOn), decidedBefore(one, knownOn));
  expectDaysNamed(one, other, knownOn);
  const all = (season: Season) => decidedBefore(season, 7 * before.span.weeks);
  const changed = all(other);
  if (all(one).every((figure, place) => figure === changed[place])) return;
  later[what] += 1;
  if (one.zones.some((zone) => zoneFigure(zone, 'cutShare', Math.floor(knownOn / 7)) > 0)) later.inCuts += 1;
}

describe('a morning does not know', () => {
  law('of its own day’s readings, nor of any later day’s', {
    on: changedReading,
    runs: 800,
    holds: (change) => expectNoneKnew(change, 'readings'),
  });

  law('of a forecast that has not been issued', {
    on: changedForecast,
    runs: 800,
    holds: (change) => expectNoneKnew(change, 'forecasts'),
  });

  it('but later mornings do', () => {
    expect(later.readings).toBeGreaterThan(100);
    expect(later.forecasts).toBeGreaterThan(50);
    expect(later.inCuts).toBeGreaterThan(10);
  });
});
