import { expect, it } from 'vitest';
import { containerOf } from '../../src/plan/container-size.ts';

it.each([
  ['pot', 18, 'us', 12.3],
  ['basket', 14, 'us', 2.5],
  ['pot', 45, 'metric', 44.4],
  ['pot', 1, 'metric', 0.1],
] as const)('a %s of %f (%s) holds %f', (form, across, units, volume) => {
  expect(containerOf(form, across, units)).toEqual({ volume, opening: across });
});
