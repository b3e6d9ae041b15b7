/** A planting's week as an object, read out of the season's flat arrays. */
import { PLANTING_FIELDS as P, type PlantingSeason, STATES, type State, type ZoneSeason } from './season.ts';
import { type PlantingVolume, VOLUME_DEPTHS, volumeDepthMm } from './volume-depths.ts';
import { minutesOnDay, readWeek, runMask } from './zone-week.ts';

type DepthField = Exclude<keyof typeof P, 'state'>;

export type PlantingWeek = { readonly [Field in DepthField | PlantingVolume]: number } & {
  readonly week: number;
  readonly state: State;
};

/** Throws a RangeError for a week outside the season. */
export function plantingWeek(season: PlantingSeason, week: number): PlantingWeek {
  const depths = readWeek(season, P, week) as Record<DepthField, number>;
  const volumes = Object.fromEntries(VOLUMES.map((field) => [field, plantingVolume(season, field, week)])) as Record<
    PlantingVolume,
    number
  >;
  return { ...depths, ...volumes, week, state: plantingState(season, week) };
}

/** One figure without making an object. */
export function plantingFigure(season: PlantingSeason, field: keyof typeof P | PlantingVolume, week: number): number {
  if (field in P) return season.at(P[field as keyof typeof P], week);
  return plantingVolume(season, field as PlantingVolume, week);
}

export function plantingState(season: PlantingSeason, week: number): State {
  return STATES[plantingFigure(season, 'state', week)] as State;
}

/** Minutes of a week for which a planting's line is open while its zone runs. */
export function openMinutes(zone: ZoneSeason, season: PlantingSeason, week: number): number {
  const mask = season.at(P.openMask, week);
  let minutes = 0;
  for (let day = 0; day < 7; day++) if ((mask >> day) & 1) minutes += minutesOnDay(zone, 7 * week + day);
  return minutes;
}

/** Days of a week on which a planting's line is open while its zone runs, bit 0 = the week's first day. */
export function openRunMask(zone: ZoneSeason, season: PlantingSeason, week: number): number {
  return season.at(P.openMask, week) & runMask(zone, week);
}

/** How a refill that was due in a week ended it: full again, left with a part of the filling, or without any of it. */
export type Refill = 'filled' | 'partly-filled' | 'due';

/** Undefined where the planting is kept, or was not due for a refill on any of the week's mornings. */
export function refillOf(season: PlantingSeason, week: number): Refill | undefined {
  const isDueAtEnd = season.at(P.fillingMm, week) > 0;
  if (!isDueAtEnd) return season.at(P.dueMask, week) === 0 ? undefined : 'filled';
  return season.at(P.irrigationNetMm, week) > 0 ? 'partly-filled' : 'due';
}

/** Litres of a planting's week: its depths over its ground. */
export function plantingVolume(season: PlantingSeason, field: PlantingVolume, week: number): number {
  const { figures, start, planting } = season;
  const at = figures.startOf(week) + start;
  return planting.areaM2 * volumeDepthMm(figures.arrayOf(week), at, VOLUME_DEPTHS[field]);
}

const VOLUMES = Object.keys(VOLUME_DEPTHS) as readonly PlantingVolume[];
