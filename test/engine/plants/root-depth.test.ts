import { expect, it } from 'vitest';
import { rootDepthM } from '../../../src/engine/plants/root-depth.ts';

/** Tomatoes, FAO-56 Table 11 (30, 40, ...) and Table 22 (0.7 m); 0.15 m at first: FAO-56 ch. 8, from memory. */
const at = (dayNumber: number) => rootDepthM(dayNumber, { iniDays: 30, devDays: 40 }, { initialM: 0.15, fullM: 0.7 });

it.each([
  ['before planting', -5, 0.15],
  ['on the day of planting', 1, 0.15],
  ['at the end of the initial stage', 30, 0.15],
  ['half way through development', 50, 0.425],
  ['from mid-season on', 70, 0.7],
  ['at harvest', 145, 0.7],
])('roots %s: day %d, %d m', (_, day, depthM) => {
  expect(at(day)).toBeCloseTo(depthM, 12);
});

it('is the full depth to the last digit once it is reached, so that nobody takes it for growing', () => {
  const stages = { iniDays: 14, devDays: 38 };
  const roots = { initialM: 0.022591418970999096, fullM: 0.10365486814398876 };
  expect(roots.initialM + (roots.fullM - roots.initialM)).not.toBe(roots.fullM);
  expect(rootDepthM(52, stages, roots)).toBe(roots.fullM);
  expect(rootDepthM(71, stages, roots)).toBe(roots.fullM);
});
