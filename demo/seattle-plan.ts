/** The plan behind seattle.html. The weather is real, the garden invented. */
import { readWeatherFile } from '../src/exchange/weather-file/read-weather-file.ts';
import { takeClimate } from '../src/exchange/weather-take/take-climate.ts';
import { applyEdit } from '../src/plan/edits/apply-edit.ts';
import type { Plan } from '../src/plan/schema/plan-schema.ts';

/** Degrees north, of the airport where the weather was measured. */
const LATITUDE = 47.45;

export interface SeattlePlan {
  readonly plan: Plan;
  /** What was made of the file, in a sentence. */
  readonly says: string;
}

/** `text` is seattle-weather.csv of vega-datasets: date, precipitation in mm, highest and lowest temperature in °C. */
export function seattlePlan(text: string): SeattlePlan {
  const { record, refused } = readWeatherFile(text, { units: 'metric' });
  if (record === undefined) throw new Error(`the weather file was not understood (${refused?.code})`);
  const { edit, firstYear, lastYear } = takeClimate(record, EMPTY, {
    source: 'Seattle, daily weather 2012 to 2015 (NOAA, vega-datasets, BSD-3-Clause); ETo by Hargreaves-Samani',
  });
  if (edit === undefined) throw new Error('the weather file is too short for a climate');
  const days = record.dayCount.toLocaleString('en');
  return {
    says: `${days} days of weather in Seattle, ${firstYear} to ${lastYear} (NOAA, through the open data package vega-datasets), became its climate by month and ${lastYear - firstYear + 1} years of days; the season below runs on them. The garden is invented.`,
    plan: applyEdit(EMPTY, edit),
  };
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

const NOTHING = Array.from({ length: 12 }, () => 0);

/** The garden before anything is known of its weather. */
const EMPTY: Plan = {
  format: 'runnel-plan',
  version: 2,
  units: 'metric',
  name: 'A small garden in Seattle',
  season: { firstDay: '2027-04-05', weeks: 26 },
  site: {
    place: 'Seattle',
    latitude: LATITUDE,
    longitude: -122.31,
    timeZone: 'America/Los_Angeles',
    elevation: 130,
    soil: 'sandy-loam',
    climate: { source: '', eto: NOTHING, rain: NOTHING },
  },
  zones: ZONES,
};
