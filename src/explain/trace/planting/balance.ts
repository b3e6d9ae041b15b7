/** What the plants used, what drained, how dry the week left the soil, and that nothing is lost without a name. */
import type { StoreKind } from '../step-kinds.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth, factor, input } from '../trace-value.ts';
import { leachedInputs, leachedSteps } from './leached.ts';
import type { CellDay, PlantingCell } from './planting-cell.ts';
import { shortDaysStep } from './short-days.ts';
import {
  drainedPartInputs,
  drawnInputs,
  meanStep,
  ORDER_OF_DAY,
  POT_SOURCE,
  partSteps,
  potInputs,
  potStep,
  storeKind,
} from './stores.ts';
import { shareInput } from './wetted.ts';

/** Differences below this are rounding. */
const ROUNDING_MM = 1e-12;

export function balanceSteps(cell: PlantingCell): readonly TraceStep[] {
  return [
    ...leachedSteps(cell),
    shortDaysStep(cell),
    usedStep(cell),
    ...daySteps(cell),
    drainedStep(cell, 'irrigation-drained', 'irrigationDrainedMm'),
    drainedStep(cell, 'rain-drained', 'rainDrainedMm'),
    endStep(cell),
    ...accountSteps(cell),
  ];
}

function usedStep(cell: PlantingCell): TraceStep {
  const kind = storeKind(cell);
  const of = { id: 'used', variant: kind, result: depth(cell.at('usedMm')) } as const;
  if (kind === 'pot') {
    const inputs = cell.daily.map(({ day, usedMm }) => input({ id: 'day-used', day }, depth(usedMm)));
    return { ...of, source: ['FAO-56 eq. 84, 86'], inputs };
  }
  if (kind === 'part') {
    const inputs = [...shareInput(cell), ...cell.daily.flatMap(drawnInputs)];
    return { ...of, source: ['FAO-56 eq. 84, 86', { id: 'choice' }], inputs };
  }
  const short = cell.daily.filter(({ usedMm, etcMm }) => etcMm - usedMm > ROUNDING_MM);
  return {
    ...of,
    source: ['FAO-56 eq. 84, 86'],
    inputs: [input('demand', depth(cell.at('demandMm'))), ...short.flatMap(shortDayInputs)],
  };
}

function shortDayInputs({ day, ks, etcMm, ...soil }: CellDay): readonly TraceValue[] {
  const there = soil.tawMm - soil.wateredMm;
  return [
    input({ id: 'day-stress', day }, factor(ks)),
    input({ id: 'day-demand', day }, depth(etcMm)),
    ...(there < ks * etcMm ? [input({ id: 'day-water-there', day }, depth(there))] : []),
  ];
}

function daySteps(cell: PlantingCell): readonly TraceStep[] {
  const { daily } = cell;
  switch (storeKind(cell)) {
    case 'one':
      return daily.map(dayStep);
    case 'pot':
      return daily.map(potStep);
    case 'part':
      return [...daily.flatMap((of) => partSteps(cell, of)), ...daily.slice(-1).map((of) => meanStep(cell, of))];
  }
}

/** Rain and irrigation before the use, as FAO-56 Example 38 has them; what is too much drains after it, as eq. 88 has it. */
function dayStep(of: CellDay): TraceStep {
  return {
    id: 'day-balance',
    day: of.day,
    variant: 'one',
    source: ORDER_OF_DAY,
    inputs: dayInputs(of),
    result: depth(of.endMm),
  };
}

type DayOfBalance = Pick<CellDay, 'day' | 'startMm' | 'usedMm' | 'soakedMm' | 'irrigationMm'>;

function dayInputs({ day, startMm, usedMm, soakedMm, irrigationMm }: DayOfBalance): readonly TraceValue[] {
  return [
    input({ id: 'day-depletion-start', day }, depth(startMm)),
    input({ id: 'day-used', day }, depth(usedMm)),
    input({ id: 'day-rain-soaked', day }, depth(soakedMm)),
    input({ id: 'day-irrigation', day }, depth(irrigationMm)),
  ];
}

const DRAINED: Readonly<Record<StoreKind, (of: CellDay) => readonly TraceValue[]>> = {
  one: dayInputs,
  part: drainedPartInputs,
  pot: potInputs,
};

/** Day by day, where more came than the soil could hold. */
function drainedStep(
  cell: PlantingCell,
  id: 'irrigation-drained' | 'rain-drained',
  field: 'irrigationDrainedMm' | 'rainDrainedMm',
): TraceStep {
  const { daily, at } = cell;
  const drained = daily.filter(({ drainedMm }) => drainedMm > ROUNDING_MM);
  const kind = storeKind(cell);
  const some = kind === 'one' ? 'some' : kind;
  return {
    id,
    variant: drained.length === 0 ? 'none' : some,
    source: kind === 'pot' ? POT_SOURCE : ['FAO-56 eq. 88', { id: 'choice-rain-first' }],
    inputs: [
      ...(drained.length === 0 ? [] : [...shareInput(cell), ...drained.flatMap(DRAINED[kind])]),
      ...(id === 'irrigation-drained' ? leachedInputs(cell) : []),
    ],
    result: depth(at(field)),
  };
}

function endStep({ at }: PlantingCell): TraceStep {
  return {
    id: 'depletion-end',
    source: ['FAO-56 eq. 85'],
    inputs: [
      input('depletion-start', depth(at('depletionStartMm'))),
      ...rootedInputs(at('rootedMm')),
      input('used', depth(at('usedMm'))),
      input('effective-rain', depth(at('rainSoakedMm'))),
      input('irrigation-net', depth(at('irrigationNetMm'))),
      input('rain-drained', depth(at('rainDrainedMm'))),
      input('irrigation-drained', depth(at('irrigationDrainedMm'))),
    ],
    result: depth(at('depletionEndMm')),
  };
}

/** Of roots that reached new, drier soil. */
function rootedInputs(rootedMm: number): readonly TraceValue[] {
  return rootedMm > 0 ? [input('rooted', depth(rootedMm))] : [];
}

/** Where the week's water went. */
function accountSteps({ at }: PlantingCell): readonly TraceStep[] {
  const effectiveRain = input('effective-rain', depth(at('rainSoakedMm')));
  const net = input('irrigation-net', depth(at('irrigationNetMm')));
  const rain = input('rain', depth(at('rainMm')));
  const gross = input('irrigation-gross', depth(at('irrigationGrossMm')));
  const rainDrained = input('rain-drained', depth(at('rainDrainedMm')));
  const irrigationDrained = input('irrigation-drained', depth(at('irrigationDrainedMm')));
  const lostMm = at('rainMm') - at('rainSoakedMm') + at('irrigationGrossMm') - at('irrigationNetMm');
  const storedMm = at('depletionStartMm') + at('rootedMm') - at('depletionEndMm');
  const cameMm = at('rainMm') + at('irrigationGrossMm');
  const wentMm = at('usedMm') + at('rainDrainedMm') + at('irrigationDrainedMm') + lostMm + storedMm;
  return [
    {
      id: 'rain-stayed',
      source: [{ id: 'definition' }],
      inputs: [effectiveRain, rainDrained],
      result: depth(at('rainSoakedMm') - at('rainDrainedMm')),
    },
    {
      id: 'irrigation-stayed',
      source: [{ id: 'definition' }],
      inputs: [net, irrigationDrained],
      result: depth(at('irrigationNetMm') - at('irrigationDrainedMm')),
    },
    {
      id: 'lost',
      source: [{ id: 'definition' }],
      inputs: [rain, effectiveRain, gross, net],
      result: depth(lostMm),
    },
    {
      id: 'storage-change',
      source: [{ id: 'definition' }],
      inputs: [
        input('depletion-start', depth(at('depletionStartMm'))),
        ...rootedInputs(at('rootedMm')),
        input('depletion-end', depth(at('depletionEndMm'))),
      ],
      result: depth(storedMm),
    },
    {
      id: 'closing',
      variant: 'planting',
      source: [{ id: 'conservation-of-water' }, 'FAO-56 eq. 85'],
      inputs: [
        rain,
        gross,
        input('used', depth(at('usedMm'))),
        rainDrained,
        irrigationDrained,
        input('lost', depth(lostMm)),
        input('storage-change', depth(storedMm)),
      ],
      result: depth(cameMm - wentMm),
    },
  ];
}
