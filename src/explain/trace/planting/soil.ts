/** What the root zone holds, how far it may dry, and how dry the week found it. */

import type { GardenContainer } from '../../../engine/garden.ts';
import { rootDepthM } from '../../../engine/plants/root-depth.ts';
import { targetOn, tawOn } from '../../../engine/season/planting-demand.ts';
import { findTexture } from '../../../engine/soil/find-texture.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { area, count, days, depth, factor, input, rootDepth, volume } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';
import { leachingInput } from './wetted.ts';

export function soilSteps(cell: PlantingCell): readonly TraceStep[] {
  return [...rootSteps(cell), availableStep(cell), readilyAvailableStep(cell), ...soakSteps(cell), startStep(cell)];
}

/** Of an annual crop, on the last day of the week in the ground. */
function rootSteps({ planting, ground, dayOf }: PlantingCell): readonly TraceStep[] {
  const { coefficient, rootZone } = planting;
  const { initialDepthM, depthM } = rootZone;
  if (initialDepthM === undefined || coefficient.kind !== 'crop') return [];
  const [iniDays, devDays] = coefficient.stageDays;
  const growthDay = dayOf(ground.end - 1) - coefficient.plantedOn + 1;
  return [
    {
      id: 'root-depth',
      source: [{ id: 'not-checked', cite: 'FAO-56 ch. 8' }],
      inputs: [
        input('first-root-depth', rootDepth(initialDepthM)),
        input('full-root-depth', rootDepth(depthM)),
        input('growth-day-last', count(growthDay)),
        input('stage-initial', days(iniDays)),
        input('stage-development', days(devDays)),
      ],
      result: rootDepth(rootDepthM(growthDay, { iniDays, devDays }, { initialM: initialDepthM, fullM: depthM })),
    },
  ];
}

/** In the week of its first day. */
function soakSteps({ planting, ground, days: of }: PlantingCell): readonly TraceStep[] {
  const { soakLitres = 0, areaM2 } = planting;
  if (soakLitres === 0 || ground.first !== of.demand.first) return [];
  return [
    {
      id: 'soak',
      source: [{ id: 'plan' }],
      inputs: [input('soak-depth', depth(soakLitres / areaM2)), input('ground', area(areaM2))],
      result: volume(soakLitres),
    },
  ];
}

/** Of a pot by its mix; in the ground on the last day, where roots grow. */
function availableStep(cell: PlantingCell): TraceStep {
  const { container } = cell.planting;
  return container === undefined ? groundStep(cell) : potStep(cell, container);
}

function potStep({ planting, days: of }: PlantingCell, container: GardenContainer): TraceStep {
  const { tawMm } = of.demand;
  const litres = container.count * container.volumeLitres;
  return {
    id: 'available-water',
    variant: 'pot',
    source: [{ id: 'not-checked', cite: 'Southern Nursery Association' }],
    inputs: [
      input('pot-mix', volume(litres)),
      input('mix-available', factor((tawMm * planting.areaM2) / litres)),
      input('ground', area(planting.areaM2)),
    ],
    result: depth(tawMm),
  };
}

function groundStep({ zone: { soil }, planting: { rootZone }, days: of, ground }: PlantingCell): TraceStep {
  const { availableWater = soil.availableWater } = rootZone;
  const tawMm = tawOn(of.demand, ground.end - 1);
  return {
    id: 'available-water',
    variant: 'soil',
    source: ['FAO-56 eq. 82'],
    inputs: [
      input(
        { id: 'soil-available-water', texture: findTexture(soil.texture).name },
        { value: 1000 * availableWater, quantity: 'availableWater' },
      ),
      input('root-depth', rootDepth(tawMm / (1000 * availableWater))),
    ],
    result: depth(tawMm),
  };
}

/** On the last day in the ground, by which the week's state is told. */
function readilyAvailableStep(cell: PlantingCell): TraceStep {
  const { days: of, ground, dayOf } = cell;
  const { adjustsDepletion } = cell.planting.rootZone;
  const last = ground.end - 1;
  const [allowed, available] = allowedInputs(cell, last);
  return {
    id: 'readily-available-water',
    variant: adjustsDepletion ? 'adjusted' : 'fixed',
    source: [adjustsDepletion ? 'FAO-56 eq. 83, p. 162, Table 22' : 'FAO-56 eq. 83'],
    inputs: adjustsDepletion
      ? [allowed, input({ id: 'day-demand', day: dayOf(last) }, depth(of.demand.etcMm[last] as number)), available]
      : [allowed, available],
    result: depth(of.demand.rawMm[last] as number),
  };
}

function allowedInputs(
  { planting: { rootZone }, days: of }: PlantingCell,
  day: number,
): readonly [TraceValue, TraceValue] {
  return [
    input('allowed-depletion', factor(rootZone.allowedDepletion)),
    input('available-water', depth(tawOn(of.demand, day))),
  ];
}

function startStep(cell: PlantingCell): TraceStep {
  const { days: of, ground, week, at, planting } = cell;
  const result = depth(at('depletionStartMm'));
  if (ground.first === of.demand.first) {
    return {
      id: 'depletion-start',
      variant: 'first-day',
      source: [{ id: 'start-depletion', cite: 'FAO-56 eq. 87' }],
      inputs: [input('start-share', factor(planting.rootZone.startDepletion)), ...allowedInputs(cell, ground.first)],
      result,
    };
  }
  return {
    id: 'depletion-start',
    variant: 'carried-over',
    source: ['FAO-56 eq. 85'],
    inputs: [input({ id: 'depletion-before', week }, depth(cell.before('depletionEndMm')))],
    result,
  };
}

/** Depletion to come back to, as the season has it. */
export function targetStep(cell: PlantingCell, day: number): TraceStep {
  if (cell.days.demand.leachingFraction > 0) {
    return {
      id: 'target-depletion',
      variant: 'leaching',
      source: [{ id: 'choice' }],
      inputs: [leachingInput(cell)],
      result: depth(targetOn(cell.days.demand, day)),
    };
  }
  return {
    id: 'target-depletion',
    variant: 'set',
    source: [{ id: 'target-depletion', cite: 'FAO-56 eq. 83' }],
    inputs: [input('target-share', factor(cell.planting.rootZone.targetDepletion)), ...allowedInputs(cell, day)],
    result: depth(targetOn(cell.days.demand, day)),
  };
}
