/** Random places, climates and observed weather for gardens. */
import fc from 'fast-check';
import type {
  GardenSite,
  MonthlyClimate,
  ObservedDay,
  ObservedWeather,
  ObservedWeek,
  SeasonSpan,
} from '../../src/engine/garden.ts';
import { between, dayAround, some, twelve } from './garden-numbers.ts';

const monthlyRain = twelve(
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 5, arbitrary: between(0, 110) },
    { weight: 1, arbitrary: between(110, 420) },
  ),
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
    rainMm: monthlyRain,
  })
  .map(({ kind, etoMm, air, windMs, sunshineHours, rainMm }) => {
    const source = 'invented';
    const { dewPointC, ...temperatures } = air;
    if (kind === 'totals') return { source, etoMm, rainMm };
    if (kind === 'temperatures') return { source, ...temperatures, rainMm };
    if (kind === 'weather') return { source, ...temperatures, dewPointC, windMs, sunshineHours, rainMm };
    return { source, ...temperatures, dewPointC, sunshineHours, rainMm };
  });

export const arbitrarySite: fc.Arbitrary<GardenSite> = fc.record({
  latitudeDeg: fc.oneof(
    { weight: 6, arbitrary: between(-60, 60) },
    { weight: 1, arbitrary: fc.constantFrom(-90, -66.5, 0, 70, 90) },
  ),
  elevationM: fc.option(between(-50, 3000), { nil: undefined, freq: 8 }),
  windHeightM: fc.constantFrom(undefined, undefined, 2, 0.5, 10),
  setting: fc.constantFrom(undefined, 'interior', 'coastal'),
  whenIncomplete: fc.constantFrom(undefined, 'hargreaves-samani', 'penman-monteith'),
  climate: arbitraryClimate,
  rain: fc.record({
    method: fc.constantFrom('tr21', 'tr21', 'fao', 'scs-simplified', 'fraction', 'balance'),
    fraction: between(0, 1),
    runoffFraction: fc.oneof(fc.constant(0), between(0, 1)),
  }),
});

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

const observedWeek: fc.Arbitrary<ObservedWeek> = fc.record({
  rainMm: some(fc.oneof(observedRain, between(0, 120))),
  etoMm: some(between(0, 60)),
});

export function arbitraryObserved(span: SeasonSpan): fc.Arbitrary<ObservedWeather> {
  return fc.oneof(
    fc.constant({ days: new Map(), weeks: new Map() }),
    fc.record({
      days: fc.array(fc.tuple(dayAround(span, 5), observedDay), { maxLength: 40 }).map((days) => new Map(days)),
      weeks: fc.array(fc.tuple(dayAround(span, 7), observedWeek), { maxLength: 8 }).map((weeks) => new Map(weeks)),
    }),
  );
}
