import { describe, expect, it } from 'vitest';
import { keptRowFrom } from '../../../src/elements/start/kept-row.ts';
import type { RowText } from '../../../src/elements/start/plant-row.ts';
import { type ListedPlant, plantList } from '../../../src/exchange/plants/plant-list.ts';
import { oneBed } from '../../support/small-plans.ts';

const { zones } = oneBed();
const EMPTY: RowText = {
  ...{ name: '', plant: '', listed: undefined, need: undefined, size: '' },
  ...{ zone: undefined, from: '', mix: 'potting', isUnderRoof: false },
};
const stored = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a row that was kept', () => {
  it('comes back whole, with every plant of the list', () => {
    const row = (listed: ListedPlant): RowText => ({
      ...EMPTY,
      ...{
        name: 'Hedge',
        plant: listed.names[0] ?? '',
        listed,
        size: '9 plants',
        zone: zones[0]?.id,
        from: '2027-06-14',
      },
      need:
        listed.type === 'crop'
          ? { kind: 'crop', crop: listed.crop, plantedOn: '2027-06-14' }
          : {
              kind: 'class',
              class: listed.class,
              plant: { name: 'Hedge', botanical: listed.botanical, class: listed.class },
            },
      ...{ mix: 'bark', isUnderRoof: true },
    });
    const list = plantList();
    expect(list.length).toBeGreaterThan(250);
    for (const listed of list)
      expect(keptRowFrom(stored(row(listed)), zones)).toEqual({ row: row(listed), isWhole: true });
  });

  it.each([
    ['a text in the place of a row', 'Hedge'],
    ['nothing', null],
    ['a list', [{ name: 'Hedge' }]],
    [
      'fields of other kinds',
      { name: 3, size: {}, from: 'June', mix: 'gravel', isUnderRoof: 'no', zone: 'gone', need: 1, listed: [] },
    ],
    ['a name without end', { ...EMPTY, name: 'x'.repeat(100_000) }],
    ['a crop that is none', { ...EMPTY, need: { kind: 'crop', crop: 'constructor', plantedOn: '2027-06-14' } }],
    [
      'a plant without its spread',
      { ...EMPTY, listed: { type: 'plant', botanical: 'Salvia', class: 'low', kind: 'herb' } },
    ],
    ['fields of objects', JSON.parse('{"__proto__": {"name": "Hedge"}, "toString": 1}')],
  ])('is empty in the place of %s, and says that it is not whole', (_, value) => {
    expect(keptRowFrom(value, zones)).toEqual({ row: EMPTY, isWhole: false });
  });
});
