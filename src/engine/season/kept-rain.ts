/**
 * The share of the normals' rain that a planting's roots keep: its own daily balance over many years of daily rain, alone and
 * under its own way of watering. What finds no room drains, and a day's rain below a fifth of its ETo dries off (FAO-56 eq. 85 to
 * 88, p. 170).
 */
import { withShare } from './planting-demand.ts';
import { type WeekOutlook, weekOutlook } from './week-outlook.ts';
import { keptOn, type RainKeeper, type YearsRun } from './years-balance.ts';
import { askOn } from './years-mornings.ts';
import type { YearsOfRain } from './years-of-rain.ts';

export type { RainKeeper, YearsOfRain };

const FIRST_SHARE = 0.5;
const MADE_RUNS = 2;
const MOST_RECORDED_RUNS = 8;
const SETTLED = 0.002;

/**
 * For each month of the season, the share of its normal rain that roots keep, 0 to 1.
 *
 * Mornings expect rain by the share of the run before, so it is run again: over recorded years until it has settled, where it is the
 * kept rain over the normals' of the same days; over made years twice, kept over fallen. Where lines wet a part of the ground, the first
 * run takes all of it as wetted.
 */
export function keptRainShares(keeper: RainKeeper, of: YearsOfRain): readonly number[] {
  return keptRain(keeper, of).map(keptShare);
}

/** Rain of one month of the season in all years together, on the planting's days in the ground, mm. */
export interface KeptRain {
  readonly keptMm: number;
  /** What the share is of: by recorded years the normals', by made years what fell. */
  readonly rainMm: number;
}

/** The last run's, for each month of the season. */
export function keptRain(keeper: RainKeeper, of: YearsOfRain): readonly KeptRain[] {
  const isRecorded = of.years.basis === 'record';
  const { demand } = keeper;
  let shares: readonly number[] = of.months.calendarMonth.map(() => FIRST_SHARE);
  let months: readonly KeptRain[] = [];
  for (let run = 0; run < (isRecorded ? MOST_RECORDED_RUNS : MADE_RUNS); run++) {
    const before = shares;
    const isOwn = run > 0 || demand.share === 1;
    // Two stores take longer, and keep about what one would.
    months = rainOfRun(isOwn ? keeper : { ...keeper, demand: withShare(demand, 1) }, of, before);
    shares = months.map(keptShare);
    const hasSettled = shares.every((share, month) => Math.abs(share - (before[month] as number)) <= SETTLED);
    if (isRecorded && isOwn && hasSettled) break;
  }
  return months;
}

function keptShare({ keptMm, rainMm }: KeptRain): number {
  return rainMm > 0 ? Math.min(1, Math.max(0, keptMm / rainMm)) : 0;
}

function rainOfRun(keeper: RainKeeper, of: YearsOfRain, expected: readonly number[]): KeptRain[] {
  const { demand } = keeper;
  const { years, months } = of;
  const ofYear = () => new Float64Array(years.years);
  const run: YearsRun = {
    keeper,
    of,
    outlook: outlookOf(keeper, of, expected),
    rootedMm: demand.rootedMm ?? new Float64Array(years.days),
    wettedMm: ofYear().fill(demand.startMm),
    dryMm: ofYear().fill(demand.startMm),
    askedMm: ofYear(),
    laterDryMm: ofYear(),
    allowedMm: ofYear(),
    useMm: new Float64Array(8 * years.years),
  };
  return months.calendarMonth.map((_, month) => {
    let keptMm = 0;
    let rainMm = 0;
    const end = Math.min(demand.end, months.starts[month + 1] as number);
    for (let day = Math.max(demand.first, months.starts[month] as number); day < end; day++) {
      askOn(run, day);
      keptMm += keptOn(run, day);
      rainMm += demand.rainFactor * (of.allMm[day] as number);
    }
    return { keptMm, rainMm };
  });
}

/** One millimetre a "minute": of each watering the depth that enters the ground which the lines wet. */
function outlookOf({ demand }: RainKeeper, of: YearsOfRain, shares: readonly number[]): WeekOutlook {
  const { first, end, isInContainer, rainFactor } = demand;
  const { starts } = of.months;
  const expectedRainMm = of.normalMm.slice();
  shares.forEach((ofNormals, month) => {
    for (let day = starts[month] as number; day < (starts[month + 1] as number); day++) {
      (expectedRainMm[day] as number) *= rainFactor * ofNormals;
    }
  });
  const netMmPerMinute = new Float64Array(of.normalMm.length).fill(1, first, end);
  const outlook = weekOutlook({ demand, expectedRainMm, netMmPerMinute, projectedMm: undefined, known: undefined });
  outlook.start = -1;
  outlook.afterRuns = isInContainer ? 1 : 0;
  return outlook;
}
