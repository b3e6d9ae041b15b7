/** The rain that a zone's week was credited with, and what it stood in for. */
import type { TraceStep } from '../trace-step.ts';
import { area, depth, flow, minutes, percent, volume } from '../trace-value.ts';
import type { ZoneCell } from './zone-cell.ts';

export function zoneRainCreditSteps({ zoneSeason, members, at }: ZoneCell): readonly TraceStep[] {
  const stayed = volume('Rain that stayed', at('rainStayedLitres'));
  const saved = volume('Irrigation saved', at('rainCreditLitres'));
  const groundM2 = members.reduce((sum, { own }) => sum + own.planting.areaM2, 0);
  const lineLpm = members.reduce((sum, member) => sum + member.at('flowLpm'), 0);
  return [
    {
      id: 'rain-credit',
      title: 'Rain credited',
      says: 'The rain that stayed where roots can reach it, as a depth over the ground of the plantings.',
      formula: 'rain credited = rain that stayed / ground; 0 without plantings',
      source: 'Definition',
      inputs: [stayed, area('Ground of the plantings in the ground', groundM2)],
      result: depth('Rain credited', at('rainCreditMm')),
    },
    {
      id: 'rain-credit-litres',
      title: 'Irrigation that the rain saved',
      says: 'So much would have had to be applied to do what the rain did.',
      formula: 'irrigation saved = rain that stayed / efficiency',
      source: 'Definition of efficiency',
      inputs: [stayed, percent('Efficiency', zoneSeason.zone.efficiency)],
      result: saved,
    },
    {
      id: 'rain-credit-minutes',
      title: 'Minutes that the rain saved',
      says: 'So long the zone would have had to run to do what the rain did.',
      formula: 'minutes saved = irrigation saved / flow of all its lines; 0 without lines',
      source: 'Definition',
      inputs: [saved, flow('Flow of all its lines', lineLpm)],
      result: minutes('Minutes saved', at('rainCreditMinutes')),
    },
  ];
}
