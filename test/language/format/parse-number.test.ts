import { describe, expect, it } from 'vitest';
import { parseNumber } from '../../../src/language/format/parse-number.ts';
import { BRITISH_ENGLISH, type Language } from '../../../src/language/language.ts';

/** English words, and numbers as the locale writes them. */
const writing = (locale: string): Language => ({ ...BRITISH_ENGLISH, locale });

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
    expect(parseNumber(text, writing(locale))).toEqual({ kind: 'number', value });
  });
});

describe('parseNumber refuses', () => {
  it.each([
    ['475,962', 'en-US', 'ambiguous'],
    ['1.204', 'de-DE', 'ambiguous'],
    ['0,5', 'en-US', 'decimal-mark'],
    ['0.5', 'de-DE', 'decimal-mark'],
    ['1.2.3', 'en-US', 'not-a-number'],
    // What parts thousands stands before three digits; anywhere else it parts two numbers.
    ['1 20', 'en-US', 'not-a-number'],
    ["1'2", 'de-CH', 'not-a-number'],
    ['1 2045', 'en-US', 'not-a-number'],
    ['1.2,3', 'en-US', 'not-a-number'],
    ['abc', 'en-US', 'not-a-number'],
    ['1e3', 'en-US', 'not-a-number'],
    ['=1+1', 'en-US', 'not-a-number'],
    ['', 'en-US', 'not-a-number'],
    ['.', 'en-US', 'not-a-number'],
    ['Infinity', 'en-US', 'not-a-number'],
  ])('%s in %s', (text, locale, code) => {
    expect(parseNumber(text, writing(locale))).toEqual({
      kind: 'unread',
      code,
      why: expect.stringContaining(`“${text}”`),
    });
  });
});

it('parseNumber reads back what the locale writes, for every number of minutes', () => {
  for (const locale of ['en-US', 'de-DE', 'fr-FR', 'sv-SE', 'de-CH', 'ar-EG']) {
    const format = new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: 2 });
    for (const value of [0, 0.25, 7.5, 38, 999.99, 10_080]) {
      expect(parseNumber(format.format(value), writing(locale))).toEqual({ kind: 'number', value });
    }
  }
});
