import { describe, expect, it } from 'vitest';
import { CAUTION_IDS } from '../../src/explain/notices/cautions.ts';
import { cautionWords } from '../../src/language/en/cautions.ts';
import { formatFor } from '../../src/language/format/format.ts';
import { readerFor } from '../../src/language/reader.ts';

const us = readerFor('en-US', 'us');
const british = readerFor('en-GB', 'metric');

describe('cautions', () => {
  it.each([
    ['US English', us],
    ['other English', british],
  ])('all have words in %s', (_, { language }) => {
    for (const id of CAUTION_IDS) expect(cautionWords(language).full[id].length).toBeGreaterThan(20);
  });

  it('tell US readers whom to call before they dig, and others to have services located', () => {
    expect(cautionWords(us.language).full.digging).toMatch(/underground utilities marked .* call 811/);
    expect(cautionWords(british.language).full.digging).toMatch(/buried services/);
    expect(cautionWords(british.language).full.digging).not.toContain('811');
  });

  it('say that shut-offs ask for another kind of backflow preventer', () => {
    expect(cautionWords(us.language).full.backflow).toMatch(/shut-off/);
  });

  it('are named beside a remedy, in a list', () => {
    const words = cautionWords(us.language);
    expect(words.checkFirst(formatFor(us), ['codes'])).toBe('Check local codes first (below).');
    expect(words.checkFirst(formatFor(us), ['backflow', 'digging', 'codes'])).toBe(
      'Check backflow protection, underground utilities, and local codes first (below).',
    );
    expect(cautionWords(british.language).checkFirst(formatFor(british), ['digging', 'codes'])).toBe(
      'Check buried services and local codes first (below).',
    );
  });
});
