/** How often a day a zone's pots, and its young plants, want to be watered. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { NearTies } from './near-ties.ts';
import type { PlantingCourse } from './planting-course.ts';
import type { PlantingDay, PlantingFacts } from './planting-facts.ts';
import { daysFrom, isInMask, mayAsk, wateringMask } from './watering-days.ts';

/** Of a week of the season, on the days on which the zone waters. */
export function runsADay(zone: GardenZone, courses: readonly PlantingCourse[], week: number, ties: NearTies): number {
  const plantings = courses.map(({ facts }) => facts);
  return runsOn(zone, plantings, { week, mask: wateringMask(zone, week) }, ties);
}

/**
 * The least number of equal runs between which no pot of the zone uses more than is readily there, by the normals, on any watering day of the
 * week; the most that the timer starts where none does. Two, where the timer has them, for plants in the ground that are establishing or whose
 * roots still grow, in a week on one of whose watering days what is readily there does not last the day. Else one.
 */
export function runsOn(
  zone: GardenZone,
  plantings: readonly PlantingFacts[],
  { week, mask }: { readonly week: number; readonly mask: number },
  ties: NearTies,
): number {
  const mornings = daysFrom(7 * week, 7 * week + 6).filter((day) => isInMask(mask, day));
  const daysOf = ({ days }: PlantingFacts) =>
    mornings.flatMap((day) => days[day] ?? []).filter((each) => mayAsk(each) && each.netMmPerMinute > 0);
  const isPot = ({ storesIn }: PlantingFacts) => storesIn(week).isPot;
  const isDryByEvening = (facts: PlantingFacts) => {
    const { share } = facts.storesIn(week);
    const young = daysOf(facts).filter((day) => day.isYoung);
    return young.some((day) => ties.isClearlyAbove(day.expectedEtcMm / share, day.expectedRawMm));
  };
  const inGround = plantings.some((facts) => !isPot(facts) && isDryByEvening(facts)) ? 2 : 1;
  const inPots = runsOfPots(zone, plantings.filter(isPot).flatMap(daysOf), ties);
  return Math.min(zone.startsADay, Math.max(inPots, inGround));
}

function runsOfPots(zone: GardenZone, days: readonly PlantingDay[], ties: NearTies): number {
  if (days.length === 0) return 1;
  for (let runs = 1; runs < zone.startsADay; runs++) {
    const isEnough = days.every((day) => !ties.isClearlyAbove(day.expectedEtcMm / runs, day.expectedRawMm));
    if (isEnough) return runs;
  }
  return zone.startsADay;
}
