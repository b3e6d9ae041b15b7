import { expect, it } from 'vitest';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { isSameSelection, validSelection } from '../../src/store/valid-selection.ts';
import { mixedGarden } from '../support/small-plans.ts';

const season = computeSeason(mixedGarden());

it('holds what is in the season, as the same object', () => {
  const selection = { zone: 'beds', planting: 'shrubs', week: 13 };
  expect(validSelection(selection, season)).toBe(selection);
});

it('lets go of what is not there, one by one', () => {
  expect(validSelection({ zone: 'beds', planting: 'pots', week: 99 }, season)).toEqual({
    zone: 'beds',
    planting: undefined,
    week: undefined,
  });
  expect(validSelection({ zone: 'gone', planting: 'shrubs', week: 0 }, season).planting).toBe(undefined);
});

it('holds a section of the editor that is asked for, which makes it another selection', () => {
  const asked = { zone: 'beds', part: 'climate' } as const;
  expect(validSelection(asked, season)).toBe(asked);
  expect(isSameSelection(asked, { zone: 'beds' })).toBe(false);
  expect(validSelection({ ...asked, zone: 'gone' }, season)).toMatchObject({ part: 'climate' });
});
