/** What the trace says beside numbers and in their place, and of its sources. */
import type { WeatherEstimate } from '../../engine/climate/weather-estimates.ts';
import type { LineKind } from '../../engine/line/line-kinds.ts';
import type { OfDay } from '../../explain/trace/label-about.ts';
import type { Cited, FreeText } from '../../explain/trace/source-notes.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { TraceValueWords } from '../trace-words.ts';

/** A note with the publication that it rests on after it. */
const after =
  (note: string) =>
  (_: Format, { cite }: Cited): string =>
    `${note}: ${cite}`;

const notChecked = (cite: string): string => `${cite} (not checked against the printed source)`;

const ESTIMATES: Readonly<Record<WeatherEstimate, string>> = {
  'vapour-pressure-from-max-humidity': 'humidity from the highest relative humidity alone',
  'vapour-pressure-from-mean-humidity': 'humidity from the mean relative humidity',
  'vapour-pressure-from-min-temperature': 'humidity from the lowest temperature, taken as the dew point',
  'radiation-from-sunshine': 'radiation from hours of sunshine',
  'radiation-from-temperature': 'radiation from the range of temperature, at most a clear sky',
  'wind-from-height': 'wind taken down to 2 m from the height of the gauge',
  'wind-assumed': 'wind not known, taken as 2 m/s',
  'wind-raised': 'wind below 0.5 m/s, raised to it',
  'elevation-assumed': 'elevation not known, taken as sea level',
};

const RAIN_DAYS = 'which days is Runnel’s own choice';

export const traceValues = {
  units: { kPa: 'kPa', 'MJ/m²/d': 'MJ/m²/day' },
  codes: {
    state: { dry: 'dry', short: 'short', over: 'overwatered', met: 'met', closed: 'closed', off: 'off' },
    origin: {
      computed: 'computed',
      'hand-set': 'set by hand',
      run: 'really run',
      closed: 'closed for the week by hand',
    },
    reading: { humidity: 'humidity', wind: 'wind', radiation: 'radiation or sunshine' },
    line: {
      dripline: 'dripline',
      point: 'point emitters',
      spray: 'micro-spray',
      solid: 'solid line without emitters',
    } satisfies Readonly<Record<LineKind, string>>,
    soil: { coarse: 'coarse', medium: 'medium', fine: 'fine' },
    answer: { yes: 'yes', no: 'no' },
    exclusion: {
      'not-named': 'not the named one',
      'not-there': 'not in the ground, or done for the week',
      'no-line': 'has no line that brings water',
      'shut-off': 'behind a shut-off, does not decide',
    },
    limit: {
      'no-limit': 'no limit: the soil takes the water as fast as it comes',
      'no-run-is-enough': 'no run is long enough',
      none: 'none',
    },
  },
  sources: {
    definition: 'Definition',
    'conservation-of-water': 'Conservation of water',
    'common-practice': 'common practice, no source',
    'not-checked': (_: Format, { cite }: Cited) => notChecked(cite),
    plan: 'The plan',
    choice: 'Runnel’s own choice',
    'choice-normals-curve': 'the curve is Runnel’s own choice',
    'choice-equal-days': 'equal days are Runnel’s own choice',
    'choice-rain-days': RAIN_DAYS,
    'choice-rain-days-assumed': `${RAIN_DAYS}; rain days assumed from the month’s rain`,
    'choice-refill': (_: Format, { cite }: Cited) => `${cite}; looking ahead is Runnel’s own choice`,
    'choice-room': 'room for rain is Runnel’s own choice',
    'choice-nearest': 'rounding is Runnel’s own choice',
    'choice-cut': 'Order of the zones when water is cut, as the plan has it',
    'choice-open-days': 'Runnel’s own choice: with a shut-off, the least water that meets the need',
    'choice-rain-first': 'draining rain first is Runnel’s own choice',
    'choice-state-names': 'the names are Runnel’s own',
    observed: 'Measured, from the log',
    'observed-week': 'Measured week, from the log',
    'forecast-day': 'Latest forecast of a day that was not read',
    normals: (_: Format, { text }: FreeText) => (text === '' ? 'Monthly normals' : `Monthly normals: ${text}`),
    estimate: (_: Format, { estimate, cite }: Partial<Cited> & { readonly estimate: WeatherEstimate }) =>
      `${ESTIMATES[estimate]} (${cite ?? 'Runnel’s own choice'})`,
    'plant-factor-set': 'Plant factor set in the plan',
    'crop-coefficients-set': 'Crop coefficients set in the plan',
    'stages-set': 'Growth stages set in the plan',
    'landscape-demand': after('landscape plants'),
    'establishing-factor': 'Factor and date set in the plan',
    'scs-simplified': after('Simplified monthly form, as FAO’s texts on methods print it'),
    'rain-fraction': (_: Format, { cite }: Cited) => `${cite} allows at most a quarter`,
    'measured-days': after('measured days'),
    'years-recorded': (_: Format, { text }: FreeText) => (text === '' ? 'recorded years' : `recorded years: ${text}`),
    'years-made': after('years made of the normals'),
    forecast: ({ day: dayText }: Format, { day, cite }: Cited & OfDay) =>
      `Forecast of ${dayText(day, 'full')}, a day’s rain as ${cite} counts it`,
    'order-of-day': (_: Format, { cite }: Cited) =>
      `what comes is there before the day’s use, as in ${cite}; what is too much drains after it`,
    'start-depletion': (_: Format, { cite }: Cited) =>
      `${cite}, as a share of the allowed depletion set in the plan; filled where none is`,
    'target-depletion': (_: Format, { cite }: Cited) =>
      `Target set in the plan, as a share of the allowed depletion of ${cite}`,
    'solved-for-irrigation': (_: Format, { cite }: Cited) => `${cite}, solved for the irrigation`,
    'efficiency-usual': (_: Format, { cite }: Cited) => `${cite}, the usual efficiency of the method`,
    'efficiency-set': 'Efficiency set in the plan',
    'efficiency-from-du': (_: Format, { cite }: Cited) =>
      `Efficiency 0.4 + 0.6 DU from the distribution uniformity set in the plan: ${notChecked(cite)}`,
    'efficiency-from-eu': (_: Format, { cite }: Cited) =>
      `Efficiency 0.4 + 0.6 EU from the uniformity computed along its lines: ${notChecked(cite)}`,
    'hazen-williams': 'Hazen-Williams, the usual formula of pipes (common practice)',
    'solved-along-line': 'Pressure along the line by Hazen-Williams, emitter by emitter (common practice)',
    'zone-rule': 'Rule for a mixed zone set in the plan',
    'rule-thirstiest': (_: Format, { cite }: Cited) => `thirstiest: ${notChecked(cite)}`,
    'cycle-and-soak': 'Cycle and soak: common practice, no source',
    'longest-cycle': (_: Format, { cite }: Cited) => `longest cycle: ${notChecked(cite)}, or as set in the plan`,
    'run-log': 'The log',
    'choice-of-week': 'The plan’s choice for this week',
  },
} satisfies TraceValueWords;

export const traceValueWords = area('traceValues', traceValues);
