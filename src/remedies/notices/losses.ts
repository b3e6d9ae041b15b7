/** What plantings lose by a change: demand that is met without it and unmet with it. */
import { openMinutes } from '../../engine/season/planting-week.ts';
import { PLANTING_FIELDS as P, type PlantingSeason, type Season, type ZoneSeason } from '../../engine/season/season.ts';
import { plantingsById } from './plantings-by-id.ts';

export interface PlantingLoss {
  readonly plantingId: string;
  /** Over the season. */
  readonly litres: number;
  /** Of weeks that lose more than one step of the timer brings: less than that is rounding. */
  readonly litresBeyondStep: number;
}

const ROUNDING_LITRES = 1e-6;

/** Of the plantings that there are in both seasons and that lose anything. */
export function lossesBetween(season: Season, next: Season): readonly PlantingLoss[] {
  const before = plantingsById(season);
  return [...plantingsById(next)].flatMap(([plantingId, { own }]) => {
    const was = before.get(plantingId);
    return was === undefined ? [] : lossOf(plantingId, was, own);
  });
}

function lossOf(
  plantingId: string,
  { zone, own: was }: { readonly zone: ZoneSeason; readonly own: PlantingSeason },
  now: PlantingSeason,
): readonly PlantingLoss[] {
  let mm = 0;
  let beyondMm = 0;
  for (let week = 0; week < now.weeks; week++) {
    const lostMm = unmetMm(now, week) - unmetMm(was, week);
    mm += lostMm;
    if (lostMm > stepMm(zone, was, week)) beyondMm += lostMm;
  }
  const { areaM2 } = now.planting;
  const litres = mm * areaM2;
  return litres > ROUNDING_LITRES ? [{ plantingId, litres, litresBeyondStep: Math.min(beyondMm, mm) * areaM2 }] : [];
}

function unmetMm(own: PlantingSeason, week: number): number {
  return own.at(P.demandMm, week) - own.at(P.usedMm, week);
}

/** What a step of the timer brought in a week; 0 where nothing ran. */
function stepMm(zone: ZoneSeason, own: PlantingSeason, week: number): number {
  const minutes = openMinutes(zone, own, week);
  return minutes > 0 ? (own.at(P.irrigationNetMm, week) / minutes) * zone.zone.timerStepMinutes : 0;
}
