import { shortText } from '../words/short-text.ts';

/** Fields of a plan as a gardener would call them, some by the group they stand in; any other keeps its own name. */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  allowedDepletion: 'allowed depletion',
  class: 'water-use class',
  'coefficients.end': 'Kc at the end',
  'coefficients.initial': 'initial Kc',
  'coefficients.mid': 'mid-season Kc',
  dewPoint: 'dew point',
  eto: 'reference ET',
  exponent: 'exponent of the emitter',
  firstDay: 'first day',
  from: 'first day',
  hoursPerDay: 'hours a day',
  inGround: 'days in the ground',
  'inGround.from': 'first day in the ground',
  'inGround.to': 'last day in the ground',
  insideDiameter: 'inside diameter',
  leastPressure: 'least pressure',
  longestCycleMinutes: 'longest cycle',
  missingWeather: 'way with missing weather',
  maxHumidityPercent: 'highest humidity',
  maxTemperature: 'highest temperature',
  microclimate: 'microclimate factor',
  density: 'density factor',
  minHumidityPercent: 'lowest humidity',
  minTemperature: 'lowest temperature',
  openDays: 'open days',
  perPlant: 'loops round each plant',
  perSeason: 'allowance for the season',
  perWeek: 'allowance for a week',
  plantedOn: 'planting day',
  radiationMj: 'solar radiation',
  risePercent: 'rise',
  roofArea: 'roof area',
  rootDepth: 'root depth',
  runoffCoefficient: 'runoff coefficient',
  'rule.planting': 'planting of the rule',
  seconds: 'seconds to fill the bucket',
  shutOff: 'shut-off',
  slopePercent: 'slope',
  slopeSide: 'side on a slope',
  'stages.initial': 'days of the initial stage',
  'stages.development': 'days of the development stage',
  'stages.mid': 'days of the mid-season stage',
  'stages.late': 'days of the late-season stage',
  start: 'level at the start',
  startDepletion: 'depletion at the start',
  sunshineHours: 'sunshine',
  timerStepMinutes: 'timer step',
  units: 'unit system',
  wateringDays: 'watering days',
  windHeight: 'height of the wind gauge',
};

/** Groups that say nothing of their own once a field inside them is named. */
const SILENT = new Set([
  ...['extent', 'need', 'rule', 'application', 'flow', 'emitter', 'layout'],
  ...['inGround', 'stages', 'coefficients', 'allowance'],
]);

/** `extent, area` is `area`; `extent, kind` is `kind of extent`; `establishing, until` stays both. */
export function fieldsInWords(fields: readonly string[]): string {
  return fields
    .map((field, place) => {
      const group = fields[place - 1];
      if (place < fields.length - 1 && SILENT.has(field)) return '';
      return field === 'kind' && group !== undefined ? `kind of ${wordOf(group)}` : wordOf(field, group);
    })
    .filter((word) => word !== '')
    .join(', ');
}

function wordOf(field: string, group = ''): string {
  const word = [`${group}.${field}`, field].find((key) => Object.hasOwn(FIELD_WORDS, key));
  return (word === undefined ? undefined : FIELD_WORDS[word]) ?? shortText(field);
}
