import { describe, expect, it } from 'vitest';
import { closeWeeks, logAsRun, noteWeek, openShutOffs } from '../../../src/sheet/entry/cell-actions.ts';
import { oneBed } from '../../support/small-plans.ts';
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
  it('takes the minutes as they stand', () => {
    expect(logAsRun([cell('beds', '2027-07-05')], dayOf)).toEqual({
      type: 'set-minutes-run',
      zone: 'beds',
      week: '2027-07-05',
      minutes: 120,
    });
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
