import { describe, expect, test } from 'vitest';
import { METHOD_EFFICIENCIES } from '../../../src/engine/application/efficiencies.data.ts';

describe('efficiency by way of watering', () => {
  test('California Title 23 (2015): drip 0.81, overhead spray 0.75', () => {
    expect(METHOD_EFFICIENCIES.map(({ method, efficiency }) => [method, efficiency])).toEqual([
      ['drip', 0.81],
      ['overspray', 0.75],
    ]);
    for (const row of METHOD_EFFICIENCIES) expect(row.source).toContain('Title 23');
  });
});
