/** The rain that counted in a zone's week, and the irrigation that it stood in for. */
import type { TraceStep } from '../trace-step.ts';
import { area, depth, flow, input, minutes, share, volume } from '../trace-value.ts';
import type { ZoneCell } from './zone-cell.ts';

export function rainCountedSteps({ zoneSeason, members, at }: ZoneCell): readonly TraceStep[] {
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
      inputs: [stayed, input('efficiency', share(zoneSeason.zone.efficiency))],
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
