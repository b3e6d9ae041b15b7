import { describe, expect, it } from 'vitest';
import type { WeekChoice } from '../../../src/engine/garden.ts';
import { givenMinutes } from '../../../src/engine/season/given-minutes.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { MINUTES_ORIGINS, type PlantingSeason, type ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { plainGarden, plainPlanting, plainZone, thirsty } from '../../support/plain-garden.ts';

/** Watered on the fourth and the seventh day of the week. */
const ZONE = plainZone();

function given(choice: WeekChoice | undefined) {
  const minutes = new Float64Array(7).fill(99);
  const found = givenMinutes(ZONE.wateringDays, choice, minutes);
  return found && { origin: MINUTES_ORIGINS[found.origin], minutes: [...found.minutes] };
}

describe('minutes that a person gave', () => {
  it.each<[string, WeekChoice, string, readonly number[]]>([
    ['by hand, in equal parts', { minutes: 110 }, 'hand-set', [0, 0, 0, 55, 0, 0, 55]],
    ['none by hand', { minutes: 0 }, 'hand-set', [0, 0, 0, 0, 0, 0, 0]],
    ['as run, in equal parts', { minutesRun: 30 }, 'run', [0, 0, 0, 15, 0, 0, 15]],
    ['closed', { closed: true }, 'closed', [0, 0, 0, 0, 0, 0, 0]],
    ['a closed week over one set by hand', { closed: true, minutes: 110 }, 'closed', [0, 0, 0, 0, 0, 0, 0]],
    ['what was run over a closed week', { minutesRun: 30, closed: true }, 'run', [0, 0, 0, 15, 0, 0, 15]],
    [
      'runs by day over the week’s, on any day',
      { runs: new Map([[1, { minutes: 40 }]]), minutesRun: 30 },
      'run',
      [0, 40, 0, 0, 0, 0, 0],
    ],
    ['a week without a run', { runs: new Map() }, 'run', [0, 0, 0, 0, 0, 0, 0]],
    ['no day outside the week', { runs: new Map([[7, { minutes: 40 }]]) }, 'run', [0, 0, 0, 0, 0, 0, 0]],
  ])('%s', (_, choice, origin, minutes) => {
    expect(given(choice)).toEqual({ origin, minutes });
  });

  it('are none where the week is computed', () => {
    expect(given(undefined)).toBeUndefined();
    expect(given({})).toBeUndefined();
    expect(given({ closed: false, note: 'a note' })).toBeUndefined();
  });
});

/** The bed beside shrubs behind a shut-off that use 0.5 mm a day; 0.08 mm a minute. */
function logged(choice: WeekChoice) {
  const plantings = [plainPlanting(), thirsty(0.1, { id: 'shrubs', hasShutOff: true })];
  const season = runSeason(plainGarden([plainZone({ plantings, choices: new Map([[1, choice]]) })]))
    .zones[0] as ZoneSeason;
  const [bed, shrubs] = season.plantings.map((planting: PlantingSeason) => plantingWeek(planting, 1));
  return { zone: zoneWeek(season, 1), bed, shrubs };
}

describe('a week logged run by run', () => {
  const runs = new Map([
    [1, { minutes: 40, open: new Set(['shrubs']) }],
    [3, { minutes: 30, open: new Set<string>() }],
    [6, { minutes: 20 }],
  ]);

  it('brings what was run, on watering days or not, neither rounded nor skipped', () => {
    const { zone, bed } = logged({ runs });
    expect(zone).toMatchObject({ minutes: 90, minutesPerDay: 40, origin: 'run', skippedMask: 0 });
    expect([zone.minutesDay0, zone.minutesDay1, zone.minutesDay3, zone.minutesDay6]).toEqual([0, 40, 30, 20]);
    expect(bed?.irrigationNetMm).toBeCloseTo(90 * 0.08, 9);
    // The watering days and the days of runs.
    expect(bed).toMatchObject({ openMask: 0b1001010, openDays: 3 });
  });

  it('opens a shut-off as logged, and as computed where that was left out', () => {
    // Full at the start, 3.2 mm on the second day, 0.5 mm missing on the fourth: the seventh alone asks for 2.5 mm, 31.25 min of 40.
    const { shrubs } = logged({ runs });
    expect(shrubs).toMatchObject({ openMask: 0b1000010, openDays: 2 });
    expect(shrubs?.irrigationNetMm).toBeCloseTo(60 * 0.08, 9);
  });

  it('opens it on no day where no run says so', () => {
    const closed = new Map([[3, { minutes: 200, open: new Set<string>() }]]);
    expect(logged({ runs: closed }).shrubs).toMatchObject({ openMask: 0, openDays: 0, irrigationNetMm: 0 });
  });

  it('without a run leaves every line closed', () => {
    const { zone, bed, shrubs } = logged({ runs: new Map() });
    expect(zone).toMatchObject({ minutes: 0, cycles: 0 });
    expect([bed?.openMask, shrubs?.openMask]).toEqual([0, 0]);
  });
});
