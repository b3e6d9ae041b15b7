import { describe, expect, test } from 'vitest';
import { uniformRandom } from '../../src/engine/random.ts';

const MASK = 0xffffffffn;

/** The published C lines, in whole numbers of any size cut to 32 bits. */
function published(seed: bigint): () => number {
  let x = seed & MASK;
  return () => {
    x = (x + 0x6d2b79f5n) & MASK;
    let z = x;
    z = ((z ^ (z >> 15n)) * (z | 1n)) & MASK;
    z ^= (z + (((z ^ (z >> 7n)) * (z | 61n)) & MASK)) & MASK;
    return Number(z ^ (z >> 14n));
  };
}

function numbers(seed: number, count: number): readonly number[] {
  return Array.from({ length: count }, uniformRandom(seed));
}

describe('random numbers', () => {
  test.each([0, 1, 1986, -1, 2 ** 31])(
    'mulberry32 (Ettinger 2017), seed %d: the numbers of the published lines',
    (seed) => {
      const expected = Array.from({ length: 2000 }, published(BigInt(seed)));
      expect(numbers(seed, 2000).map((number) => number * 2 ** 32)).toEqual(expected);
    },
  );

  test('are the same for a seed, and others for another', () => {
    expect(numbers(7, 5)).toEqual(numbers(7, 5));
    expect(numbers(8, 5)).not.toEqual(numbers(7, 5));
  });

  // Chi-square of 99 degrees of freedom lies between 61.1 and 149 in all but two cases of a thousand (NIST/SEMATECH e-Handbook,
  // 1.3.6.7.4, from memory).
  test('fill a hundred equal parts of 0 to 1 alike', () => {
    const counts = new Array<number>(100).fill(0);
    for (const number of numbers(42, 100_000))
      counts[Math.floor(number * 100)] = (counts[Math.floor(number * 100)] ?? 0) + 1;
    const chiSquare = counts.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(counts).toHaveLength(100);
    expect(chiSquare).toBeGreaterThan(61.1);
    expect(chiSquare).toBeLessThan(149);
  });

  test('do not hang on the one before', () => {
    const drawn = numbers(3, 100_000);
    const products = drawn
      .slice(1)
      .reduce((sum, number, index) => sum + (number - 0.5) * ((drawn[index] as number) - 0.5), 0);
    // Four standard errors of a correlation of none.
    expect(Math.abs((products / 100_000) * 12)).toBeLessThan(4 / Math.sqrt(100_000));
  });
});
