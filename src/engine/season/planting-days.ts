/** A planting's season by day: its demand, its rain as it fell and as it is expected, and what a minute of its line brings. */
import { applicationRateMmPerHour } from '../application/application-rate.ts';
import { netMmPerMinute as netDepthOfMinute } from '../application/run-time.ts';
import type { GardenPlanting, GardenSite, GardenZone, PlantingFlow } from '../garden.ts';
import type { Weather } from '../weather.ts';
import type { ExpectedDays } from './expected-days.ts';
import { type PlantingDemand, withShare } from './planting-demand.ts';
import { type DaySpan, fillRain } from './planting-rain.ts';
import type { PlantingSeason } from './season.ts';
import { shareIn } from './wetted-week.ts';

export interface PlantingDays extends ExpectedDays {
  /** Its own where lines wet another share from a week on. */
  readonly demand: PlantingDemand;
  /** What its mornings look at: depths over the ground that its lines wet. */
  readonly asked: ExpectedDays;
  /** Rain that enters the root zone, mm. */
  readonly soakedMm: Float64Array;
  /** Gross depth that a minute of the lines lays on the ground on each day, mm. */
  readonly grossMmPerMinute: Float64Array;
}

/** Arrays of one number a day, to be filled: a season lends them from planting to planting. */
export interface DayBuffers {
  readonly soakedMm: Float64Array;
  readonly expectedRainMm: Float64Array;
  readonly netMmPerMinute: Float64Array;
  readonly grossMmPerMinute: Float64Array;
  /** Of plantings whose mornings look at other ground than all of theirs. */
  askedMmPerMinute?: Float64Array;
  projectedMm?: Float64Array;
  /** What each was filled from, all through the season: from the same it need not be filled again. */
  soakedFrom?: FilledFrom;
  netFrom?: FilledFrom;
}

type FilledFrom = readonly unknown[] | undefined;

export interface ZoneContext {
  readonly zone: GardenZone;
  readonly site: GardenSite;
  readonly weather: Weather;
}

/** A planting as far as its days hang on it. */
type Ground = Pick<PlantingSeason, 'planting' | 'demand' | 'rainShares'>;

/** All days of the season, in arrays of their own. */
export function plantingDays(ground: Ground, context: ZoneContext): PlantingDays {
  const { days } = context.weather;
  return fillDays(ground, context, dayBuffers(days), { first: 0, end: days });
}

/** Fills in the days of some weeks of the season, `end` not included; the others are left as they are. */
export function fillDays(ground: Ground, { weather }: ZoneContext, buffers: DayBuffers, days: DaySpan): PlantingDays {
  const { planting, demand: shared, rainShares } = ground;
  const demand = planting.wettedShareByWeek === undefined ? shared : withShare(shared, shared.share);
  const { soakedMm, expectedRainMm, netMmPerMinute, grossMmPerMinute } = buffers;
  const inGround = { first: Math.max(demand.first, days.first), end: Math.min(demand.end, days.end) };
  const isWhole = days.first === 0 && days.end === weather.days;
  const soakedFrom = isWhole ? [shared, rainShares, weather.rain] : undefined;
  if (!isSame(buffers.soakedFrom, soakedFrom)) {
    buffers.soakedFrom = soakedFrom;
    soakedMm.fill(0, days.first, days.end);
    expectedRainMm.fill(0, days.first, days.end);
    fillRain(soakedMm, expectedRainMm, inGround, { rainShares, rainFactor: demand.rainFactor }, weather);
  }
  const netFrom = isWhole ? [shared, planting.flows, planting.areaM2] : undefined;
  if (!isSame(buffers.netFrom, netFrom)) {
    buffers.netFrom = netFrom;
    netMmPerMinute.fill(0, days.first, days.end);
    grossMmPerMinute.fill(0, days.first, days.end);
    fillNet(buffers, inGround, planting, weather.firstDay);
  }
  const asked = askedDays({ planting, demand }, buffers, days);
  return { demand, soakedMm, expectedRainMm, netMmPerMinute, grossMmPerMinute, asked };
}

type Asked = { -readonly [Field in keyof ExpectedDays]: ExpectedDays[Field] };

/** The same arrays where all of its ground is wetted and nothing is to drain. */
function askedDays(
  { planting, demand }: Pick<Ground, 'planting' | 'demand'>,
  buffers: DayBuffers,
  days: DaySpan,
): ExpectedDays {
  const { expectedRainMm, netMmPerMinute } = buffers;
  const { rest, leachingFraction, share } = demand;
  const isWhole = demand.isWhole || demand.isInContainer;
  // All of one shape: the loops that read them are quick only so.
  const asked: Asked = { demand, expectedRainMm, netMmPerMinute, projectedMm: undefined, known: undefined };
  if (isWhole && leachingFraction === 0 && rest === undefined) return asked;
  buffers.askedMmPerMinute ??= new Float64Array(netMmPerMinute.length);
  const { askedMmPerMinute } = buffers;
  let ofNet = (1 - leachingFraction) / share;
  for (let day = days.first; day < days.end; day++) {
    if (day % 7 === 0 && planting.wettedShareByWeek)
      ofNet = (1 - leachingFraction) / shareIn(planting, Math.floor(day / 7));
    askedMmPerMinute[day] = rest?.[day] ? 0 : ofNet * (netMmPerMinute[day] as number);
  }
  asked.netMmPerMinute = askedMmPerMinute;
  if (!isWhole) asked.projectedMm = buffers.projectedMm ??= new Float64Array(netMmPerMinute.length);
  return asked;
}

function fillNet(
  { netMmPerMinute, grossMmPerMinute }: DayBuffers,
  inGround: DaySpan,
  { flows, areaM2 }: GardenPlanting,
  firstDay: number,
): void {
  for (const { from, to, flowLph, efficiency } of flows) {
    const first = Math.max(inGround.first, from - firstDay);
    const end = Math.min(inGround.end, to + 1 - firstDay);
    if (first >= end) continue;
    const rate = applicationRateMmPerHour(flowLph, areaM2);
    netMmPerMinute.fill(netDepthOfMinute(rate, efficiency), first, end);
    grossMmPerMinute.fill(rate / 60, first, end);
  }
}

function isSame(before: FilledFrom, now: FilledFrom): boolean {
  if (before === undefined || now === undefined) return false;
  return now.every((part, index) => part === before[index]);
}

export function dayBuffers(days: number): DayBuffers {
  return {
    soakedMm: new Float64Array(days),
    expectedRainMm: new Float64Array(days),
    netMmPerMinute: new Float64Array(days),
    grossMmPerMinute: new Float64Array(days),
  };
}

/** What the lines of a planting give on a day, if any lies. */
export function flowOn({ flows }: Pick<GardenPlanting, 'flows'>, day: number): PlantingFlow | undefined {
  return flows.find(({ from, to }) => from <= day && day <= to);
}

/** Sets a planting's days to the share that its lines wet in a week. */
export function wetDays({ demand, asked }: PlantingDays, planting: GardenPlanting, week: number): void {
  if (planting.wettedShareByWeek === undefined) return;
  demand.share = shareIn(planting, week);
  asked.demand.share = demand.share;
}
