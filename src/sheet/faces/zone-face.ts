/** A zone's week: gallons, minutes and rain credited, on the ground of its depth of water. */
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import type { SheetFormat } from '../sheet-format.ts';
import { toneOf } from '../tone.ts';
import { type ZoneTotal, zoneTotal } from '../totals/zone-total.ts';
import { type FigureFace, figureClass, moreClasses } from './cell-face.ts';
import type { Reading } from './reading.ts';

export function zoneFace(zone: ZoneSeason, week: number, { measure, format }: Reading): FigureFace {
  const state = zoneState(zone, week);
  const origin = zoneOrigin(zone, week);
  const note = zone.zone.choices.get(week)?.note;
  const marks = figureClass(measure, 'zone', `state-${state}`, note !== undefined && 'noted');
  if (state === 'off') return { kind: 'figure', main: '', lines: [], className: marks };
  const litres = zoneFigure(zone, 'litres', week);
  const minutes = zoneFigure(zone, 'minutes', week);
  const rainMm = zoneFigure(zone, 'rainCreditMm', week);
  const isByHand = origin === 'hand-set' || origin === 'run';
  const { main, lines } = figuresOf({ litres, minutes, rainMm, isClosed: state === 'closed' }, measure, format);
  return {
    kind: 'figure',
    main,
    lines,
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
export function zoneSeasonFace(zone: ZoneSeason, { measure, format }: Reading): FigureFace {
  return {
    kind: 'figure',
    ...figuresOf({ ...zoneTotal(zone), isClosed: false }, measure, format),
    className: figureClass(measure, 'zone', 'season'),
  };
}

interface ZoneFigures extends ZoneTotal {
  readonly isClosed: boolean;
}

function figuresOf(
  { litres, minutes, rainMm, isClosed }: ZoneFigures,
  measure: Reading['measure'],
  format: SheetFormat,
): Pick<FigureFace, 'main' | 'lines'> {
  if (measure === 'volume') return { main: format.volume(litres), lines: [] };
  if (measure === 'minutes') return { main: format.minutes(minutes), lines: [] };
  if (measure === 'rain') return { main: format.depth(rainMm), lines: [] };
  // What is nothing is left out: it would be read as a figure.
  const run = minutes > 0 ? `${format.minutes(minutes)} min` : '';
  const rain = format.isNoDepth(rainMm) ? '' : `${format.depth(rainMm)} ${format.depthUnit}`;
  return { main: format.volume(litres), lines: [isClosed ? 'closed' : run, rain] };
}

function groundM2(zone: ZoneSeason, week: number): number {
  let areaM2 = 0;
  for (const planting of zone.plantings) {
    if (plantingFigure(planting, 'groundDays', week) > 0) areaM2 += planting.planting.areaM2;
  }
  return areaM2;
}
