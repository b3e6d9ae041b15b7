import { describe, expect, it } from 'vitest';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { tableFromCsv } from '../../../src/exchange/csv/table-from-csv.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { mixedGarden, oneBed, tomatoes, zone } from '../../support/small-plans.ts';
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

  it('finds a zone whose name an earlier version wrote in two lines', () => {
    const named = mixedGarden({ zones: [zone({ name: 'Beds by the wall' })] });
    const text = 'Zone,2027-04-12\r\n"Beds\r\nby\tthe wall",45\r\n';
    expect(tableFromCsv(text, { plan: named, season: undefined })).toMatchObject({
      faults: [],
      changes: [{ zone: 'Beds by the wall', to: 45 }],
    });
  });

  it('takes back what a season runs, however long: all day, every day', () => {
    const lines = [{ kind: 'dripline', flow: 0.6, spacing: 12, layout: { kind: 'length', length: 1 } }] as const;
    const field = tomatoes({ extent: { kind: 'area', area: 1_000_000 }, lines: [...lines] });
    const dry = oneBed({
      zones: [zone({ wateringDays: 7, timerStepMinutes: 120, startsADay: 24, plantings: [field] })],
    });
    const run = computeSeason(dry);
    const minutes = run.zones[0] === undefined ? 0 : zoneFigure(run.zones[0], 'minutes', 1);
    expect(minutes).toBeGreaterThanOrEqual(10_080);
    const text = seasonToCsv(run, { units: 'us', measures: ['minutes'] });
    expect(tableFromCsv(text, { plan: dry, season: run })).toMatchObject({ faults: [], changes: [] });
  });
});
