/** What a planting would use, and how much of its soil's water it may use before it suffers. */
import type { GardenPlanting, PlantCoefficient } from '../../src/engine/garden.ts';
import { dayOf, daysIn, yearMonthOf } from './calendar.ts';

/**
 * K of the day: the landscape coefficient, or Kc by FAO-56 eq. 66 with the planting day as day 1. Without leaves, and in frozen ground, plants
 * are taken to use nothing; FAO-56 ch. 11 gives 0.2 to 0.4 for bare or frozen ground, which asks for no irrigation either.
 */
export function coefficientOn(planting: GardenPlanting, day: number): number {
  if (restOn(planting, day) === 'asleep') return 0;
  const factor = isEstablishingOn(planting, day) ? (planting.establishing?.factor ?? 1) : 1;
  return factor * plainCoefficient(planting.coefficient, day);
}

export function isEstablishingOn({ establishing }: GardenPlanting, day: number): boolean {
  return establishing !== undefined && day <= establishing.until;
}

/** Whether it asks for nothing on a day, and whether it sleeps then or is left to dry before it is gathered. */
export function restOn({ rest }: GardenPlanting, day: number): 'asleep' | 'drying' | undefined {
  const kinds = (rest ?? []).filter(({ from, to }) => from <= day && day <= to).map(({ kind }) => kind);
  if (kinds.length === 0) return undefined;
  return kinds.some((kind) => kind !== 'dry-down') ? 'asleep' : 'drying';
}

/** What reaches its roots' ground, over what falls on as much open ground. */
export function rainFactorOf({ rainFactor }: GardenPlanting): number {
  return rainFactor ?? 1;
}

/** Of the ground that its plants cover, what its lines wet in a week of the season; of pots all. */
export function wettedShareIn({ container, wettedShare, wettedShareByWeek }: GardenPlanting, week: number): number {
  if (container !== undefined) return 1;
  return wettedShareByWeek?.[week] ?? wettedShare ?? 1;
}

/** Whether its lines wet all of its ground all season: no share is told apart by week. Pots are no ground. */
export function isWhollyWetted({ container, wettedShare, wettedShareByWeek }: GardenPlanting): boolean {
  return container === undefined && wettedShareByWeek === undefined && (wettedShare ?? 1) === 1;
}

function plainCoefficient(plant: PlantCoefficient, day: number): number {
  if (plant.kind === 'landscape') return plant.factor * plant.density * plant.microclimate * (plant.mulchFactor ?? 1);
  const [initial, development, mid, late] = plant.stageDays;
  const i = dayOfGrowth(plant, day, initial + development + mid + late);
  if (i < 1) return 0;
  if (i <= initial) return plant.kcInitial;
  if (i <= initial + development) {
    return plant.kcInitial + ((i - initial) / development) * (plant.kcMid - plant.kcInitial);
  }
  if (i <= initial + development + mid) return plant.kcMid;
  if (i > initial + development + mid + late) return 0;
  return plant.kcMid + ((i - initial - development - mid) / late) * (plant.kcEnd - plant.kcMid);
}

/**
 * FAO-56 ch. 6: day 1 is the planting day; of perennials the day of green-up, which comes round every year. Stages of 365
 * days last through a leap year.
 */
function dayOfGrowth(plant: Extract<PlantCoefficient, { kind: 'crop' }>, day: number, allStages: number): number {
  if (!plant.perennial) return day - plant.plantedOn + 1;
  const greenUps = [0, 1].map((back) => greenUpIn(plant.plantedOn, yearMonthOf(day).year - back));
  const i = day - (greenUps.find((start) => start <= day) ?? Number.NaN) + 1;
  return allStages >= 365 && i > allStages ? allStages : i;
}

/** The same month and day of another year; the last of February where that year has no 29th. */
function greenUpIn(first: number, year: number): number {
  const { month } = yearMonthOf(first);
  const dayOfMonth = first - dayOf(yearMonthOf(first).year, month, 1) + 1;
  return dayOf(year, month, Math.min(dayOfMonth, daysIn({ year, month })));
}

/** FAO-56 eq. 82; of pots the water that all of their mix holds, over the ground that the plants cover. */
export function totalAvailableMm(planting: GardenPlanting, soilWater: number, day: number): number {
  const { container, rootZone, areaM2 } = planting;
  const availableWater = rootZone.availableWater ?? soilWater;
  if (container !== undefined) return (container.count * container.volumeLitres * availableWater) / areaM2;
  return 1000 * availableWater * rootDepthOn(planting, day);
}

/** FAO-56 ch. 8: an annual crop's roots stay as they were through the first stage and grow in a straight line through the second. */
export function rootDepthOn({ rootZone, coefficient }: GardenPlanting, day: number): number {
  const { depthM, initialDepthM } = rootZone;
  if (initialDepthM === undefined || coefficient.kind !== 'crop' || coefficient.perennial) return depthM;
  const [initial, development] = coefficient.stageDays;
  const i = day - coefficient.plantedOn + 1;
  if (i <= initial) return initialDepthM;
  if (i >= initial + development) return depthM;
  return initialDepthM + ((i - initial) / development) * (depthM - initialDepthM);
}

/** FAO-56 p. 162: crops take p = table + 0.04 (5 - ETc), from 0.1 to 0.8. */
export function depletionShare(planting: GardenPlanting, etcMm: number): number {
  if (!planting.rootZone.adjustsDepletion) return planting.rootZone.allowedDepletion;
  return Math.min(0.8, Math.max(0.1, planting.rootZone.allowedDepletion + 0.04 * (5 - etcMm)));
}

/** Depletion that a watering may leave, mm: none while it is establishing, and none where it is filled deep and seldom. */
export function targetMmOn(planting: GardenPlanting, tawMm: number, day: number): number {
  if (isEstablishingOn(planting, day) || planting.watering === 'refill') return 0;
  const { rootZone } = planting;
  return rootZone.targetDepletion * rootZone.allowedDepletion * tawMm;
}
