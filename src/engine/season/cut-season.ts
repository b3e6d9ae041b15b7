/** A garden's season with less water in some weeks: all zones go through it week by week, for what is cut is found from all of them. */
import { NORMALS as ETO_NORMALS } from '../climate/daily-eto.ts';
import { forecastOn, type KnownForecast } from '../forecast.ts';
import type { SupplyCut } from '../garden.ts';
import { NORMALS } from '../rain/daily-rain.ts';
import type { Weather } from '../weather.ts';
import { expectedEtcMm, expectedRainOnMm, expectedRawMm } from './expected-days.ts';
import { isGiven } from './given-minutes.ts';
import type { PlantingDays } from './planting-days.ts';
import { type SeasonCuts, ZONE_FIELDS as Z } from './season.ts';
import { type ZoneRun, zoneRun } from './zone-run.ts';
import { copiedSeason } from './zone-season.ts';
import { runZoneWeek } from './zone-week-run.ts';

export function noCuts(weeks: number): SeasonCuts {
  return { askedLitres: new Float64Array(weeks), untakenLitres: new Float64Array(weeks) };
}

/** Runs one week of all zones, in the garden's order, and writes down what its cut comes to. */
export function runWeekOfAll(
  runs: readonly ZoneRun[],
  week: number,
  { cut, cuts }: { readonly cut: SupplyCut | undefined; readonly cuts: SeasonCuts },
): void {
  if (cut !== undefined) {
    const { asked, untaken } = takeFrom(runs, week, cut);
    cuts.askedLitres[week] = asked;
    cuts.untakenLitres[week] = untaken > ROUNDING * asked ? untaken : 0;
  }
  for (const run of runs) runZoneWeek(run, week);
}

const ROUNDING = 1e-9;

/**
 * What is cut comes off the zones last in order first, each down to nothing before the next; never off exempt ones, nor off a week that
 * a person set, ran or closed. It is found on the week's first day, from what is known then: each zone's week by the usual rules
 * under expected weather.
 */
function takeFrom(runs: readonly ZoneRun[], week: number, cut: SupplyCut): { asked: number; untaken: number } {
  const litres = runs.map((run) => expectedLitres(run, week));
  const all = litres.reduce((sum, each) => sum + each, 0);
  const asked = Math.max(0, all - (cut.litresPerWeek ?? (1 - cut.share) * all));
  let excess = asked;
  const last = runs
    .map((run, index) => ({ run, index, order: run.season.zone.cutOrder ?? index + 1 }))
    .filter(({ run: { season } }) => !season.zone.cutExempt && !isGiven(season.zone.choices.get(week)))
    .sort((one, other) => other.order - one.order || other.index - one.index);
  // Of none at all nothing runs either that is asked for later in the week.
  const isAll = cut.litresPerWeek === 0 || cut.share === 1;
  for (const { run, index } of last) {
    const own = litres[index] as number;
    const taken = Math.min(own, excess);
    excess -= taken;
    const { figures } = run.season;
    figures.arrayOf(week)[figures.startOf(week) + Z.cutShare] = isAll ? 1 : taken && taken / own;
  }
  return { asked, untaken: excess };
}

/** Gross, of the week as it is planned on its first morning. The run itself stays as it is. */
function expectedLitres({ season, weather, members }: ZoneRun, week: number): number {
  const trial = copiedSeason(season);
  const known = expectedWeather(weather, 7 * week);
  const forecast = forecastOn(known.forecasts, 7 * week);
  const days = members.map((member) => expectedDays(member.days, week, forecast));
  runZoneWeek(zoneRun(trial, { days, weather: known, from: week }), week);
  return trial.figures.at(Z.litres, week);
}

/** Nothing of it is read, and nothing is forecast after the day. */
function expectedWeather(weather: Weather, day: number): Weather {
  return {
    ...weather,
    forecasts: weather.forecasts.filter(({ issued }) => issued <= day),
    eto: { ...weather.eto, method: new Uint8Array(weather.days).fill(ETO_NORMALS) },
    rain: { ...weather.rain, origin: new Uint8Array(weather.days).fill(NORMALS) },
  };
}

/** The days of one week as they are expected. */
function expectedDays(days: PlantingDays, week: number, known: KnownForecast | undefined): PlantingDays {
  const { demand } = days;
  const expected = { ...days, known };
  const [etcMm, rawMm, soakedMm] = [demand.etcMm.slice(), demand.rawMm.slice(), days.soakedMm.slice()];
  for (let day = 7 * week; day < 7 * week + 7; day++) {
    etcMm[day] = expectedEtcMm(expected, day);
    rawMm[day] = expectedRawMm(expected, day);
    soakedMm[day] = expectedRainOnMm(expected, day);
  }
  return { ...days, demand: { ...demand, etcMm, rawMm }, soakedMm };
}
