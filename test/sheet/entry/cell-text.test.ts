import { describe, expect, it } from 'vitest';
import { en } from '../../../src/language/en.ts';
import { loadLanguage } from '../../../src/language/languages.ts';
import { registerLanguage } from '../../../src/language/register-language.ts';
import type { Measure } from '../../../src/sheet/sheet-view.ts';
import { mixedGarden, oneBed, zone } from '../../support/small-plans.ts';
import { cellOf, sheetOf } from '../sheet-of.ts';

const plan = oneBed({ choices: { beds: { '2027-06-14': { minutes: 1050 } } } });

function copied(row: string, at: string, measure: Measure, locale = 'en-US'): string {
  const sheet = sheetOf(plan, { locale });
  sheet.show({ measure });
  return sheet.copyText(cellOf(sheet, row, at));
}

describe('a copied cell is a bare number', () => {
  // 72 gph for 1050 minutes (see the cells) are 1260 gal: no comma, no unit.
  it.each<[Measure, string]>([
    ['volume', '1260'],
    ['minutes', '1050'],
    ['all', '1050'],
  ])('of what is shown: %s', (measure, text) => {
    expect(copied('beds', '2027-06-14', measure)).toBe(text);
  });

  it('in the reader’s decimals', async () => {
    registerLanguage('de', () => en);
    await loadLanguage('de');
    expect(copied('eto', '2027-06-14', 'all')).toMatch(/^1\.\d{1,3}$/);
    expect(copied('eto', '2027-06-14', 'all', 'de-DE')).toMatch(/^1,\d{1,3}$/);
  });

  it('empty where the cell is', () => {
    const sheet = sheetOf(oneBed({ season: { firstDay: '2027-04-05', weeks: 12 } }));
    expect(sheet.copyText(cellOf(sheet, 'beds', '2027-04-05'))).toBe('');
  });
});

it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', ' =1', '＝1+1'])(
  'a name that begins like a formula goes out as text: %s',
  (name) => {
    const sheet = sheetOf(oneBed({ zones: [zone({ name })] }));
    expect(sheet.copyText(cellOf(sheet, 'beds', 'name'))).toBe(`'${name}`);
  },
);

it('any other name goes out as it is', () => {
  const sheet = sheetOf(oneBed({ zones: [zone({ name: '<b>Beds</b> = 3-4' })] }));
  expect(sheet.copyText(cellOf(sheet, 'beds', 'name'))).toBe('<b>Beds</b> = 3-4');
});

describe('what a copied cell is typed as', () => {
  it.each([
    ['beds', '2027-07-05', '120 min'],
    ['shrubs', '2027-07-12', '1 day'],
    ['rain', '2027-05-03', '0.3 in'],
  ])('enters the same again: %s', (row, at, text) => {
    const sheet = sheetOf(mixedGarden());
    for (const measure of ['all', 'volume', 'minutes'] as const) {
      sheet.show({ measure });
      const cell = cellOf(sheet, row, at);
      expect(sheet.typedText(cell)).toBe(text);
      expect(sheet.read(cell, text)).toEqual({ kind: 'same' });
    }
  });
});
