import { expect, it } from 'vitest';
import {
  hostWeekColumns,
  monthHeaders,
  sheetColumns,
  sheetHeaders,
  weekHeaders,
} from '../../../src/sheet/grid/season-columns.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { cellOf, rowOf, sheetOf } from '../sheet-of.ts';

const widths = { name: 180, season: 80, week: 60 };
type Read = (row: unknown) => unknown;

it('sheetColumns are names, the season and its weeks, under as many headers', () => {
  const sheet = sheetOf();
  const columns = sheetColumns(sheet, widths);
  const [months, weeks] = sheetHeaders(sheet);
  expect(columns.map(({ width }) => width)).toEqual([180, 80, ...Array.from({ length: 30 }, () => 60)]);
  expect(weeks).toHaveLength(columns.length);
  expect(months?.reduce((sum: number, head) => sum + (typeof head === 'string' ? 1 : head.colspan), 0)).toBe(
    columns.length,
  );
});

it('sheetColumns read a row of the sheet', () => {
  const sheet = sheetOf();
  const read = sheetColumns(sheet, widths).map(({ data }) => data as unknown as Read);
  const row = rowOf(sheet, 'beds');
  expect(read[0]?.(row)).toBe('Beds');
  expect(read[2 + 13]?.(row)).toBe(120);
  expect(read[2 + 13]?.(row)).toBe(sheet.value(cellOf(sheet, 'beds', '2027-07-05')));
});

it('hidden weeks leave no column and no header, and a month without weeks none either', () => {
  const sheet = sheetOf();
  sheet.hideWeeks([0, 1, 2, 3, 5]);
  expect(sheetColumns(sheet, widths)).toHaveLength(2 + 25);
  expect(weekHeaders(sheet).slice(0, 2)).toEqual(['3–9', '17–23']);
  expect(monthHeaders(sheet)[0]).toEqual({ label: 'May', colspan: 4 });
  sheet.showAll();
  expect(sheetColumns(sheet, widths)).toHaveLength(32);
});

it('monthHeaders have each month once, this week in the midst of it, and shorten what would not fit beside its mark', () => {
  const labels = (today: string) =>
    monthHeaders(sheetOf(mixedGarden(), { today })).map((head) => (typeof head === 'string' ? head : head.label));
  const usual = ['April\u00a02027', 'May', 'June', 'July', 'August', 'September', 'October'];
  expect(labels('2027-06-16')).toEqual(usual);
  expect(labels('2027-06-09')).toEqual(usual);
  expect(labels('2027-09-14')).toEqual(usual.with(5, 'Sep'));
  expect(labels('2027-09-21')).toEqual(usual);
  expect(labels('2027-04-13')).toEqual(usual.with(0, 'Apr\u00a02027'));
});

it('hostWeekColumns read the part of the season that a host’s row is about', () => {
  const sheet = sheetOf();
  const columns = hostWeekColumns(
    sheet,
    (row) => ((row as { bed?: string }).bed === undefined ? undefined : { zone: 'beds' }),
    60,
  );
  const read = columns[13]?.data as unknown as Read;
  expect(columns).toHaveLength(30);
  expect(read({ bed: 'B1' })).toBe(120);
  expect(read({ crew: 'Saturday crew' })).toBeNull();
});
