import { expect, it } from 'vitest';
import { formatDistance } from '../../../src/language/format/distance.ts';

// 1 mile is 1.609344 km, by definition.
it.each([
  [48, 'us', 'en-US', '30 mi'],
  [48, 'metric', 'en-GB', '48 km'],
  [0.4, 'metric', 'en', '0 km'],
  [1126.5, 'us', 'en-US', '700 mi'],
  [1126.5, 'metric', 'de', '1.130 km'],
])('%d km read %s in %s as “%s”', (km, units, locale, expected) => {
  expect(formatDistance(km, { locale, units: units as 'us' | 'metric' }).replaceAll('\u00a0', ' ')).toBe(expected);
});
