import { expect, it } from 'vitest';
import { findingOf, findingWords } from '../../../src/elements/chart/finding.ts';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { cumulative } from '../../../src/engine/season/cumulative.ts';
import { readerFor } from '../../../src/language/reader.ts';
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

const span = { firstDay: dayNumber('2026-04-05'), weeks: 30 };
const reader = readerFor('en-GB', 'us');
const LITRES_PER_GALLON = 3.785411784;
const litres = 310 * LITRES_PER_GALLON;
const say = (finding: Parameters<typeof findingWords>[0]) =>
  findingWords(finding, span, reader).replaceAll('\u00a0', ' ').replaceAll('\u2060', '');

it('says how much is missing and from when', () => {
  expect(say({ kind: 'short', litres, firstWeek: 14, lastWeek: 29 })).toBe('Short by 310 gal from 12 July');
});

it('says until when, where the shortfall ends before the season', () => {
  expect(say({ kind: 'short', litres, firstWeek: 14, lastWeek: 17 })).toBe(
    'Short by 310 gal between 12 July and 8 August',
  );
});

it('says which week, where only one is short', () => {
  expect(say({ kind: 'short', litres, firstWeek: 14, lastWeek: 14 })).toBe('Short by 310 gal in the week of 12–18 Jul');
});

it('says that demand is met, and how much rain counted', () => {
  const rainLitres = 1240 * LITRES_PER_GALLON;
  expect(say({ kind: 'met', rainLitres, irrigationLitres: 4 * rainLitres, unmetLitres: 0 })).toBe(
    'Enough for every planting; 1,240 gal of rain counted',
  );
});

it('says what is missing all the same, where it is too little to be the finding', () => {
  const rainLitres = 1240 * LITRES_PER_GALLON;
  expect(say({ kind: 'met', rainLitres, irrigationLitres: rainLitres, unmetLitres: 8.7 * LITRES_PER_GALLON })).toBe(
    'Enough but for 8.7 gal; 1,240 gal of rain counted',
  );
});

it('speaks of irrigation where there was next to no rain', () => {
  const irrigationLitres = 5000 * LITRES_PER_GALLON;
  expect(say({ kind: 'met', rainLitres: 1, irrigationLitres, unmetLitres: 0 })).toBe(
    'Enough for every planting, with 5,000 gal of irrigation kept',
  );
});

it('says so where nothing needs water', () => {
  expect(say({ kind: 'nothing-grows' })).toBe('Nothing needs water this season');
});
