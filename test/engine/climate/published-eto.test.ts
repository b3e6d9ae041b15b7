import { describe, expect, it } from 'vitest';
import { PUBLISHED_ETO } from '../../../src/engine/climate/published-eto.data.ts';
import { CALIFORNIA_ZONES, ORDINANCE_ROWS } from './published-monthly-eto.ts';

describe('PUBLISHED_ETO', () => {
  // The totals of the year are printed apart from the months (Sacramento's are as its months add up).
  it.each([...ORDINANCE_ROWS, ...CALIFORNIA_ZONES])('%s adds up to its published year', (place, _, total) => {
    const row = PUBLISHED_ETO.find(({ id }) => id.endsWith(place.toLowerCase().replaceAll(' ', '-')));
    const inches = (row?.etoMm ?? []).reduce((sum, mm) => sum + mm / 25.4, 0);
    expect(inches).toBeCloseTo(total, 1);
  });

  it('gives twelve months, a source and an id of its own for each place', () => {
    expect(new Set(PUBLISHED_ETO.map(({ id }) => id)).size).toBe(PUBLISHED_ETO.length);
    for (const { etoMm, source } of PUBLISHED_ETO) {
      expect(etoMm).toHaveLength(12);
      expect(source.length).toBeGreaterThan(20);
    }
  });
});
