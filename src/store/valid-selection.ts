import type { Season } from '../engine/season/season.ts';
import { sameData } from '../plan/same-data.ts';
import { NOTHING_SELECTED, type Selection } from './plan-view.ts';

/** A selection as far as it points at something in the season. The same object where all of it does. */
export function validSelection(selection: Selection, season: Season | undefined): Selection {
  if (season === undefined) return NOTHING_SELECTED;
  const zone = season.zones.find((candidate) => candidate.zone.id === selection.zone);
  const planting = zone?.plantings.find((candidate) => candidate.planting.id === selection.planting);
  const isWeek = selection.week !== undefined && selection.week >= 0 && selection.week < season.garden.span.weeks;
  const valid = {
    zone: zone?.zone.id,
    planting: planting?.planting.id,
    week: isWeek ? selection.week : undefined,
    ...(selection.weather && { weather: selection.weather }),
    ...(selection.part && { part: selection.part }),
  };
  return isSameSelection(valid, selection) ? selection : valid;
}

/** Whether two point at the same; what is left out and what is undefined are one. */
export function isSameSelection(one: Selection, other: Selection): boolean {
  return sameData(one, other);
}
