import { expect, it } from 'vitest';
import { evaporationEquivalent, MM_PER_MJ } from '../../../src/engine/climate/evaporation-equivalent.ts';

it.each([
  ['FAO-56 Example 8 (p. 47): 32.2 MJ are 13.1 mm', 32.2, 13.1],
  ['FAO-56 Example 10 (p. 50): 14.5 MJ are 5.9 mm', 14.5, 5.9],
  ['FAO-56 Example 15 (p. 61): 22.3 MJ are 9.1 mm', 22.3, 9.1],
] as const)('%s', (_name, radiationMj, publishedMm) => {
  expect(Math.abs(evaporationEquivalent(radiationMj) - publishedMm)).toBeLessThanOrEqual(0.05);
});

it("0.408 is the paper's rounding of 1 / 2.45 (FAO-56 eq. 20)", () => {
  expect(Math.abs(MM_PER_MJ - 1 / 2.45)).toBeLessThanOrEqual(0.0005);
});
