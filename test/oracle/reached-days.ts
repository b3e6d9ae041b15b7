/** What days of random gardens reach of the root zone's rules; pots have rules of their own. */
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import type { Comparison } from './compare.ts';
import { wettedShareIn } from './crop.ts';
import type { DayRecord } from './planting-course.ts';
import { type Depletion, onceWatered } from './root-zone-day.ts';
import { weekOf } from './watering-days.ts';

interface GroundDay extends DayRecord {
  readonly planting: GardenPlanting;
  readonly share: number;
  /** Missing once what the day brought had come. */
  readonly watered: Depletion;
}

/** Days in the ground of all plantings that are not in pots. */
export function plantingDays(gardens: readonly Garden[], comparisons: readonly Comparison[]): readonly GroundDay[] {
  return gardens.flatMap((garden, at) =>
    garden.zones.flatMap(({ plantings }, z) =>
      plantings.flatMap((planting, p) => {
        if (planting.container !== undefined) return [];
        const days = comparisons[at]?.oracle[z]?.plantings[p]?.days ?? [];
        return days.map((record): GroundDay => {
          const share = wettedShareIn(planting, weekOf(record.day));
          const { facts, start, enteringMm } = record;
          return { ...record, planting, share, watered: onceWatered(facts.soakedMm, share, start, enteringMm) };
        });
      }),
    ),
  );
}

const isOneStore = ({ share }: GroundDay) => share === 1;
const hasBoth = ({ share, facts }: GroundDay) => share < 1 && !facts.isEstablishing;
const isBeyond = ({ facts }: GroundDay, mm: number) => mm > facts.rawMm + 0.001;
const beganBeyond = (day: GroundDay) => isBeyond(day, day.start.wettedMm);
const staysBeyond = (day: GroundDay) => isBeyond(day, day.watered.wettedMm);
const isWatered = ({ irrigationMm }: GroundDay) => irrigationMm > 0;
/** Less than that is rounding, minutes and mm. */
const SEEN = 0.001;
const isSpared = ({ sparedMinutes }: GroundDay) => sparedMinutes > SEEN;
/** It had room for all of the run, and yet a part of it passed. */
const passedThroughDry = ({ facts, start, share, irrigationMm, enteringMm }: GroundDay) =>
  irrigationMm - enteringMm > SEEN && onceWatered(facts.soakedMm, share, start, irrigationMm).wettedMm > SEEN;
const isRainy = ({ facts }: GroundDay) => facts.soakedMm > 0;

export const OF_DAYS: Readonly<Record<string, (day: GroundDay) => boolean>> = {
  'a day that is short before the morning’s water and not after it': (day) =>
    isOneStore(day) && beganBeyond(day) && isWatered(day) && !staysBeyond(day),
  'a day that is short before its rain and not after it': (day) =>
    isOneStore(day) && beganBeyond(day) && !isWatered(day) && !staysBeyond(day),
  'a day that is short with what it brings': (day) =>
    isOneStore(day) && staysBeyond(day) && (isWatered(day) || isRainy(day)),
  'a use that is all there is': ({ facts, end }) => facts.etcMm > 0 && Math.abs(end.wettedMm - facts.tawMm) < 1e-9,
  'a use beyond what is between RAW and TAW, after water': (day) =>
    isOneStore(day) && isWatered(day) && day.facts.etcMm > day.facts.tawMm - day.facts.rawMm,
  'more water than was missing, of which some is used': (day) =>
    isOneStore(day) && day.watered.wettedMm < 0 && day.end.wettedMm > 0,
  'the rest of the ground just beyond, and within with its rain': (day) =>
    hasBoth(day) && isBeyond(day, day.start.dryMm) && !isBeyond(day, day.watered.dryMm) && !staysBeyond(day),
  'the rest of the ground beyond, in spite of rain': (day) =>
    hasBoth(day) && isRainy(day) && isBeyond(day, day.watered.dryMm),
  'the wetted part beyond, and within with its water': (day) =>
    hasBoth(day) && isWatered(day) && beganBeyond(day) && !staysBeyond(day),
  'the wetted part beyond, and the rest not': (day) =>
    hasBoth(day) && staysBeyond(day) && !isBeyond(day, day.watered.dryMm),
  'both parts beyond, in spite of rain': (day) =>
    hasBoth(day) && isRainy(day) && staysBeyond(day) && isBeyond(day, day.watered.dryMm),
  'a wetted part alone that is beyond, and within with its water': (day) =>
    day.share < 1 && day.facts.isEstablishing && isWatered(day) && beganBeyond(day) && !staysBeyond(day),
  'a number smaller because a day of its week is expected to be short': isSpared,
  'such a number of a planting behind a shut-off': (day) => isSpared(day) && day.planting.hasShutOff,
  'such a number, and a run after which the day is short': (day) => isSpared(day) && isWatered(day) && staysBeyond(day),
  'water that washes salt away through a soil that was dry': (day) => isOneStore(day) && passedThroughDry(day),
  'water that washes salt away through a wetted part that was dry': (day) => day.share < 1 && passedThroughDry(day),
  'a day that is short since a part of its water washes salt away': (day) =>
    isOneStore(day) && staysBeyond(day) && !isBeyond(day, day.watered.wettedMm - (day.irrigationMm - day.enteringMm)),
};
