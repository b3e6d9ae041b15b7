import { describe, expect, it } from 'vitest';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { tableFromCsv } from '../../../src/exchange/csv/table-from-csv.ts';
import { plan, season } from './mixed-season.ts';

const against = { plan, season };

describe('tableFromCsv', () => {
  it.each([
    ['minutes', 'Zone,2027-04-12\nBeds,45\n', undefined],
    ['rain', 'Date,Rain\n2027-05-01,0.5\n', 'us'],
    ['rain', 'Date,Rain (mm)\n2027-05-01,12\n', undefined],
    ['weather', 'day,tmin,tmax\n2027-05-01,50,70\n', 'us'],
    ['weather', 'day,Low °F,High °F\n2027-05-01,50,70\n', undefined],
  ] as const)('tells a table of %s by its headings', (kind, text, unnamed) => {
    expect(tableFromCsv(text, against)).toMatchObject({ kind, unnamed, rows: 1, faults: [] });
  });

  it.each([
    '',
    'Plant,Price\nTomato,3\n',
    '<html><body></body></html>',
    '{"format":"runnel-plan"}',
    'Date\n2027-05-01\n',
  ])('knows no table in %j', (text) => {
    expect(tableFromCsv(text, against).kind).toBeUndefined();
  });

  it('reads a season that was written out and changed in one figure as that one change', () => {
    const text = seasonToCsv(season, { units: 'us', measures: ['volume', 'minutes', 'rain'], withPlantings: true });
    expect(tableFromCsv(text, against)).toMatchObject({ kind: 'minutes', edit: undefined, changes: [], faults: [] });
    const lines = text.split('\r\n');
    const at = lines.findIndex((line) => line.startsWith('Beds,,Minutes'));
    const cells = lines[at]?.split(',') ?? [];
    cells[5] = '33';
    const changed = lines.with(at, cells.join(',')).join('\r\n');
    expect(tableFromCsv(changed, against)).toMatchObject({
      changes: [{ reading: 'minutes', zone: 'Beds', day: '2027-04-12', from: undefined, to: 33 }],
    });
  });
});
