/** All that a cell of the season shows, in words. Made when it is wanted: held for every cell it would weigh more than the figures. */
import type { DayNumber } from '../../engine/calendar.ts';
import { countDays } from '../../engine/season/days-mask.ts';
import { openRunMask, plantingState, refillOf } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneRuns } from '../../engine/season/zone-runs.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { nearestSettable } from '../../explain/settable-minutes.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { SheetCell } from '../sheet-cell.ts';
import type { SheetRow } from '../sheet-row.ts';
import { type GardenTotal, gardenSeason, gardenWeek, plantingTotal, plantingWeek, zoneTotal } from '../totals.ts';
import { isShutOffByHand, wateringDayCount } from '../watering-days.ts';
import { type WeekWeather, weeklyWeather } from '../week-weather.ts';
import type { CellContext } from './cell-context.ts';
import { cellName } from './cell-name.ts';
import { nameView, shareOfNeed } from './make-cell-view.ts';

export function describeCell(season: Season, cell: SheetCell, context: CellContext): string {
  const { row, column } = cell;
  const { description: say } = context.words;
  if (column.kind === 'name') return describeName(row, context);
  const week = column.kind === 'week' ? column.week : undefined;
  const at = week === undefined ? undefined : { week, firstDay: season.garden.span.firstDay + 7 * week };
  switch (row.kind) {
    case 'eto':
    case 'rain':
      return say.whole(cellName(cell, context), weatherClauses(season, row.kind, week, context));
    case 'zone':
      return withNote(say.whole(cellName(cell, context), zoneClauses(row.zone, at, context)), row.zone, week, context);
    case 'planting': {
      const when = week === undefined ? say.wholeSeason : context.calendar.weekOf(week);
      const of = say.planting(isolated(row.planting.planting.name), isolated(row.zone.zone.name), when);
      return say.whole(of, plantingClauses(row.zone, row.planting, at, context));
    }
    case 'total': {
      const total = week === undefined ? gardenSeason(season) : gardenWeek(season, week);
      return say.whole(cellName(cell, context), gardenClauses(total, context));
    }
  }
}

/** `Beds, 3 days a week`, `Rain (in)`. */
function describeName(row: SheetRow, context: CellContext): string {
  const { name, detail } = nameView(row, context);
  const { nameWithDetail, nameWithUnit } = context.words;
  return row.kind === 'zone' || row.kind === 'planting' ? nameWithDetail(name, detail) : nameWithUnit(name, detail);
}

type Clauses = readonly string[];

interface WeekAt {
  readonly week: number;
  readonly firstDay: DayNumber;
}

function withNote(description: string, { zone }: ZoneSeason, week: number | undefined, { words }: CellContext): string {
  const note = week === undefined ? undefined : zone.choices.get(week)?.note;
  return note === undefined ? description : words.description.withNote(description, note);
}

function zoneClauses(zone: ZoneSeason, at: WeekAt | undefined, { format, words }: CellContext): Clauses {
  const { run, rainCounted, states } = words.description;
  if (at === undefined) {
    const { litres, minutes, rainMm } = zoneTotal(zone);
    return [run.computed(format, litres, minutes), rainCounted(format, rainMm)];
  }
  const { week } = at;
  const state = zoneState(zone, week);
  if (state === 'off') return [states.off];
  const figure = (field: Parameters<typeof zoneFigure>[1]) => zoneFigure(zone, field, week);
  return [
    run[zoneOrigin(zone, week)](format, figure('litres'), figure('minutes')),
    ...betweenSteps(zone, week, { format, words }),
    ...dayClauses(zone, at, { format, words }),
    rainCounted(format, figure('rainCreditMm')),
    states[state],
  ];
}

/** Minutes by hand that the timer cannot be set to, as an older plan, or one with another timer, has them. */
function betweenSteps(
  zone: ZoneSeason,
  week: number,
  { format, words }: Pick<CellContext, 'format' | 'words'>,
): Clauses {
  const run = nearestSettable(zone, week);
  if (run === undefined) return [];
  return [words.description.between(format, zone.zone.timerStepMinutes, run.minutes / run.days)];
}

/** Days that run unlike others, and those that are skipped; a week of equal runs needs neither. */
function dayClauses(
  zone: ZoneSeason,
  { week, firstDay }: WeekAt,
  { format, words }: Pick<CellContext, 'format' | 'words'>,
): Clauses {
  const { runOn, skippedOn } = words.description;
  const runs = zoneRuns(zone, week);
  const skipped = zoneFigure(zone, 'skippedMask', week);
  const isEven = runs.length < 2 && (skipped === 0 || runs.length === 0);
  return [
    ...(isEven ? [] : runs.map(({ minutes, mask }) => runOn(format, minutes, firstDay, mask))),
    ...(skipped === 0 ? [] : [skippedOn(format, firstDay, skipped)]),
  ];
}

function plantingClauses(
  zone: ZoneSeason,
  member: PlantingSeason,
  at: WeekAt | undefined,
  context: CellContext,
): Clauses {
  const { format, words } = context;
  const say = words.description;
  if (at === undefined) {
    const { litres, metShare } = plantingTotal(zone, member);
    const share = metShare === undefined ? [] : [say.shareOfSeason(shareOfNeed(metShare, context))];
    return [say.received(format, litres), ...share];
  }
  const { week } = at;
  const state = plantingState(member, week);
  if (state === 'off') return [say.states.off];
  const { litres, neededLitres, metShare } = plantingWeek(zone, member, week);
  return [
    say.received(format, litres),
    metShare === undefined ? say.needsNone : say.shareOfNeed(format, shareOfNeed(metShare, context), neededLitres),
    ...shutOffClauses(zone, member, at, context),
    ...refillClauses(member, week, context),
    say.states[state],
  ];
}

function shutOffClauses(
  zone: ZoneSeason,
  member: PlantingSeason,
  { week, firstDay }: WeekAt,
  { format, words }: CellContext,
): Clauses {
  const { planting } = member;
  if (!planting.hasShutOff) return [];
  const { shutOffOpen, shutOffByHand } = words.description;
  const say = isShutOffByHand(zone.zone, planting.id, week) ? shutOffByHand : shutOffOpen;
  const mask = openRunMask(zone, member, week);
  return [say(format, countDays(mask), wateringDayCount(zone.zone, week), format.weekdays(firstDay, mask))];
}

function refillClauses(member: PlantingSeason, week: number, { words }: CellContext): Clauses {
  const refill = refillOf(member, week);
  return refill === undefined ? [] : [words.description.refill[refill]];
}

function weatherClauses(season: Season, kind: 'eto' | 'rain', week: number | undefined, context: CellContext): Clauses {
  const { weeks, totalMm } = weeklyWeather(kind, season.weather);
  const { format, words } = context;
  if (week === undefined) return [words.description.depth(format, totalMm)];
  const here = weeks[week];
  if (here === undefined) throw new RangeError(`week ${week} is outside the season`);
  const through = kind === 'rain' ? readThrough(season, week) : undefined;
  return [words.description.depth(format, here.mm), weatherSource(here, through, context)];
}

/** The day through which the week's total was read, where it is not the week's last. */
function readThrough({ garden }: Season, week: number): DayNumber | undefined {
  const first = garden.span.firstDay + 7 * week;
  const totals = [0, 1, 2, 3, 4, 5, 6].map((day) => garden.observed.weeks.get(first + day));
  return totals.findLast((total) => total?.rainMm !== undefined)?.rainThrough;
}

function weatherSource(
  { observedDays, hasWeekTotal }: WeekWeather,
  through: DayNumber | undefined,
  { format, words }: CellContext,
): string {
  const say = words.description;
  if (observedDays === 0) return say.fromNormals;
  if (hasWeekTotal) return through === undefined ? say.weekTotal : say.weekTotalThrough(format, through);
  return observedDays === 7 ? say.everyDayRead : say.someDaysRead(format, observedDays, 7);
}

function gardenClauses({ litres, minutes, savedLitres }: GardenTotal, { format, words }: CellContext): Clauses {
  const { volume, runTime, savedByRain } = words.description;
  return [volume(format, litres), runTime(format, minutes), savedByRain(format, savedLitres)];
}
