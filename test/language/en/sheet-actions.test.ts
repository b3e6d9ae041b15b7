import { describe, expect, it } from 'vitest';
import { sheetActionsWords } from '../../../src/language/en/sheet-actions.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';

const reader = readerFor('en-US', 'us');
const format = formatFor(reader);
const words = sheetActionsWords(reader.language);
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('what is said of a change of cells', () => {
  it('is right of one and of several', () => {
    expect([1, 2].map((count) => plain(words.menu.openOn(format, count)))).toEqual(['1 day', '2 days']);
    expect([1, 2].map((count) => words.menu.hideWeeks(format, count))).toEqual(['Hide this week', 'Hide these weeks']);
    expect([1, 2].map((count) => plain(words.announced.copied.rain(format, count)))).toEqual([
      '1 cell copied as rain counted.',
      '2 cells copied as rain counted.',
    ]);
    expect([1, 2].map((count) => plain(words.beyond(format, count)))).toEqual([
      '1 cell lies beyond the end of the sheet and was not pasted.',
      '2 cells lie beyond the end of the sheet and were not pasted.',
    ]);
    expect([1, 2].map((count) => plain(words.partly(format, 4, 6, count)))).toEqual([
      '4 of 6 cells changed; 1 stays as it was.',
      '4 of 6 cells changed; 2 stay as they were.',
    ]);
  });

  it('names some cells and counts the rest', () => {
    expect(words.stayWithMore(format, ['Beds, week of June 7', 'Beds, week of June 14'], 3, 'Why.')).toBe(
      'Beds, week of June 7; Beds, week of June 14 and 3 more: Why.',
    );
  });
});
