/** The five steps, in their order, with what stands before and after them. */
import type { AssumedOfPlan, Plan } from '../../plan/schema/plan-schema.ts';

export const START_STEPS = ['where', 'water', 'timer', 'plants', 'lines'] as const;

export type StartStep = (typeof START_STEPS)[number];

/** `season`: what the steps have come to. */
export type StepOrSeason = StartStep | 'season';

/** `begin`: how to begin. */
export type ShownStep = 'begin' | StepOrSeason;

/** The step before, or after; nothing before the first, the season after the last. */
export function stepBeside(step: StartStep, by: -1 | 1): StepOrSeason | undefined {
  const index = START_STEPS.indexOf(step) + by;
  return index === START_STEPS.length ? 'season' : START_STEPS[index];
}

/** The step to go on with: the last one in which something was said; the first while the weather is not that of the place. */
export function stepToGoOn({ assumed = [], site, zones }: Plan): StartStep {
  const plantings = zones.flatMap((zone) => zone.plantings);
  const isTold = (...parts: readonly AssumedOfPlan[]) => parts.some((part) => !assumed.includes(part));
  if (site.climate.source === '' || assumed.includes('climate')) return 'where';
  if (plantings.some((planting) => planting.assumed?.includes('lines') !== true)) return 'lines';
  if (plantings.length > 0) return 'plants';
  if (isTold('zones', 'days', 'window')) return 'timer';
  return isTold('source', 'flow') ? 'water' : 'where';
}
