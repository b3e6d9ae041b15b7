/** How deep runs wet the ground of any garden: as deep as the water reaches, never deeper than roots, and what passes them is told. */
import { describe, expect, it } from 'vitest';
import { runDepths } from '../../src/engine/ground/run-depths.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';

const NEAR = 1e-9;
let runs = 0;

describe('the depth that a run wets', () => {
  law('grows with its minutes up to the roots; beyond the longest useful run water drains', {
    on: arbitraryGarden({ mostWeeks: 4 }),
    runs: 200,
    holds: (garden) => {
      const season = runSeason(garden);
      const weeks = Array.from({ length: garden.span.weeks }, (_, week) => week);
      const all = season.zones.flatMap((zone) => weeks.flatMap((week) => runDepths(season, zone, week)));
      runs += all.length;
      for (const { depthM, rootDepthM, minutes, usefulMinutes, drainedMm } of all) {
        expect(depthM).toBeGreaterThan(0);
        expect(depthM).toBeLessThanOrEqual(rootDepthM * (1 + NEAR));
        const isDeep = minutes >= usefulMinutes * (1 - NEAR);
        if (depthM < rootDepthM * (1 - NEAR)) expect(isDeep).toBe(false);
        if (drainedMm > NEAR) expect(isDeep).toBe(true);
      }
    },
  });

  it('of many runs', () => {
    expect(runs).toBeGreaterThan(200);
  });
});
