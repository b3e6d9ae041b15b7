/** The plan behind seattle.html. The weather is real, the garden invented. */
import { daysInMonth, monthOf } from '../src/engine/calendar.ts';
import { type DailyWeather, monthlyNormals, yearsOf } from '../src/engine/climate/monthly-normals.ts';
import { describeRowFault } from '../src/exchange/csv/describe-row-fault.ts';
import { readDailyWeather } from '../src/exchange/weather-file/read-daily-weather.ts';
import type { Plan } from '../src/plan/schema/plan-schema.ts';

/** Degrees north, of the airport where the weather was measured. */
const LATITUDE = 47.45;

const round = (values: readonly number[], digits: number) => values.map((value) => Number(value.toFixed(digits)));

export interface SeattlePlan {
  readonly plan: Plan;
  /** What was made of the file, in a sentence. */
  readonly says: string;
}

/** `text` is seattle-weather.csv of vega-datasets: date, precipitation in mm, highest and lowest temperature in °C. */
export function seattlePlan(text: string): SeattlePlan {
  const { days, faults } = readDailyWeather(text, 'metric');
  if (faults[0] !== undefined) throw new Error(describeRowFault(faults[0], 'en'));
  const normals = monthlyNormals(days);
  const years = yearsOf(days);
  const span = `${years[0]} to ${years.at(-1)}`;
  return {
    says: `${days.length.toLocaleString('en')} days of weather in Seattle, ${span} (NOAA, through the open data package vega-datasets), became monthly normals; the season below runs on them. The garden is invented.`,
    plan: {
      format: 'runnel-plan',
      version: 2,
      units: 'metric',
      name: 'A small garden in Seattle',
      season: { firstDay: '2027-04-05', weeks: 26 },
      site: {
        latitude: LATITUDE,
        elevation: 130,
        soil: 'sandy-loam',
        climate: {
          source: `Seattle, daily weather ${span} as monthly means and rain days (NOAA, vega-datasets, BSD-3-Clause); ETo by Hargreaves-Samani`,
          minTemperature: round(normals.minTemperatureC, 2),
          maxTemperature: round(normals.maxTemperatureC, 2),
          rain: round(normals.rainMm, 1),
          rainDays: round(rainDays(days), 1),
        },
      },
      zones: ZONES,
    },
  };
}

/** Days of a month with 0.25 mm or more, as many as a common year has on average. */
function rainDays(days: readonly DailyWeather[]): readonly number[] {
  return Array.from({ length: 12 }, (_, month) => {
    const ofMonth = days.filter(({ day }) => monthOf(day) === month);
    const wet = ofMonth.filter(({ rainMm = 0 }) => rainMm >= 0.25);
    return (wet.length / ofMonth.length) * daysInMonth(2001, month);
  });
}

const ZONES: Plan['zones'] = [
  {
    id: 'vegetables',
    name: 'Vegetables',
    wateringDays: 3,
    timerStepMinutes: 5,
    plantings: [
      {
        id: 'tomatoes',
        name: 'Tomatoes',
        need: { kind: 'crop', crop: 'tomato', plantedOn: '2027-05-17' },
        extent: { kind: 'area', area: 10 },
        lines: [{ kind: 'dripline', flow: 2.2, spacing: 30, layout: { kind: 'rows', rows: 4, length: 8 } }],
      },
      {
        id: 'beans',
        name: 'Green beans',
        need: { kind: 'crop', crop: 'beans-green', plantedOn: '2027-05-24' },
        extent: { kind: 'area', area: 6 },
        lines: [{ kind: 'dripline', flow: 2.2, spacing: 30, layout: { kind: 'rows', rows: 2, length: 8 } }],
      },
    ],
  },
  {
    id: 'border',
    name: 'Border',
    wateringDays: 2,
    timerStepMinutes: 5,
    plantings: [
      {
        id: 'perennials',
        name: 'Perennials',
        need: { kind: 'class', class: 'moderate' },
        extent: { kind: 'area', area: 14 },
        lines: [{ kind: 'dripline', flow: 2.2, spacing: 30, layout: { kind: 'rows', rows: 3, length: 14 } }],
      },
      {
        id: 'rockroses',
        name: 'Rock roses',
        need: { kind: 'class', class: 'low' },
        extent: { kind: 'canopy', count: 6, diameter: 110 },
        shutOff: true,
        lines: [{ kind: 'dripline', flow: 2.2, spacing: 45, layout: { kind: 'loops', perPlant: 1 } }],
      },
    ],
  },
];
