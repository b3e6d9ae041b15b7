/** What irrigation brought to a planting in its week. */
import { zoneFigure } from '../../../engine/season/zone-week.ts';
import type { TraceStep } from '../trace-step.ts';
import { days, depth, minutes, percent, rate } from '../trace-value.ts';
import { linePieces } from './line-pieces.ts';
import type { PlantingCell } from './planting-cell.ts';

/** A share of a need below this would say nothing. */
const LEAST_NEED_MM = 0.05;

export function receivedSteps(cell: PlantingCell): readonly TraceStep[] {
  return [minutesStep(cell), grossStep(cell), netStep(cell), ...needMetSteps(cell)];
}

function minutesStep(cell: PlantingCell): TraceStep {
  const perDay = minutesPerDay(cell);
  return {
    id: 'minutes-open',
    title: 'Minutes it is watered in the week',
    says: 'So long its line runs, all open days together.',
    formula: 'minutes = minutes a watering day × open days',
    source: 'Definition',
    inputs: [minutes('Minutes a watering day of the zone', perDay), days('Open days', cell.at('openDays'))],
    result: minutes('Minutes it is watered', perDay * cell.at('openDays')),
  };
}

function grossStep(cell: PlantingCell): TraceStep {
  const mask = cell.at('openMask');
  return {
    id: 'irrigation-gross',
    title: 'Irrigation, gross',
    says: 'All that the line lets out over the planting’s ground.',
    formula: 'gross = minutes a watering day / 60 × rate × open days, added up over the lines',
    source: 'Definition',
    inputs: [
      minutes('Minutes a watering day of the zone', minutesPerDay(cell)),
      ...linePieces(cell).flatMap(({ grossRate, places, suffix }) => [
        rate(`Application rate${suffix}`, grossRate),
        days(`Open days${suffix}`, places.filter((place) => ((mask >> (place - cell.course.start)) & 1) === 1).length),
      ]),
    ],
    result: depth('Gross irrigation', cell.at('irrigationGrossMm')),
  };
}

function netStep(cell: PlantingCell): TraceStep {
  return {
    id: 'irrigation-net',
    title: 'Irrigation, net',
    says: 'The part of it that counts as reaching the roots everywhere.',
    formula: 'net = gross × efficiency',
    source: 'Definition of efficiency',
    inputs: [depth('Gross irrigation', cell.at('irrigationGrossMm')), percent('Efficiency', cell.zone.efficiency)],
    result: depth('Net irrigation', cell.at('irrigationNetMm')),
  };
}

function needMetSteps(cell: PlantingCell): readonly TraceStep[] {
  const needed = cell.at('neededMm');
  if (needed < LEAST_NEED_MM) return [];
  return [
    {
      id: 'need-met',
      title: 'Received against need',
      says: 'More than the whole need goes below the roots or stays in the soil for later.',
      formula: 'share = net irrigation / net need',
      source: 'Definition',
      inputs: [depth('Net irrigation', cell.at('irrigationNetMm')), depth('Net need', needed)],
      result: percent('Share of the need', cell.at('irrigationNetMm') / needed),
    },
  ];
}

function minutesPerDay({ zoneSeason, week }: PlantingCell): number {
  return zoneFigure(zoneSeason, 'minutesPerDay', week);
}
