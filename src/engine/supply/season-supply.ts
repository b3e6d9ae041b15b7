import type { SupplyTank } from '../garden.ts';
import type { Season } from '../season/season.ts';
import { minutesOnDay } from '../season/zone-week.ts';
import { type AllowanceUse, allowanceUse } from './allowance.ts';
import { type DayTiming, dayTiming } from './day-timing.ts';
import { roofYieldL } from './roof-yield.ts';
import { type SourceDays, sourceDays } from './source-days.ts';
import { type TankSeason, tankSeason } from './tank.ts';
import { type TankSize, tankSizeThatLasts } from './tank-size.ts';
import { windowHoursOn } from './window-hours.ts';
import { zoneCycles } from './zone-cycles.ts';
import { zoneFlows } from './zone-flows.ts';

/** A season seen from its supply. Arrays hold one value a day or a week of the season. */
export interface SupplyOutlook {
  readonly sources: SourceDays;
  /** In the garden's order: flow by day, L/min, 0 on a day without watering. */
  readonly flows: readonly Float64Array[];
  /** Water wanted on each day, L, gross: all zones together. */
  readonly drawL: Float64Array;
  readonly tank: TankOutlook | undefined;
  /** Water by week, L, that comes from the source: all of it, or what a tank does not give. */
  readonly meteredL: Float64Array;
  readonly allowance: AllowanceUse | undefined;
}

export interface TankOutlook extends TankSeason {
  readonly capacityL: number;
  /** Rain that the roof brings on each day, L. */
  readonly roofL: Float64Array;
  /** What the tank does not give of each day's draw: from the mains where there is a source, else missing. L. */
  readonly besidesL: Float64Array;
  readonly sizeThatLasts: TankSize;
}

const known = new WeakMap<Season, SupplyOutlook>();

/** What the season asks of its supply, and what that has; the same object for the same season. */
export function seasonSupply(season: Season): SupplyOutlook {
  const before = known.get(season);
  if (before !== undefined) return before;
  const outlook = outlookOf(season);
  known.set(season, outlook);
  return outlook;
}

/**
 * A day of the season (0 = its first) by the minute: which zones can run together, and when each runs. A zone none of whose lines
 * is open need not run.
 */
export function seasonDayTiming(season: Season, day: number): DayTiming {
  const { sources, flows } = seasonSupply(season);
  const runs = season.zones
    .map((zone, index) => ({ ...zoneCycles(zone, day), flowLpm: flows[index]?.[day] as number }))
    .filter(({ cycles, flowLpm }) => cycles > 0 && flowLpm > 0);
  return dayTiming(runs, sources.flowLpm[day] as number, windowHoursOn(season.garden, day));
}

function outlookOf(season: Season): SupplyOutlook {
  const { garden, zones } = season;
  const { supply, span } = garden;
  const sources = sourceDays(garden);
  const flows = zones.map((zone) => zoneFlows(zone, span.firstDay));
  const drawL = dailyDrawL(season, flows);
  const tank = supply.tank && tankOutlook(supply.tank, { season, drawL });
  const meteredL = byWeek(tank?.besidesL ?? drawL);
  const { allowanceLitresPerWeek: perWeekL, allowanceLitresPerSeason: perSeasonL } = supply;
  const isAllowed = perWeekL !== undefined || perSeasonL !== undefined;
  return {
    sources,
    flows,
    drawL,
    tank,
    meteredL,
    allowance: isAllowed ? allowanceUse({ usedL: meteredL, perWeekL, perSeasonL }) : undefined,
  };
}

/** What a zone's minutes bring hangs on the lines that are open on the day. */
function dailyDrawL({ zones, garden }: Season, flows: readonly Float64Array[]): Float64Array {
  const drawL = new Float64Array(7 * garden.span.weeks);
  zones.forEach((zone, index) => {
    const flowLpm = flows[index] as Float64Array;
    for (let day = 0; day < drawL.length; day += 1) {
      drawL[day] = (drawL[day] as number) + minutesOnDay(zone, day) * (flowLpm[day] as number);
    }
  });
  return drawL;
}

/** The tank gives first; what it cannot give comes from the source, if there is one. */
function tankOutlook(
  { capacityLitres: capacityL, startLitres: startL, roofAreaM2, runoffCoefficient }: SupplyTank,
  { season, drawL }: { readonly season: Season; readonly drawL: Float64Array },
): TankOutlook {
  const roofL = season.weather.rain.mm.map((rainMm) => roofYieldL({ roofAreaM2, rainMm, runoffCoefficient }));
  const mainsTopUp = season.garden.supply.sources.length > 0;
  const course = tankSeason({ capacityL, startL, roofL, drawL, mainsTopUp });
  return {
    ...course,
    capacityL,
    roofL,
    besidesL: mainsTopUp ? course.mainsL : course.shortL,
    sizeThatLasts: tankSizeThatLasts({ startL, roofL, drawL }),
  };
}

function byWeek(daily: Float64Array): Float64Array {
  const weekly = new Float64Array(daily.length / 7);
  daily.forEach((value, day) => {
    const week = Math.floor(day / 7);
    weekly[week] = (weekly[week] as number) + value;
  });
  return weekly;
}
