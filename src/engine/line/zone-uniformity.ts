import { lowestQuarterMean, type Weighted } from '../application/distribution-uniformity.ts';
import type { DayNumber } from '../calendar.ts';
import type { GardenPlanting } from '../garden.ts';
import { asMadeUniformity, USUAL_MANUFACTURING_CV } from './emission-uniformity.ts';
import type { LateralProfile } from './lateral.ts';
import { isSurelyFull, lineProfile } from './line-profile.ts';
import { lineRun } from './line-run.ts';
import { feedOn, lineDays } from './zone-lines.ts';

export interface UniformityInput {
  readonly plantings: readonly GardenPlanting[];
  readonly firstDay: DayNumber;
  readonly lastDay: DayNumber;
}

/** Emitters that give the same share of their nominal flow; the weight is their number times the days on which they lie. */
type Alike = Weighted;

/**
 * Distribution uniformity of the lowest quarter of all emitters of a zone over a season, 0..1, from the hydraulics of
 * its lines; undefined where no line lies or no water comes out of any.
 *
 * Every line is solved at the pressure of its first day in the season. Each emitter's flow counts as a share of its
 * nominal flow, so that emitters of different sizes may lie together, and as often as it lies days. Unlike emitters as
 * made take their share of it (`asMadeUniformity`, usual Cv, each emitter for itself); roots, dirt and age are not
 * known: the figure in the ground comes out lower (see `lineUniformity`).
 */
export function zoneUniformity(input: UniformityInput): number | undefined {
  const emitters = input.plantings.flatMap((planting) =>
    planting.lines.flatMap((_, index) => alike(input, planting, index)),
  );
  const total = sum(emitters, ({ weight }) => weight);
  const mean = sum(emitters, ({ amount, weight }) => amount * weight) / total;
  if (!(mean > 0)) return undefined;
  return asMadeUniformity(USUAL_MANUFACTURING_CV, 1) * Math.min(1, lowestQuarterMean(emitters) / mean);
}

function alike({ firstDay, lastDay }: UniformityInput, planting: GardenPlanting, index: number): Alike[] {
  const line = planting.lines[index];
  const days = lineDays(planting, index, { first: firstDay, last: lastDay });
  if (line === undefined || days === undefined) return [];
  const runs = lineRun(line, planting)?.runs;
  if (runs === undefined) return [];
  const { kpa } = feedOn(planting, days.first);
  const dayCount = days.last - days.first + 1;
  if (isSurelyFull(line, planting, kpa)) return [{ amount: 1, weight: line.emitters * dayCount }];
  const flowsLph = (lineProfile(line, planting, kpa) as LateralProfile).flowsLph;
  const perOutlet = line.emitters / runs / flowsLph.length;
  const weight = perOutlet * runs * dayCount;
  return Array.from(flowsLph, (flowLph) => ({ amount: flowLph / (perOutlet * line.emitterFlowLph), weight }));
}

function sum(emitters: readonly Alike[], of: (emitters: Alike) => number): number {
  return emitters.reduce((total, each) => total + of(each), 0);
}
