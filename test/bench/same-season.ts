/** That ours, the bare loop and the sheet compute the same garden: else comparing their times would say nothing. */
import type { Season } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import type { Bare } from './bare/bare.ts';
import type { BareSums } from './bare/season.ts';
import type { Sheet } from './sheet/sheet.ts';

const SAME_FIGURES = {
  minutes: 'minutes',
  litres: 'litres',
  demand: 'demandLitres',
  used: 'usedLitres',
  rainStayed: 'rainStayedLitres',
  drained: 'drainedLitres',
} as const satisfies Record<keyof BareSums, string>;

type SameField = (typeof SAME_FIGURES)[keyof BareSums];

/** The bare loop rounds in another order. */
const ROUNDING = 1e-9;
/** Weeks stand for days in the sheet: a season's litres come out alike, not the same. */
const WEEKS_FOR_DAYS = 0.1;

export function requireSameWeeks({ zones }: Pick<Season, 'zones'>, bare: Bare): void {
  zones.forEach((zone, place) => {
    for (let week = 0; week < zone.weeks; week++) requireSameWeek(zone, bare, place, week);
  });
}

export function requireSameSeason(
  { zones }: Season,
  { bare, sheet }: { readonly bare: Bare; readonly sheet: Sheet },
): void {
  const litres = { ours: 0, sheet: 0 };
  requireSameWeeks({ zones }, bare);
  zones.forEach((zone, place) => {
    for (let week = 0; week < zone.weeks; week++) {
      litres.ours += zoneFigure(zone, 'litres', week);
      litres.sheet += sheet.litres(place, week);
    }
  });
  if (!isClose(litres.ours, litres.sheet, WEEKS_FOR_DAYS)) {
    throw new Error(`the season is ${litres.ours} L, by the sheet ${litres.sheet} L`);
  }
}

function requireSameWeek(zone: Season['zones'][number], { sums }: Bare, place: number, week: number): void {
  for (const [name, field] of Object.entries(SAME_FIGURES) as [keyof BareSums, SameField][]) {
    const ours = zoneFigure(zone, field, week);
    const theirs = sums[name][place * zone.weeks + week] as number;
    if (!isClose(ours, theirs, ROUNDING)) {
      throw new Error(`${name} of zone ${place}, week ${week} is ${ours}, by the bare loop ${theirs}`);
    }
  }
}

function isClose(one: number, other: number, tolerance: number): boolean {
  return Math.abs(one - other) <= tolerance * Math.max(1, Math.abs(one), Math.abs(other));
}
