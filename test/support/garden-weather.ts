/** Random places, climates and observed weather for gardens. */
import fc from 'fast-check';
import type {
  Forecast,
  GardenSite,
  MonthlyClimate,
  ObservedDay,
  ObservedWeather,
  ObservedWeek,
  SeasonSpan,
  WeatherStretch,
  WeatherYears,
} from '../../src/engine/garden.ts';
import { between, dayAround, some, twelve } from './garden-numbers.ts';

const monthlyRain = twelve(
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 5, arbitrary: between(0, 110) },
    { weight: 1, arbitrary: between(110, 420) },
  ),
);

const monthlyRainDays = twelve(
  fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 8, arbitrary: between(0, 28) }),
);

/** Coldest, warmest, and dew point of a month: the last never above the first. */
const monthlyAir = fc
  .array(fc.tuple(between(-25, 22), between(0, 20), between(0, 12)), { minLength: 12, maxLength: 12 })
  .map((months) => ({
    minTemperatureC: months.map(([low]) => low),
    maxTemperatureC: months.map(([low, range]) => low + range),
    dewPointC: months.map(([low, , dryness]) => low - dryness),
  }));

const arbitraryClimate: fc.Arbitrary<MonthlyClimate> = fc
  .record({
    kind: fc.constantFrom('totals', 'temperatures', 'weather', 'weather without wind'),
    etoMm: twelve(fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 8, arbitrary: between(5, 260) })),
    air: monthlyAir,
    windMs: twelve(between(0, 6)),
    sunshineHours: twelve(between(0, 14)),
    rain: fc.record({ rainMm: monthlyRain, rainDays: some(monthlyRainDays) }),
  })
  .map(({ kind, etoMm, air, windMs, sunshineHours, rain }) => {
    const source = 'invented';
    const { dewPointC, ...temperatures } = air;
    if (kind === 'totals') return { source, etoMm, ...rain };
    if (kind === 'temperatures') return { source, ...temperatures, ...rain };
    if (kind === 'weather') return { source, ...temperatures, dewPointC, windMs, sunshineHours, ...rain };
    return { source, ...temperatures, dewPointC, sunshineHours, ...rain };
  });

export function arbitrarySite(span: SeasonSpan): fc.Arbitrary<GardenSite> {
  return fc.record({
    latitudeDeg: fc.oneof(
      { weight: 6, arbitrary: between(-60, 60) },
      { weight: 1, arbitrary: fc.constantFrom(-90, -66.5, 0, 70, 90) },
    ),
    elevationM: fc.option(between(-50, 3000), { nil: undefined, freq: 8 }),
    windHeightM: fc.constantFrom(undefined, undefined, 2, 0.5, 10),
    setting: fc.constantFrom(undefined, 'interior', 'coastal'),
    whenIncomplete: fc.constantFrom(undefined, 'hargreaves-samani', 'penman-monteith'),
    climate: arbitraryClimate,
    years: some(arbitraryYears(span)),
    rain: fc.record({
      method: fc.constantFrom('tr21', 'tr21', 'fao', 'scs-simplified', 'fraction', 'balance', 'balance', 'balance'),
      fraction: between(0, 1),
      runoffFraction: fc.oneof(fc.constant(0), between(0, 1)),
    }),
  });
}

/** A stretch or two of days before the season: some years of it in a row, or so few days that no year has them all. */
function arbitraryYears(span: SeasonSpan): fc.Arbitrary<WeatherYears> {
  const stretch = fc
    .record({
      daysBefore: fc.integer({ min: 366, max: 3000 }),
      days: fc.integer({ min: 30, max: 1800 }),
      seed: fc.integer({ min: 1, max: 1_000_000 }),
      rainShare: between(0, 0.7),
      missingShare: fc.constantFrom(0, 0, 0.01, 0.2),
    })
    .map(({ daysBefore, ...weather }) => weatherStretch({ firstDay: span.firstDay - daysBefore, ...weather }));
  return fc.array(stretch, { minLength: 1, maxLength: 2 }).map((stretches) => ({ source: 'invented', stretches }));
}

interface StretchShape {
  readonly firstDay: number;
  readonly days: number;
  readonly seed: number;
  readonly rainShare: number;
  readonly missingShare: number;
}

/** Random by its seed alone: thousands of days would be too many for the generator of the garden. */
function weatherStretch({ firstDay, days, seed, rainShare, missingShare }: StretchShape): WeatherStretch {
  let state = seed;
  const next = () => {
    // Park and Miller 1988.
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  const figure = (mm: () => number) => (next() < missingShare ? Number.NaN : mm());
  const rainMm = Float64Array.from({ length: days }, () => figure(() => (next() < rainShare ? 30 * next() ** 2 : 0)));
  const etoMm = Float64Array.from({ length: days }, () => figure(() => 8 * next()));
  return { firstDay, rainMm, etoMm };
}

const observedRain = fc.oneof(fc.constant(0), between(0, 3), between(0, 60));

const observedDay: fc.Arbitrary<ObservedDay> = fc
  .record({
    rainMm: some(observedRain),
    etoMm: fc.option(between(0, 11), { nil: undefined, freq: 2 }),
    air: some(fc.tuple(between(-22, 26), between(0, 20))),
    dewPointC: fc.option(between(-25, 5), { nil: undefined, freq: 2 }),
    maxHumidityPercent: some(between(50, 100)),
    minHumidityPercent: some(between(5, 50)),
    windMs: some(between(0, 8)),
    radiationMj: fc.option(between(0, 32), { nil: undefined, freq: 2 }),
    sunshineHours: some(between(0, 16)),
  })
  .map(({ air, ...rest }) => ({ ...rest, minTemperatureC: air?.[0], maxTemperatureC: air && air[0] + air[1] }));

const someTotal = some(fc.oneof(observedRain, between(0, 120)));

/** Totals of the week that some day lies in, its rain read through to any of its days. */
function arbitraryWeek(span: SeasonSpan): fc.Arbitrary<readonly [number, ObservedWeek]> {
  return fc
    .record({
      day: dayAround(span, 7),
      rainMm: someTotal,
      through: some(fc.integer({ min: 0, max: 6 })),
      etoMm: some(between(0, 60)),
    })
    .map(({ day, rainMm, through, etoMm }) => {
      const start = day - ((((day - span.firstDay) % 7) + 7) % 7);
      return [day, { rainMm, rainThrough: through === undefined ? undefined : start + through, etoMm }] as const;
    });
}

/** Days to come, and some that a forecast cannot tell any more. */
function arbitraryForecast(span: SeasonSpan): fc.Arbitrary<Forecast> {
  const ofDay = fc.record({ rainMm: some(observedRain), etoMm: some(between(0, 11)) });
  return dayAround(span, 5).chain((issued) =>
    fc
      .array(fc.tuple(fc.integer({ min: -1, max: 10 }), ofDay), { maxLength: 8 })
      .map((days) => ({ issued, days: new Map(days.map(([ahead, day]) => [issued + ahead, day])) })),
  );
}

/** Days here and there, or a gauge that is read every day for a while. */
function arbitraryDays(span: SeasonSpan): fc.Arbitrary<ReadonlyMap<number, ObservedDay>> {
  const hereAndThere = fc.array(fc.tuple(dayAround(span, 5), observedDay), { maxLength: 40 });
  const inARow = fc
    .tuple(dayAround(span, 5), fc.array(fc.record({ rainMm: observedRain }), { maxLength: 40 }))
    .map(([first, days]) => days.map((day, place) => [first + place, day] as const));
  return fc.oneof(hereAndThere, inARow).map((days) => new Map<number, ObservedDay>(days));
}

export function arbitraryObserved(span: SeasonSpan): fc.Arbitrary<ObservedWeather> {
  const forecasts = fc
    .array(arbitraryForecast(span), { maxLength: 5 })
    .map((issues) => issues.sort((one, other) => one.issued - other.issued));
  return fc.oneof(
    { weight: 1, arbitrary: fc.constant({ days: new Map(), weeks: new Map() }) },
    {
      weight: 2,
      arbitrary: fc.record({
        days: arbitraryDays(span),
        weeks: fc.array(arbitraryWeek(span), { maxLength: 8 }).map((weeks) => new Map(weeks)),
        forecasts: some(forecasts),
      }),
    },
  );
}
