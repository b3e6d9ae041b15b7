/** One cell: a zone's week as an object, read out of the season's flat arrays. */
import { MINUTES_ORIGINS, type MinutesOrigin, STATES, type State, ZONE_FIELDS, type ZoneSeason } from './season.ts';
import type { WeekFigures } from './week-figures.ts';

type NumericField = Exclude<keyof typeof ZONE_FIELDS, 'state' | 'origin'>;

export type ZoneWeek = { readonly [Field in NumericField]: number } & {
  readonly week: number;
  readonly state: State;
  readonly origin: MinutesOrigin;
};

/** Throws a RangeError for a week outside the season. */
export function zoneWeek(season: ZoneSeason, week: number): ZoneWeek {
  return {
    ...(readWeek(season.figures, ZONE_FIELDS, week) as Record<NumericField, number>),
    week,
    state: zoneState(season, week),
    origin: zoneOrigin(season, week),
  };
}

/** By whatever name, a map is quicker than an object. */
const BY_NAME = new Map<string, number>(Object.entries(ZONE_FIELDS));

/** One figure without making an object: for renderers and sums. */
export function zoneFigure(season: ZoneSeason, field: keyof typeof ZONE_FIELDS, week: number): number {
  return season.figures.at(BY_NAME.get(field) as number, week);
}

export function zoneState(season: ZoneSeason, week: number): State {
  return STATES[zoneFigure(season, 'state', week)] as State;
}

export function zoneOrigin(season: ZoneSeason, week: number): MinutesOrigin {
  return MINUTES_ORIGINS[zoneFigure(season, 'origin', week)] as MinutesOrigin;
}

/** Minutes that a zone runs on a day of the season, 0 = its first. */
export function minutesOnDay({ figures }: ZoneSeason, day: number): number {
  return figures.at(ZONE_FIELDS.minutesDay0 + (day % 7), Math.floor(day / 7));
}

/** Days of a week on which a zone runs, bit 0 = the week's first day. */
export function runMask(season: ZoneSeason, week: number): number {
  let mask = 0;
  for (let day = 0; day < 7; day++) if (minutesOnDay(season, 7 * week + day) > 0) mask |= 1 << day;
  return mask;
}

/** Every field of a block at one week. */
export function readWeek(
  block: Pick<WeekFigures, 'at' | 'weeks'>,
  fields: Readonly<Record<string, number>>,
  week: number,
): Record<string, number> {
  if (!(Number.isInteger(week) && week >= 0 && week < block.weeks)) {
    throw new RangeError(`week ${week} is outside the season of ${block.weeks} weeks`);
  }
  const found: Record<string, number> = {};
  for (const [field, index] of Object.entries(fields)) found[field] = block.at(index, week);
  return found;
}
