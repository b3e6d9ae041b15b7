/** Why a planting's week has its sign. */
import { openMasks } from '../../../engine/season/open-days.ts';
import { LEAST_SHOWN_MM } from '../../../engine/season/planting-state.ts';
import { STATES, type State } from '../../../engine/season/season.ts';
import { decideMinutes } from '../../../engine/season/week-minutes.ts';
import { zoneFigure } from '../../../engine/season/zone-week.ts';
import { STATE_SAYS } from '../state-says.ts';
import type { TraceStep } from '../trace-step.ts';
import { depth, words } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

export function plantingStateStep(cell: PlantingCell): TraceStep {
  const { at, course, ground, days, planting, dayName } = cell;
  const state = STATES[at('state')] as State;
  const last = ground.end - 1;
  const keeps = planting.watering === 'keep' && course.endGoalMm < Number.POSITIVE_INFINITY;
  return {
    id: 'state',
    title: 'State of the week',
    says: STATE_SAYS[state],
    formula:
      `dry where the depletion at the end is beyond RAW; else short where demand went unmet or (keep) the depletion it should end with was missed; ` +
      `else over where more irrigation drained than rounding explains; else met; below ${LEAST_SHOWN_MM} mm no difference counts`,
    source: 'RAW as the limit: FAO-56 eq. 83 and 84; the names are this kit’s',
    inputs: [
      depth('Depletion at the week’s end', at('depletionEndMm')),
      depth(`Readily available water RAW, ${dayName(last)}`, days.demand.rawMm[last] as number),
      depth('Demand less water used', at('demandMm') - at('usedMm')),
      ...(keeps ? [depth('Depletion the week should end with', course.endGoalMm)] : []),
      depth('Irrigation drained', at('irrigationDrainedMm')),
      depth('What rounding to the timer’s step can bring too much', roundingMm(cell)),
    ],
    result: words('State', state),
  };
}

export function offStep(): TraceStep {
  return {
    id: 'state',
    title: 'State of the week',
    says: STATE_SAYS.off,
    formula: 'off where no day of the week is in the ground',
    source: 'The plan',
    inputs: [words('Days in the ground', 'none')],
    result: words('State', 'off'),
  };
}

/** Net depth of the minutes that rounding may add, over the open days, by the line of the last day. */
function roundingMm({ zone, zoneSeason, week, ground, days, at }: PlantingCell): number {
  const dayCount = openMasks(zone.wateringDays).length - 1;
  const wanted = zoneFigure(zoneSeason, 'minutesWanted', week);
  const { roundingMinutes } = decideMinutes(zone, zone.choices.get(week), wanted, dayCount);
  return roundingMinutes * at('openDays') * (days.netMmPerMinute[ground.end - 1] as number);
}
