/** What the root zone holds, how far it may dry, and how dry the week found it. */
import type { TraceStep } from '../trace-step.ts';
import { depth, factor } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

export function soilSteps(cell: PlantingCell): readonly TraceStep[] {
  return [availableStep(cell), readilyAvailableStep(cell), startStep(cell)];
}

function availableStep({ zone, planting: { rootZone }, days }: PlantingCell): TraceStep {
  return {
    id: 'available-water',
    title: 'Available water in the root zone',
    says: 'The soil around the roots holds this much that plants can draw, from well watered to wilting.',
    formula: 'TAW = available water of the soil × root depth',
    source: 'FAO-56 eq. 82',
    inputs: [
      {
        label: `Available water of the soil, ${zone.soil.texture}`,
        value: 1000 * zone.soil.availableWater,
        quantity: 'availableWater',
      },
      { label: 'Root depth Zr', value: rootZone.depthM, quantity: 'rootDepth' },
    ],
    result: depth('Total available water TAW', days.demand.tawMm),
  };
}

/** On the last day in the ground, by which the week's state is told. */
function readilyAvailableStep({ planting: { rootZone }, days, ground, dayName }: PlantingCell): TraceStep {
  const last = ground.end - 1;
  const taw = depth('Total available water TAW', days.demand.tawMm);
  const share = factor('Allowed depletion p', rootZone.allowedDepletion);
  const common = {
    id: 'readily-available-water',
    title: 'Readily available water',
    says: 'So far the soil may dry before the plants suffer.',
    result: depth(`Readily available water RAW, ${dayName(last)}`, days.demand.rawMm[last] as number),
  };
  if (!rootZone.adjustsDepletion) {
    return { ...common, formula: 'RAW = p × TAW', source: 'FAO-56 eq. 83', inputs: [share, taw] };
  }
  return {
    ...common,
    formula: 'RAW = p’ × TAW; p’ = p + 0.04 (5 − ETc in mm), from 0.1 to 0.8',
    source: 'FAO-56 eq. 83, p. 162 and Table 22',
    inputs: [share, depth(`ETc of ${dayName(last)}`, days.demand.etcMm[last] as number), taw],
  };
}

function startStep(cell: PlantingCell): TraceStep {
  const { days, ground, week, at } = cell;
  const { rootZone } = cell.planting;
  const result = depth('Depletion at the week’s start', at('depletionStartMm'));
  const common = { id: 'depletion-start', title: 'Depletion at the week’s start', result };
  if (ground.first === days.demand.first) {
    return {
      ...common,
      says: 'This is how dry the soil is taken to be on the planting’s first day.',
      formula: 'Dr = start share × p × TAW',
      source: 'FAO-56 eq. 87, as a share of the allowed depletion set in the plan; filled where none is',
      inputs: [
        factor('Start share of the allowed depletion', rootZone.startDepletion),
        factor('Allowed depletion p', rootZone.allowedDepletion),
        depth('Total available water TAW', days.demand.tawMm),
      ],
    };
  }
  const before = cell.before('depletionEndMm');
  return {
    ...common,
    says: 'The soil starts the week as the week before left it.',
    formula: 'Dr = depletion at the end of the week before',
    source: 'FAO-56 eq. 85',
    inputs: [depth(`Depletion at the end of week ${week}`, before)],
  };
}

/** Depletion to come back to, as the season has it. */
export function targetStep({ planting: { rootZone }, days }: PlantingCell): TraceStep {
  return {
    id: 'target-depletion',
    title: 'Depletion to come back to',
    says: 'Watering brings the soil back to here: full, unless the plan chooses a drier target.',
    formula: 'T = target share × p × TAW',
    source: 'Target set in the plan, as a share of the allowed depletion of FAO-56 eq. 83',
    inputs: [
      factor('Target share of the allowed depletion', rootZone.targetDepletion),
      factor('Allowed depletion p', rootZone.allowedDepletion),
      depth('Total available water TAW', days.demand.tawMm),
    ],
    result: depth('Depletion to come back to T', days.demand.targetMm),
  };
}
