import { expect, it } from 'vitest';
import { type Trial, zonesTouched } from '../../../src/elements/mix/trial.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const trialOf = (plan: Plan): Trial => ({ edits: [], from: mixedGarden(), plan, season: computeSeason(plan) }) as never;

it('touches no zone whose figures are the same, computed anew or not', () => {
  expect(zonesTouched(trialOf(mixedGarden()), computeSeason(mixedGarden()))).toEqual([]);
});

it('touches the zone whose water changes, and one that the plan does not have', () => {
  const plan = mixedGarden();
  const [first, ...others] = plan.zones;
  if (first === undefined) throw new Error('there is a zone');
  const [planting] = first.plantings;
  if (planting === undefined) throw new Error('there is a planting');
  const before = computeSeason(plan);
  expect(zonesTouched(trialOf({ ...plan, zones: [{ ...first, plantings: [planting] }, ...others] }), before)).toEqual([
    first.id,
  ]);
  const another = { ...first, id: 'another', plantings: [{ ...planting, id: 'another-planting' }] };
  expect(zonesTouched(trialOf({ ...plan, zones: [...plan.zones, another] }), before)).toEqual(['another']);
});
