/** What mornings expect of the days to come where a forecast was issued. */
import type { DayNumber } from './calendar.ts';
import type { Forecast, ForecastDay } from './garden-weather.ts';
import { dailyRainCountedMm } from './rain/daily-threshold.ts';

/** All that was forecast by the morning of `issued`, by day of the season. */
export interface KnownForecast {
  /** Counted from the season's first day; below 0 where it was issued before. */
  readonly issued: number;
  readonly days: ReadonlyMap<number, ExpectedDay>;
}

export interface ExpectedDay {
  /** Reference ET over what the normals say. */
  readonly etoShare: number;
  /** Rain that would enter the root zone, mm; undefined where no rain was forecast, dry or wet. */
  readonly soakedMm: number | undefined;
}

export interface ForecastGround {
  readonly firstDay: DayNumber;
  /** What the normals say of each day of the season. */
  readonly expectedEtoMm: Float64Array;
  readonly runoffFraction: number;
}

/** One after each issue. */
export function knownForecasts(forecasts: readonly Forecast[] = [], ground: ForecastGround): readonly KnownForecast[] {
  return inOrder(forecasts).map(({ issued }) => {
    const days = new Map<number, ExpectedDay>();
    for (const [date, forecast] of latestForecast(forecasts.filter((each) => each.issued <= issued))) {
      const day = date - ground.firstDay;
      days.set(day, expectedDay(day, forecast, ground));
    }
    return { issued: issued - ground.firstDay, days };
  });
}

/**
 * What was forecast last of each day, no day before its issue. A later issue replaces an earlier one day by day, rain
 * and ETo each by itself.
 */
export function latestForecast(forecasts: readonly Forecast[] = []): ReadonlyMap<DayNumber, ForecastDay> {
  const latest = new Map<DayNumber, ForecastDay>();
  for (const { issued, days } of inOrder(forecasts)) {
    for (const [day, { rainMm, etoMm }] of days) {
      if (day < issued) continue;
      const before = latest.get(day);
      latest.set(day, { rainMm: rainMm ?? before?.rainMm, etoMm: etoMm ?? before?.etoMm });
    }
  }
  return latest;
}

function inOrder(forecasts: readonly Forecast[]): readonly Forecast[] {
  return [...forecasts].sort((one, other) => one.issued - other.issued);
}

/** As observed rain: below a fifth of the day's ETo it dries off again (FAO-56 p. 170). */
function expectedDay(
  day: number,
  { rainMm, etoMm }: ForecastDay,
  { expectedEtoMm, runoffFraction }: ForecastGround,
): ExpectedDay {
  const normalMm = expectedEtoMm[day] ?? 0;
  // Kept as a share of the normals: where they have none it says nothing.
  const expectedMm = normalMm && (etoMm ?? normalMm);
  const soakedMm = rainMm === undefined ? undefined : dailyRainCountedMm(rainMm, expectedMm) * (1 - runoffFraction);
  return { etoShare: normalMm ? expectedMm / normalMm : 1, soakedMm };
}

/** The latest that is known on the morning of a day of the season. */
export function forecastOn(forecasts: readonly KnownForecast[], day: number): KnownForecast | undefined {
  for (let at = forecasts.length - 1; at >= 0; at--) {
    const forecast = forecasts[at] as KnownForecast;
    if (forecast.issued <= day) return forecast;
  }
  return undefined;
}
