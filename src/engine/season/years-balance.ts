/** A planting's balance in many years side by side, a day at a time: year after year takes longer. */
import { positivePart } from '../number-only.ts';
import { usedOfPartMm } from '../soil/container-day.ts';
import { endDepletionMm, usedWaterMm } from '../soil/root-zone-day.ts';
import { readilyOfDryMm, readilyOfWettedMm, readyMm, withStressMm } from '../soil/two-stores.ts';
import { isWettedAlone, type PlantingDemand, tawOn } from './planting-demand.ts';
import type { WeekOutlook } from './week-outlook.ts';

/** All that the share hangs on; minutes and lines are not in it. */
export interface RainKeeper {
  readonly demand: PlantingDemand;
  readonly isRefill: boolean;
  /** Seven-bit mask of the week's watering days, bit 0 = the week's first day. */
  readonly wateringDays: number;
}

export interface YearsRun {
  readonly keeper: RainKeeper;
  readonly outlook: WeekOutlook;
  /** By day, mm: depletion of the soil that roots grow into. */
  readonly rootedMm: Float64Array;
  /** By year, mm: depletion of the ground that its lines wet, and of the rest, before roots grow. */
  readonly wettedMm: Float64Array;
  readonly dryMm: Float64Array;
  /** By year, mm over all of the ground: the day's demand, rain that soaks in and irrigation. */
  readonly etcMm: Float64Array;
  readonly soakedMm: Float64Array;
  readonly askedMm: Float64Array;
}

/** The ground of a day, the same in every year, mm. */
function groundOn({ keeper: { demand }, rootedMm }: YearsRun, day: number) {
  return { raw: demand.expectedRawMm[day] as number, taw: tawOn(demand, day), rooted: rootedMm[day] as number };
}

/** The balance of a day in every year, as `runBalance` has it, of one run; returns the rain that all of them keep, mm. */
export function keptInOneStore(run: YearsRun, day: number): number {
  const { keeper, etcMm, soakedMm, wettedMm, askedMm } = run;
  const { isInContainer } = keeper.demand;
  const { raw, taw, rooted } = groundOn(run, day);
  let kept = 0;
  for (let year = 0; year < askedMm.length; year++) {
    const etc = etcMm[year] as number;
    const soaked = soakedMm[year] as number;
    const asked = askedMm[year] as number;
    const depletion = (wettedMm[year] as number) + rooted;
    let end: number;
    if (isInContainer) {
      const level = positivePart(depletion - asked) - soaked;
      end = level + usedOfPartMm(etc, positivePart(level), raw, taw);
    } else {
      const brought = soaked + asked;
      end = endDepletionMm(depletion, usedWaterMm(etc, depletion, raw, taw, brought), brought);
    }
    const left = positivePart(end);
    wettedMm[year] = left;
    kept += positivePart(soaked + end - left);
  }
  return kept;
}

/** As `runStores`. */
export function keptInStores(run: YearsRun, day: number): number {
  const { keeper, etcMm, soakedMm, wettedMm, dryMm, askedMm } = run;
  const { share } = keeper.demand;
  const { raw, taw, rooted } = groundOn(run, day);
  const isAlone = isWettedAlone(keeper.demand, day);
  let kept = 0;
  for (let year = 0; year < askedMm.length; year++) {
    const etc = etcMm[year] as number;
    const soaked = soakedMm[year] as number;
    const brought = soaked + (askedMm[year] as number) / share;
    const wetted = (wettedMm[year] as number) + rooted;
    const dry = (dryMm[year] as number) + rooted;
    const readyDry = readyMm(dry, raw, soaked);
    let ofWetted = readilyOfWettedMm(share, etc, readyMm(wetted, raw, brought), readyDry);
    let ofDry = readilyOfDryMm(share, etc, ofWetted, readyDry);
    const lacking = etc - share * ofWetted - (1 - share) * ofDry;
    if (isAlone) {
      ofWetted = usedWaterMm(etc / share, wetted, raw, taw, brought);
      ofDry = 0;
    } else if (lacking > 0) {
      ofWetted = withStressMm(ofWetted, lacking, wetted, raw, taw, brought);
      ofDry = withStressMm(ofDry, lacking, dry, raw, taw, soaked);
    }
    const wettedEnd = endDepletionMm(wetted, ofWetted, brought);
    const dryEnd = endDepletionMm(dry, ofDry, soaked);
    const wettedLeft = positivePart(wettedEnd);
    const dryLeft = positivePart(dryEnd);
    wettedMm[year] = wettedLeft;
    dryMm[year] = dryLeft;
    kept += share * positivePart(soaked + wettedEnd - wettedLeft) + (1 - share) * (soaked + dryEnd - dryLeft);
  }
  return kept;
}
