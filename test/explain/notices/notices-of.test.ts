/** One hand-made garden for each kind of notice; `plain-garden.ts` says how its water is worked by hand. */
import { describe, expect, it } from 'vitest';
import type { Garden, GardenZone, WeekChoice } from '../../../src/engine/garden.ts';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { Notice } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { lineOf } from '../../support/garden-planting.ts';
import { figuresOf } from '../../support/notices.ts';
import {
  FIRST_DAY,
  type PlantingChange,
  plainGarden,
  plainPlanting,
  plainZone,
  thirsty,
} from '../../support/plain-garden.ts';

const noticed = (zone: Partial<GardenZone>, garden: Partial<Garden> = {}) =>
  noticesOf(runSeason(plainGarden([plainZone(zone)], garden)));
const planted = (change: PlantingChange, zone: Partial<GardenZone> = {}) =>
  noticed({ ...zone, plantings: [plainPlanting(change)] });
const choosing = (weeks: readonly number[], choice: WeekChoice) =>
  noticed({ choices: new Map(weeks.map((week) => [week, choice])) });

/** The first notice's figure; NaN where there is none. */
const figureOf = (notices: readonly (Notice | undefined)[], name: string) =>
  figuresOf(notices[0] ?? expect.unreachable('there is no notice'))[name] ?? Number.NaN;

const ALL_WEEKS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
const TWO_PLANTINGS = [
  thirsty(0.3, { id: 'sage', name: 'Sage' }),
  thirsty(0.9, { id: 'lettuce', name: 'Lettuce' }),
] as const;

describe('noticesOf', () => {
  it('says nothing where all is met', () => {
    expect(noticed({})).toEqual([]);
  });

  it('says nothing of a garden without zones', () => {
    expect(noticesOf(runSeason(plainGarden([])))).toEqual([]);
  });

  it('tells of a planting without a line that it dries out: 17.5 mm a week from 37.5 mm', () => {
    const [notice, ...others] = planted({ lines: [] });
    expect(others).toEqual([]);
    expect(notice).toMatchObject({
      kind: 'no-line',
      severity: 'danger',
      remedy: 'lay-line',
      zoneId: 'zone',
      plantingId: 'bed',
      firstWeek: 0,
      lastWeek: 9,
      weeks: ALL_WEEKS,
    });
    // 17.5, 35 and 52.5 mm at the ends of the first weeks: dry from the third on.
    expect(figureOf([notice], 'dryWeeks')).toBe(8);
    expect(figureOf([notice], 'netLitres')).toBe(0);
  });

  it('takes solid line for no line', () => {
    expect(planted({ lines: [lineOf(FIRST_DAY - 1, 'solid', 0)] }).map(({ kind }) => kind)).toEqual(['no-line']);
  });

  it('only warns of a planting without a line while its soil still holds enough', () => {
    expect(planted({ lines: [], rootZone: { depthM: 3 } })).toMatchObject([
      { kind: 'no-line', severity: 'warning', figures: { unmetLitres: 0, dryWeeks: 0, shortDays: 0 } },
    ]);
  });

  it('joins the weeks in which minutes set by hand let a bed dry out', () => {
    const notices = choosing([2, 3, 4], { minutes: 0 });
    // 17.5, 35 and 52.5 mm; the week after starts short, and its first watering comes on the fourth day.
    expect(notices[0]).toMatchObject({
      kind: 'short-by-hand',
      severity: 'danger',
      remedy: 'use-computed',
      plantingId: 'bed',
      firstWeek: 2,
      lastWeek: 5,
      weeks: [2, 3, 4, 5],
    });
    expect(figureOf(notices, 'dryWeeks')).toBe(1);
    expect(notices.map(({ kind }) => kind)).toEqual(['short-by-hand']);
  });

  it('adds up what went unmet over the run', () => {
    const season = runSeason(
      plainGarden([plainZone({ choices: new Map([2, 3, 4].map((week) => [week, { minutes: 0 }])) })]),
    );
    const [bed] = season.zones[0]?.plantings ?? [];
    if (bed === undefined) throw new Error('the plain garden has a bed');
    const over = (field: 'demandLitres' | 'usedLitres' | 'shortDays') =>
      [2, 3, 4, 5].reduce((sum, week) => sum + plantingFigure(bed, field, week), 0);
    const [dry] = noticesOf(season);
    expect(figureOf([dry], 'unmetLitres')).toBeCloseTo(over('demandLitres') - over('usedLitres'), 9);
    expect(figureOf([dry], 'unmetLitres')).toBeGreaterThan(0);
    expect(figureOf([dry], 'shortDays')).toBe(over('shortDays'));
  });

  it('only notes a target that was missed while no plant went short', () => {
    expect(choosing([2], { minutes: 0 })).toMatchObject([
      { kind: 'short-by-hand', severity: 'note', weeks: [2], figures: { unmetLitres: 0, missingLitres: 175 } },
    ]);
  });

  it('tells one cause once, in whatever weeks', () => {
    expect(choosing([2, 5, 8], { minutes: 0 })).toMatchObject([
      { kind: 'short-by-hand', firstWeek: 2, lastWeek: 8, weeks: [2, 5, 8] },
    ]);
  });

  it('tells of a zone closed by hand while its plantings dry out, once for all of them', () => {
    const plantings = [plainPlanting(), plainPlanting({ id: 'other', name: 'Other' })];
    const notices = noticed({ plantings, choices: new Map([2, 3, 4].map((week) => [week, { closed: true }])) });
    expect(notices[0]).toMatchObject({
      kind: 'closed',
      severity: 'danger',
      remedy: 'open-zone',
      zoneId: 'zone',
      plantingIds: ['bed', 'other'],
      // The week after starts dry.
      weeks: [2, 3, 4, 5],
      figures: { dryWeeks: 1 },
    });
    expect(notices[0]).not.toHaveProperty('plantingId');
    expect(notices).toHaveLength(1);
  });

  it('says nothing of a closed week that nobody minds', () => {
    expect(planted({ watering: 'refill' }, { choices: new Map([[0, { closed: true }]]) })).toEqual([]);
  });

  it('tells of a planting that asks for more than its zone gives, and how much', () => {
    const notices = noticed({ plantings: TWO_PLANTINGS, rule: { kind: 'planting', plantingId: 'sage' } });
    expect(notices).toMatchObject([
      { kind: 'left-behind', severity: 'danger', remedy: 'change-line', plantingId: 'lettuce', weeks: ALL_WEEKS },
    ]);
    // Sage alone: 10.5 mm a week at 4.8 mm/h on two days, 65.6 minutes.
    expect(figureOf(notices, 'minutesPerDay')).toBe(66);
    expect(figureOf(notices, 'minutesAsked')).toBeGreaterThan(66);
  });

  it('tells of a planting behind a shut-off in a zone that is not run for it', () => {
    const sage = thirsty(0, { id: 'sage', name: 'Sage' });
    const lettuce = plainPlanting({ id: 'lettuce', hasShutOff: true });
    expect(noticed({ plantings: [sage, lettuce] })).toMatchObject([
      { kind: 'shut-off-short', plantingId: 'lettuce', figures: { minutesPerDay: 0 } },
    ]);
  });

  it('tells of irrigation that drains away beside a thirstier planting', () => {
    const notices = noticed({ plantings: TWO_PLANTINGS });
    expect(notices).toMatchObject([
      { kind: 'over', severity: 'warning', remedy: 'change-line', plantingId: 'sage', weeks: ALL_WEEKS },
    ]);
    // Lettuce takes 31.5 mm a week, net; 21 of them are too much for sage: of 39.4 mm gross a good half.
    expect(figureOf(notices, 'drainedShare')).toBeGreaterThan(0.5);
    expect(figureOf(notices, 'drainedShare')).toBeLessThan(0.55);
    expect(figureOf(notices, 'drainedLitres')).toBeCloseTo(
      figureOf(notices, 'drainedShare') * figureOf(notices, 'appliedLitres'),
      9,
    );
  });

  it('notes minutes set by hand that differ from the calculation and harm nobody, and by how much', () => {
    // 8 mm more than is needed, in two weeks: half a day's water, which the next watering does with less.
    const notices = choosing([3], { minutes: 224 });
    expect(notices).toMatchObject([
      {
        kind: 'hand-set',
        severity: 'note',
        remedy: 'use-computed',
        zoneId: 'zone',
        weeks: [3],
        figures: { minutes: 224, computedMinutes: 220 },
      },
    ]);
  });

  it('tells of what drains because more was set by hand, and then not of the minutes beside it', () => {
    const notices = choosing([3, 4], { minutes: 440 });
    expect(notices).toMatchObject([
      { kind: 'over-by-hand', severity: 'note', remedy: 'use-computed', plantingId: 'bed', weeks: [3, 4] },
    ]);
  });

  it('says nothing of minutes set by hand as calculated, nor of those really run', () => {
    expect(choosing([3], { minutes: 220 })).toEqual([]);
    expect(choosing([3], { minutesRun: 240 }).map(({ kind }) => kind)).not.toContain('hand-set');
  });

  it('tells of a zone that asks for more than a day, and does not run it', () => {
    // 8.75 mm on each day at 0.24 mm/h, net: 2188 min.
    const notices = planted({ lines: [lineOf(FIRST_DAY - 1, 'dripline', 3)] });
    expect(notices).toMatchObject([
      {
        kind: 'beyond-timer',
        severity: 'danger',
        remedy: 'change-line',
        plantingId: 'bed',
        figures: { mostMinutes: 1440 },
      },
    ]);
    expect(figureOf(notices, 'minutesAsked')).toBeGreaterThan(2187);
    expect(notices[0]?.figures).not.toHaveProperty('cycleMinutes');
  });

  it('tells of a zone that asks for more than the starts and the longest cycle of its timer', () => {
    // Four cycles of 20 of the 109 min.
    expect(noticed({ longestCycleMinutes: 20.5 })).toMatchObject([
      { kind: 'beyond-timer', plantingId: 'bed', figures: { mostMinutes: 80, startsADay: 4, cycleMinutes: 20 } },
    ]);
  });

  it('tells of a bed that gets what it asks for and dries out between waterings', () => {
    // 4.5 mm readily at hand in 6 cm: full on the seventh day, 5 mm down when the third after it starts.
    const notices = planted({ rootZone: { depthM: 0.06 } });
    expect(notices).toMatchObject([
      {
        kind: 'few-days',
        remedy: 'more-days',
        plantingId: 'bed',
        weeks: ALL_WEEKS,
        figures: { fewestDays: 2, mostDays: 2 },
      },
    ]);
  });

  it('tells of a timer whose step runs off, from twice the longest cycle on as a warning', () => {
    const ofStep = (timerStepMinutes: number) =>
      noticed({ timerStepMinutes, longestCycleMinutes: 10, startsADay: 24 }).filter(
        ({ kind }) => kind === 'step-too-long',
      );
    expect(ofStep(10)).toEqual([]);
    expect(ofStep(15)).toMatchObject([
      { severity: 'note', figures: { timerStepMinutes: 15, longestCycleMinutes: 10 } },
    ]);
    expect(ofStep(30)).toMatchObject([
      { severity: 'warning', remedy: 'smaller-step', zoneId: 'zone', weeks: ALL_WEEKS },
    ]);
  });

  it('tells of a zone that runs longer than the hours of its supply', () => {
    const notices = noticed({}, { supply: { sources: [], windowWeekdays: 127, windowHoursPerDay: 1 } });
    expect(notices).toMatchObject([
      {
        kind: 'too-long',
        severity: 'warning',
        remedy: 'split-run',
        zoneId: 'zone',
        weeks: ALL_WEEKS,
        figures: { minutesPerDay: 110, windowMinutes: 60 },
      },
    ]);
  });

  it('tells of a zone that runs longer than a restriction allows, in the weeks in which it is in force', () => {
    const restrictions = [{ from: FIRST_DAY + 14, to: FIRST_DAY + 20, weekdays: 127, hoursPerDay: 1.5 }];
    const notices = noticed({}, { supply: { sources: [], windowWeekdays: 127, windowHoursPerDay: 2, restrictions } });
    expect(notices).toMatchObject([
      { kind: 'too-long', weeks: [2], figures: { minutesPerDay: 109, windowMinutes: 90 } },
    ]);
  });

  it('does not tell of what ran that it is too long', () => {
    const supply = { sources: [], windowWeekdays: 127, windowHoursPerDay: 2 };
    expect(noticed({ choices: new Map([[3, { minutesRun: 250 }]]) }, { supply })).toEqual([]);
    expect(noticed({ choices: new Map([[3, { minutes: 250 }]]) }, { supply })).toMatchObject([
      { kind: 'too-long', remedy: 'use-computed', weeks: [3] },
      {},
    ]);
  });

  it('lets a run fill its hours', () => {
    const supply = { sources: [], windowWeekdays: 127, windowHoursPerDay: 110 / 60 };
    expect(noticed({}, { supply })).toEqual([]);
  });

  it('says nothing of one that lasts for weeks', () => {
    expect(planted({ watering: 'refill' })).toEqual([]);
  });

  it('tells of a crop that stands after its last stage', () => {
    const coefficient = {
      kind: 'crop',
      name: { en: 'crop' },
      plantedOn: FIRST_DAY,
      stageDays: [10, 10, 10, 10],
      kcInitial: 0.5,
      kcMid: 0.5,
      kcEnd: 0.5,
      source: 'invented',
    } as const;
    // Day 41 of growth is the season's day 40, in its sixth week; 30 of 70 days are left.
    expect(planted({ coefficient })).toMatchObject([
      {
        kind: 'crop-past',
        severity: 'warning',
        remedy: 'check-days',
        firstWeek: 5,
        lastWeek: 9,
        weeks: [5, 6, 7, 8, 9],
        figures: { daysPast: 30 },
      },
    ]);
    expect(planted({ coefficient, to: FIRST_DAY + 39 })).toEqual([]);

    // Planted on the season's day 10 and in the ground from day 3 on: 7 days of no water, in its first and second week.
    const early = { ...coefficient, plantedOn: FIRST_DAY + 10 };
    const ofEarly = (change: object) =>
      planted({ coefficient: { ...early, ...change }, from: FIRST_DAY + 3, to: FIRST_DAY + 30 }).filter(
        ({ kind }) => kind === 'crop-early',
      );
    expect(ofEarly({})).toMatchObject([
      { severity: 'warning', remedy: 'check-days', weeks: [0, 1], figures: { daysEarly: 7 } },
    ]);
    // One that stays grew last year as well.
    expect(ofEarly({ perennial: true })).toEqual([]);

    // One that stays started 345 days ago: it rests for the season's first 20 days, grows for 40, and then stands on.
    const stays = { ...coefficient, plantedOn: FIRST_DAY - 345, perennial: true };
    expect(planted({ coefficient: stays }).filter(({ kind }) => kind === 'crop-past')).toMatchObject([
      { firstWeek: 8, lastWeek: 9, weeks: [8, 9], figures: { daysPast: 10 } },
    ]);
  });

  it.each([
    ['before', { from: FIRST_DAY - 30, to: FIRST_DAY - 3 }, { daysBefore: 3, daysAfter: 0 }],
    ['after', { from: FIRST_DAY + 74, to: FIRST_DAY + 90 }, { daysBefore: 0, daysAfter: 5 }],
  ])('tells of a planting %s the season', (_, change, figures) => {
    const notices = planted(change);
    expect(notices).toMatchObject([{ kind: 'out-of-season', severity: 'warning', remedy: 'check-days', figures }]);
    expect(notices[0]).not.toHaveProperty('weeks');
  });
});
