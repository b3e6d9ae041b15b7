import { expect, it } from 'vitest';
import type { Quantity } from '../../../src/engine/units.ts';
import {
  formatAmount,
  formatListed,
  formatQuantity,
  formatSpelledQuantity,
  isWrittenAs0,
  unitSymbol,
  withUnit,
} from '../../../src/language/format/quantity.ts';
import { type Reader, readerFor } from '../../../src/language/reader.ts';

const us = readerFor('en', 'us');
const metric = readerFor('en', 'metric');
/** As a page that has registered German would have it. */
const german: Reader = { ...metric, locale: 'de' };
const LITRES_PER_GALLON = 3.785411784;

it.each<[si: number, quantity: Quantity, inUs: string, inMetric: string]>([
  [1240 * LITRES_PER_GALLON, 'volume', '1,240 gal', '4,694 L'],
  [9.96 * LITRES_PER_GALLON, 'volume', '10 gal', '38 L'],
  [2.345 * LITRES_PER_GALLON, 'volume', '2.3 gal', '8.9 L'],
  [0, 'volume', '0 gal', '0 L'],
  [25.4, 'depth', '1.00 in', '25.4 mm'],
  [8.89, 'depth', '0.35 in', '8.9 mm'],
  [0.3048, 'spacing', '12 in', '30 cm'],
  [3.4, 'emitterFlow', '0.9 gph', '3.4 L/h'],
  [9.290304, 'area', '100 sq ft', '9.29 m²'],
  [20, 'temperature', '68 °F', '20 °C'],
  [172.36893, 'pressure', '25 psi', '172 kPa'],
])('writes %d of %s as %s and %s', (si, quantity, inUs, inMetric) => {
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  expect(plain(formatQuantity(si, quantity, us))).toBe(inUs);
  expect(plain(formatQuantity(si, quantity, metric))).toBe(inMetric);
});

it.each([
  [9.94, '9.9 L'],
  [9.96, '10 L'],
  [-9.96, '-10 L'],
])('writes what rounds up to ten as ten: %d', (litres, written) => {
  expect(formatQuantity(litres, 'volume', metric).replace('\u00a0', ' ')).toBe(written);
});

it('spells units out for what is read aloud, in the reader’s own spelling', () => {
  const spelled = (locale: string) => formatSpelledQuantity(1, 'volume', readerFor(locale, 'metric'));
  expect([spelled('en-US'), spelled('en-GB')]).toEqual(['1\u00a0liter', '1\u00a0litre']);
  expect(formatSpelledQuantity(60 * LITRES_PER_GALLON, 'volume', us)).toBe('60\u00a0gallons');
  // Zeros that line columns up are not read aloud.
  expect(formatSpelledQuantity(7.62, 'depth', us)).toBe('0.3\u00a0inches');
});

it('tells what is written as nought', () => {
  expect([0.126, 0.128].map((mm) => isWrittenAs0(mm, 'depth', us))).toEqual([true, false]);
  expect(formatAmount(0.126, 'depth', us)).toBe('0.00');
});

it('names a unit alone', () => {
  expect([unitSymbol('area', us), unitSymbol('area', metric)]).toEqual(['sq ft', 'm²']);
});

it('binds a number to its unit with a space that does not break', () => {
  expect(formatQuantity(LITRES_PER_GALLON, 'volume', us)).toBe('1\u00a0gal');
});

it('never writes a minus before nothing', () => {
  expect(formatAmount(-0.0001, 'volume', us)).toBe('0');
});

it('writes a dash, without a unit, for what cannot be told', () => {
  expect(formatQuantity(Number.NaN, 'volume', us)).toBe('–');
  expect(withUnit('12', '')).toBe('12');
});

it('groups and points numbers as the locale does', () => {
  expect(formatAmount(1234567, 'volume', german)).toBe('1.234.567');
  expect(formatAmount(8.89, 'depth', german)).toBe('8,9');
});

it('writes what stands in one list with as many decimals', () => {
  const plain = (gpm: number, reader: Reader) =>
    formatListed(gpm * LITRES_PER_GALLON, 'supplyFlow', reader).replaceAll('\u00a0', ' ');
  expect([0.9, 1.65, 2.5, 12].map((gpm) => plain(gpm, us))).toEqual(['0.90 gpm', '1.65 gpm', '2.50 gpm', '12.00 gpm']);
  expect([0.9, 12].map((gpm) => plain(gpm, metric))).toEqual(['3.4 L/min', '45.4 L/min']);
});
