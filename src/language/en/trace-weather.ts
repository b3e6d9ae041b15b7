/** What the trace says of the weather: reference ET and rain of a week's days. */
import type { EtoEquation, WeatherSteps } from '../../explain/trace/step-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { StepTexts } from '../trace-words.ts';

const NORMALS_FORMULA =
  'day = mean over it of f(t) = a (1 − t) + b t + 6 (M − (a + b)/2) t (1 − t); M = total / days of the month, February’s 28; ' +
  'a, b where months meet = mean of the two M, at most twice either; result = sum of the days';

const DEPARTURE = {
  says: 'As the plan expects.',
  formula: 'sum of usual × factor',
};

const NORMALS_SAYS = 'The month’s usual total is shared over its days along a smooth curve.';

const FROM_WEATHER: Readonly<Record<'says' | 'formula', Readonly<Record<EtoEquation, string>>>> = {
  says: {
    'penman-monteith': 'Sun, warmth, wind and dry air together say how much water well-kept grass would use.',
    'hargreaves-samani': 'With little but temperatures known, warm days with cool nights are taken to be clear.',
  },
  formula: {
    'penman-monteith':
      'ETo = [0.408 Δ (Rn − G) + γ 900/(T + 273) u2 (es − ea)] / [Δ + γ (1 + 0.34 u2)], not below 0, × days; °C, kPa, m/s; ' +
      'T = mean of Tmin and Tmax, es = mean of both e°, e°(T) = 0.6108 exp(17.27 T/(T + 237.3)), ' +
      'Δ = 4098 e°(T)/(T + 237.3)², γ = 0.000665 × 101.3 ((293 − 0.0065 z)/293)^5.26',
    'hargreaves-samani':
      'ETo = 0.0023 (T + 17.8) √(Tmax − Tmin) Ra, not below 0, × days; °C, T = mean of Tmin and Tmax',
  },
};

export const traceWeather = {
  'eto-month': {
    title: {
      'penman-monteith': ({ month }: Format, of: { readonly month: number }) =>
        `Reference ET of ${month(of.month)} from its weather`,
      'hargreaves-samani': ({ month }: Format, of: { readonly month: number }) =>
        `Reference ET of ${month(of.month)} from temperatures`,
    },
    ...FROM_WEATHER,
  },
  'eto-day': {
    title: {
      'penman-monteith': ({ weekday }: Format, { day }: { readonly day: number }) =>
        `Reference ET of ${weekday(day)} from its weather`,
      'hargreaves-samani': ({ weekday }: Format, { day }: { readonly day: number }) =>
        `Reference ET of ${weekday(day)} from temperatures`,
    },
    ...FROM_WEATHER,
  },
  'eto-normals': {
    title: 'Daily reference ET from monthly normals',
    says: NORMALS_SAYS,
    formula: NORMALS_FORMULA,
  },
  'eto-departure': {
    title: 'Expected ETo',
    ...DEPARTURE,
  },
  'eto-week-total': {
    title: 'Measured reference ET of the week',
    says: 'Days with their own figure keep it; the others share the rest.',
    formula: 'result = max(0, total − days with their own figure) / days that share × days counted here',
  },
  'reference-et': {
    title: 'Reference evapotranspiration (ETo)',
    says: 'What well-kept grass would use in these days: the measure of how thirsty the weather is.',
    formula: 'ETo = sum over the days',
  },
  'rain-normals': {
    title: 'Daily rain from monthly normals',
    says: NORMALS_SAYS,
    formula: NORMALS_FORMULA,
  },
  'rain-departure': {
    title: 'Expected rain',
    ...DEPARTURE,
  },
  'rain-week-total': {
    title: 'Measured rain of the week',
    says: 'It is taken to have fallen on as many days in a row as usually have rain, in the middle.',
    formula:
      'days with rain = days that share × share of days with rain, rounded, at least 1; on each max(0, total − days with their own figure) / days with rain',
  },
  rain: {
    title: 'Rain',
    says: 'All rain of these days.',
    formula: 'rain = sum over the days',
  },
} satisfies StepTexts<WeatherSteps>;

export const traceWeatherWords = area('traceWeather', traceWeather);
