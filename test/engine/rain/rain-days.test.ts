import { describe, expect, test } from 'vitest';
import { gammaCumulative } from '../../../src/engine/rain/gamma-distribution.ts';
import {
  assumedRainDays,
  type RainMonth,
  rainChain,
  rainDayShare,
  rainDepths,
} from '../../../src/engine/rain/rain-days.ts';
import { cityRain } from './city-rain.ts';

describe('assumed rain days', () => {
  test.each([
    [0, 30, 0, 'none without rain'],
    [3, 30, 1, 'at least one'],
    [80, 31, 10, 'one for each 8 mm'],
    [400, 30, 18, 'at most 0.6 of the month'],
  ])('%d mm in %d days: %d (%s)', (rainMm, monthDays, expected) => {
    expect(assumedRainDays(rainMm, monthDays)).toBeCloseTo(expected, 12);
  });
});

describe('the share of rain days', () => {
  test.each<[RainMonth, number, string]>([
    [{ rainMm: 60, rainDays: 12, monthDays: 30 }, 0.4, 'as known'],
    [{ rainMm: 60, rainDays: 45, monthDays: 30 }, 1, 'never more than the month has'],
    [{ rainMm: 48, rainDays: 0, monthDays: 30 }, 0.2, 'assumed where a month with rain has none'],
    [{ rainMm: 48, monthDays: 30 }, 0.2, 'assumed where not known'],
    [{ rainMm: 0, rainDays: 4, monthDays: 30 }, 0, 'none without rain'],
    [{ rainMm: 1.2, rainDays: 10, monthDays: 30 }, 4 / 30, 'no more than have 0.3 mm each'],
  ])('%o: %d, %s', (month, expected) => {
    expect(rainDayShare(month)).toBeCloseTo(expected, 12);
  });
});

describe('the chain of rain days', () => {
  test('Geng and others 1986: 0.75 f after a dry day, 0.25 + 0.75 f after a rain day', () => {
    expect(rainChain(0.4)).toEqual({ afterDry: 0.30000000000000004, afterWet: 0.55 });
  });

  test.each([0.05, 0.3, 0.8, 1])('keeps its share of rain days, %d', (share) => {
    const { afterDry, afterWet } = rainChain(share);
    expect(share * afterWet + (1 - share) * afterDry).toBeCloseTo(share, 12);
    // Days that do not hang on each other keep it too, and are another chain.
    expect(afterWet - afterDry).toBeCloseTo(0.25, 12);
  });

  // The relation is of the world as a whole: one city's rain is more persistent than it, the other's less.
  test.each([
    ['Seattle', 0.02, 0.12],
    ['New York', -0.1, 0],
  ] as const)('%s: rain after rain, 2012 to 2015, beyond that of the chain by %d to %d', (city, least, most) => {
    const { rainMm } = cityRain(city);
    const pairs = rainMm.slice(1).filter((_, index) => (rainMm[index] as number) > 0);
    const persistence = pairs.filter((mm) => mm > 0).length / pairs.length;
    const { afterWet } = rainChain(rainMm.filter((mm) => mm > 0).length / rainMm.length);
    expect(persistence - afterWet).toBeGreaterThan(least);
    expect(persistence - afterWet).toBeLessThan(most);
  });
});

describe('depths of rain days', () => {
  test.each([
    [3, 0.9009, 3.33],
    [5, 0.7153, 6.99],
    [10, 0.6196, 16.14],
    [20, 0.5807, 34.44],
    [2.9, 1, 2.9],
    [0.5, 1, 0.5],
  ])('Geng and others 1986: a mean of %d mm has shape %d and scale %d mm', (meanMm, shape, scaleMm) => {
    const depths = rainDepths(meanMm);
    expect(depths.shape).toBeCloseTo(shape, 4);
    expect(depths.scaleMm).toBeCloseTo(scaleMm, 10);
    expect(depths.shape * depths.scaleMm).toBeCloseTo(meanMm, 10);
  });

  // Half a reading below each depth, since the file has hundredths of an inch as tenths of a millimetre.
  test.each(['Seattle', 'New York'] as const)(
    '%s, 2012 to 2015: as many rain days reach a depth, to 7 in 100',
    (city) => {
      const wet = cityRain(city).rainMm.filter((mm) => mm > 0);
      const meanMm = wet.reduce((sum, mm) => sum + mm, 0) / wet.length;
      const { shape, scaleMm } = rainDepths(meanMm);
      const worst = (one: number, scale: number): number =>
        Math.max(
          ...[0.95, 2, 5, 10, 20, 40].map((mm) => {
            const reach = wet.filter((depth) => depth >= mm).length / wet.length;
            return Math.abs(reach - (1 - gammaCumulative(mm / scale, one)));
          }),
        );
      expect(worst(shape, scaleMm)).toBeLessThan(0.07);
      // Exponential depths of the same mean would be further off.
      expect(worst(1, meanMm)).toBeGreaterThan(0.08);
    },
  );
});
