import type { DayNumber } from '../calendar.ts';
import type { GardenPlanting, GardenSupply } from '../garden.ts';
import { inletPressureOn } from '../supply/source-on.ts';
import { asMadeUniformity, USUAL_MANUFACTURING_CV } from './emission-uniformity.ts';
import type { LateralProfile } from './lateral.ts';
import { isSurelyFull, lineProfile } from './line-profile.ts';
import { lineRun } from './line-run.ts';
import { lineDays } from './zone-lines.ts';

export interface UniformityInput {
  readonly plantings: readonly GardenPlanting[];
  readonly supply: Pick<GardenSupply, 'sources'>;
  readonly firstDay: DayNumber;
  readonly lastDay: DayNumber;
}

/** Emitters that give the same share of their nominal flow. */
interface Alike {
  readonly share: number;
  /** Emitters times the days on which they lie. */
  readonly weight: number;
}

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
  const mean = sum(emitters, ({ share, weight }) => share * weight) / total;
  if (!(mean > 0)) return undefined;
  return asMadeUniformity(USUAL_MANUFACTURING_CV, 1) * Math.min(1, lowestQuarterMean(emitters, total) / mean);
}

function alike({ supply, firstDay, lastDay }: UniformityInput, planting: GardenPlanting, index: number): Alike[] {
  const line = planting.lines[index];
  const days = lineDays(planting, index, { first: firstDay, last: lastDay });
  if (line === undefined || days === undefined) return [];
  const runs = lineRun(line, planting)?.runs;
  if (runs === undefined) return [];
  const { kpa } = inletPressureOn(supply, days.first);
  const dayCount = days.last - days.first + 1;
  if (isSurelyFull(line, planting, kpa)) return [{ share: 1, weight: line.emitters * dayCount }];
  const flowsLph = (lineProfile(line, planting, kpa) as LateralProfile).flowsLph;
  const perOutlet = line.emitters / runs / flowsLph.length;
  const weight = perOutlet * runs * dayCount;
  return Array.from(flowsLph, (flowLph) => ({ share: flowLph / (perOutlet * line.emitterFlowLph), weight }));
}

/** The emitters at the quarter's edge count with the part of them that belongs to it. */
function lowestQuarterMean(emitters: readonly Alike[], total: number): number {
  let left = total / 4;
  let given = 0;
  for (const { share, weight } of emitters.toSorted((a, b) => a.share - b.share)) {
    const taken = Math.min(left, weight);
    given += taken * share;
    left -= taken;
  }
  return given / (total / 4);
}

function sum(emitters: readonly Alike[], of: (emitters: Alike) => number): number {
  return emitters.reduce((total, each) => total + of(each), 0);
}
