import { describe, expect } from 'vitest';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { deepFrozen } from '../support/deep-frozen.ts';
import { law } from './law.ts';
import { allFigures } from './weeks-of.ts';

describe('what is given is left alone', () => {
  law('a frozen garden gives its season', {
    on: arbitraryGarden(),
    runs: 150,
    holds: (garden) => {
      const free = allFigures(runSeason(garden));
      expect(allFigures(runSeason(deepFrozen(garden)))).toEqual(free);
    },
  });

  law('so do a frozen plan and the season before', {
    on: arbitraryPlan({ mostZones: 2, mostWeeks: 12 }),
    runs: 80,
    holds: (plan) => {
      const before = runSeason(gardenOf(deepFrozen(plan)));
      const kept = allFigures(before);
      const [first, ...rest] = plan.zones;
      runSeason(
        gardenOf({ ...plan, zones: first === undefined ? [] : [{ ...first, timerStepMinutes: 7 }, ...rest] }),
        before,
      );
      expect(allFigures(before)).toEqual(kept);
    },
  });
});
