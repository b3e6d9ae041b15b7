/** A planting's balance in many years side by side, a day at a time: year after year takes longer. */
import { positivePart } from '../number-only.ts';
import { usedOfPartMm } from '../soil/container-day.ts';
import { usedWaterMm } from '../soil/root-zone-day.ts';
import { readilyOfDryMm, readilyOfWettedMm, readyMm } from '../soil/two-stores.ts';
import { isWettedAlone, type PlantingDemand, tawOn } from './planting-demand.ts';
import type { WeekOutlook } from './week-outlook.ts';
import type { YearsOfRain } from './years-of-rain.ts';

/** All that the share hangs on; minutes and lines are not in it. */
export interface RainKeeper {
  readonly demand: PlantingDemand;
  readonly isRefill: boolean;
  /** Seven-bit mask of the week's watering days, bit 0 = the week's first day. */
  readonly wateringDays: number;
}

export interface YearsRun {
  readonly keeper: RainKeeper;
  readonly of: YearsOfRain;
  readonly outlook: WeekOutlook;
  /** By day, mm: depletion of the soil that roots grow into. */
  readonly rootedMm: Float64Array;
  /** By year, mm: depletion of the ground that its lines wet, and of the rest, before roots grow. */
  readonly wettedMm: Float64Array;
  readonly dryMm: Float64Array;
  /** By year, mm over the ground that its lines wet: the day's irrigation. */
  readonly askedMm: Float64Array;
  /** By year, as a morning looks ahead, mm: how dry the ground is that lines do not wet, and the depletion that watering may leave elsewhere. */
  readonly laterDryMm: Float64Array;
  readonly allowedMm: Float64Array;
  /** What the wetted ground is to give: of day d after that morning and year y at [d * years + y], of all days after watering together. */
  readonly useMm: Float64Array;
}

/** The balance of a day in every year, as `runBalance` has it, of one run; returns the rain that all of them keep, mm. */
export function keptOn({ keeper, of, wettedMm, dryMm, askedMm, rootedMm }: YearsRun, day: number): number {
  const { demand } = keeper;
  const { share, isInContainer, rainFactor } = demand;
  const { soakedMm, years: all } = of;
  const { years, etoShare } = all;
  const usualEtc = demand.expectedEtcMm[day] as number;
  const raw = demand.expectedRawMm[day] as number;
  const taw = tawOn(demand, day);
  const rooted = rootedMm[day] as number;
  const rest = 1 - share;
  const isAlone = isWettedAlone(demand, day);
  let kept = 0;
  for (let year = 0, at = day * years; year < years; year++, at++) {
    const etc = usualEtc * (etoShare[at] as number);
    const soaked = rainFactor * (soakedMm[at] as number);
    const asked = askedMm[year] as number;
    const before = (wettedMm[year] as number) + rooted;
    let wetted = before - soaked - asked;
    let ofWetted: number;
    if (rest > 0) {
      const dry = (dryMm[year] as number) + rooted - soaked;
      const readyDry = readyMm(dry, raw);
      ofWetted = readilyOfWettedMm(share, etc, readyMm(wetted, raw), readyDry);
      let ofDry = readilyOfDryMm(share, etc, ofWetted, readyDry);
      const lacking = etc - share * ofWetted - rest * ofDry;
      if (isAlone) {
        ofWetted = usedWaterMm(etc / share, wetted, raw, taw);
        ofDry = 0;
      } else if (lacking > 0) {
        ofWetted = usedWaterMm(lacking, wetted, raw, taw, ofWetted);
        ofDry = usedWaterMm(lacking, dry, raw, taw, ofDry);
      }
      const dryEnd = dry + ofDry;
      const dryLeft = positivePart(dryEnd);
      dryMm[year] = dryLeft;
      kept += rest * (soaked + dryEnd - dryLeft);
    } else if (isInContainer) {
      wetted = positivePart(before - asked) - soaked;
      ofWetted = usedOfPartMm(etc, positivePart(wetted), raw, taw);
    } else ofWetted = usedWaterMm(etc, wetted, raw, taw);
    const end = wetted + ofWetted;
    const left = positivePart(end);
    wettedMm[year] = left;
    kept += share * positivePart(soaked + end - left);
  }
  return kept;
}
