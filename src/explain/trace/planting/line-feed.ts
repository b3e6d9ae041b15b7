/** What solid lines leave of the source's pressure, where a planting's emitters begin. */
import type { GardenLine, PlantingFlow } from '../../../engine/garden.ts';
import { elevationLossKpa } from '../../../engine/line/elevation.ts';
import { frictionCoefficient, frictionLossKpa } from '../../../engine/line/friction.ts';
import { hazenWilliamsC } from '../../../engine/line/hazen-williams-c.ts';
import { liesOn } from '../../../engine/line/planting-flows.ts';
import { flowOn } from '../../../engine/season/planting-days.ts';
import { sourceOn } from '../../../engine/supply/source-on.ts';
import { daysIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { bore, count, flow, input, length, pressure } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

/** One for each flow of the week that comes through solid lines of a known length, at a known pressure. */
export function lineFeedSteps(cell: PlantingCell): readonly TraceStep[] {
  const { planting, ground, dayOf } = cell;
  const fed = planting.flows.filter(
    (of) => daysIn(ground, (index) => flowOn(planting, dayOf(index)) === of).length > 0,
  );
  return fed.flatMap((of) => stepOf(cell, of, fed.length > 1) ?? []);
}

function stepOf({ planting, season, ground, dayOf }: PlantingCell, of: PlantingFlow, isOneOfSeveral: boolean) {
  const [first = 0] = daysIn(ground, (index) => flowOn(planting, dayOf(index)) === of);
  const day = dayOf(first);
  const sourceKpa = sourceOn(season.garden.supply, day)?.pressureKpa;
  const { pressureKpa, flowLph } = of;
  const solids = planting.lines.flatMap((line, order) => (isPipe(line) && liesOn(line, day) ? [{ line, order }] : []));
  if (sourceKpa === undefined || pressureKpa === undefined || solids.length === 0) return undefined;
  const step: TraceStep = {
    id: 'line-feed',
    ...(isOneOfSeveral ? { from: day } : {}),
    source: [{ id: 'hazen-williams' }],
    inputs: [
      input('source-pressure', pressure(sourceKpa)),
      input('flow-through', flow(flowLph / 60)),
      ...solids.flatMap(({ line, order }) => pipeValues(line, order + 1, flowLph)),
    ],
    result: pressure(pressureKpa),
  };
  return step;
}

interface Pipe extends GardenLine {
  readonly lengthM: number;
}

const isPipe = (line: GardenLine): line is Pipe => line.kind === 'solid' && (line.lengthM ?? 0) > 0;

/** What one of them is, and what it costs at a flow, L/h. */
function pipeValues({ lengthM, insideDiameterMm, riseMPerM }: Pipe, line: number, flowLph: number): TraceValue[] {
  const smoothness = hazenWilliamsC(insideDiameterMm);
  const coefficient = frictionCoefficient({ insideDiameterMm, lengthM, hazenWilliamsC: smoothness });
  return [
    input({ id: 'solid-length', line }, length(lengthM)),
    input({ id: 'solid-bore', line }, bore(insideDiameterMm)),
    input({ id: 'smoothness', line }, count(smoothness)),
    input({ id: 'climb-loss', line }, pressure(elevationLossKpa(riseMPerM * lengthM))),
    input({ id: 'friction-loss', line }, pressure(frictionLossKpa(coefficient, flowLph))),
  ];
}
