import { describe, expect, it, vi } from 'vitest';
import { dayNumber } from '../../src/engine/calendar.ts';
import { en } from '../../src/language/en.ts';
import { loadLanguage } from '../../src/language/languages.ts';
import { registerLanguage } from '../../src/language/register-language.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { applyEdit } from '../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import type { SeasonSheet } from '../../src/sheet/season-sheet.ts';
import { metricGarden, mixedGarden, oneBed } from '../support/small-plans.ts';
import { cellOf, sheetOf } from './sheet-of.ts';

function apply(sheet: SeasonSheet, edit: Edit): void {
  const plan = applyEdit(sheet.state.plan, edit);
  sheet.update({ ...sheet.state, plan, season: computeSeason(plan, sheet.state.season) });
}

const setBeds = (minutes: number): Edit => ({ type: 'set-minutes', zone: 'beds', week: '2027-07-19', minutes });

describe('a sheet', () => {
  it('keeps its array of rows while the season changes, with the new season in them', () => {
    const sheet = sheetOf();
    const { rows } = sheet;
    const cell = () => ({ row: rows[2] as (typeof rows)[number], column: { kind: 'week', week: 15 } as const });
    const before = sheet.cellView(cell());
    apply(sheet, setBeds(33));
    expect(sheet.rows).toBe(rows);
    expect(sheet.cellView(cell())).not.toEqual(before);
  });

  it('has another array of rows when a zone unfolds', () => {
    const sheet = sheetOf();
    const { rows } = sheet;
    sheet.setOpen('beds', true);
    expect(sheet.rows).not.toBe(rows);
    expect(sheet.rows).toHaveLength(rows.length + 2);
    sheet.setOpen('beds', false);
    expect(sheet.rows).toHaveLength(rows.length);
  });

  it('keeps the cells of a zone that an edit does not reach', () => {
    const sheet = sheetOf();
    const containers = cellOf(sheet, 'containers', '2027-07-19');
    const view = sheet.cellView(containers);
    apply(sheet, setBeds(33));
    expect(sheet.cellView(cellOf(sheet, 'containers', '2027-07-19'))).toBe(view);
  });

  it('tells its watchers of every change, until they end', () => {
    const sheet = sheetOf();
    const watcher = vi.fn();
    const end = sheet.subscribe(watcher);
    sheet.show({ measure: 'volume' });
    apply(sheet, setBeds(33));
    expect(watcher).toHaveBeenCalledTimes(2);
    end();
    sheet.show({ measure: 'all' });
    expect(watcher).toHaveBeenCalledTimes(2);
  });

  it('is rewritten in other units', () => {
    const sheet = sheetOf(oneBed());
    expect(sheet.format.unit('volume')).toBe('gal');
    const plan = metricGarden();
    sheet.update({ ...sheet.state, plan, season: computeSeason(plan) });
    expect(sheet.format.unit('volume')).toBe('L');
    expect(sheet.calendar.weekOf(0)).toBe(sheet.format.weekOf(dayNumber('2027-04-01')));
    expect(sheet.weeks).toBe(20);
  });

  it('is in one language: a locale that nobody registered has English dates and numbers', () => {
    const sheet = sheetOf(mixedGarden(), { locale: 'de-DE' });
    expect(sheet.reader.locale).toBe('en-GB');
    expect(sheet.copyText(cellOf(sheet, 'eto', '2027-06-14'))).toMatch(/^1\.\d{1,3}$/);
  });

  it('is rewritten once a registered language has come', async () => {
    registerLanguage('de', () => ({ ...en, sheet: { ...en.sheet, rows: { ...en.sheet.rows, rain: 'Regen' } } }));
    const sheet = sheetOf(mixedGarden(), { locale: 'de-AT' });
    const rain = cellOf(sheet, 'rain', 'name');
    expect(sheet.nameOf(rain)).toBe(en.sheet.rows.rain);
    await loadLanguage('de-AT');
    sheet.update(sheet.state);
    expect(sheet.nameOf(rain)).toBe('Regen');
    expect(sheet.reader.locale).toBe('de-AT');
  });

  it.each([
    ['2027-04-04', undefined],
    ['2027-04-05', 0],
    ['2027-04-11', 0],
    ['2027-04-12', 1],
    ['2027-10-31', 29],
    ['2027-11-01', undefined],
  ])('has today, %s, in week %s', (today, week) => {
    expect(sheetOf(mixedGarden(), { today }).thisWeek).toBe(week);
  });

  it('names the edit of a week by its first day', () => {
    expect(sheetOf().weekDay(1)).toBe('2027-04-12');
  });
});

describe('entering what a cell’s editor opens with', () => {
  it('changes nothing where it was set by hand, whatever is shown', () => {
    const sheet = sheetOf();
    for (const [row, at] of [
      ['beds', '2027-07-05'],
      ['shrubs', '2027-07-12'],
      ['rain', '2027-05-03'],
    ] as const) {
      const cell = cellOf(sheet, row, at);
      expect(sheet.entryText(cell)).not.toBe('');
      expect(sheet.read(cell, sheet.entryText(cell))).toEqual({ kind: 'same' });
    }
  });
});
