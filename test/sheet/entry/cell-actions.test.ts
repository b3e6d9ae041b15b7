import { describe, expect, it } from 'vitest';
import { fieldByWeek } from '../../../src/engine/season/field-by-week.ts';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import { type PlantingSeason, type Season, SUPPLY_FIELDS, type ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneOrigin } from '../../../src/engine/season/zone-week.ts';
import { describeEdit } from '../../../src/language/describe-edit.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit, TogetherEdit } from '../../../src/plan/edits/edit.ts';
import { closeWeeks, logAsRun, noteWeek, openShutOffs } from '../../../src/sheet/entry/cell-actions.ts';
import type { ZoneRow } from '../../../src/sheet/sheet-row.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';
import { cellOf, sheetOf } from '../sheet-of.ts';

const sheet = sheetOf();
const dayOf = (week: number) => sheet.weekDay(week);
const cell = (row: string, at: string) => cellOf(sheet, row, at);

describe('closeWeeks', () => {
  it('shuts the zones’ weeks among the cells as one step', () => {
    const cells = [cell('beds', '2027-06-07'), cell('rain', '2027-06-07'), cell('containers', '2027-06-07')];
    expect(closeWeeks(cells, true, dayOf)).toEqual({
      type: 'together',
      action: 'close-weeks',
      edits: ['beds', 'containers'].map((zone) => ({ type: 'close-week', zone, week: '2027-06-07', closed: true })),
    });
  });

  it('leaves what is not in the ground, and what was really run', () => {
    const bare = sheetOf(oneBed({ season: { firstDay: '2027-04-05', weeks: 12 } }));
    expect(closeWeeks([cellOf(bare, 'beds', '2027-04-05')], true, dayOf)).toBeUndefined();
    expect(closeWeeks([cell('beds', '2027-05-17')], true, dayOf)).toBeUndefined();
  });

  it('leaves what is so already', () => {
    expect(closeWeeks([cell('containers', '2027-08-02')], true, dayOf)).toBeUndefined();
    expect(closeWeeks([cell('beds', '2027-06-07')], false, dayOf)).toBeUndefined();
    expect(closeWeeks([cell('containers', '2027-08-02')], false, dayOf)).toEqual({
      type: 'close-week',
      zone: 'containers',
      week: '2027-08-02',
      closed: false,
    });
  });
});

describe('logAsRun', () => {
  // 120 minutes set by hand on Wednesday, Friday and Sunday: 40 each.
  it('takes the minutes as they stand, day by day, with the shut-offs that are open', () => {
    const at = cell('beds', '2027-07-05');
    const shrubs = (at.row as ZoneRow).zone.plantings.find(({ planting }) => planting.id === 'shrubs');
    const mask = plantingFigure(shrubs as PlantingSeason, 'openMask', (at.column as { week: number }).week);
    const day = (iso: string, offset: number) => ({
      type: 'set-day-run',
      zone: 'beds',
      day: iso,
      run: { minutes: 40, open: (mask >> offset) & 1 ? ['shrubs'] : [] },
    });
    const days = [day('2027-07-07', 2), day('2027-07-09', 4), day('2027-07-11', 6)];
    expect(logAsRun([at], dayOf)).toEqual({
      type: 'together',
      action: 'log-weeks',
      edits: [{ type: 'together', edits: days }],
    });
  });

  it('logs a week without a run as one of no minutes, and several weeks as one step', () => {
    const logged = logAsRun([cell('containers', '2027-08-02'), cell('beds', '2027-07-05')], dayOf) as TogetherEdit;
    expect(logged.edits).toHaveLength(2);
    expect(logged.edits[0]).toEqual({ type: 'set-minutes-run', zone: 'containers', week: '2027-08-02', minutes: 0 });
    expect(describeEdit(mixedGarden(), logged, readerFor('en-US', 'us')).replaceAll('\u00a0', ' ')).toBe(
      'Containers and Beds: log 2 weeks as run',
    );
  });

  it('changes nothing of what the season waters', () => {
    const logged = logAsRun([cell('beds', '2027-07-19')], dayOf);
    const before = computeSeason(mixedGarden());
    const after = computeSeason(applyEdit(mixedGarden(), logged as Edit));
    const waterOf = (season: Season) =>
      Object.values(SUPPLY_FIELDS).map((field) => fieldByWeek(season.totals.figures, field));
    expect(waterOf(after)).toEqual(waterOf(before));
    expect(zoneOrigin(after.zones[0] as ZoneSeason, 15)).toBe('run');
  });

  it('leaves weeks that are logged, or without plants', () => {
    expect(logAsRun([cell('beds', '2027-05-17'), cell('total', '2027-05-17')], dayOf)).toBeUndefined();
  });
});

describe('openShutOffs', () => {
  it('sets the days of plantings behind a shut-off, and of no others', () => {
    const cells = [cell('shrubs', '2027-06-07'), cell('tomatoes', '2027-06-07')];
    expect(openShutOffs(cells, 2, dayOf)).toEqual({
      type: 'set-open-days',
      zone: 'beds',
      planting: 'shrubs',
      week: '2027-06-07',
      days: 2,
    });
    expect(openShutOffs([cell('shrubs', '2027-07-12')], 1, dayOf)).toBeUndefined();
  });
});

describe('noteWeek', () => {
  const noted = (text: string) => noteWeek(cell('beds', '2027-07-12'), text, dayOf);

  it.each([
    ['a text', ' Cooler. ', 'Cooler.'],
    ['nothing', '  ', undefined],
    ['what looks like a formula', '=1+1', '=1+1'],
  ])('keeps %s', (_name, text, note) => {
    expect(noted(text)).toEqual({ type: 'set-note', zone: 'beds', week: '2027-07-12', note });
  });

  it('does nothing where the note is the same, or the cell has none', () => {
    expect(noted('Heat is coming.')).toBeUndefined();
    expect(noteWeek(cell('rain', '2027-07-12'), 'x', dayOf)).toBeUndefined();
    expect(noteWeek(cell('beds', 'season'), 'x', dayOf)).toBeUndefined();
  });
});
