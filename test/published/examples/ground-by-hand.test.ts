/**
 * Cells of pots, of ground that is wetted in part, of roots that grow and of a mulched bed, worked by hand from the plan; the published relations
 * stand beside them. The ground of all of them is invented so that the figures are whole: available water of 0.2 of the soil, half of it readily
 * there, an efficiency of 0.8, watered every day, no rain but what is read; 7 mm of reference ET a day for the pot, 5 mm for the others.
 *
 * **A pot of 10 L.** Five of them, whose plants cover 1 m2; a mix that gives 0.30 of its volume (25 to 35 %, Southern nursery guide, from memory): 5 x
 * 10 x 0.30 = 15 L = 15 mm, half of it, 7.5 mm, readily. 0.8 x 1.25 x 1.2 = 1.2 (the landscape coefficient method) x 7 mm = 8.4 mm a day, more
 * than 7.5: two runs, between which 4.2 mm go. Each gives back 4.2 L / 0.8 = 5.25 L; 5 emitters of 6 L/h give 0.5 L a minute: 10.5 minutes, 21.0 and
 * 10.5 L a day, 147.0 and 73.5 L a week. Where the timer has one start, 7.5 mm go freely and of the last 0.9 mm 7.5 (1 - e^(-0.9/7.5)) =
 * 0.848 (FAO-56 eq. 84 followed through the day): 8.348 mm, and every day is short.
 *
 * *In rain.* The openings are half as wide as the canopies together: 5 x pi/4 x 0.35682^2 = 0.500 m2, so half of the rain gets in. Irrigation comes at dawn, rain falls
 * while the plants drink (FAO-56 Example 38; eq. 85 and 88). A coefficient of 1.0, 7 mm a day, one run: each morning lacks 7 mm, 7 / 0.8 / 0.5 = 17.5
 * minutes. 8 mm fall on the second day of the third week, 4 get in: filled at dawn, 7 - 4 = 3 mm are missing in the evening and nothing drained. The
 * next morning lacks 3 mm, 7.5 minutes; the week runs 6 x 17.5 + 7.5 = 112.5 instead of 122.5. Of 20 mm, 10 get in, 7 are drunk and 3 drain; the next
 * morning asks for nothing: 105 minutes. At 1.2 in two runs, 6.4 mm, 1.6 of them in each half: 4.2 - 1.6 = 2.6 mm are missing at noon, where the
 * second run brings 4.2 and loses 1.6; 2.6 in the evening. The next day asks for 2.6 + 8.4 - 4.2 = 6.8 mm, 17 minutes, of whose first half 3.4 - 2.6 = 0.8
 * is lost: 4.2 at noon, 4.2 - 3.4 + 4.2 = 5.0 in the evening. The day after asks for 5.0 + 8.4 - 4.2 = 9.2, 23 minutes; then it is 21 again: 145 in all.
 * *Its usual rain* is kept by the share of its own days: the normals have 0.5 mm a day, half of it gets in, half of that counts (a fixed fraction of 0.5): 0.125
 * mm. A day lacks 7 - 0.125 = 6.875 mm, 17.1875 minutes.
 *
 * **A shrub with a wetted share of 0.3**, filled deep and seldom. 10 m2, roots of 0.5 m: 100 mm, 50 of them readily; 0.5 x 5 = 2.5 mm a day. Full at
 * first, both stores lose 2.5 mm a day and lack 50 after 20 days. On the 21st the rest of its ground gives no more and the wetted part would
 * pass 50 by 2.5 / 0.3 = 8.33: it is filled, 0.3 x 50 = 15 mm, 150 L, / 0.8 = 187.5 L; 25 emitters of 2 L/h give 50 L an hour: 225 minutes.
 * *A dry week*, the fourth: 17.5 mm go, all from the wetted part, 58.3 mm over it. From 8.33 on the 21st it lacks 50 after the 26th, so it is
 * filled on the 27th, by 187.5 L, and lacks 16.67 at the week's end; over all 0.3 x 16.67 + 0.7 x 50 = 40.0 mm.
 * *A wet week*, the fifth: 30 mm fall on its first day. The wetted part lacks 16.67 + 2.5 - 30 < 0: full, 10.83 drain there, 3.25 over all. The rest lacks
 * 50 + 2.5 - 30 = 22.5. Six days more and they lack 15 and 37.5, 30.75 over all. Nothing is run. 40.0 + 17.5 - 30 + 3.25 = 30.75.
 *
 * **A bed sown in June** in dry soil: 10 m2 of beans, a coefficient of 0.5 all along, 2.5 mm a day; 7 days initial, 14 of development. Roots of 0.15 m hold
 * 30 mm and lack half, 15 mm (FAO-56 eq. 82; 0.15 m and growth with the stages: ch. 8, from memory); to 0.5 m, 100 mm, they reach 0.025 m, 5 mm, more a day,
 * of which 2.5 are missing. A day's water, filled up: first week (15 + 17.5) / 7 = 4.64 mm; second and third 2.5 + 2.5 = 5.0; from the fourth on 2.5. At 60
 * L/h, 1 L a minute: 5.0 mm = 50 L, / 0.8 = 62.5 L, 62.5 minutes.
 *
 * **Seedlings that do not last a day.** The same bed at a coefficient of 1.3, 6.5 mm a day: p = 0.5 + 0.04 (5 - 6.5) = 0.44 (FAO-56 p. 162), so 13.2 of the 30 mm are
 * readily there, two days; in soil of 0.08 12 mm are held and 5.28 of them readily: less than a day, and the zone runs twice a day until its
 * roots are deep: through the first stage and as long as a metre holds 80 mm, 0.44 x 80 = 35.2, and roots reach no more than 6.5 / 35.2 = 0.185 m. They pass that on
 * the second day of development, and are full grown on the fourteenth.
 *
 * **Lines laid anew.** A bed of 2 m2, roots of 2.5 ft: 0.762 x 200 = 152.4 mm, 76.2 readily; 2.5 mm a day. One emitter of 1 gph wets 3 ft across on loam (USDA-NRCS
 * NEH 623 ch. 7, from memory), 0.657 m2: 0.33 of it. It is filled up each morning, so that after three weeks the wetted part lacks nothing and the
 * rest 21 x 2.5 = 52.5 mm. Then two emitters lie, 0.66: half of what they wet was dry ground, 0.33 x 52.5 / 0.66 = 26.25 mm; over all 0.67 x 52.5 = 35.175 as before. Seven
 * equal mornings bring 26.25 + 17.5 = 43.75 over that, 6.25 a day, 4.125 over all: 8.25 L, / 0.8 = 10.3125 L; two emitters give 7.571 L/h: 81.7 minutes, 81.5 in whole steps.
 *
 * **A mulched bed.** 8 m2 of cucumber in mid-season, Kc 1.0; under a plastic sheet 0.85 (FAO-56 Example 45): 4.25 mm a day instead of 5.0, 34 L, / 0.8 = 42.5 L,
 * 42.5 minutes instead of 50; 12 mm of rain do not come through. In its first stage, Kc 0.6, straw over half of the ground takes 25 % (FAO-56 p.
 * 197): 0.45, 2.25 mm a day.
 */
import { describe, expect, it } from 'vitest';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan, PlanPlanting, PlanZone } from '../../../src/plan/schema/plan-schema.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function cells(planting: Partial<PlanPlanting>, zone: Partial<PlanZone> = {}, change: Partial<Plan> = {}, etoMm = 5) {
  const plan: Plan = {
    format: 'runnel-plan',
    version: 2,
    units: 'metric',
    name: 'By hand',
    season: { firstDay: '2027-06-07', weeks: 6 },
    site: {
      latitude: 40,
      soil: 'loam',
      availableWater: 0.2,
      climate: { source: 'invented', eto: DAYS.map((days) => days * etoMm), rain: DAYS.map(() => 0) },
    },
    zones: [
      {
        id: 'zone',
        name: 'Zone',
        wateringDays: 7,
        timerStepMinutes: 0.5,
        longestCycleMinutes: 1440,
        application: { kind: 'efficiency', value: 0.8 },
        plantings: [
          {
            id: 'own',
            name: 'Own',
            need: { kind: 'class', class: 'moderate', factor: 0.5 },
            extent: { kind: 'area', area: 10 },
            rootDepth: 50,
            allowedDepletion: 0.5,
            target: 0,
            wettedShare: 1,
            lines: [{ kind: 'point', flow: 3, count: 20 }],
            ...planting,
          },
        ],
        ...zone,
      },
    ],
    ...change,
  };
  const season = computeSeason(plan).zones[0] as ZoneSeason;
  return (week: number) => ({
    zone: zoneWeek(season, week),
    own: plantingWeek(season.plantings[0] as PlantingSeason, week),
  });
}

const rainOn = (day: string, rain: number): Partial<Plan> => ({ log: { days: { [day]: { rain } } } });

describe('five pots of 10 L, a coefficient of 1.2, 7 mm a day', () => {
  const pots: Partial<PlanPlanting> = {
    need: { kind: 'class', class: 'high', factor: 0.8, density: 1.25, microclimate: 1.2 },
    extent: { kind: 'area', area: 1 },
    container: { volume: 10, count: 5, mix: 'potting' },
    watering: 'keep',
    lines: [{ kind: 'point', flow: 6, count: 5 }],
  };

  it('in two runs a day: 21.0 minutes and 10.5 L, 73.5 L a week', () => {
    const { zone, own } = cells(pots, { startsADay: 4 }, {}, 7)(2);
    expect(zone).toMatchObject({ runsADay: 2, cycles: 2 });
    expect(zone.minutesPerDay).toBeCloseTo(21, 9);
    expect(zone.minutes).toBeCloseTo(147, 9);
    expect(zone.litres).toBeCloseTo(73.5, 9);
    expect(own).toMatchObject({ state: 'met', shortDays: 0 });
    expect(own.demandMm).toBeCloseTo(7 * 8.4, 9);
    expect(own.usedMm).toBeCloseTo(7 * 8.4, 9);
    expect(own.depletionEndMm).toBeCloseTo(4.2, 9);
  });

  const inRain = (factor: number, rain: number) =>
    cells(
      {
        ...pots,
        need: { kind: 'class', class: 'high', factor: 0.8, density: 1.25, microclimate: factor },
        container: { volume: 10, count: 5, mix: 'potting', opening: 35.682 },
      },
      { startsADay: 4 },
      rainOn('2027-06-22', rain),
      7,
    )(2);

  it('in one run a day keep of a day’s rain what they drink on it: 4 of 4 mm, 7 of 10', () => {
    const some = inRain(1, 8);
    expect(some.own.rainMm).toBeCloseTo(4, 3);
    expect([some.own.rainDrainedMm, some.own.irrigationDrainedMm]).toEqual([0, 0]);
    expect(some.zone).toMatchObject({ runsADay: 1, minutes: 112.5, minutesDay2: 7.5, minutesDay3: 17.5 });
    expect(some.own).toMatchObject({ shortDays: 0, state: 'met' });
    const more = inRain(1, 20);
    expect(more.own.rainDrainedMm).toBeCloseTo(3, 2);
    expect(more.zone).toMatchObject({ minutes: 105, minutesDay2: 0, minutesDay3: 17.5 });
  });

  it('in two runs lose what the second brings too much, and no rain', () => {
    const { zone, own } = inRain(1.2, 6.4);
    expect([1, 2, 3, 4].map((day) => zone[`minutesDay${day}` as 'minutesDay1'])).toEqual([21, 17, 23, 21]);
    expect(zone.minutes).toBe(145);
    expect(own.rainDrainedMm).toBe(0);
    expect(own.irrigationDrainedMm).toBeCloseTo(2.4, 3);
    expect(own.usedMm).toBeCloseTo(7 * 8.4, 9);
  });

  it('expect their usual rain on each day: 6.875 mm, 17.1875 minutes', () => {
    const site: Plan['site'] = {
      latitude: 40,
      soil: 'loam',
      climate: { source: 'invented', eto: DAYS.map((days) => 7 * days), rain: DAYS.map((days) => 0.5 * days) },
      rain: { method: 'fraction', fraction: 0.5 },
    };
    const container = { volume: 10, count: 5, mix: 'potting', opening: 35.682 } as const;
    const need = { kind: 'class', class: 'high', factor: 0.8, density: 1.25, microclimate: 1 } as const;
    const { zone } = cells({ ...pots, need, container }, {}, { site })(2);
    expect(zone.minutesWanted).toBeCloseTo(17.1875, 3);
  });

  it('in one run a day they are short every day, by 0.052 mm', () => {
    const { own } = cells(pots, { startsADay: 1 }, {}, 7)(2);
    expect(own.shortDays).toBe(7);
    expect(own.usedMm).toBeCloseTo(7 * (7.5 + 7.5 * (1 - Math.exp(-0.12))), 9);
    expect((own.demandMm - own.usedMm) / 7).toBeCloseTo(0.052, 3);
  });
});

describe('a shrub of whose ground 0.3 is wetted', () => {
  const week = cells(
    { watering: 'refill', wettedShare: 0.3, lines: [{ kind: 'point', flow: 2, count: 25 }] },
    { startsADay: 1 },
    rainOn('2027-07-05', 30),
  );

  it('is filled first on its 21st day: 225 minutes, 187.5 L', () => {
    expect([0, 1].map((each) => week(each).zone.litres)).toEqual([0, 0]);
    expect(week(2).zone).toMatchObject({ minutes: 225, minutesDay6: 225 });
    expect(week(2).zone.litres).toBeCloseTo(187.5, 9);
    expect(week(2).own.irrigationNetMm).toBeCloseTo(15, 9);
  });

  it('in a dry week draws all from the wetted part and is filled on the sixth day', () => {
    const { zone, own } = week(3);
    expect(zone).toMatchObject({ minutes: 225, minutesDay5: 225 });
    expect(own).toMatchObject({ state: 'met', shortDays: 0 });
    expect(own.usedMm).toBeCloseTo(17.5, 9);
    expect(own.wettedEndMm).toBeCloseTo(50 / 3, 9);
    expect(own.dryEndMm).toBeCloseTo(50, 9);
    expect(own.depletionEndMm).toBeCloseTo(40, 9);
  });

  it('in a wet week of 30 mm is not watered, loses 3.25 mm and lives on all of its ground', () => {
    const { zone, own } = week(4);
    expect(zone.minutes).toBe(0);
    expect(own.rainDrainedMm).toBeCloseTo(3.25, 9);
    expect(own.wettedEndMm).toBeCloseTo(15, 9);
    expect(own.dryEndMm).toBeCloseTo(37.5, 9);
    expect(own.depletionEndMm).toBeCloseTo(30.75, 9);
  });
});

it('a bed sown in June in dry soil: 4.64 mm a day, 5.0 while its roots grow, then 2.5', () => {
  const week = cells({
    need: {
      kind: 'crop',
      crop: 'beans-green',
      plantedOn: '2027-06-07',
      stages: { initial: 7, development: 14, mid: 30, late: 30 },
      coefficients: { initial: 0.5, mid: 0.5, end: 0.5 },
    },
    watering: 'keep',
    startDepletion: 1,
  });
  expect(week(0).own.depletionStartMm).toBeCloseTo(15, 9);
  expect(week(0).zone.minutesWanted).toBeCloseTo(32.5 / 7 / 0.08, 9);
  expect(week(0).zone.minutesPerDay).toBe(58);
  for (const growing of [1, 2]) {
    expect(week(growing).own.rootedMm).toBeCloseTo(17.5, 9);
    expect(week(growing).zone.minutesPerDay).toBe(62.5);
    expect(week(growing).zone.litres).toBeCloseTo(437.5, 9);
  }
  expect(week(4).own.rootedMm).toBe(0);
  expect(week(4).own.usedMm).toBeCloseTo(17.5, 9);
  expect(week(4).zone.minutesWanted).toBeCloseTo(31.25, 0);
});

describe('a bed sown in soil that holds little', () => {
  const runs = (availableWater: number) => {
    const seedlings: Partial<PlanPlanting> = {
      need: {
        kind: 'crop',
        crop: 'beans-green',
        plantedOn: '2027-06-07',
        stages: { initial: 14, development: 14, mid: 30, late: 30 },
        coefficients: { initial: 1.3, mid: 1.3, end: 1.3 },
      },
      watering: 'keep',
    };
    const week = cells(seedlings, { availableWater });
    return [0, 1, 2, 3, 4].map((each) => week(each).zone.runsADay);
  };

  it('is watered twice a day until its roots are deeper', () => {
    expect(runs(0.08)).toEqual([2, 2, 2, 1, 1]);
  });

  it('and once in soil that lasts two days', () => {
    expect(runs(0.2)).toEqual([1, 1, 1, 1, 1]);
  });
});

it('a bed on which two emitters take the place of one: 35.175 mm are missing before and after, then 81.5 minutes a day', () => {
  const emitters = (count: number, stay: { from?: string; to?: string }) => {
    return { kind: 'point' as const, flow: 3.785411784, count, ...stay };
  };
  const week = cells({
    extent: { kind: 'area', area: 2 },
    rootDepth: 76.2,
    watering: 'keep',
    wettedShare: undefined,
    lines: [emitters(1, { to: '2027-06-27' }), emitters(2, { from: '2027-06-28' })],
  });
  expect(week(2).own.wettedEndMm).toBeCloseTo(0, 0);
  expect(week(2).own.dryEndMm).toBeCloseTo(52.5, 9);
  expect(week(3).own.depletionStartMm).toBeCloseTo(week(2).own.depletionEndMm, 9);
  expect(week(3).own.depletionStartMm).toBeCloseTo(35.175, 0);
  expect(week(3).zone.minutesWanted).toBeCloseTo(81.7, 0);
  expect(week(3).own.dryEndMm).toBeCloseTo(70, 9);
});

describe('a mulched bed', () => {
  const cucumber = (plantedOn: string, mulch: PlanPlanting['mulch']) =>
    cells(
      {
        need: {
          kind: 'crop',
          crop: 'cucumber',
          plantedOn,
          stages: { initial: 20, development: 30, mid: 60, late: 15 },
        },
        extent: { kind: 'area', area: 8 },
        watering: 'keep',
        ...(mulch && { mulch }),
      },
      {},
      rainOn('2027-07-15', 12),
    );

  it('of cucumber in mid-season under plastic: 42.5 minutes a day for 50, and no rain', () => {
    const [plastic, bare] = [cucumber('2027-04-10', { kind: 'plastic' }), cucumber('2027-04-10', undefined)];
    expect(plastic(3).zone.minutesPerDay).toBeCloseTo(42.5, 9);
    expect(plastic(3).own.demandMm).toBeCloseTo(7 * 4.25, 9);
    expect(bare(3).zone.minutesPerDay).toBeCloseTo(50, 9);
    expect([plastic(5).own.rainMm, bare(5).own.rainMm]).toEqual([0, 12]);
  });

  it('of cucumber in its first stage under straw over half of the ground: 2.25 mm a day for 3', () => {
    expect(cucumber('2027-06-07', { kind: 'organic', cover: 0.5 })(0).own.demandMm).toBeCloseTo(7 * 2.25, 9);
    expect(cucumber('2027-06-07', undefined)(0).own.demandMm).toBeCloseTo(7 * 3, 9);
  });
});
