/** What the plants used, what drained, and how dry the week left the soil. */
import { isShort } from '../../../engine/soil/root-zone-day.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { days, depth, factor } from '../trace-value.ts';
import type { CourseDay } from './course-days.ts';
import { drainedSteps } from './drained-steps.ts';
import type { PlantingCell } from './planting-cell.ts';

/** Differences below this are rounding. */
const ROUNDING_MM = 1e-12;

export function balanceSteps(cell: PlantingCell): readonly TraceStep[] {
  return [shortDaysStep(cell), usedStep(cell), ...drainedSteps(cell), endStep(cell)];
}

function shortDaysStep(cell: PlantingCell): TraceStep {
  const { daily, dayName } = cell;
  const short = daily.filter(({ startMm, rawMm }) => isShort(startMm, rawMm));
  return {
    id: 'short-days',
    title: 'Days short of water',
    says:
      short.length === 0
        ? 'No morning finds the soil drier than the plants can bear; the driest is shown.'
        : 'On mornings when the soil is too dry, the plants close up and use less than they would.',
    formula:
      'a day is short where the depletion at its start is beyond RAW; there Ks = (TAW − Dr) / (TAW − RAW), else Ks = 1',
    source: 'FAO-56 eq. 84',
    inputs: [
      depth('Total available water TAW', cell.days.demand.tawMm),
      ...(short.length > 0 ? short : [driestOf(daily)]).flatMap(({ place, startMm, rawMm }) => [
        depth(`${dayName(place)}, depletion Dr`, startMm),
        depth(`${dayName(place)}, RAW`, rawMm),
      ]),
    ],
    result: days('Days short of water', cell.at('shortDays')),
  };
}

function driestOf(daily: readonly CourseDay[]): CourseDay {
  return daily.reduce((driest, day) => (day.startMm - day.rawMm > driest.startMm - driest.rawMm ? day : driest));
}

function usedStep(cell: PlantingCell): TraceStep {
  return {
    id: 'used',
    title: 'Water used',
    says: 'What the plants took up: their whole demand, unless they were short.',
    formula: 'used = demand − what each short day kept back: ETc − Ks × ETc, or less still where less water was there',
    source: 'FAO-56 eq. 84 and 86',
    inputs: [
      depth('Demand ETc', cell.at('demandMm')),
      ...cell.daily
        .filter(({ usedMm, etcMm }) => etcMm - usedMm > ROUNDING_MM)
        .flatMap((day) => shortDayInputs(cell, day)),
    ],
    result: depth('Water used', cell.at('usedMm')),
  };
}

function shortDayInputs({ dayName }: PlantingCell, day: CourseDay): readonly TraceValue[] {
  const name = dayName(day.place);
  const there = day.tawMm - day.startMm + day.soakedMm + day.irrigationMm;
  return [
    factor(`${name}, Ks`, day.ks),
    depth(`${name}, ETc`, day.etcMm),
    ...(there < day.ks * day.etcMm ? [depth(`${name}, water there`, there)] : []),
  ];
}

function endStep({ at }: PlantingCell): TraceStep {
  return {
    id: 'depletion-end',
    title: 'Depletion at the week’s end',
    says: 'So much water is then missing from a full root zone.',
    formula: 'Dr end = Dr start + used − effective rain − net irrigation + drained',
    source: 'FAO-56 eq. 85',
    inputs: [
      depth('Depletion at the week’s start', at('depletionStartMm')),
      depth('Water used', at('usedMm')),
      depth('Effective rain', at('rainSoakedMm')),
      depth('Net irrigation', at('irrigationNetMm')),
      depth('Rain drained', at('rainDrainedMm')),
      depth('Irrigation drained', at('irrigationDrainedMm')),
    ],
    result: depth('Depletion at the week’s end', at('depletionEndMm')),
  };
}
