/** The whole garden's weeks: those of its zones added up. */
import { type Season, type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';

/** Weeks in which no zone moved since `previous` are taken over from it. */
export function seasonTotals(zones: readonly ZoneSeason[], weeks: number, previous?: Season): SeasonTotals {
  const moved = previous === undefined ? undefined : movedWeeks(zones, weeks, previous);
  if (previous === undefined || moved === undefined) return sumOfAllWeeks(zones, weeks);
  const figures = new Float64Array(previous.totals.figures);
  moved.forEach((hasMoved, week) => {
    if (hasMoved === 1) sumWeek(zones, weeks, week, figures);
  });
  return { weeks, figures };
}

function sumOfAllWeeks(zones: readonly ZoneSeason[], weeks: number): SeasonTotals {
  const figures = new Float64Array(SUPPLY_FIELD_COUNT * weeks);
  for (const zone of zones) {
    const { figures: own } = zone;
    for (let index = 0; index < figures.length; index++) {
      figures[index] = (figures[index] as number) + (own[index] as number);
    }
  }
  return { weeks, figures };
}

function sumWeek(zones: readonly ZoneSeason[], weeks: number, week: number, figures: Float64Array): void {
  for (let index = week; index < figures.length; index += weeks) {
    let sum = 0;
    for (const zone of zones) sum += zone.figures[index] as number;
    figures[index] = sum;
  }
}

/** Adding up all weeks is quicker than looking for those that moved, where more than this share of the zones did. */
const FEW_ZONES = 0.25;

/** 1 for each week in which some zone has another figure than before; undefined where many may. */
function movedWeeks(zones: readonly ZoneSeason[], weeks: number, previous: Season): Uint8Array | undefined {
  if (previous.totals.weeks !== weeks || previous.zones.length !== zones.length) return undefined;
  const isKept = (zone: ZoneSeason, index: number) => zone.figures === previous.zones[index]?.figures;
  const kept = zones.filter(isKept).length;
  if (zones.length - kept > FEW_ZONES * zones.length) return undefined;
  const moved = new Uint8Array(weeks);
  zones.forEach((zone, index) => {
    if (!isKept(zone, index)) markMoved(moved, (previous.zones[index] as ZoneSeason).figures, zone.figures);
  });
  return moved;
}

function markMoved(moved: Uint8Array, before: Float64Array, now: Float64Array): void {
  const weeks = moved.length;
  for (let index = 0; index < SUPPLY_FIELD_COUNT * weeks; index++) {
    if (before[index] !== now[index]) moved[index % weeks] = 1;
  }
}
