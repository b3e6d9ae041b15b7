/** What a planting would use, and how much of its soil's water it may use before it suffers. */
import type { GardenPlanting, PlantCoefficient } from '../../src/engine/garden.ts';
import { dayOf, daysIn, yearMonthOf } from './calendar.ts';

/** K of the day: the landscape coefficient, or Kc by FAO-56 eq. 66 with the planting day as day 1. */
export function coefficientOn(planting: GardenPlanting, day: number): number {
  const establishing = planting.establishing;
  const factor = establishing !== undefined && day <= establishing.until ? establishing.factor : 1;
  return factor * plainCoefficient(planting.coefficient, day);
}

function plainCoefficient(plant: PlantCoefficient, day: number): number {
  if (plant.kind === 'landscape') return plant.factor * plant.density * plant.microclimate;
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

/** FAO-56 eq. 82. */
export function totalAvailableMm(planting: GardenPlanting, availableWater: number): number {
  return 1000 * availableWater * planting.rootZone.depthM;
}

/** FAO-56 p. 162: crops take p = table + 0.04 (5 - ETc), from 0.1 to 0.8. */
export function depletionShare(planting: GardenPlanting, etcMm: number): number {
  if (!planting.rootZone.adjustsDepletion) return planting.rootZone.allowedDepletion;
  return Math.min(0.8, Math.max(0.1, planting.rootZone.allowedDepletion + 0.04 * (5 - etcMm)));
}

/** Depletion that a watering may leave, mm: none while it is establishing, and none where it is filled deep and seldom. */
export function targetMmOn({ rootZone, watering, establishing }: GardenPlanting, tawMm: number, day: number): number {
  const isEstablishing = establishing !== undefined && day <= establishing.until;
  if (isEstablishing || watering === 'refill') return 0;
  return rootZone.targetDepletion * rootZone.allowedDepletion * tawMm;
}
