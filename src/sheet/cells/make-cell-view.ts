/** What the cells of each kind of row show: a zone, a planting, the weather, the whole garden, and the names of all of them. */
import type { GardenPlanting } from '../../engine/garden.ts';
import { plantingFigure, plantingState, type Refill, refillOf } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, State, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import type { WeekMeasure } from '../../engine/week-measures.ts';
import type { Format } from '../../language/format/format.ts';
import { toneOf } from '../../look/tones.ts';
import type { SheetColumn } from '../sheet-cell.ts';
import type { SheetRow } from '../sheet-row.ts';
import {
  type GardenTotal,
  gardenSeason,
  gardenWeek,
  groundM2,
  type PlantingTotal,
  plantingTotal,
  plantingWeek,
  type ZoneTotal,
  zoneTotal,
} from '../totals.ts';
import { isShutOffByHand, wateringDayCount, wateringDayRange } from '../watering-days.ts';
import { type SeasonWeather, type WeatherKind, weeklyWeather } from '../week-weather.ts';
import { classNames, figureClass, moreClasses } from './cell-classes.ts';
import type { CellContext } from './cell-context.ts';
import { isolatedName } from './cell-name.ts';
import type { CellView, FigureView, NameView } from './cell-view.ts';
import { weekSign } from './week-sign.ts';

/** Heights that a bar beside a figure can have. */
export const BAR_STEPS = 24;

/** Beyond ten times the need a ratio says no more than that it is beyond. */
const MOST_SHARE = 9.99;

export function makeCellView(season: Season, row: SheetRow, column: SheetColumn, context: CellContext): CellView {
  if (column.kind === 'name') return nameView(row, context);
  const week = column.kind === 'week' ? column.week : undefined;
  switch (row.kind) {
    case 'eto':
    case 'rain': {
      const weather = weeklyWeather(row.kind, season.weather);
      return week === undefined
        ? weatherSeason(row.kind, weather, context)
        : weatherWeek(row.kind, weather, week, context);
    }
    case 'zone':
      return week === undefined ? zoneSeason(row.zone, context) : zoneWeek(row.zone, week, context);
    case 'planting':
      return week === undefined
        ? plantingSeason(row.zone, row.planting, context)
        : plantingWeekView(row.zone, row.planting, week, context);
    case 'total':
      return gardenView(week === undefined ? gardenSeason(season) : gardenWeek(season, week), context);
  }
}

/** Gallons, minutes and rain counted, on the ground of the week's depth of water. */
function zoneWeek(zone: ZoneSeason, week: number, context: CellContext): FigureView {
  const state = zoneState(zone, week);
  const origin = zoneOrigin(zone, week);
  const note = zone.zone.choices.get(week)?.note;
  const sign = weekSign(zone, week, context.thisWeek);
  const marks = figureClass(
    context.measure,
    'zone',
    `state-${state}`,
    sign !== undefined && `sign-${sign}`,
    note !== undefined && 'noted',
  );
  if (state === 'off') return { kind: 'figure', main: '', lines: [], className: marks };
  const litres = zoneFigure(zone, 'litres', week);
  const minutes = zoneFigure(zone, 'minutes', week);
  const rainMm = zoneFigure(zone, 'rainCreditMm', week);
  const isByHand = origin === 'hand-set' || origin === 'run';
  const { closed, skipped } = context.words.cell;
  const isSkipped = minutes === 0 && zoneFigure(zone, 'skippedMask', week) !== 0;
  return {
    kind: 'figure',
    ...zoneFigures({ litres, minutes, rainMm }, state === 'closed' ? closed : isSkipped ? skipped : '', context),
    className: moreClasses(
      marks,
      `tone-${toneOf(litres / groundM2(zone, week), context.format.reader.units)}`,
      isByHand && 'by-hand',
      origin === 'run' && 'run',
      minutes === 0 && 'idle',
      isSkipped && 'skipped',
    ),
  };
}

function zoneSeason(zone: ZoneSeason, context: CellContext): FigureView {
  return {
    kind: 'figure',
    ...zoneFigures(zoneTotal(zone), '', context),
    className: figureClass(context.measure, 'zone', 'season'),
  };
}

type Figures = Pick<FigureView, 'main' | 'lines'>;

/** `why`: in place of gallons, where it is known why there are none. The heading has the units. */
function zoneFigures(total: ZoneTotal, why: string, context: CellContext): Figures {
  const { minutes, rainMm } = total;
  const { measure, format } = context;
  const main = mainFigure(total, context);
  if (measure !== 'all') return { main, lines: [] };
  // No minutes are left out: the gallons say it. No rain is not: a gap would be read as a figure that is missing.
  const run = minutes > 0 ? format.minuteCount(minutes) : '';
  return { main: why === '' ? main : why, lines: [run, format.amount(rainMm, 'depth')] };
}

/** A planting stands there because somebody unfolded its zone, to see how each fares. */
const isSigned = (state: State): boolean => state === 'dry' || state === 'short' || state === 'over';

/** Gallons it received, that against its need or what became of its refill, and the days its shut-off was open. */
function plantingWeekView(zone: ZoneSeason, member: PlantingSeason, week: number, context: CellContext): FigureView {
  const { measure, format, words } = context;
  const { planting } = member;
  const state = plantingState(member, week);
  const marks = figureClass(measure, 'planting', `state-${state}`, isSigned(state) && `sign-${state}`);
  if (state === 'off') return { kind: 'figure', main: '', lines: [], className: marks };
  const openDays = plantingFigure(member, 'openDays', week);
  const open = planting.hasShutOff ? words.cell.openDays(format, openDays, wateringDayCount(zone.zone, week)) : '';
  const byHand = isShutOffByHand(zone.zone, planting.id, week);
  const tone = `tone-${toneOf(plantingFigure(member, 'irrigationGrossMm', week), format.reader.units)}`;
  return {
    kind: 'figure',
    ...plantingFigures(plantingWeek(zone, member, week), [open], context, refillOf(member, week)),
    className: moreClasses(marks, tone, byHand && 'by-hand'),
  };
}

function plantingSeason(zone: ZoneSeason, member: PlantingSeason, context: CellContext): FigureView {
  return {
    kind: 'figure',
    ...plantingFigures(plantingTotal(zone, member), [], context),
    className: figureClass(context.measure, 'planting', 'season'),
  };
}

function plantingFigures(
  total: PlantingTotal,
  more: readonly string[],
  context: CellContext,
  refill?: Refill,
): Figures {
  const { metShare } = total;
  const { cell } = context.words;
  const share = metShare === undefined ? '' : shareOfNeed(metShare, context);
  const met = refill === undefined ? share : cell.refill[refill](share);
  return { main: mainFigure(total, context), lines: context.measure === 'all' ? [met, ...more] : [] };
}

/** Water as a share of the need: `96%`, `>999%`. */
export function shareOfNeed(share: number, { format, words }: CellContext): string {
  return share > MOST_SHARE ? words.cell.shareBeyond(format, MOST_SHARE) : format.percent(share);
}

/** The figure that is read first: the one that is asked for, or the volume of all three. */
function mainFigure(total: ZoneTotal, { measure, format }: CellContext): string {
  return FIGURES[measure === 'all' ? 'volume' : measure](total, format);
}

const FIGURES: Readonly<Record<WeekMeasure, (total: ZoneTotal, format: Format) => string>> = {
  volume: ({ litres }, format) => format.amount(litres, 'volume'),
  minutes: ({ minutes }, format) => format.minuteCount(minutes),
  rain: ({ rainMm }, format) => format.amount(rainMm, 'depth'),
};

/** A week of rain or reference ET, with a bar beside its figure: full where it was read, hollow for usual weather. */
function weatherWeek(kind: WeatherKind, weather: SeasonWeather, week: number, { format }: CellContext): FigureView {
  const here = weather.weeks[week];
  if (here === undefined) throw new RangeError(`week ${week} is outside the season`);
  const bar = barOf(here.mm, weather.greatestMm);
  const className = classNames('cell', 'weather', kind, bar, here.observedDays > 0 && 'by-hand');
  return { kind: 'figure', main: format.amount(here.mm, 'depth'), lines: [], className };
}

function weatherSeason(kind: WeatherKind, { totalMm }: SeasonWeather, { format }: CellContext): FigureView {
  const className = classNames('cell', 'weather', kind, 'season');
  return { kind: 'figure', main: format.amount(totalMm, 'depth'), lines: [], className };
}

/** As high as the week's share of the season's greatest; what fell shows, however little. */
function barOf(mm: number, greatestMm: number): string {
  const steps = greatestMm > 0 ? (mm / greatestMm) * BAR_STEPS : 0;
  return `bar-${steps > 0 && steps < 1 ? 1 : Math.round(steps)}`;
}

/** Gallons and minutes of all zones together. */
function gardenView(total: GardenTotal, { measure, format }: CellContext): FigureView {
  return {
    kind: 'figure',
    main: GARDEN_FIGURES[measure === 'all' ? 'volume' : measure].main(total, format),
    lines: measure === 'all' ? [format.minuteCount(total.minutes)] : [],
    className: figureClass(measure, 'total'),
  };
}

interface GardenFigure {
  readonly main: (total: GardenTotal, format: Format) => string;
  /** Beside the row's name: its unit. */
  readonly detail: (words: CellContext['words']['detail'], format: Format) => string;
}

const GARDEN_FIGURES: Readonly<Record<WeekMeasure, GardenFigure>> = {
  volume: {
    main: ({ litres }, format) => format.amount(litres, 'volume'),
    detail: (words, format) => words.unit(format.unit('volume')),
  },
  minutes: {
    main: ({ minutes }, format) => format.minuteCount(minutes),
    detail: (words, format) => words.unit(format.minuteUnit),
  },
  rain: {
    main: ({ savedLitres }, format) => format.amount(savedLitres, 'volume'),
    detail: (words, format) => words.savedByRain(format.unit('volume')),
  },
};

/** Letters of a name that a low row has room for on one line. */
const NAME_ROOM = 14;

/** The first column: what a row is, and a little about it. */
export function nameView(row: SheetRow, context: CellContext): NameView {
  const { measure, words } = context;
  const name = isolatedName(row, words);
  const className = classNames('name', row.kind, measure !== 'all' && 'low', name.length > NAME_ROOM && 'long-name');
  const view = { kind: 'name', name, detail: detailOf(row, context), className } as const;
  if (row.kind !== 'zone' || row.zone.zone.plantings.length === 0) return view;
  return { ...view, isOpen: row.isOpen, foldLabel: words.plantingsOf(view.name) };
}

function detailOf(row: SheetRow, { measure, format, words: { detail } }: CellContext): string {
  switch (row.kind) {
    case 'eto':
    case 'rain':
      return detail.unit(format.unit('depth'));
    case 'total':
      return GARDEN_FIGURES[measure === 'all' ? 'volume' : measure].detail(detail, format);
    case 'zone':
      return detail.daysAWeek(format, ...wateringDayRange(row.zone.zone));
    case 'planting':
      return plantKind(row.planting.planting);
  }

  function plantKind({ coefficient, hasShutOff }: GardenPlanting): string {
    const kind = format.name(coefficient.name);
    return hasShutOff ? detail.withShutOff(kind) : kind;
  }
}
