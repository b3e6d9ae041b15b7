import { describe, expect, it } from 'vitest';
import type { ImportPreview } from '../../../src/exchange/csv/imported.ts';
import { weatherFromCsv } from '../../../src/exchange/csv/weather-from-csv.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { metricGarden } from '../../support/small-plans.ts';
import { plan } from './mixed-season.ts';

const taken = (before: Plan, { edit }: ImportPreview) => {
  if (edit === undefined) throw new Error('there is nothing to take in');
  return applyEdit(before, edit);
};

describe('weatherFromCsv', () => {
  it('previews each day of rain and keeps what else was observed on it', () => {
    const before = applyEdit(plan, { type: 'set-day-weather', day: '2027-05-02', weather: { rain: 0.1, eto: 0.2 } });
    const preview = weatherFromCsv('Date;Rain (in)\n2027-05-01;0.5\n2027-05-02;0.3\n2027-05-03;\n', before);
    expect(preview.faults).toEqual([]);
    expect(preview.changes).toEqual([
      { reading: 'rain', day: '2027-05-01', from: undefined, to: 0.5 },
      { reading: 'rain', day: '2027-05-02', from: 0.1, to: 0.3 },
    ]);
    expect(preview.edit).toMatchObject({ type: 'together', action: 'import-rain' });
    const after = taken(before, preview);
    expect(after.log?.days).toMatchObject({ '2027-05-01': { rain: 0.5 }, '2027-05-02': { rain: 0.3, eto: 0.2 } });
    expect(weatherFromCsv('Date;Rain\n2027-05-01;0.5\n', after)).toMatchObject({ edit: undefined, changes: [] });
  });

  it('takes temperatures in beside the rain, each reading a change', () => {
    const preview = weatherFromCsv('date,rain,tmin,tmax\n2027-05-01,0.25,50,71.5\n2027-05-02,,48,\n', plan);
    expect(preview.changes.map(({ reading, to }) => [reading, to])).toEqual([
      ['rain', 0.25],
      ['minTemperature', 50],
      ['maxTemperature', 71.5],
      ['minTemperature', 48],
    ]);
    expect(taken(plan, preview).log?.days).toMatchObject({
      '2027-05-01': { rain: 0.25, minTemperature: 50, maxTemperature: 71.5 },
      '2027-05-02': { minTemperature: 48 },
    });
    expect(preview.edit).toMatchObject({ action: 'import-weather' });
  });

  // 1 in = 25.4 mm exactly (NIST SP 811, appendix B); 10 °C = 50 °F by definition of the scales.
  it('converts what its heading, or else its reader, says is in other units', () => {
    const byHeading = weatherFromCsv('Date,Rain (mm),Low (°C)\n2027-05-01,12.7,10\n', plan);
    expect(byHeading.units).toMatchObject({ rain: 'metric', min: 'metric' });
    expect(byHeading.changes.map(({ to }) => to)).toEqual([0.5, 50]);
    const bySaying = weatherFromCsv('Date,Rain\n2027-05-01,0.5\n', metricGarden(), 'us');
    expect(bySaying.changes.map(({ to }) => to)).toEqual([12.7]);
    // What a heading says counts for more.
    expect(weatherFromCsv('Date,Rain in\n2027-05-01,0.5\n', plan, 'metric').changes[0]?.to).toBe(0.5);
  });

  it('keeps every digit where nothing is to be converted', () => {
    expect(weatherFromCsv('Date,Rain\n2027-05-01,0.123456\n', plan).changes[0]?.to).toBe(0.123456);
    expect(weatherFromCsv('Date,Tmin\n2027-05-01,51.37\n', plan).changes[0]?.to).toBe(51.37);
  });

  it('leaves out the days outside the season, and counts them', () => {
    const preview = weatherFromCsv('Date,Rain\n2027-04-04,1\n2027-04-05,1\n2027-10-31,1\n2027-11-01,1\n', plan);
    expect(preview.changes.map(({ day }) => day)).toEqual(['2027-04-05', '2027-10-31']);
    expect(preview.outside).toBe(2);
  });

  it('refuses a temperature that disagrees with the one the plan has of that day', () => {
    const before = applyEdit(plan, { type: 'set-day-weather', day: '2027-05-01', weather: { maxTemperature: 60 } });
    const preview = weatherFromCsv('Date,Low\n2027-05-01,70\n2027-05-02,50\n', before);
    expect(preview.faults).toEqual([{ code: 'high-below-low-of-day', line: 2, value: '70, 60' }]);
    expect(preview.changes.map(({ day }) => day)).toEqual(['2027-05-02']);
    expect(taken(before, preview).log?.days?.['2027-05-02']).toEqual({ minTemperature: 50, source: 'file' });
  });

  it.each([
    ['a day that does not exist', 'date,rain\n2027-02-30,1\n', { code: 'date', line: 2 }],
    [
      'a day that stood there before',
      'date,rain\n2027-05-01,1\n2027-05-01,2\n',
      { code: 'date-twice', line: 3, before: 2 },
    ],
    ['rain below 0', 'date,rain\n2027-05-01,-1\n', { code: 'rain', line: 2, low: 0, units: 'us' }],
    [
      'more rain than can fall',
      'date,rain mm\n2027-05-01,2001\n',
      { code: 'rain', line: 2, high: 2000, units: 'metric' },
    ],
    ['a formula', 'date,rain\n2027-05-01,=1+1\n', { code: 'rain', line: 2 }],
    ['two decimal marks', 'date;rain\n2027-05-01;0,5,1\n', { code: 'rain', line: 2 }],
    ['no headings', '2027-05-01,1\n', { code: 'weather-headings', line: 1 }],
    ['an empty file', '', { code: 'weather-headings', line: 1 }],
  ] as const)('names the line of %s', (_, text, fault) => {
    const { faults } = weatherFromCsv(text, plan);
    expect(faults).toMatchObject([fault]);
  });
});
