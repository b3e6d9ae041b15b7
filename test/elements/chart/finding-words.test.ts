import { expect, it } from 'vitest';
import { findingWords } from '../../../src/elements/chart/finding-words.ts';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { readerFor } from '../../../src/language/reader.ts';

const span = { firstDay: dayNumber('2026-04-05'), weeks: 30 };
const reading = readerFor('en-GB', 'us');
const LITRES_PER_GALLON = 3.785411784;
const litres = 310 * LITRES_PER_GALLON;
const say = (finding: Parameters<typeof findingWords>[0]) =>
  findingWords(finding, span, reading).replaceAll('\u00a0', ' ').replaceAll('\u2060', '');

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
    'Demand is met all season; 1,240 gal of rain counted',
  );
});

it('says what is missing all the same, where it is too little to be the finding', () => {
  const rainLitres = 1240 * LITRES_PER_GALLON;
  expect(say({ kind: 'met', rainLitres, irrigationLitres: rainLitres, unmetLitres: 8.7 * LITRES_PER_GALLON })).toBe(
    'Demand is met but for 8.7 gal; 1,240 gal of rain counted',
  );
});

it('speaks of irrigation where there was next to no rain', () => {
  const irrigationLitres = 5000 * LITRES_PER_GALLON;
  expect(say({ kind: 'met', rainLitres: 1, irrigationLitres, unmetLitres: 0 })).toBe(
    'Demand is met all season, with 5,000 gal of irrigation at the roots',
  );
});

it('says so where nothing needs water', () => {
  expect(say({ kind: 'nothing-grows' })).toBe('Nothing needs water this season');
});
