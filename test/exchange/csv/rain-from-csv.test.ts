import { describe, expect, it } from 'vitest';
import { rainFromCsv } from '../../../src/exchange/csv/rain-from-csv.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { plan } from './mixed-season.ts';

describe('rainFromCsv', () => {
  it('previews each day and keeps what else was observed on it', () => {
    const before = applyEdit(plan, { type: 'set-day-weather', day: '2027-05-02', weather: { rain: 0.1, eto: 0.2 } });
    const preview = rainFromCsv('Date;Rain (in)\n2027-05-01;0.5\n2027-05-02;0.3\n2027-05-03;\n', before);
    expect(preview.faults).toEqual([]);
    expect(preview.changes).toEqual([
      { day: '2027-05-01', from: undefined, to: 0.5 },
      { day: '2027-05-02', from: 0.1, to: 0.3 },
    ]);
    const after = applyEdit(before, preview.edit as NonNullable<typeof preview.edit>);
    expect(after.log?.days).toMatchObject({ '2027-05-01': { rain: 0.5 }, '2027-05-02': { rain: 0.3, eto: 0.2 } });
  });

  it.each([
    ['a day that does not exist', 'date,rain\n2027-02-30,1\n', 'a day as year-month-day', 2],
    ['rain below 0', 'date,rain\n2027-05-01,-1\n', 'rain of 0 or more', 2],
    ['a formula', 'date,rain\n2027-05-01,=1+1\n', 'rain of 0 or more', 2],
    ['no headings', '2027-05-01,1\n', 'a heading Date', 1],
    ['an empty file', '', 'a heading Date', 1],
  ])('names the line of %s', (_, text, expected, line) => {
    const { edit, faults } = rainFromCsv(text, plan);
    expect(edit).toBeUndefined();
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ line });
    expect(faults[0]?.expected).toContain(expected);
  });
});
