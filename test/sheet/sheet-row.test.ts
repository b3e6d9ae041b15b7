import { describe, expect, it } from 'vitest';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { type SheetRow, seasonRows } from '../../src/sheet/sheet-row.ts';
import { PLAIN_VIEW, type SheetView } from '../../src/sheet/sheet-view.ts';
import { mixedGarden } from '../support/small-plans.ts';

const season = computeSeason(mixedGarden());

const nameOf = (row: SheetRow): string => {
  if (row.kind === 'zone') return row.zone.zone.name;
  return row.kind === 'planting' ? `- ${row.planting.planting.name}` : row.kind;
};
const rowsIn = (change: Partial<SheetView>) => seasonRows(season, { ...PLAIN_VIEW, ...change }).map(nameOf);

describe('seasonRows', () => {
  it('puts the weather first, the zones in the plan’s order, the total last', () => {
    expect(rowsIn({})).toEqual(['eto', 'rain', 'Beds', 'Containers', 'total']);
  });

  it('shows an open zone’s plantings beneath it', () => {
    expect(rowsIn({ open: new Set(['beds']) })).toEqual([
      ...['eto', 'rain', 'Beds', '- Tomatoes', '- Shrubs', 'Containers', 'total'],
    ]);
  });

  it.each([
    ['a zone’s name', 'CONT', ['Containers']],
    ['a planting’s name', 'shrub', ['Beds']],
    ['anything for a blank', ' ', ['Beds', 'Containers']],
    ['nothing', 'zzz', []],
  ])('finds %s', (_name, find, zones) => {
    expect(rowsIn({ find })).toEqual(['eto', 'rain', ...zones, 'total']);
  });

  it('keeps the zones that have a week in a state', () => {
    expect(rowsIn({ state: 'closed' })).toEqual(['eto', 'rain', 'Containers', 'total']);
  });

  it.each([
    ['name', ['Beds', 'Containers']],
    ['volume', ['Beds', 'Containers']],
  ] as const)('sorts by %s', (sort, zones) => {
    const backwards = computeSeason({ ...mixedGarden(), zones: [...mixedGarden().zones].reverse() });
    const rows = seasonRows(backwards, { ...PLAIN_VIEW, sort }).map(nameOf);
    expect(rows).toEqual(['eto', 'rain', ...zones, 'total']);
    expect(backwards.zones.map(({ zone }) => zone.name)).toEqual(['Containers', 'Beds']);
  });

  it('sorts names as the reader’s language does', () => {
    const zones = mixedGarden().zones.map((zone, at) => ({ ...zone, name: at === 0 ? 'Örter' : 'Zucchini' }));
    const named = computeSeason({ ...mixedGarden(), zones });
    const view = { ...PLAIN_VIEW, sort: 'name' } as const;
    expect(seasonRows(named, view, 'sv').map(nameOf).slice(2, 4)).toEqual(['Zucchini', 'Örter']);
    expect(seasonRows(named, view, 'de').map(nameOf).slice(2, 4)).toEqual(['Örter', 'Zucchini']);
  });

  it('sorts the zone with most weeks dry and short first', () => {
    const summer = ['2027-06-07', '2027-06-14', '2027-06-21', '2027-06-28', '2027-07-05'];
    const dry = computeSeason({
      ...mixedGarden(),
      choices: { containers: Object.fromEntries(summer.map((week) => [week, { minutes: 0 }])) },
    });
    expect(seasonRows(dry, { ...PLAIN_VIEW, sort: 'trouble' }).map(nameOf)[2]).toBe('Containers');
  });
});
