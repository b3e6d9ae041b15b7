/** What the root zone holds, how far it may dry, and how dry the week found it. */
import { findTexture } from '../../../engine/soil/find-texture.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth, factor, input } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

export function soilSteps(cell: PlantingCell): readonly TraceStep[] {
  return [availableStep(cell), readilyAvailableStep(cell), startStep(cell)];
}

function availableStep({ zone: { soil }, planting: { rootZone }, days }: PlantingCell): TraceStep {
  return {
    id: 'available-water',
    source: ['FAO-56 eq. 82'],
    inputs: [
      input(
        { id: 'soil-available-water', texture: findTexture(soil.texture).name },
        { value: 1000 * soil.availableWater, quantity: 'availableWater' },
      ),
      input('root-depth', { value: rootZone.depthM, quantity: 'rootDepth' }),
    ],
    result: depth(days.demand.tawMm),
  };
}

/** On the last day in the ground, by which the week's state is told. */
function readilyAvailableStep(cell: PlantingCell): TraceStep {
  const { days, ground, dayOf } = cell;
  const { adjustsDepletion } = cell.planting.rootZone;
  const last = ground.end - 1;
  const [allowed, available] = allowedInputs(cell);
  return {
    id: 'readily-available-water',
    variant: adjustsDepletion ? 'adjusted' : 'fixed',
    source: [adjustsDepletion ? 'FAO-56 eq. 83, p. 162, Table 22' : 'FAO-56 eq. 83'],
    inputs: adjustsDepletion
      ? [allowed, input({ id: 'day-demand', day: dayOf(last) }, depth(days.demand.etcMm[last] as number)), available]
      : [allowed, available],
    result: depth(days.demand.rawMm[last] as number),
  };
}

function allowedInputs({ planting: { rootZone }, days }: PlantingCell): readonly [TraceValue, TraceValue] {
  return [
    input('allowed-depletion', factor(rootZone.allowedDepletion)),
    input('available-water', depth(days.demand.tawMm)),
  ];
}

function startStep(cell: PlantingCell): TraceStep {
  const { days, ground, week, at, planting } = cell;
  const result = depth(at('depletionStartMm'));
  if (ground.first === days.demand.first) {
    return {
      id: 'depletion-start',
      variant: 'first-day',
      source: [{ id: 'start-depletion', cite: 'FAO-56 eq. 87' }],
      inputs: [input('start-share', factor(planting.rootZone.startDepletion)), ...allowedInputs(cell)],
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
export function targetStep(cell: PlantingCell): TraceStep {
  return {
    id: 'target-depletion',
    source: [{ id: 'target-depletion', cite: 'FAO-56 eq. 83' }],
    inputs: [input('target-share', factor(cell.planting.rootZone.targetDepletion)), ...allowedInputs(cell)],
    result: depth(cell.days.demand.targetMm),
  };
}
