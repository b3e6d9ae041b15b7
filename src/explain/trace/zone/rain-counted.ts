/** The rain that counted in a zone's week, and the irrigation that it stood in for. */
import { flowOn } from '../../../engine/season/planting-days.ts';
import type { TraceStep } from '../trace-step.ts';
import { area, depth, flow, input, minutes, share, volume } from '../trace-value.ts';
import type { ZoneCell } from './zone-cell.ts';

export function rainCountedSteps(cell: ZoneCell): readonly TraceStep[] {
  const { members, at } = cell;
  const stayed = input('rain-stayed-litres', volume(at('rainStayedLitres')));
  const groundM2 = members.reduce((sum, { own }) => sum + own.planting.areaM2, 0);
  const lineLpm = members.reduce((sum, member) => sum + member.at('flowLpm'), 0);
  return [
    {
      id: 'rain-credit',
      source: [{ id: 'definition' }],
      inputs: [stayed, input('ground-of-all', area(groundM2))],
      result: depth(at('rainCreditMm')),
    },
    {
      id: 'rain-credit-litres',
      variant: 'zone',
      source: [{ id: 'definition' }],
      inputs: [stayed, input('efficiency', share(efficiencyOf(cell)))],
      result: volume(at('rainCreditLitres')),
    },
    {
      id: 'rain-credit-minutes',
      source: [{ id: 'definition' }],
      inputs: [input('rain-credit-litres', volume(at('rainCreditLitres'))), input('flow-of-all', flow(lineLpm))],
      result: minutes(at('rainCreditMinutes')),
    },
  ];
}

/** Of what its lines give on each planting's last day in the ground of the week, net over gross; the zone's where nothing flows. */
function efficiencyOf({ season, zoneSeason, members, week }: ZoneCell): number {
  const last = season.garden.span.firstDay + 7 * week + 6;
  const flows = members.flatMap(({ own: { planting } }) => flowOn(planting, Math.min(last, planting.to)) ?? []);
  const gross = flows.reduce((sum, { flowLph }) => sum + flowLph, 0);
  const net = flows.reduce((sum, { flowLph, efficiency }) => sum + flowLph * efficiency, 0);
  return gross > 0 ? net / gross : zoneSeason.zone.efficiency;
}
