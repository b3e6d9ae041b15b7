/** All steps of a zone's week. */
import { plantingState } from '../../../engine/season/planting-week.ts';
import type { Season, ZoneSeason } from '../../../engine/season/season.ts';
import { zoneState } from '../../../engine/season/zone-week.ts';
import { weekSpan } from '../day-span.ts';
import { STATE_SAYS } from '../state-says.ts';
import type { TraceStep } from '../trace-step.ts';
import { words } from '../trace-value.ts';
import { rainSteps } from '../weather/rain-steps.ts';
import { referenceEtSteps } from '../weather/reference-et-steps.ts';
import { cumulativeSteps } from './cumulative-steps.ts';
import { zoneRainCreditSteps } from './rain-credit-steps.ts';
import { sumSteps } from './sum-steps.ts';
import { type ZoneCell, zoneCell } from './zone-cell.ts';
import { originWords, zoneMinutesStep } from './zone-minutes-steps.ts';
import { zoneRunSteps } from './zone-run-steps.ts';

export function traceZone(season: Season, zoneSeason: ZoneSeason, week: number): readonly TraceStep[] {
  const cell = zoneCell(season, zoneSeason, week);
  return [
    ...referenceEtSteps(season, weekSpan(week)),
    ...rainSteps(season, weekSpan(week)),
    zoneMinutesStep(cell),
    ...zoneRunSteps(cell),
    ...sumSteps({ of: 'planting', parts: cell.members, at: cell.at }),
    ...zoneRainCreditSteps(cell),
    ...cumulativeSteps(zoneSeason, week),
    stateStep(cell),
  ];
}

function stateStep(cell: ZoneCell): TraceStep {
  const { zoneSeason, week, members } = cell;
  const state = zoneState(zoneSeason, week);
  return {
    id: 'state',
    title: 'State of the week',
    says: STATE_SAYS[state],
    formula:
      'the worst of its plantings’ states: dry, short, over, met; closed where the zone was shut by hand; off where nothing is in the ground',
    source: 'The order is a choice of this kit',
    inputs: [originWords(cell), ...members.map(({ label, own }) => words(label, plantingState(own, week)))],
    result: words('State', state),
  };
}
