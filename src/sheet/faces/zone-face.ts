/** A zone's week: gallons, minutes and rain credited, on the ground of its depth of water. */
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { toneOf } from '../tone.ts';
import { type ZoneTotal, zoneTotal } from '../totals/zone-total.ts';
import { type FigureFace, figureClass, mainFigure, moreClasses } from './cell-face.ts';
import type { Reading } from './reading.ts';

export function zoneFace(zone: ZoneSeason, week: number, reading: Reading): FigureFace {
  const state = zoneState(zone, week);
  const origin = zoneOrigin(zone, week);
  const note = zone.zone.choices.get(week)?.note;
  const marks = figureClass(reading.measure, 'zone', `state-${state}`, note !== undefined && 'noted');
  if (state === 'off') return { kind: 'figure', main: '', lines: [], className: marks };
  const litres = zoneFigure(zone, 'litres', week);
  const minutes = zoneFigure(zone, 'minutes', week);
  const rainMm = zoneFigure(zone, 'rainCreditMm', week);
  const isByHand = origin === 'hand-set' || origin === 'run';
  return {
    kind: 'figure',
    ...figuresOf({ litres, minutes, rainMm }, state === 'closed', reading),
    className: moreClasses(
      marks,
      `tone-${toneOf(litres / groundM2(zone, week))}`,
      isByHand && 'by-hand',
      origin === 'run' && 'run',
      minutes === 0 && 'idle',
    ),
  };
}

/** The zone's whole season. */
export function zoneSeasonFace(zone: ZoneSeason, reading: Reading): FigureFace {
  return {
    kind: 'figure',
    ...figuresOf(zoneTotal(zone), false, reading),
    className: figureClass(reading.measure, 'zone', 'season'),
  };
}

function figuresOf(total: ZoneTotal, isClosed: boolean, reading: Reading): Pick<FigureFace, 'main' | 'lines'> {
  const { minutes, rainMm } = total;
  const { measure, format } = reading;
  const main = mainFigure(total, reading);
  if (measure !== 'all') return { main, lines: [] };
  // What is nothing is left out: it would be read as a figure.
  const run = minutes > 0 ? `${format.minutes(minutes)} min` : '';
  const rain = format.isNoDepth(rainMm) ? '' : `${format.depth(rainMm)} ${format.depthUnit}`;
  return { main, lines: [isClosed ? 'closed' : run, rain] };
}

function groundM2(zone: ZoneSeason, week: number): number {
  let areaM2 = 0;
  for (const planting of zone.plantings) {
    if (plantingFigure(planting, 'groundDays', week) > 0) areaM2 += planting.planting.areaM2;
  }
  return areaM2;
}
