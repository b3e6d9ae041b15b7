import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden, GardenPlanting, GardenZone, WeekChoice } from '../../src/engine/garden.ts';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';
import { plantingRows, zoneRows } from './weeks-of.ts';

/** A garden with a shut-off in front of every planting, and some weeks in which they are closed by hand. */
const withClosedShutOffs = arbitraryGarden({ mostZones: 2 }).chain((garden) =>
  fc
    .uniqueArray(fc.integer({ min: 0, max: garden.span.weeks - 1 }), { minLength: 1, maxLength: 6 })
    .map((closed) => ({ garden: withShutOffs(garden, closed), closed: new Set(closed) })),
);

describe('a shut-off that is closed by hand', () => {
  law('lets nothing through, whatever the zone runs', {
    on: withClosedShutOffs,
    runs: 1_000,
    holds: ({ garden, closed }) => {
      for (const { planting, week } of plantingRows(runSeason(garden))) {
        const isLoggedByDay = garden.zones.some(({ choices, plantings }) => {
          return plantings.includes(planting) && choices.get(week.week)?.runs !== undefined;
        });
        // What was really open is written with the runs of the days.
        if (!closed.has(week.week) || isLoggedByDay) continue;
        const isClosed = week.litres === 0 && week.openDays === 0 && week.openMask === 0;
        if (!isClosed) expect.fail(`${planting.id} week ${week.week}: ${week.litres} L on ${week.openDays} days`);
      }
    },
  });

  law('does not change what its neighbours get that week, where it does not decide the minutes', {
    on: arbitraryGarden({ mostZones: 1, mostPlantings: 3 }),
    runs: 1_000,
    holds: (garden) => {
      const [zone] = garden.zones;
      const behind = zone?.plantings.find(({ hasShutOff }) => hasShutOff);
      if (zone === undefined || behind === undefined || mayDecide(behind, zone, garden.span.firstDay)) return;
      const shut = new Map(zone.choices).set(0, {
        ...zone.choices.get(0),
        openDays: openDays(zone.choices.get(0), behind.id),
      });
      const first = (choices: typeof zone.choices) =>
        plantingRows(runSeason({ ...garden, zones: [{ ...zone, choices }] })).filter(
          ({ planting, week }) => week.week === 0 && planting !== behind,
        );
      expect(first(shut).map(({ week }) => week)).toEqual(first(zone.choices).map(({ week }) => week));
    },
  });
});

/** Whether a planting behind a shut-off may be the one whose need makes the zone's minutes in the first week. */
function mayDecide({ id }: GardenPlanting, { rule, plantings }: GardenZone, firstDay: number): boolean {
  if (rule.kind === 'planting' && rule.plantingId === id) return true;
  return !plantings.some(({ hasShutOff, from, to, lines, rest = [] }) => {
    const laid = lines.filter((line) => line.from <= firstDay).at(-1);
    const inWeek = [laid, ...lines.filter((line) => line.from > firstDay && line.from <= firstDay + 6)];
    const isWatered = inWeek.every((line) => line !== undefined && line.flowLph > 0);
    const isAwake = rest.every((each) => each.to < firstDay || each.from > firstDay + 6);
    return !hasShutOff && from <= firstDay && to >= firstDay + 6 && isWatered && isAwake;
  });
}

describe('a shut-off whose planting is at rest', () => {
  let opened = 0;

  law('is closed on every day of its rest, of a week for which nobody set it', {
    on: arbitraryGarden({ mostZones: 2 }),
    runs: 1_300,
    holds: (garden) => {
      for (const { own, week, open } of computedOpenDays(runSeason(garden))) {
        const resting = Array.from({ length: 7 }, (_, day) => (own.demand.rest?.[7 * week + day] ?? 0) << day);
        const rest = resting.reduce((mask, bit) => mask | bit);
        if ((open & rest) !== 0) expect.fail(`${own.planting.id} week ${week}: open on ${open}, at rest on ${rest}`);
        if (open !== 0 && rest !== 0) opened++;
      }
    },
  });

  it('opens on other days of many such weeks', () => {
    expect(opened).toBeGreaterThan(10);
  });
});

describe('a week that is closed by hand', () => {
  law('takes no water, unless minutes were really run', {
    on: arbitraryGarden(),
    runs: 1_000,
    holds: (garden) => {
      for (const { zone, week } of zoneRows(runSeason(garden))) {
        const choice = zone.choices.get(week.week);
        if (choice?.closed !== true || choice.minutesRun !== undefined || choice.runs !== undefined) continue;
        const isClosed = week.litres === 0 && week.minutes === 0 && week.flowLpm === 0;
        if (!isClosed) expect.fail(`${zone.id} week ${week.week}: ${week.litres} L in ${week.minutes} min`);
      }
    },
  });
});

function withShutOffs(garden: Garden, closedWeeks: readonly number[]): Garden {
  return {
    ...garden,
    zones: garden.zones.map((zone) => {
      const openDays = new Map(zone.plantings.map(({ id }) => [id, 0]));
      const choices = new Map(zone.choices);
      for (const week of closedWeeks) choices.set(week, { ...choices.get(week), openDays });
      return { ...zone, choices, plantings: zone.plantings.map((planting) => ({ ...planting, hasShutOff: true })) };
    }),
  };
}

/** Weeks in which nobody set or logged the days of a shut-off, of plantings that are at rest at times. */
function computedOpenDays({ zones }: Season) {
  return zones.flatMap(({ zone: { choices }, plantings, weeks }) =>
    plantings
      .filter(({ planting, demand }) => planting.hasShutOff && demand.rest !== undefined)
      .flatMap((own) =>
        Array.from({ length: weeks }, (_, week) => ({ own, week, open: plantingFigure(own, 'openMask', week) })).filter(
          ({ week }) => !choices.get(week)?.runs && !choices.get(week)?.openDays?.has(own.planting.id),
        ),
      ),
  );
}

function openDays(choice: WeekChoice | undefined, closedId: string): ReadonlyMap<string, number> {
  return new Map(choice?.openDays).set(closedId, 0);
}
