/** What the trace calls the values of mulch, pots, ground that is wetted in part, roots that grow, and rest. */
import type { GroundLabels } from '../../explain/trace/ground-label-kinds.ts';
import type { GroundPart, OfDay, OfPart } from '../../explain/trace/label-about.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { Messages } from '../messages.ts';
import { between, ofPlanting, onDay } from './trace-labels.ts';

const PARTS: Readonly<Record<GroundPart, string>> = { wetted: 'wetted part', dry: 'part that stays dry' };

const ofPart =
  (what: string) =>
  (_: Format, { part }: OfPart): string =>
    `${PARTS[part]}, ${what}`;

const partOnDay =
  (what: string) =>
  ({ weekday }: Format, { day, part }: OfDay & OfPart): string =>
    `${weekday(day)}, ${PARTS[part]}, ${what}`;

export const traceGroundLabels = {
  'mulch-cover': 'Share of the ground under mulch',
  'mulch-less': 'What a sheet takes off',
  'kc-bare': 'Kc of bare ground',
  'rest-from': 'From',
  'rest-to': 'To',
  'ground-first': 'First day of the week in the ground',
  pots: 'Pots',
  opening: 'Width of an opening',
  'opening-rain': 'Share of the rain that reaches the opening',
  'rain-factor': 'Rain factor',
  'first-root-depth': 'Root depth at planting',
  'full-root-depth': 'Full root depth',
  'growth-day-last': 'Day of growth, last day of the week in the ground',
  'part-depletion': ofPart('depletion at the week’s start'),
  'day-part-depletion': partOnDay('depletion at the start'),
  'day-part-end': partOnDay('depletion at the end'),
  'day-drawn': partOnDay('drawn by the roots'),
  'day-rooted': onDay('missing in the soil that roots grew into'),
  'rooted-between': between('Missing in the soil that roots grow into'),
  'after-last-run': 'Used less rain after the last run of the last watering day',
  'day-left': onDay('used less rain after the last run'),
  'wetted-share': 'Wetted share',
  'soil-group': 'Soil',
  'wetting-flow': 'Flow q of one emitter',
  'wetted-width': 'Width that one emitter wets',
  'line-length': 'Length of the line',
  'leaching-fraction': 'Leaching fraction',
  'leaching-depth': 'Irrigation that is to drain and carry salt away',
  'soak-depth': 'Missing before the soak',
  'day-runs': onDay('runs'),
  'day-available': onDay('available water TAW'),
  'runs-a-day': 'Runs a day',
  'runs-readily-available': ofPlanting('RAW on the day that needs most runs'),
  'runs-use': ofPlanting('expected use of that day'),
} satisfies Messages<GroundLabels>;

export const traceGroundLabelWords = area('traceGroundLabels', traceGroundLabels);
