/**
 * Mornings of a zone, by hand, in the garden of plain-garden.ts: 2.5 mm a day go, a minute brings 0.08 mm; the soil holds 150 mm a
 * metre, half of it readily. Plantings are filled up (no room is left for rain).
 */
import { describe, expect, it } from 'vitest';
import type { GardenZone, ObservedDay } from '../../../src/engine/garden.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneMornings } from '../../../src/engine/season/zone-season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone, thirsty } from '../../support/plain-garden.ts';

/** Bit 0 = the week's first day. */
const FIRST = 0b1;
const FIRST_AND_FOURTH = 0b1001;
const FOURTH_AND_SEVENTH = 0b1001000;

interface Given {
  readonly zone: Partial<GardenZone>;
  readonly rain?: readonly (readonly [number, number])[];
}

function gardenOf({ zone, rain = [] }: Given) {
  const days = new Map(rain.map(([day, rainMm]): [number, ObservedDay] => [FIRST_DAY + day, { rainMm }]));
  return plainGarden([plainZone(zone)], { observed: { days, weeks: new Map() } });
}

function seasonOf(given: Given): ZoneSeason {
  return runSeason(gardenOf(given)).zones[0] as ZoneSeason;
}

const minutesOf = (season: ZoneSeason, week: number) => {
  const { minutesDay0, minutesDay1, minutesDay2, minutesDay3, minutesDay4, minutesDay5, minutesDay6 } = zoneWeek(
    season,
    week,
  );
  return [minutesDay0, minutesDay1, minutesDay2, minutesDay3, minutesDay4, minutesDay5, minutesDay6];
};

const rooted = (depthM: number) => [plainPlanting({ rootZone: { depthM } })];

describe('a morning’s run', () => {
  // From full, 17.5 mm in two waterings: 109.375 min each.
  it.each([
    [1, 109],
    [5, 110],
    [50, 100],
    [0.25, 109.5],
  ])('is the nearest in steps of %f min: %f', (timerStepMinutes, minutes) => {
    const season = seasonOf({ zone: { timerStepMinutes } });
    expect(minutesOf(season, 0)).toEqual([0, 0, 0, minutes, 0, 0, minutes]);
    expect(zoneWeek(season, 0).minutesWanted).toBeCloseTo(109.375, 9);
  });

  it('goes up where the planting would pass its allowed depletion before its next watering', () => {
    // Watered on Mondays. The second finds 15 mm missing and wants 17.5: 218.75 min, in steps of 50 min 200, 16 mm. That leaves -1 mm:
    // a week of 17.5 mm needs roots with 16.5 mm readily. 17 mm are enough, 16 mm are not.
    const weekTwo = (rawMm: number) =>
      minutesOf(seasonOf({ zone: { wateringDays: FIRST, timerStepMinutes: 50, plantings: rooted(rawMm / 75) } }), 1)[0];
    expect(weekTwo(17)).toBe(200);
    expect(weekTwo(16)).toBe(250);
  });

  it('goes up for those alone who decide: not for one behind a shut-off beside one without', () => {
    const plantings = (rawMm: number, hasShutOff: boolean) => [
      plainPlanting(),
      plainPlanting({ id: 'shallow', rootZone: { depthM: rawMm / 75 }, hasShutOff }),
    ];
    const weekTwo = (hasShutOff: boolean) =>
      minutesOf(
        seasonOf({ zone: { wateringDays: FIRST, timerStepMinutes: 50, plantings: plantings(16, hasShutOff) } }),
        1,
      )[0];
    expect(weekTwo(false)).toBe(250);
    expect(weekTwo(true)).toBe(200);
  });

  it('and for the named one alone where the rule names one', () => {
    const zone = (plantingId: string): Partial<GardenZone> => ({
      wateringDays: FIRST,
      timerStepMinutes: 50,
      rule: { kind: 'planting', plantingId },
      plantings: [plainPlanting(), plainPlanting({ id: 'shallow', rootZone: { depthM: 16 / 75 } })],
    });
    expect(minutesOf(seasonOf({ zone: zone('bed') }), 1)[0]).toBe(200);
    expect(minutesOf(seasonOf({ zone: zone('shallow') }), 1)[0]).toBe(250);
  });

  it('is skipped where less than half a step is asked for', () => {
    // Monday: 7.5 mm of Tuesday to Thursday at once (93.75 min), more than 10 mm in two. Tuesday's 60 mm are read: on Thursday 2.5 mm are
    // missing and 2.5 go: 62.5 min, under half of 150.
    const zone = { wateringDays: FIRST_AND_FOURTH, timerStepMinutes: 150 };
    const season = seasonOf({ zone, rain: [[1, 60]] });
    expect(minutesOf(season, 0)).toEqual([150, 0, 0, 0, 0, 0, 0]);
    expect(zoneWeek(season, 0)).toMatchObject({ skippedMask: 0b1000, decidedMask: FIRST_AND_FOURTH, minutes: 150 });
    expect(zoneWeek(season, 0).minutesWanted).toBeCloseTo(93.75, 9);
  });

  it('is not skipped where the planting would pass its allowed depletion before its next watering', () => {
    // Thursday to Sunday take 10 mm: of 12 mm readily there, 2.5 mm missing are too many.
    const zone = { wateringDays: FIRST_AND_FOURTH, timerStepMinutes: 150, plantings: rooted(12 / 75) };
    const season = seasonOf({ zone, rain: [[1, 60]] });
    expect(minutesOf(season, 0)).toEqual([150, 0, 0, 150, 0, 0, 0]);
    expect(zoneWeek(season, 0).skippedMask).toBe(0);
  });

  it('of nothing asked for is no skipped one in a week without any run', () => {
    const season = seasonOf({ zone: { plantings: [thirsty(0)] } });
    expect(zoneWeek(season, 3)).toMatchObject({ minutes: 0, skippedMask: 0, minutesWanted: 0, state: 'met' });
  });
});

describe('a later morning of the week', () => {
  it('has the number of the first where nothing is known since', () => {
    const season = seasonOf({ zone: { wateringDays: FIRST_AND_FOURTH } });
    // The second Monday: 7.5 mm of Friday to Sunday, less what rounding had brought, and 10 mm in two waterings.
    expect(zoneWeek(season, 1)).toMatchObject({ decidedMask: FIRST });
    expect(minutesOf(season, 1)[3]).toBe(minutesOf(season, 1)[0]);
  });

  it('has a number of its own after a day without rain that was read as such', () => {
    const season = seasonOf({ zone: { wateringDays: FIRST_AND_FOURTH }, rain: [[1, 0]] });
    expect(zoneWeek(season, 0).decidedMask).toBe(FIRST_AND_FOURTH);
    // Monday 93.75 min, so 94, which fill the soil; Tuesday and Wednesday take 5 mm, Thursday 2.5: 93.75 again.
    expect(minutesOf(season, 0)).toEqual([94, 0, 0, 94, 0, 0, 0]);
  });

  it('knows no reading of its own day', () => {
    const season = seasonOf({ zone: { wateringDays: FIRST_AND_FOURTH }, rain: [[3, 60]] });
    expect(zoneWeek(season, 0)).toMatchObject({ decidedMask: FIRST });
    expect(minutesOf(season, 0)).toEqual([94, 0, 0, 94, 0, 0, 0]);
  });

  it('asks anew for a planting whose first in the ground it is, and for that one alone', () => {
    // In the ground from Friday, 5 mm a day, filled: on Sunday 10 mm are missing and 5 go, 187.5 min; the bed's 109.375 stand.
    const late = thirsty(1, { id: 'late', from: FIRST_DAY + 4 });
    const zone = { wateringDays: FOURTH_AND_SEVENTH, plantings: [plainPlanting(), late] };
    const season = seasonOf({ zone });
    expect(zoneWeek(season, 0).decidedMask).toBe(FOURTH_AND_SEVENTH);
    expect(minutesOf(season, 0)).toEqual([0, 0, 0, 109, 0, 0, 188]);
  });
});

describe('a morning that is told', () => {
  it('says what it was decided from', () => {
    const garden = gardenOf({ zone: { wateringDays: FIRST_AND_FOURTH }, rain: [[1, 60]] });
    const season = runSeason(garden);
    const zone = season.zones[0] as ZoneSeason;
    const [monday, thursday] = zoneMornings({ zone: zone.zone, site: garden.site, weather: season.weather }, zone, 0);
    expect(monday).toMatchObject({ day: 0, minutes: 94, decided: { run: { cycles: 1, minutes: 94 } } });
    expect(monday?.decided?.wanted).toBeCloseTo(93.75, 9);
    expect(monday?.plantings).toMatchObject([{ isPresent: true, depletionMm: 0, fillingMm: 0, isAsked: true }]);
    expect(monday?.plantings[0]?.netMm).toBeCloseTo(0.08, 12);
    expect(thursday?.plantings[0]?.depletionMm).toBeCloseTo(2.5, 9);
    expect(thursday?.plantings[0]?.minutesAsked).toBeCloseTo(62.5, 9);
    expect(thursday?.minutes).toBe(63);
  });
});
