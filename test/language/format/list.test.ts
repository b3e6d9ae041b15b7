import { describe, expect, it } from 'vitest';
import { formatList } from '../../../src/language/format/list.ts';

// The forms are those of the Unicode Common Locale Data Repository, as the runtime brings them.
describe('formatList', () => {
  it.each([
    ['en-US', ['Mint', 'sage', 'thyme'], 'Mint, sage, and thyme'],
    ['en-GB', ['Mint', 'sage', 'thyme'], 'Mint, sage and thyme'],
    ['de', ['Minze', 'Salbei'], 'Minze und Salbei'],
    ['en-US', ['Mint'], 'Mint'],
    ['en-US', [], ''],
  ])('in %s: %j is “%s”', (locale, items, text) => {
    expect(formatList(items, locale)).toBe(text);
  });
});
