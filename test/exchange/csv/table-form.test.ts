/** How a table is written, by what tables of weather services and spreadsheets in several countries look like (common practice, no source). */
import { describe, expect, it } from 'vitest';
import { describeRowFault } from '../../../src/exchange/csv/describe-row-fault.ts';
import { readDay } from '../../../src/exchange/csv/read-day.ts';
import { tableFromCsv } from '../../../src/exchange/csv/table-from-csv.ts';
import { readDailyWeather } from '../../../src/exchange/weather-file/read-daily-weather.ts';
import { plan, season } from './mixed-season.ts';

const table = (...lines: readonly string[]) => `${lines.join('\n')}\n`;
const read = (text: string, choice = {}) => readDailyWeather(text, 'metric', 'en', choice);
const rains = (text: string, choice = {}) => read(text, choice).days.map(({ rainMm }) => rainMm);
const faults = (text: string) => read(text).faults.map(({ line, code }) => [line, code]);

describe('a decimal comma', () => {
  it.each([';', '\t', '|'])('is read where %j parts the columns', (separator) => {
    const text = table(`Date${separator}Rain`, `2027-06-14${separator}12,5`, `2027-06-15${separator}0,8`);
    expect(read(text)).toMatchObject({
      form: { separator, decimal: ',', days: 'year-month-day' },
      asked: [],
      faults: [],
    });
    expect(rains(text)).toEqual([12.5, 0.8]);
  });

  it('is read from quoted cells, and beside thousands', () => {
    expect(rains(table('Date,Rain', '2027-06-14,"12,5"', '2027-06-15,"1.204,5"'))).toEqual([12.5, 1204.5]);
  });

  it('between commas makes a cell too many, which is refused with the row', () => {
    const text = table('Date,Rain', '2027-06-14,12,5', '2027-06-15,0,8', '2027-06-16,3');
    expect(rains(text)).toEqual([3]);
    expect(read(text).faults).toMatchObject([
      { code: 'too-many-cells', line: 2, cells: 3, headings: 2 },
      { code: 'too-many-cells', line: 3 },
    ]);
    expect(rains(table('Date,Rain', '2027-06-14,12,,'))).toEqual([12]);
  });

  it('is asked about where it could part thousands, and read as is said', () => {
    const text = table('Date;Rain', '2027-06-14;1,204');
    expect(read(text)).toMatchObject({ asked: ['decimal'], days: [], faults: [] });
    expect(rains(text, { decimal: ',' })).toEqual([1.204]);
    expect(rains(text, { decimal: '.' })).toEqual([1204]);
    expect(rains(table('Date;Rain', '2027-06-14;1,204', '2027-06-15;0,8'))).toEqual([1.204, 0.8]);
  });

  it('that stands alone among points cannot be read', () => {
    const text = table('Date;Rain', '2027-06-14;1.5', '2027-06-15;0.25', '2027-06-16;0,8');
    expect(rains(text)).toEqual([1.5, 0.25]);
    expect(faults(text)).toEqual([[4, 'rain']]);
  });
});

describe('the order of days', () => {
  it.each([
    ['13/06/2027', 'day-month-year', '2027-06-13'],
    ['06/13/2027', 'month-day-year', '2027-06-13'],
    ['5.6.2027', 'day-month-year', '2027-06-05'],
    ['2027/6/5', 'year-month-day', '2027-06-05'],
    ['20270605', 'year-month-day', '2027-06-05'],
  ] as const)('of %s is %s', (day, days, iso) => {
    expect(read(table('Date,Rain', `${day},1`)).form.days).toBe(days);
    expect(readDay(day, days)?.day).toBe(iso);
  });

  it('is told from any day of the file', () => {
    const text = table('Date,Rain', '05/06/2027,1', '06/06/2027,2', '30/06/2027,3');
    expect(read(text).form.days).toBe('day-month-year');
    expect(read(text).faults).toEqual([]);
  });

  it('is asked about where day and month could be either', () => {
    const text = table('Date,Rain', '05/06/2027,1', '06/06/2027,2');
    expect(read(text)).toMatchObject({ asked: ['days'], days: [] });
    expect(read(text, { days: 'day-month-year' }).days).toHaveLength(2);
  });

  it.each([
    '2027-04-0699',
    '2027-04-06x',
    '2027-4',
    '2027-02-30',
    '32/01/2027',
    '1/2/27',
    '2027-04-06 late',
    '99999999',
  ])('takes no “%s” for a day', (day) => {
    for (const order of ['year-month-day', 'day-month-year', 'month-day-year'] as const) {
      expect(readDay(day, order)).toBeUndefined();
    }
  });

  it.each(['T00:00', ' 12:30:00', 'T09:00:00.000Z', ' 9:00 am', 'T09:00+02:00', ''])(
    'passes over a time: %j',
    (time) => {
      expect(readDay(`2027-04-06${time}`, 'year-month-day')?.day).toBe('2027-04-06');
    },
  );
});

it.each([
  ['by a time in a column of its own', 'Date,Time,Rain (mm)\n2027-06-14,00:00,1\n2027-06-14,01:00,2\n', 3],
  ['by twelve rows a day and more', `Date,Rain (mm)\n${'2027-06-14,1\n'.repeat(12)}${'2027-06-15,1\n'.repeat(13)}`, 3],
])('tells an hourly file %s', (_, text, line) => {
  expect(read(text)).toMatchObject({ days: [], faults: [{ code: 'hourly', line }] });
});

it('refuses an hourly file whole, since none of its rows is a day', () => {
  const text = table('Date,Rain', '2027-06-14T00:00,0', '2027-06-14T01:00,3', '2027-06-15T00:00,0');
  expect(read(text)).toMatchObject({ days: [], faults: [{ code: 'hourly', line: 3 }] });
  expect(rains(table('Date,Rain', '2027-06-14T00:00,1', '2027-06-15T00:00,2'))).toEqual([1, 2]);
});

describe('a heading', () => {
  it.each([
    ['Date,"Rain (mm)","Rain (in)"', 'column-twice'],
    ['Date,Rain,Rain', 'column-twice'],
    ['Date,Rain (C)', 'heading-unit'],
    ['Date,Rain (cm)', 'heading-unit'],
    ['Date,Low (mm),High (mm)', 'heading-unit'],
    ['Date,Day,Rain', undefined],
  ])('that leaves open what it is of is refused: %s', (heading, code) => {
    const text = table(heading, `2027-06-14,1,${heading.includes('Low') ? '2' : ''}`);
    expect(read(text).faults[0]?.code).toBe(code);
    if (code !== undefined) expect(read(text).days).toEqual([]);
  });

  it('with a word in brackets is still that word', () => {
    expect(read(table('Date,Temp (min),Temp (max)', '2027-06-14,5,9')).days).toMatchObject([{ minTemperatureC: 5 }]);
  });
});

describe('a table against the plan', () => {
  it('takes nothing while something is asked, and says how it was read', () => {
    const text = table('Zone;2027-04-12', 'Beds;1,204');
    expect(tableFromCsv(text, { plan, season })).toMatchObject({ asked: ['decimal'], edit: undefined, changes: [] });
    const chosen = tableFromCsv(text, { plan, season, choice: { decimal: ',' } });
    expect(chosen).toMatchObject({
      asked: [],
      form: { separator: ';', decimal: ',' },
      changes: [{ written: 1.204, to: 3 }],
    });
    const dated = table('Date,Rain', '05/06/2027,1');
    expect(tableFromCsv(dated, { plan, season })).toMatchObject({ asked: ['days'], edit: undefined, changes: [] });
  });

  it('refuses a row of minutes with cells too many', () => {
    const preview = tableFromCsv(table('Zone,2027-04-12', 'Beds,12,5'), { plan, season });
    expect(preview).toMatchObject({ changes: [], faults: [{ code: 'too-many-cells', line: 2 }] });
  });

  it.each([
    [{ code: 'column-twice' }, 'Line 3, “x”: another column is of the same. Delete one of the two.'],
    [{ code: 'heading-unit', reading: 'rain' }, 'Line 3, “x”: this is no unit of rain. Use mm or in.'],
    [
      { code: 'too-many-cells', cells: 3, headings: 2 },
      'Line 3, “x”: the row has 3 cells for 2 headings. Where commas part the cells, use a decimal point.',
    ],
    [{ code: 'hourly' }, 'Line 3, “x”: the file has several times of a day. Add them up to days first.'],
  ] as const)('says what is wrong: %o', (reason, sentence) => {
    expect(describeRowFault({ ...reason, line: 3, value: 'x' }, 'en-US').replaceAll('\u00a0', ' ')).toBe(sentence);
  });
});
