/** One zone's week with all that its steps read. */
import { openMasks } from '../../../engine/season/open-days.ts';
import { plantingFigure } from '../../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZONE_FIELDS, ZoneSeason } from '../../../engine/season/season.ts';
import { type MinutesRequest, minutesRequest } from '../../../engine/season/zone-minutes.ts';
import { zoneFigure } from '../../../engine/season/zone-week.ts';
import type { PlantingField } from '../planting/planting-cell.ts';

export interface ZoneCell {
  readonly season: Season;
  readonly zoneSeason: ZoneSeason;
  readonly week: number;
  /** Those in the ground on some day of the week. */
  readonly members: readonly ZoneMember[];
  /** Watering days of the week. */
  readonly dayCount: number;
  at(field: keyof typeof ZONE_FIELDS): number;
}

export interface ZoneMember {
  /** With its id where another planting of the zone has the same. */
  readonly name: string;
  readonly own: PlantingSeason;
  at(field: PlantingField): number;
}

export function zoneCell(season: Season, zoneSeason: ZoneSeason, week: number): ZoneCell {
  const { zone, plantings } = zoneSeason;
  const members = plantings.map((own) => ({
    own,
    name: distinctName(own.planting, zone.plantings),
    at: (field: PlantingField) => plantingFigure(own, field, week),
  }));
  return {
    season,
    zoneSeason,
    week,
    members: members.filter(({ at }) => at('groundDays') > 0),
    dayCount: openMasks(zone.wateringDays).length - 1,
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

/** What a planting has to say in the zone's minutes, as on its first watering morning of the week. */
export function requestOf({ zoneSeason: { zone } }: ZoneCell, { own, at }: ZoneMember): MinutesRequest {
  return {
    ...minutesRequest(own.planting),
    isPresent: true,
    minutesPerDay: at('minutesWanted'),
    litresPerMinute: at('flowLpm') * zone.efficiency,
  };
}
