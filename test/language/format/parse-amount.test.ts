import { describe, expect, it } from 'vitest';
import { entryWords } from '../../../src/language/en/entry.ts';
import { units } from '../../../src/language/en/units.ts';
import { parseAmount } from '../../../src/language/format/parse-amount.ts';
import { parseUnit } from '../../../src/language/format/parse-unit.ts';
import type { Language } from '../../../src/language/language.ts';
import { languageFor } from '../../../src/language/languages.ts';

const english = languageFor('en-US');
/** As a page that has registered German would have it. */
const german: Language = {
  locale: 'de-DE',
  isUs: false,
  areas: {
    entry: entryWords(english),
    units: { ...units, typed: { ...units.typed, h: ['std', 'stunden'], gal: ['gallonen'] }, typedOf: ['von'] },
  },
};

describe('parseAmount reads', () => {
  it.each([
    ['45', 45, undefined],
    ['45 min', 45, 'min'],
    ['45min.', 45, 'min'],
    ['1 h 20', 80, 'min'],
    ['1h20m', 80, 'min'],
    ['1 h. 20 min.', 80, 'min'],
    ['1.5 h', 90, 'min'],
    ['2 hours', 120, 'min'],
    ['1:20', 80, 'min'],
    ['150 gal', 150, 'gal'],
    ['150 Gallons', 150, 'gal'],
    ['568 L', 568, 'L'],
    ['568 liters', 568, 'L'],
    ['0.4 in', 0.4, 'in'],
    ['0.4"', 0.4, 'in'],
    ['10 mm', 10, 'mm'],
    ['3 of 5', 3, 'day'],
    ['3 of 5 days', 3, 'day'],
    ['3/5', 3, 'day'],
    ['3 days', 3, 'day'],
  ])('%s', (text, value, unit) => {
    expect(parseAmount(text, english)).toEqual({ kind: 'amount', value, unit });
  });

  it('nothing as nothing', () => {
    expect(parseAmount('  ', english)).toEqual({ kind: 'empty' });
  });
});

it.each([
  ['1,5 Std. 20', 110, 'min'],
  ['2 Stunden', 120, 'min'],
  ['3 von 5', 3, 'day'],
  ['150,5 Gallonen', 150.5, 'gal'],
  // English is always read as well.
  ['1 h 20', 80, 'min'],
  ['150 gal', 150, 'gal'],
  ['3 of 5', 3, 'day'],
])('parseAmount reads the words of another language, and English: %s', (text, value, unit) => {
  expect(parseAmount(text, german)).toEqual({ kind: 'amount', value, unit });
});

const { unread } = entryWords(english);

it.each([
  ['45 foo', 'no-unit', unread['no-unit']('foo')],
  ['abc', 'not-a-number', unread['not-a-number']('abc')],
  ['min', 'not-a-number', unread['not-a-number']('min')],
  ['45 50 min', 'not-a-number', unread['not-a-number']('45 50')],
  ['45 min 30', 'not-a-number', unread['not-a-number']('45 min 30')],
  ['1 h 20 in', 'not-a-number', unread['not-a-number']('1 h 20 in')],
  ['3 of 15', 'not-a-number', unread['not-a-number']('3 of 15')],
  ['1 h -20', 'minutes-beyond-59', unread['minutes-beyond-59']],
  ['1 h 75', 'minutes-beyond-59', unread['minutes-beyond-59']],
  ['475,962 min', 'ambiguous', unread.ambiguous('475,962', '475962', '475.962')],
])('parseAmount says why it cannot read %s', (text, code, why) => {
  expect(parseAmount(text, english)).toEqual({ kind: 'unread', code, why });
});

it('parseUnit knows a unit by any of its words', () => {
  expect(['in', 'Inches', '″', 'Celsius', 'constructor'].map((word) => parseUnit(word, english))).toEqual([
    'in',
    'in',
    'in',
    '°C',
    undefined,
  ]);
});
