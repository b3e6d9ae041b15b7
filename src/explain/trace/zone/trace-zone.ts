/** All steps of a zone's week. */
import { plantingState } from '../../../engine/season/planting-week.ts';
import type { Season, ZoneSeason } from '../../../engine/season/season.ts';
import { zoneState } from '../../../engine/season/zone-week.ts';
import { weekSpan } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { code, input } from '../trace-value.ts';
import { rainSteps } from '../weather/rain.ts';
import { referenceEtSteps } from '../weather/reference-et.ts';
import { daysAWeekSteps } from './days-a-week.ts';
import { rainCountedSteps } from './rain-counted.ts';
import { runningTotalSteps } from './running-totals.ts';
import { sumSteps } from './sums.ts';
import { type ZoneCell, zoneCell } from './zone-cell.ts';
import { originInput } from './zone-minutes.ts';
import { zoneRunSteps } from './zone-run.ts';

export function traceZone(season: Season, zoneSeason: ZoneSeason, week: number): readonly TraceStep[] {
  const cell = zoneCell(season, zoneSeason, week);
  return [
    ...referenceEtSteps(season, weekSpan(week)),
    ...rainSteps(season, weekSpan(week)),
    ...daysAWeekSteps(cell),
    ...zoneRunSteps(cell),
    ...sumSteps({ of: 'zone', parts: cell.members, at: cell.at }),
    ...rainCountedSteps(cell),
    ...runningTotalSteps(zoneSeason, week),
    stateStep(cell),
  ];
}

function stateStep(cell: ZoneCell): TraceStep {
  const { zoneSeason, week, members } = cell;
  const state = zoneState(zoneSeason, week);
  return {
    id: 'state',
    state,
    variant: 'zone',
    source: [{ id: 'choice' }],
    inputs: [
      originInput(cell),
      ...members.map(({ name, own }) => input({ id: 'planting', name }, code('state', plantingState(own, week)))),
    ],
    result: code('state', state),
  };
}
