import { describe, expect, it } from 'vitest';
import { isoDate } from '../../../src/engine/calendar.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { PlanDay } from '../../../src/plan/schema/plan-schema.ts';
import type { Entry } from '../../../src/sheet/entry/entry.ts';
import type { Measure } from '../../../src/sheet/sheet-view.ts';
import { metricGarden, mixedGarden, oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';
import { cellOf, sheetOf } from '../sheet-of.ts';

function read(row: string, at: string, text: string, measure: Measure = 'all') {
  const sheet = sheetOf();
  sheet.show({ measure });
  return plain(sheet.read(cellOf(sheet, row, at), text));
}

/** With ordinary spaces in what is said. */
function plain(entry: Entry): Entry {
  const text = (said: string) => said.replaceAll('\u00a0', ' ');
  if (entry.kind === 'refused') return { ...entry, why: text(entry.why) };
  return entry.kind === 'edit' && entry.remark !== undefined ? { ...entry, remark: text(entry.remark) } : entry;
}

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
    ['hours and minutes', '1 h 20', 80],
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
    expect(read('beds', '2027-05-17', '75')).toEqual(
      edit({ type: 'set-minutes-run', zone: 'beds', week: '2027-05-17', minutes: 75 }),
    );
  });

  it('of weather is in the plan’s unit, or in the one that is typed', () => {
    const week = '2027-06-07';
    expect(read('rain', week, '0.4')).toEqual(edit({ type: 'set-week-rain', week, rain: 0.4 }));
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
    expect(sheet.read(cellOf(sheet, 'rain', '2027-06-07'), '0.2')).toEqual({
      kind: 'refused',
      why: expect.stringContaining('twice, for its total and for its days'),
    });
  });

  it('takes no total that would change nothing, where temperatures tell the reference ET', () => {
    const days = daily({ minTemperature: 55, maxTemperature: 75 });
    const sheet = sheetOf({ ...mixedGarden(), log: { days } });
    const entry = sheet.read(cellOf(sheet, 'eto', '2027-06-07'), '3');
    expect(entry).toEqual({
      kind: 'refused',
      why: expect.stringContaining('follows from the temperatures of the log'),
    });
  });

  it('takes no other total where every day is known', () => {
    const days = daily({ rain: 0.1 });
    const sheet = sheetOf({ ...mixedGarden(), log: { days } });
    const cell = cellOf(sheet, 'rain', '2027-06-07');
    expect(plain(sheet.read(cell, '0.9'))).toEqual({
      kind: 'refused',
      why: expect.stringContaining(
        'Every day of this week has its own rain, 0.7 inches in all. To be rid of it, choose',
      ),
    });
    expect(sheet.read(cell, '0.7').kind).toBe('edit');
  });
});

describe('a volume', () => {
  it('is said where the timer’s steps made another one of it', () => {
    const entry = read('beds', '2027-06-07', '150 gal');
    expect(entry).toMatchObject({
      remark: expect.stringMatching(
        /^150 gallons became 1\d\d gallons, \d+ minutes: the timer runs in steps of 1 minute on each of 3 days\.$/,
      ),
    });
  });

  it('is what the season gives for the minutes that are set, in every week, and what is said of it', () => {
    const plan = mixedGarden();
    const sheet = sheetOf(plan);
    let entered = 0;
    for (let week = 0; week < 30; week++) {
      for (const gallons of [20, 80, 200, 600]) {
        const cell = cellOf(sheet, 'beds', isoDate(sheet.state.season.garden.span.firstDay + 7 * week));
        const entry = plain(sheet.read(cell, `${gallons} gal`));
        if (entry.kind !== 'edit') continue;
        const zone = computeSeason(applyEdit(plan, entry.edit)).zones[0] as ZoneSeason;
        const given = zoneFigure(zone, 'litres', week) / 3.785411784;
        const said = /became ([\d,.]+) gallons/.exec(entry.remark ?? '')?.[1] ?? String(gallons);
        expect(
          Math.abs(given - Number(said.replaceAll(',', ''))),
          `${gallons} gal in week ${week}`,
        ).toBeLessThanOrEqual(0.5);
        entered++;
      }
    }
    expect(entered).toBeGreaterThan(60);
  });

  it('is refused where nothing could bring it', () => {
    // The week before the tomatoes: the shrubs' shut-off stays shut by itself.
    expect(read('beds', '2027-04-12', '60 gal')).toEqual({
      kind: 'refused',
      why: expect.stringContaining('a volume cannot be turned into minutes'),
    });
    expect(read('beds', '2027-06-07', '90000 gal')).toEqual({
      kind: 'refused',
      why: expect.stringMatching(/^Beds gives [\d,]+ gallons at most, running all week: write less\.$/),
    });
  });

  it('is not spoken of where it is what was typed, nor are minutes', () => {
    // 72 gph in 3 days of 25 min are 90 gal.
    const tomatoes = sheetOf(oneBed());
    const cell = cellOf(tomatoes, 'beds', '2027-06-07');
    expect(tomatoes.read(cell, '90 gal')).toEqual(
      edit({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 75 }),
    );
    expect(tomatoes.read(cell, '74')).toEqual(
      edit({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 74 }),
    );
  });
});

describe('refused, in words', () => {
  it.each<[string, string, string, string, Measure, string]>([
    ['words', 'beds', '2027-06-07', 'abc', 'all', '“abc” is not a number'],
    ['two readings', 'beds', '2027-06-07', '475,962', 'all', 'could be 475962 or 475.962'],
    ['less than nothing', 'beds', '2027-06-07', '-5', 'all', 'minutes a week'],
    ['more than a week has', 'beds', '2027-06-07', '10081', 'all', 'minutes a week'],
    ['a depth in a zone', 'beds', '2027-06-07', '1 in', 'all', 'takes minutes or a volume'],
    [
      'a closed week',
      'containers',
      '2027-08-02',
      '10',
      'all',
      'Containers is closed for this week: open the week first',
    ],
    ['credited rain', 'beds', '2027-06-07', '1', 'rain', 'Credited rain is computed'],
    ['minutes as weather', 'rain', '2027-06-07', '5 min', 'all', 'is no depth of water'],
    ['rain of a flood', 'rain', '2027-06-07', '200', 'all', 'write a number from 0 to 78.7 in'],
    // Two of its days have 0.4 and 0.05 in of rain.
    [
      'less than its days have',
      'rain',
      '2027-04-19',
      '0.4',
      'all',
      '2 days of this week have rain of their own, 0.45 inches in all. Write at least that.',
    ],
    [
      'less than its days have, in mm',
      'rain',
      '2027-04-19',
      '11 mm',
      'all',
      'Write at least that. To be rid of it, choose “Give back to the calculation”.',
    ],
    [
      'less than its day has',
      'eto',
      '2027-04-19',
      '0.1',
      'all',
      '1 day of this week has reference ET of its own, 0.11 inches in all',
    ],
    ['more than grass can use', 'eto', '2027-06-07', '5.6', 'all', 'write at most 5.51 inches'],
    ['words as weather', 'rain', '2027-06-07', 'wet', 'all', 'The rain of the whole week goes here, in inches.'],
    ['a planting without a shut-off', 'tomatoes', '2027-06-07', '2', 'all', 'Tomatoes has no shut-off'],
    ['more days than watering days', 'shrubs', '2027-06-07', '4', 'all', 'write a whole number from 0 to 3 days'],
    ['part of a day', 'shrubs', '2027-06-07', '1.5', 'all', 'write a whole number from 0 to 3 days'],
    ['gallons of a planting', 'shrubs', '2027-06-07', '12', 'volume', 'its shut-off can be set'],
    ['the garden’s total', 'total', '2027-06-07', '5', 'all', 'added up from its zones'],
    ['the season’s total', 'beds', 'season', '5', 'all', 'added up from its weeks'],
    ['a name', 'beds', 'name', 'New', 'all', 'Names are changed where the garden is described'],
  ])('%s', (_name, row, at, text, measure, words) => {
    const entry = read(row, at, text, measure);
    expect(entry).toEqual({ kind: 'refused', why: expect.stringContaining(words) });
  });

  it('open days of a planting that is not in the ground', () => {
    const later = shrubs({ need: { kind: 'crop', crop: 'tomato', plantedOn: '2027-06-21' } });
    const sheet = sheetOf(oneBed({ zones: [zone({ plantings: [tomatoes(), later] })] }));
    expect(sheet.read(cellOf(sheet, 'shrubs', '2027-06-07'), '2')).toEqual({
      kind: 'refused',
      why: expect.stringContaining('is not in the ground in this week'),
    });
    expect(sheet.read(cellOf(sheet, 'shrubs', '2027-06-21'), '2').kind).toBe('edit');
  });

  it('minutes where nothing is in the ground', () => {
    const plan = mixedGarden();
    const bare = sheetOf({
      ...plan,
      zones: plan.zones.map((zone) => ({ ...zone, plantings: zone.plantings.filter(({ id }) => id !== 'shrubs') })),
    });
    expect(bare.read(cellOf(bare, 'beds', '2027-04-05'), '10')).toEqual({
      kind: 'refused',
      why: expect.stringContaining('Nothing in Beds is in the ground'),
    });
  });

  it('everything in a plan for reading only', () => {
    const sheet = sheetOf(mixedGarden(), { readOnly: true });
    expect(sheet.read(cellOf(sheet, 'beds', '2027-06-07'), '45')).toEqual({
      kind: 'refused',
      why: 'This plan is open for reading only.',
    });
  });
});
