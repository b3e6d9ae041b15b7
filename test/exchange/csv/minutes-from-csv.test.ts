import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { minutesFromCsv } from '../../../src/exchange/csv/minutes-from-csv.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';
import { plan, season } from './mixed-season.ts';

const zoneName = plan.zones[0]?.name ?? '';
const zoneId = plan.zones[0]?.id ?? '';

describe('minutesFromCsv', () => {
  it('previews each changed figure and keeps them as one step', () => {
    const preview = minutesFromCsv(`Zone,2027-04-12,2027-04-19\n${zoneName.toUpperCase()},45,\n`, plan);
    expect(preview.faults).toEqual([]);
    expect(preview.changes).toEqual([
      { reading: 'minutes', zone: zoneName, day: '2027-04-12', from: undefined, to: 45 },
    ]);
    expect(preview.edit).toMatchObject({ type: 'together' });
    const next = applyEdit(plan, preview.edit as NonNullable<typeof preview.edit>);
    expect(next.choices?.[zoneId]?.['2027-04-12']?.minutes).toBe(45);
    expect(minutesFromCsv(`Zone,2027-04-12\n${zoneName},45\n`, next).edit).toBeUndefined();
  });

  it('takes back what seasonToCsv wrote: the season then runs the same minutes', () => {
    const text = seasonToCsv(season, { units: 'us', measures: ['volume', 'minutes', 'rain'], withPlantings: true });
    const preview = minutesFromCsv(text, plan);
    expect(preview.faults).toEqual([]);
    const next = computeSeason(applyEdit(plan, preview.edit as NonNullable<typeof preview.edit>));
    season.zones.forEach((zone, index) => {
      for (let week = 0; week < zone.weeks; week++) {
        const again = zoneFigure(next.zones[index] as NonNullable<(typeof next.zones)[number]>, 'minutes', week);
        expect(again).toBeCloseTo(zoneFigure(zone, 'minutes', week), 2);
      }
    });
  });

  it('changes nothing where what went out comes back, run, closed or set by hand', () => {
    const choices = {
      [zoneId]: {
        '2027-04-12': { minutes: 50 },
        '2027-04-19': { minutes: 40, closed: true },
        '2027-04-26': { minutes: 33.33333 },
      },
    };
    const lived = { ...plan, choices, log: { ...plan.log, runs: { [zoneId]: { '2027-04-12': 45 } } } };
    const run = computeSeason(lived);
    const text = seasonToCsv(run, { units: 'us', measures: ['minutes'], withPlantings: false });
    expect(text).toContain('33.333');
    expect(minutesFromCsv(text, lived, run).changes).toEqual([]);
  });

  it('finds what was set by hand under another day of the week', () => {
    const before = { ...plan, choices: { [zoneId]: { '2027-04-14': { minutes: 45 } } } };
    expect(minutesFromCsv(`Zone,2027-04-12\n${zoneName},45\n`, before).changes).toEqual([]);
    expect(minutesFromCsv(`Zone,2027-04-12\n${zoneName},50\n`, before).changes).toMatchObject([{ from: 45, to: 50 }]);
  });

  it('takes nothing for a name that two zones have', () => {
    const mixed = mixedGarden();
    const twins = { ...mixed, zones: mixed.zones.map((zone) => ({ ...zone, name: 'Beds' })) };
    const { edit, faults } = minutesFromCsv('Zone,2027-06-07\nBeds,40\n', twins);
    expect(edit).toBeUndefined();
    expect(faults).toEqual([{ code: 'zone-shared', line: 2, value: 'Beds', zones: 2 }]);
  });

  it('says where minutes would change nothing: closed weeks, weeks really run, weeks outside the season', () => {
    const mixed = mixedGarden();
    const csv = 'Zone,2027-05-17,2027-08-02,2028-06-05\nContainers,,30,\nBeds,40,,99\n';
    const { edit, faults } = minutesFromCsv(csv, mixed, computeSeason(mixed));
    expect(edit).toBeUndefined();
    expect(faults).toEqual([
      { code: 'week-outside', line: 1, value: '2028-06-05' },
      { code: 'week-closed', line: 2, value: '30', weekStart: dayNumber('2027-08-02') },
      { code: 'week-run', line: 3, value: '40', weekStart: dayNumber('2027-05-17') },
    ]);
  });

  it('takes no zone and no week twice', () => {
    const { changes, faults } = minutesFromCsv(
      `Zone,2027-04-12,2027-04-14\n${zoneName},45,50\n${zoneName},60,60\n`,
      plan,
    );
    expect(changes.map(({ to }) => to)).toEqual([45]);
    expect(faults).toEqual([
      { code: 'week-twice', line: 1, value: '2027-04-14' },
      { code: 'zone-twice', line: 3, value: zoneName, before: 2 },
    ]);
  });

  // By hand: steps of 1 min on three days make 3 min of the week; 74 min are 24 2/3 on each day, and 25 is nearer than 24.
  it('makes of minutes between a timer’s steps what it can be set to, as the sheet does of typed ones', () => {
    const bed = oneBed();
    const computed = computeSeason(bed);
    const preview = minutesFromCsv('Zone,2027-06-07,2027-06-14\nBeds,74,75\n', bed, computed);
    expect(preview.changes).toEqual([
      {
        reading: 'minutes',
        zone: 'Beds',
        day: '2027-06-07',
        from: undefined,
        to: 75,
        written: 74,
        timer: { minutes: 75, days: 3, cycles: 1, stepMinutes: 1 },
      },
      { reading: 'minutes', zone: 'Beds', day: '2027-06-14', from: undefined, to: 75 },
    ]);
    const next = applyEdit(bed, preview.edit as NonNullable<typeof preview.edit>);
    expect(next.choices?.['beds']).toMatchObject({ '2027-06-07': { minutes: 75 }, '2027-06-14': { minutes: 75 } });
    const again = minutesFromCsv('Zone,2027-06-07\nBeds,74\n', next, computeSeason(next));
    expect(again).toMatchObject({ changes: [], faults: [], edit: undefined });
  });

  it('leaves a computed figure computed where the season is given', () => {
    const [zone] = season.zones;
    const minutes = zoneFigure(zone as NonNullable<typeof zone>, 'minutes', 20).toFixed(3);
    const text = `Zone,2027-08-23,2027-08-30\n${zoneName},${minutes},1\n`;
    expect(minutesFromCsv(text, plan, season).changes).toMatchObject([{ day: '2027-08-30', written: 1, to: 3 }]);
    expect(minutesFromCsv(text, plan).changes).toHaveLength(2);
  });

  it.each([
    ['an unknown zone', 'Zone,2027-04-12\nOrchard,45\n', 'zone-unknown', 2],
    ['minutes below 0', `Zone,2027-04-12\n${zoneName},-5\n`, 'minutes', 2],
    ['more minutes than a week has', `Zone,2027-04-12\n${zoneName},10081\n`, 'minutes', 2],
    ['a word', `Zone,2027-04-12\n\n${zoneName},long\n`, 'minutes', 3],
    ['two decimal marks', `Zone;2027-04-12\n${zoneName};4,5,1\n`, 'minutes', 2],
    ['no week of the season', `Zone,2020-01-01\n${zoneName},45\n`, 'minutes-headings', 1],
  ])('names the line of %s and changes nothing there', (_, text, code, line) => {
    const { changes, faults } = minutesFromCsv(text, plan);
    expect(changes).toEqual([]);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ code, line });
  });
});
