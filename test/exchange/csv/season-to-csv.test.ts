import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { fromSi } from '../../../src/engine/units.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { plan, season } from './mixed-season.ts';

const parse = (text: string) => Papa.parse<string[]>(text, { skipEmptyLines: true }).data;

describe('seasonToCsv', () => {
  it('writes a row for each zone and measure, a column for each week, and the sum', () => {
    const [header, ...rows] = parse(seasonToCsv(season, { units: 'us', measures: ['volume', 'minutes', 'rain'] }));
    expect(header?.slice(0, 5)).toEqual(['Zone', 'Planting', 'Measure', 'Unit', '2027-04-05']);
    expect(header).toHaveLength(4 + 30 + 1);
    expect(rows).toHaveLength(season.zones.length * 3);
    const [zone] = season.zones;
    const gallons = rows[0]?.slice(4, 34).map(Number) ?? [];
    gallons.forEach((value, week) => {
      expect(value).toBeCloseTo(
        fromSi(zoneFigure(zone as NonNullable<typeof zone>, 'litres', week), 'volume', 'us'),
        3,
      );
    });
    expect(Number(rows[0]?.at(-1))).toBeCloseTo(
      gallons.reduce((sum, value) => sum + value, 0),
      2,
    );
  });

  it('writes only the zones that are shown, in their order, with their plantings where asked', () => {
    const ids = season.zones.map(({ zone }) => zone.id).toReversed();
    const rows = parse(seasonToCsv(season, { units: 'metric', measures: ['volume'], zones: ids, withPlantings: true }));
    expect(rows[1]?.[0]).toBe(season.zones.at(-1)?.zone.name);
    expect(rows[1]?.[3]).toBe('L');
    expect(rows).toHaveLength(1 + season.zones.reduce((count, { plantings }) => count + 1 + plantings.length, 0));
  });

  it('leaves out the weeks that are hidden, and writes the plantings of the zones that are unfolded', () => {
    const rows = parse(
      seasonToCsv(season, {
        units: 'us',
        measures: ['minutes'],
        withPlantings: new Set(['containers']),
        withoutWeeks: new Set([0, 2]),
      }),
    );
    expect(rows[0]?.slice(4, 7)).toEqual(['2027-04-12', '2027-04-26', '2027-05-03']);
    expect(rows.slice(1).map(([zone, planting]) => [zone, planting])).toEqual([
      ['Beds', ''],
      ['Containers', ''],
      ['Containers', 'Pots by the door'],
    ]);
    const whole = parse(seasonToCsv(season, { units: 'us', measures: ['minutes'] }));
    expect(rows[1]?.at(-1)).toBe(whole[1]?.at(-1));
  });

  const names = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', ' =1', '=1\n+2', '＝1', '<b>bold</b>', 'a,"b"\nc'];
  it.each(names)('keeps the name %j a name', (name) => {
    const [zone] = plan.zones;
    const named: Plan = { ...plan, zones: [{ ...(zone as NonNullable<typeof zone>), name }] };
    const text = seasonToCsv(computeSeason(named), { units: 'us', measures: ['minutes'] });
    const cell = parse(text)[1]?.[0] ?? '';
    expect(cell).not.toMatch(/^\s*[=+\-@＝]/);
    expect(cell.replace(/^'/, '')).toBe(name);
  });
});
