import { describe, expect, it } from 'vitest';
import { entryWords } from '../../../src/language/en/entry.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';

const reader = readerFor('en-US', 'us');
const format = formatFor(reader);
const words = entryWords(reader.language);
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const GALLON = 3.785411784;

describe('what is said of an entry', () => {
  it('has an example in the plan’s units', () => {
    expect(plain(words.hints.minutes(format, 150 * GALLON))).toBe(
      'Type the minutes of this week, such as 45, 1 h 20 or 150 gal.',
    );
    expect(plain(words.hints.minutes(formatFor(readerFor('en-US', 'metric')), 600))).toContain('600 L');
  });

  it('names a range as a person would', () => {
    expect(plain(words.refused.range(format, '200', 0, 78.7401574803, 'in'))).toBe(
      '“200” does not fit: type a number from 0 to 78.7 in.',
    );
  });

  it('is right of one day and of several', () => {
    expect(plain(words.ownDays.some.rain(format, 'June 8', 1, 25.4))).toBe(
      'June 8 has rain of its own, 1 inch in all.',
    );
    expect(plain(words.ownDays.some.eto(format, 'June 8 and June 9', 2, 11.43))).toBe(
      'June 8 and June 9 have reference ET of their own, 0.45 inches in all.',
    );
  });

  it('says what the timer made of a volume', () => {
    const rounded = { minutes: 123, stepMinutes: 1, days: 3, cycles: 1 };
    expect(plain(words.rounded(format, 150 * GALLON, 148 * GALLON, rounded))).toBe(
      '150 gallons became 148 gallons, 123 minutes: the timer runs in steps of 1 minute on each of 3 days.',
    );
  });

  it('says what the timer made of minutes, and of cycles', () => {
    const rounded = { minutes: 120, stepMinutes: 5, days: 3, cycles: 2 };
    expect(plain(words.settable(format, 105, rounded))).toBe(
      '105 minutes became 120 minutes: the timer runs in steps of 5 minutes in each of 2 cycles on each of 3 days.',
    );
  });
});
