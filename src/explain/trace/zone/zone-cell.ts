/** One zone's week with all that its steps read. */

import { forecastOn } from '../../../engine/forecast.ts';
import { countDays } from '../../../engine/season/days-mask.ts';
import { plantingFigure } from '../../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZONE_FIELDS, ZoneSeason } from '../../../engine/season/season.ts';
import type { ToldMorning, ToldPlanting } from '../../../engine/season/told-morning.ts';
import { heldMask } from '../../../engine/season/week-masks.ts';
import type { MinutesRequest } from '../../../engine/season/zone-minutes.ts';
import { zoneMornings } from '../../../engine/season/zone-season.ts';
import { zoneFigure } from '../../../engine/season/zone-week.ts';
import { type PlantingField, weekDays } from '../planting/planting-cell.ts';
import { outlookOn, requestsIn } from '../planting/planting-morning.ts';

export interface ZoneCell {
  readonly season: Season;
  readonly zoneSeason: ZoneSeason;
  readonly week: number;
  /** Those in the ground on some day of the week. */
  readonly members: readonly ZoneMember[];
  /** Watering days of the week. */
  readonly dayCount: number;
  /** Its watering mornings. */
  readonly mornings: readonly ToldMorning[];
  at(field: keyof typeof ZONE_FIELDS): number;
}

export interface ZoneMember {
  /** With its id where another planting of the zone has the same. */
  readonly name: string;
  readonly own: PlantingSeason;
  /** Among the plantings of its zone. */
  readonly index: number;
  at(field: PlantingField): number;
}

export function zoneCell(season: Season, zoneSeason: ZoneSeason, week: number): ZoneCell {
  const { zone, plantings } = zoneSeason;
  const members = plantings.map((own, index) => ({
    own,
    index,
    name: distinctName(own.planting, zone.plantings),
    at: (field: PlantingField) => plantingFigure(own, field, week),
  }));
  const context = { zone, site: season.garden.site, weather: season.weather };
  return {
    season,
    zoneSeason,
    week,
    members: members.filter(({ at }) => at('groundDays') > 0),
    dayCount: countDays(heldMask(zone, week)),
    mornings: zoneMornings(context, zoneSeason, week),
    at: (field) => zoneFigure(zoneSeason, field, week),
  };
}

interface Named {
  readonly id: string;
  readonly name: string;
}

/** A name, with its id where another of `all` has the same. */
export function distinctName({ id, name }: Named, all: readonly Named[]): string {
  return all.filter((other) => other.name === name).length > 1 ? `${name} (${id})` : name;
}

/** What a planting has to say in the zone's minutes of a morning, as in the season's run. */
export interface MorningRequest {
  readonly member: ZoneMember;
  readonly told: ToldPlanting;
  readonly request: MinutesRequest;
}

export function requestsOf({ members, zoneSeason }: ZoneCell, morning: ToldMorning): readonly MorningRequest[] {
  const requests = requestsIn(zoneSeason, morning);
  return members.map((member) => ({
    member,
    told: morning.plantings[member.index] as ToldPlanting,
    request: requests[member.index] as MinutesRequest,
  }));
}

/** Depletion on a morning above which a planting passes its allowed one before its next watering; net mm of a minute that day. */
export function limitsOf({ season, zoneSeason, week }: ZoneCell, { own }: ZoneMember, told: ToldPlanting, day: number) {
  const { zone } = zoneSeason;
  const days = weekDays(season, zoneSeason, own, week);
  const forecast = forecastOn(season.weather.forecasts, day);
  const { passAboveMm, days: asked } = outlookOn(days, { week, zone, forecast, ahead: told.ahead });
  return { passAboveMm: passAboveMm[day - 7 * week] as number, netMm: asked.netMmPerMinute[day] as number };
}
