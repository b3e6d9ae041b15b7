import { describe, expect, it } from 'vitest';
import { parseNumber } from '../../../src/sheet/entry/parse-number.ts';

describe('parseNumber reads', () => {
  it.each([
    ['45', 'en-US', 45],
    [' 45 ', 'en-US', 45],
    ['1204.5', 'en-US', 1204.5],
    ['.5', 'en-US', 0.5],
    ['-3', 'en-US', -3],
    ['−3', 'en-US', -3],
    ['+3', 'en-US', 3],
    ['1,204.5', 'en-US', 1204.5],
    ['1,204,000', 'en-US', 1_204_000],
    ['1 204', 'en-US', 1204],
    ['1 204 567.5', 'en-US', 1_204_567.5],
    ['- 3', 'en-US', -3],
    ["1'204", 'de-CH', 1204],
    ['1204,5', 'de-DE', 1204.5],
    ['1.204,5', 'de-DE', 1204.5],
    ['475,962', 'de-DE', 475.962],
    ['1\u202f204,5', 'fr-FR', 1204.5],
    ['٤٥', 'ar-EG', 45],
    ['0.475', 'en-US', 0.475],
  ])('%s in %s', (text, locale, value) => {
    expect(parseNumber(text, locale)).toEqual({ kind: 'number', value });
  });
});

describe('parseNumber refuses', () => {
  it.each([
    ['475,962', 'en-US', '“475,962” could be 475962 or 475.962: write it one of these two ways'],
    ['1.204', 'de-DE', '“1.204” could be 1204 or 1,204: write it one of these two ways'],
    ['0,5', 'en-US', '“0,5” is not a number here: write the decimal mark as “.”'],
    ['0.5', 'de-DE', '“0.5” is not a number here: write the decimal mark as “,”'],
    ['1.2.3', 'en-US', '“1.2.3” is not a number'],
    // What parts thousands stands before three digits; anywhere else it parts two numbers.
    ['1 20', 'en-US', '“1 20” is not a number'],
    ["1'2", 'de-CH', "“1'2” is not a number"],
    ['1 2045', 'en-US', '“1 2045” is not a number'],
    ['1.2,3', 'en-US', '“1.2,3” is not a number'],
    ['abc', 'en-US', '“abc” is not a number'],
    ['1e3', 'en-US', '“1e3” is not a number'],
    ['=1+1', 'en-US', '“=1+1” is not a number'],
    ['', 'en-US', '“” is not a number'],
    ['.', 'en-US', '“.” is not a number'],
    ['Infinity', 'en-US', '“Infinity” is not a number'],
  ])('%s in %s', (text, locale, why) => {
    expect(parseNumber(text, locale)).toEqual({ kind: 'unread', why });
  });
});

it('parseNumber reads back what the locale writes, for every number of minutes', () => {
  for (const locale of ['en-US', 'de-DE', 'fr-FR', 'sv-SE', 'de-CH', 'ar-EG']) {
    const format = new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: 2 });
    for (const value of [0, 0.25, 7.5, 38, 999.99, 10_080]) {
      expect(parseNumber(format.format(value), locale)).toEqual({ kind: 'number', value });
    }
  }
});
