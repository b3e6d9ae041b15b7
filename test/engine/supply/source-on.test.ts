import { describe, expect, it } from 'vitest';
import { sourceOn } from '../../../src/engine/supply/source-on.ts';

const supply = {
  sources: [
    { from: 10, name: 'Hose', pressureKpa: 200 },
    { from: 20, name: 'Main', flowLpm: 30 },
  ],
};

describe('the source of a day', () => {
  it.each([
    [9, undefined],
    [10, 'Hose'],
    [19, 'Hose'],
    [20, 'Main'],
    [99, 'Main'],
  ])('%s is the last that has begun: %s', (day, name) => {
    expect(sourceOn(supply, day)?.name).toBe(name);
  });
});
