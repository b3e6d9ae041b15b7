import { expect, it } from 'vitest';
import { WEATHER_ESTIMATES } from '../../../src/engine/climate/weather-estimates.ts';

it('every estimate says in words what was estimated and on whose word', () => {
  for (const words of Object.values(WEATHER_ESTIMATES)) {
    expect(words).toMatch(/^(humidity|radiation|wind|elevation) .+ \((FAO-56 (eq\.|p\.) \d+|our assumption)\)$/);
  }
});
