import { expect, it } from 'vitest';
import { findingOf } from '../../../src/elements/chart/finding.ts';
import { cumulative } from '../../../src/engine/season/cumulative.ts';
import { supplyBlock } from '../shared/supply-block.ts';

it('finds nothing growing where nothing is demanded', () => {
  const block = supplyBlock({ demandLitres: [0, 0, 0], rainStayedLitres: [0, 0, 0] });
  expect(findingOf(cumulative(block))).toEqual({ kind: 'nothing-grows' });
});

it('finds that nothing is known where no climate is given, whatever was logged', () => {
  const block = supplyBlock({ demandLitres: [0, 0, 0], rainStayedLitres: [5, 0, 0] });
  expect(findingOf(cumulative(block), false)).toEqual({ kind: 'no-climate' });
});

it('finds demand met, with the rain and irrigation that met it', () => {
  const block = supplyBlock({
    demandLitres: [100, 100],
    usedLitres: [100, 100],
    rainStayedLitres: [30, 10],
    irrigationStayedLitres: [70, 90],
  });
  expect(findingOf(cumulative(block))).toEqual({ kind: 'met', rainLitres: 40, irrigationLitres: 160, unmetLitres: 0 });
});

it('takes less than half a litre for rounding, not for a shortfall', () => {
  const block = supplyBlock({ demandLitres: [100, 100], usedLitres: [99.8, 99.8] });
  expect(findingOf(cumulative(block))).toMatchObject({ kind: 'met', unmetLitres: 0 });
});

it('tells less than a two-hundredth of the demand beside the finding', () => {
  const block = supplyBlock({ demandLitres: [1000, 1000], usedLitres: [996, 995] });
  expect(findingOf(cumulative(block))).toMatchObject({ kind: 'met', unmetLitres: 9 });
  const more = supplyBlock({ demandLitres: [1000, 1000], usedLitres: [995, 995] });
  expect(findingOf(cumulative(more))).toMatchObject({ kind: 'short', litres: 10 });
});

it('finds a shortfall by its first and its last short week', () => {
  const block = supplyBlock({ demandLitres: [50, 50, 50, 50, 50], usedLitres: [50, 40, 50, 45, 50] });
  expect(findingOf(cumulative(block))).toEqual({ kind: 'short', litres: 15, firstWeek: 1, lastWeek: 3 });
});

it('finds a shortfall that goes on to the end of the season', () => {
  const block = supplyBlock({ demandLitres: [50, 50, 50], usedLitres: [50, 40, 40] });
  expect(findingOf(cumulative(block))).toEqual({ kind: 'short', litres: 20, firstWeek: 1, lastWeek: 2 });
});
