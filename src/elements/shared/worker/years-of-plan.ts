import { seasonTotals } from '../../../engine/season/season-totals.ts';
import { seasonWeather } from '../../../engine/weather.ts';
import { type YearOutcomes, yearSeasons } from '../../../engine/years/year-seasons.ts';
import { gardenOf } from '../../../plan/garden-of.ts';
import type { Plan } from '../../../plan/schema/plan-schema.ts';
import type { RainShares } from './rain-shares.ts';

/** `yearSeasons` of a plan whose season is not at hand, nor needed. `rainShares`: those of its season. */
export function yearsOfPlan(plan: Plan, rainShares: RainShares): Generator<number, YearOutcomes> {
  const garden = gardenOf(plan);
  const totals = seasonTotals([], garden.span.weeks);
  return yearSeasons({ garden, weather: seasonWeather(garden), zones: [], totals }, rainShares);
}
