import { describe, expect, it } from 'vitest';
import { dayNumber, isoDate } from '../../../src/engine/calendar.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { entryWords } from '../../../src/language/en/entry.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { US_ENGLISH } from '../../../src/language/language.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { PlanDay } from '../../../src/plan/schema/plan-schema.ts';
import type { RefusalCode } from '../../../src/sheet/entry/entry.ts';
import type { Measure } from '../../../src/sheet/sheet-view.ts';
import { metricGarden, mixedGarden, oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';
import { cellOf, sheetOf } from '../sheet-of.ts';

function read(row: string, at: string, text: string, measure: Measure = 'all') {
  const sheet = sheetOf();
  sheet.show({ measure });
  return sheet.read(cellOf(sheet, row, at), text);
}

const words = entryWords(US_ENGLISH);
const format = formatFor(readerFor('en-US', 'us'));
const nameOf = (day: string) => format.day(dayNumber(day));
const GALLON = 3.785411784;

const refusedFor = (code: RefusalCode, says = '') => ({ kind: 'refused', code, why: expect.stringContaining(says) });
const edit = (made: Edit) => ({ kind: 'edit', edit: made });
const same = { kind: 'same' };

/** The same weather on each day of the week of June 7. */
function daily(weather: PlanDay): Record<string, PlanDay> {
  const days = [7, 8, 9, 10, 11, 12, 13];
  return Object.fromEntries(days.map((day) => [`2027-06-${String(day).padStart(2, '0')}`, weather]));
}

describe('a zone’s week takes', () => {
  const week = '2027-06-07';
  it.each([
    ['minutes', '45', 45],
    ['minutes with a unit', '45 min', 45],
    ['hours and minutes', '1 h 21', 81],
    ['nought', '0', 0],
  ])('%s', (_name, text, minutes) => {
    expect(read('beds', week, text)).toEqual(edit({ type: 'set-minutes', zone: 'beds', week, minutes }));
  });

  // Tomatoes have 4 rows of 20 ft with an emitter a foot at 0.9 gph: 72 gph. The shrubs' loops are behind a shut-off. 3
  // watering days at a timer step of 1 min make minutes of the week a multiple of 3.
  it('gallons as the minutes that bring them, in steps of the timer', () => {
    const sheet = sheetOf();
    const cell = cellOf(sheet, 'beds', week);
    const entry = sheet.read(cell, '150 gal');
    const minutes = entry.kind === 'edit' && entry.edit.type === 'set-minutes' ? (entry.edit.minutes ?? 0) : Number.NaN;
    expect(minutes % 3).toBe(0);
    // 72 gph of tomatoes alone up to what all lines together give.
    expect(minutes).toBeLessThanOrEqual((150 / 72) * 60 + 3);
    expect(minutes).toBeGreaterThan(60);
  });

  it('bare numbers as gallons where gallons are shown', () => {
    expect(read('beds', week, '150', 'volume')).toEqual(read('beds', week, '150 gal', 'all'));
    expect(read('beds', week, '150', 'volume')).not.toEqual(read('beds', week, '150', 'all'));
  });
});

describe('an emptied cell gives back', () => {
  it.each([
    ['minutes set by hand', 'beds', '2027-07-05', { type: 'set-minutes', minutes: undefined }],
    ['minutes really run', 'beds', '2027-05-17', { type: 'set-minutes-run', minutes: undefined }],
    ['a closed week', 'containers', '2027-08-02', { type: 'close-week', closed: false }],
  ])('%s', (_name, zone, week, change) => {
    expect(read(zone, week, '')).toEqual(edit({ ...change, zone, week } as Edit));
  });

  it('open days set by hand', () => {
    expect(read('shrubs', '2027-07-12', '')).toEqual(
      edit({ type: 'set-open-days', zone: 'beds', planting: 'shrubs', week: '2027-07-12', days: undefined }),
    );
  });

  it('the rain of a week', () => {
    expect(read('rain', '2027-05-03', '')).toEqual(
      edit({ type: 'set-week-rain', week: '2027-05-03', rain: undefined }),
    );
  });

  it('what was entered by day, and leaves the days’ other figures', () => {
    const taken = read('rain', '2027-04-19', '');
    expect(taken).toEqual(
      edit({
        type: 'together',
        action: 'remove-day-rain',
        edits: [
          { type: 'change-day-weather', day: '2027-04-20', change: { rain: undefined } },
          { type: 'change-day-weather', day: '2027-04-21', change: { rain: undefined } },
        ],
      }),
    );
    const both = ['eto', 'rain'].map((row) => ({ cell: cellOf(sheetOf(), row, '2027-04-19'), text: '' }));
    const emptied = sheetOf().readBlock(both, 'cut-cells').edit;
    expect(emptied && applyEdit(mixedGarden(), emptied).log?.days).toBeUndefined();
    const { log } = applyEdit(mixedGarden(), (taken as Extract<typeof taken, { kind: 'edit' }>).edit);
    expect(log?.days).toEqual({ '2027-04-21': { eto: 0.11 } });
  });

  it('and nothing where nothing was set', () => {
    expect(read('beds', '2027-06-07', '')).toEqual(same);
    expect(read('rain', '2027-06-07', '')).toEqual(same);
    expect(read('shrubs', '2027-06-07', '')).toEqual(same);
  });
});

describe('an entry', () => {
  it('that the plan holds already is none', () => {
    expect(read('beds', '2027-07-05', '120')).toEqual(same);
    expect(read('rain', '2027-05-03', '0.3')).toEqual(same);
    expect(read('shrubs', '2027-07-12', '1 of 3')).toEqual(same);
  });

  it('corrects the minutes that were run where there are some', () => {
    const typed = read('beds', '2027-05-17', '75');
    const run = typed.kind === 'edit' && typed.edit.type === 'set-week-run' ? typed.edit.run : undefined;
    expect(typed).toMatchObject({ edit: { zone: 'beds', week: '2027-05-17' } });
    const days = Object.values(typeof run === 'object' ? run.days : {});
    expect(days.length).toBeGreaterThan(1);
    expect(days.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(75);
    // Its shut-offs are named with it: whatever is read of the weather later moves nothing of it.
    for (const day of days) expect(day.open).toBeDefined();
  });

  it('of what was run are by day, to the hundredth, and bring the gallons that were typed', () => {
    for (const [text, wanted] of [
      ['100 gal', 100 * GALLON],
      ['250 L', 250],
    ] as const) {
      const typed = read('beds', '2027-05-17', text);
      if (typed.kind !== 'edit') throw new Error('refused');
      const { zones, garden } = computeSeason(applyEdit(mixedGarden(), typed.edit));
      const litres = zoneFigure(zones[0] as ZoneSeason, 'litres', (dayNumber('2027-05-17') - garden.span.firstDay) / 7);
      // A hundredth of a minute of this zone is under 0.2 L.
      expect(Math.abs(litres - wanted)).toBeLessThan(0.2);
    }
  });

  it('of weather is in the plan’s unit, or in the one that is typed', () => {
    const week = '2027-06-07';
    expect(read('rain', week, '0.4')).toEqual(edit({ type: 'set-week-rain', week, rain: 0.4 }));
    const through = { '2027-06-07': { rain: 0.2, rainThrough: '2027-06-09' } };
    const part = sheetOf({ ...mixedGarden(), log: { weeks: through } });
    const more = { type: 'set-week-rain', week: '2027-06-07', rain: 0.4, through: '2027-06-09' } as const;
    expect(part.read(cellOf(part, 'rain', '2027-06-07'), '0.4')).toEqual(edit(more));
    expect(read('rain', week, '10.16 mm')).toEqual(edit({ type: 'set-week-rain', week, rain: 0.4 }));
    expect(read('eto', week, '1.3')).toEqual(edit({ type: 'set-week-eto', week, eto: 1.3 }));
    const metric = sheetOf(metricGarden());
    const day = '2027-06-03';
    expect(metric.read(cellOf(metric, 'rain', day), '12')).toEqual(
      edit({ type: 'set-week-rain', week: day, rain: 12 }),
    );
  });

  it('of open days is for a planting behind a shut-off', () => {
    expect(read('shrubs', '2027-06-07', '2')).toEqual(
      edit({ type: 'set-open-days', zone: 'beds', planting: 'shrubs', week: '2027-06-07', days: 2 }),
    );
  });
});

describe('a week’s weather of which some days are known', () => {
  it('takes a total that is as much or more', () => {
    for (const rain of [0.45, 2]) {
      expect(read('rain', '2027-04-19', String(rain))).toEqual(
        edit({ type: 'set-week-rain', week: '2027-04-19', rain }),
      );
    }
  });

  it('takes what it said itself was the least', () => {
    const days = { '2027-04-20': { rain: 0.227 }, '2027-04-21': { rain: 0.227 } };
    const sheet = sheetOf({ ...mixedGarden(), log: { days } });
    expect(sheet.read(cellOf(sheet, 'rain', '2027-04-19'), '0.45').kind).toBe('edit');
  });

  it('says of a total beside them that it has to be given back twice', () => {
    const log = { days: { '2027-06-08': { rain: 0.3 } }, weeks: { '2027-06-07': { rain: 0.5 } } };
    const sheet = sheetOf({ ...mixedGarden(), log });
    expect(sheet.read(cellOf(sheet, 'rain', '2027-06-07'), '0.2')).toEqual(
      refusedFor('own-days', words.ownDays.clearTwice(words.clear.weather)),
    );
  });

  it('takes no total that would change nothing, where temperatures tell the reference ET', () => {
    const days = daily({ minTemperature: 55, maxTemperature: 75 });
    const sheet = sheetOf({ ...mixedGarden(), log: { days } });
    const entry = sheet.read(cellOf(sheet, 'eto', '2027-06-07'), '3');
    expect(entry).toEqual(refusedFor('own-days', words.ownDays.fromTemperatures));
  });

  it('takes no other total where every day is known', () => {
    const days = daily({ rain: 0.1 });
    const sheet = sheetOf({ ...mixedGarden(), log: { days } });
    const cell = cellOf(sheet, 'rain', '2027-06-07');
    expect(sheet.read(cell, '0.9')).toEqual(
      refusedFor(
        'own-days',
        `${words.ownDays.all.rain(format, 0.7 * 25.4)} ${words.ownDays.clear(words.clear.weather)}`,
      ),
    );
    expect(sheet.read(cell, '0.7').kind).toBe('edit');
  });
});

describe('a week’s weather of which days were filled in', () => {
  const filled = daily({ rain: 0.1, source: 'service' });

  it('takes a typed total below their sum; they give way, and it says so', () => {
    const sheet = sheetOf({ ...mixedGarden(), log: { days: filled } });
    const entry = sheet.read(cellOf(sheet, 'rain', '2027-06-07'), '0.2');
    expect(entry).toEqual({
      ...edit({ type: 'set-week-rain', week: '2027-06-07', rain: 0.2 }),
      remark: words.filledDays.rain(format, 7),
    });
  });

  it('is held against a total by the days that were typed alone, which are named', () => {
    const days = { ...filled, '2027-06-08': { rain: 0.3 } };
    const sheet = sheetOf({ ...mixedGarden(), log: { days } });
    const cell = cellOf(sheet, 'rain', '2027-06-07');
    expect(sheet.read(cell, '0.2')).toEqual(
      refusedFor('own-days', words.ownDays.some.rain(format, nameOf('2027-06-08'), 1, 0.3 * 25.4)),
    );
    expect(sheet.read(cell, '0.3')).toMatchObject({ remark: words.filledDays.rain(format, 6) });
    expect(sheet.read(cell, '')).toEqual(
      edit({
        type: 'together',
        action: 'remove-day-rain',
        edits: [{ type: 'change-day-weather', day: '2027-06-08', change: { rain: undefined } }],
      }),
    );
  });

  it('takes a total of reference ET over temperatures of a file', () => {
    const days = daily({ minTemperature: 55, maxTemperature: 75, source: 'file' });
    const sheet = sheetOf({ ...mixedGarden(), log: { days } });
    expect(sheet.read(cellOf(sheet, 'eto', '2027-06-07'), '1')).toMatchObject({
      remark: words.filledDays.eto(format, 7),
    });
  });

  it('takes a total below what was forecast of its days and never read', () => {
    const forecasts = [{ issued: '2027-06-07', days: { '2027-06-08': { rain: 1 } } }];
    const sheet = sheetOf({ ...mixedGarden(), log: { forecasts } });
    expect(sheet.read(cellOf(sheet, 'rain', '2027-06-07'), '0.2')).toEqual(
      edit({ type: 'set-week-rain', week: '2027-06-07', rain: 0.2 }),
    );
  });
});

describe('a volume', () => {
  it('is said where the timer’s steps made another one of it', () => {
    const entry = read('beds', '2027-06-07', '150 gal');
    if (entry.kind !== 'edit' || entry.edit.type !== 'set-minutes') throw new Error('no minutes were set');
    const { minutes = 0 } = entry.edit;
    const parts = words
      .rounded(format, 150 * GALLON, Number.NaN, { minutes, stepMinutes: 1, days: 3, cycles: 2 })
      .split('–');
    expect(parts).toHaveLength(2);
    for (const part of parts) expect(entry.remark).toContain(part);
  });

  it('is what the season gives for the minutes that are set, in every week, and what is said of it', () => {
    const plan = mixedGarden();
    const sheet = sheetOf(plan);
    let entered = 0;
    for (let week = 0; week < 30; week++) {
      for (const gallons of [20, 80, 200, 600]) {
        const cell = cellOf(sheet, 'beds', isoDate(sheet.state.season.garden.span.firstDay + 7 * week));
        const entry = sheet.read(cell, `${gallons} gal`);
        if (entry.kind !== 'edit') continue;
        const zone = computeSeason(applyEdit(plan, entry.edit)).zones[0] as ZoneSeason;
        const given = zoneFigure(zone, 'litres', week) / GALLON;
        const said = format.spelled(given * GALLON, 'volume');
        const isSaid = entry.remark?.includes(said) ?? Math.abs(given - gallons) <= 0.5;
        expect(isSaid, `${gallons} gal in week ${week}`).toBe(true);
        entered++;
      }
    }
    expect(entered).toBeGreaterThan(60);
  });

  it('is refused where nothing could bring it', () => {
    // The week before the tomatoes: the shrubs' shut-off stays shut by itself.
    expect(read('beds', '2027-04-12', '60 gal')).toEqual(refusedFor('no-flow'));
    expect(read('beds', '2027-06-07', '90000 gal')).toEqual(refusedFor('too-much', 'Beds'));
  });

  it('is not spoken of where it is what was typed, nor are minutes', () => {
    // 72 gph in 3 days of 25 min are 90 gal.
    const tomatoes = sheetOf(oneBed());
    const cell = cellOf(tomatoes, 'beds', '2027-06-07');
    expect(tomatoes.read(cell, '90 gal')).toEqual(
      edit({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 75 }),
    );
    expect(tomatoes.read(cell, '72')).toEqual(
      edit({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 72 }),
    );
  });
});

// 74 min on 3 days are 24 2/3 min each: 25 is nearer than 24.
describe('minutes that the timer cannot be set to', () => {
  const settable = words.settable(format, 74, { minutes: 75, stepMinutes: 1, days: 3, cycles: 1 });

  it('are the nearest that it can, and it is said', () => {
    const tomatoes = sheetOf(oneBed());
    expect(tomatoes.read(cellOf(tomatoes, 'beds', '2027-06-07'), '74')).toEqual({
      ...edit({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 75 }),
      remark: settable,
    });
  });

  it('are said too where the nearest is what the plan holds', () => {
    const set = applyEdit(oneBed(), { type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 75 });
    const tomatoes = sheetOf(set);
    expect(tomatoes.read(cellOf(tomatoes, 'beds', '2027-06-07'), '74')).toEqual({ ...same, remark: settable });
    expect(tomatoes.read(cellOf(tomatoes, 'beds', '2027-06-07'), '75')).toEqual(same);
  });

  it('stay as an older plan has them until another number is typed', () => {
    const set = applyEdit(oneBed(), { type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 74 });
    const tomatoes = sheetOf(set);
    const cell = cellOf(tomatoes, 'beds', '2027-06-07');
    expect(tomatoes.read(cell, '74')).toEqual(same);
    expect(tomatoes.describe(cell)).toContain(format.spelledMinutes(25));
  });
});

describe('refused, with why', () => {
  const inches = (depth: number) => depth * 25.4;
  const atLeast = `${words.ownDays.some.rain(format, format.list([nameOf('2027-04-20'), nameOf('2027-04-21')]), 2, inches(0.45))} ${words.ownDays.atLeast}`;
  const clear = words.ownDays.clear(words.clear.weather);
  it.each<[string, string, string, string, Measure, RefusalCode, string]>([
    ['words', 'beds', '2027-06-07', 'abc', 'all', 'not-a-number', words.hints.minutes(format, 150 * GALLON)],
    ['two readings', 'beds', '2027-06-07', '475,962', 'all', 'ambiguous', words.hints.minutes(format, 150 * GALLON)],
    ['less than nothing', 'beds', '2027-06-07', '-5', 'all', 'range', '10,080'],
    ['more than a week has', 'beds', '2027-06-07', '10081', 'all', 'range', '10,080'],
    ['a depth in a zone', 'beds', '2027-06-07', '1 in', 'all', 'zone-unit', words.refused['zone-unit']],
    ['a closed week', 'containers', '2027-08-02', '10', 'all', 'closed', words.refused.closed('Containers')],
    ['rain that is counted', 'beds', '2027-06-07', '1', 'rain', 'rain-counted', words.fixed['rain-counted']],
    ['minutes as weather', 'rain', '2027-06-07', '5 min', 'all', 'depth-unit', words.hints.rain('inches')],
    ['rain of a flood', 'rain', '2027-06-07', '200', 'all', 'range', '78.7\u00a0in'],
    // Two of its days have 0.4 and 0.05 in of rain.
    ['less than its days have', 'rain', '2027-04-19', '0.4', 'all', 'own-days', atLeast],
    ['less than its days have, in mm', 'rain', '2027-04-19', '11 mm', 'all', 'own-days', clear],
    [
      'less than its day has',
      'eto',
      '2027-04-19',
      '0.1',
      'all',
      'own-days',
      words.ownDays.some.eto(format, nameOf('2027-04-21'), 1, inches(0.11)),
    ],
    ['more than grass can use', 'eto', '2027-06-07', '5.6', 'all', 'too-much-eto', '5.51'],
    ['words as weather', 'rain', '2027-06-07', 'wet', 'all', 'not-a-number', words.hints.rain('inches')],
    ['a planting without a shut-off', 'tomatoes', '2027-06-07', '2', 'all', 'no-shut-off', 'Tomatoes'],
    ['more days than watering days', 'shrubs', '2027-06-07', '4', 'all', 'whole-days', '“4”'],
    ['part of a day', 'shrubs', '2027-06-07', '1.5', 'all', 'whole-days', '“1.5”'],
    ['gallons of a planting', 'shrubs', '2027-06-07', '12', 'volume', 'planting-unit', words.hints.openDays(format, 3)],
    ['the garden’s total', 'total', '2027-06-07', '5', 'all', 'total', words.fixed.total],
    ['the season’s total', 'beds', 'season', '5', 'all', 'season', words.fixed.season],
    ['a name', 'beds', 'name', 'New', 'all', 'name', words.fixed.name],
  ])('%s', (_name, row, at, text, measure, code, says) => {
    expect(read(row, at, text, measure)).toEqual(refusedFor(code, says));
  });

  it('with an example in the plan’s own units', () => {
    const metric = sheetOf(metricGarden());
    const entry = metric.read(cellOf(metric, 'vegetables', '2027-06-03'), 'abc');
    expect(entry).toEqual(refusedFor('not-a-number', '600\u00a0L'));
  });

  it('open days of a planting that is not in the ground', () => {
    const later = shrubs({ need: { kind: 'crop', crop: 'tomato', plantedOn: '2027-06-21' } });
    const sheet = sheetOf(oneBed({ zones: [zone({ plantings: [tomatoes(), later] })] }));
    expect(sheet.read(cellOf(sheet, 'shrubs', '2027-06-07'), '2')).toEqual(refusedFor('not-in-ground', 'Shrubs'));
    expect(sheet.read(cellOf(sheet, 'shrubs', '2027-06-21'), '2').kind).toBe('edit');
  });

  it('minutes where nothing is in the ground', () => {
    const plan = mixedGarden();
    const bare = sheetOf({
      ...plan,
      zones: plan.zones.map((zone) => ({ ...zone, plantings: zone.plantings.filter(({ id }) => id !== 'shrubs') })),
    });
    expect(bare.read(cellOf(bare, 'beds', '2027-04-05'), '10')).toEqual(refusedFor('bare-soil', 'Beds'));
  });

  it('everything in a plan for reading only', () => {
    const sheet = sheetOf(mixedGarden(), { readOnly: true });
    expect(sheet.read(cellOf(sheet, 'beds', '2027-06-07'), '45')).toEqual(refusedFor('read-only'));
  });
});
