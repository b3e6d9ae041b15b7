/** A container's day: what it may lose, and that rain is worth what the plants drink while it falls. And runs a day: no more than are proposed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysAWeek } from '../../src/engine/application/days-a-week.ts';
import { monthOfWeek } from '../../src/engine/calendar.ts';
import type { Garden } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { zoneWeek } from '../../src/engine/season/zone-week.ts';
import { type ContainerDay, runContainer } from '../../src/engine/soil/container-day.ts';
import { type Stores, storesOf } from '../../src/engine/soil/two-stores.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const mm = (max: number) => fc.double({ min: 0, max, noNaN: true });

interface Day {
  readonly startMm: number;
  readonly day: ContainerDay;
}

const days: fc.Arbitrary<Day> = fc
  .record({
    start: share,
    allowed: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    tawMm: fc.double({ min: 1, max: 100, noNaN: true }),
    etcMm: mm(20),
    soakedMm: fc.oneof(fc.constant(0), mm(40)),
    irrigationMm: fc.oneof(fc.constant(0), mm(40)),
    parts: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ start, allowed, ...day }) => ({
    startMm: start * day.tawMm,
    day: { ...day, rawMm: allowed * day.tawMm },
  }));

function dayOf({ startMm, day }: Day, change: Partial<ContainerDay> = {}): Stores {
  const stores = storesOf(startMm, startMm);
  runContainer(stores, { ...day, ...change });
  return stores;
}

const ROUNDING_MM = 1e-9;

describe('a container’s day', () => {
  law('loses no water without a name', {
    on: days,
    runs: 1_000,
    holds: (of) => {
      const { usedMm, rainDrainedMm, irrigationDrainedMm, wettedMm } = dayOf(of);
      const { soakedMm, irrigationMm } = of.day;
      expect(of.startMm + usedMm + rainDrainedMm + irrigationDrainedMm).toBeCloseTo(
        soakedMm + irrigationMm + wettedMm,
        9,
      );
      expect(Math.min(wettedMm, usedMm, rainDrainedMm, irrigationDrainedMm)).toBeGreaterThanOrEqual(0);
      expect(wettedMm).toBeLessThanOrEqual(of.day.tawMm + ROUNDING_MM);
    },
  });

  law('loses no rain that its plants drink on that day, however it was watered', {
    on: days,
    runs: 1_000,
    holds: (of) => {
      const { usedMm, rainDrainedMm } = dayOf(of);
      expect(rainDrainedMm).toBeLessThanOrEqual(Math.max(0, of.day.soakedMm - usedMm) + ROUNDING_MM);
    },
  });

  law('loses no irrigation to the rain of a day with one run', {
    on: days,
    runs: 300,
    holds: (of) => {
      const one = dayOf(of, { parts: 1 });
      expect(one.irrigationDrainedMm).toBe(dayOf(of, { parts: 1, soakedMm: 0 }).irrigationDrainedMm);
      expect(one.irrigationDrainedMm).toBe(Math.max(0, of.day.irrigationMm - of.startMm));
    },
  });

  law('is never drier by more rain, nor are its plants given less', {
    on: fc.tuple(days, mm(20)),
    runs: 500,
    holds: ([of, moreMm]) => {
      const [less, more] = [dayOf(of), dayOf(of, { soakedMm: of.day.soakedMm + moreMm })];
      expect(more.wettedMm).toBeLessThanOrEqual(less.wettedMm + ROUNDING_MM);
      expect(more.usedMm).toBeGreaterThanOrEqual(less.usedMm - ROUNDING_MM);
    },
  });
});

/** Days that are enough, and a timer that starts often. */
function wateredDaily(garden: Garden): Garden {
  const zones = garden.zones.map(({ wateringDaysByWeek, ...zone }) => ({ ...zone, wateringDays: 127, startsADay: 6 }));
  return { ...garden, zones };
}

describe('a zone', () => {
  let several = 0;

  law('never runs more often in a day than is proposed for the month, on days of its own that are enough', {
    on: arbitraryGarden(),
    runs: 150,
    holds: (garden) => {
      const season = runSeason(wateredDaily(garden));
      for (const { zoneId, month, isEnough, startsADay } of daysAWeek(season)) {
        const zone = season.zones.find((each) => each.zone.id === zoneId);
        for (let week = 0; zone !== undefined && isEnough && week < zone.weeks; week++) {
          if (monthOfWeek(garden.span.firstDay + 7 * week) !== month) continue;
          const { runsADay } = zoneWeek(zone, week);
          expect(runsADay).toBeLessThanOrEqual(startsADay);
          if (runsADay > 1) several++;
        }
      }
    },
  });

  it('runs several times a day in many of them', () => {
    expect(several).toBeGreaterThan(20);
  });
});
