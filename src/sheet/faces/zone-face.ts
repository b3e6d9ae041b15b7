/** A zone's week: gallons, minutes and rain credited, on the ground of its depth of water. */
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import type { SheetFormat } from '../sheet-format.ts';
import { toneOf } from '../tone.ts';
import { ORIGIN_WORDS, STATE_WORDS, saidOf, sentence } from '../words.ts';
import { type FigureFace, figureClass, moreClasses } from './cell-face.ts';
import type { Reading } from './reading.ts';

export function zoneFace(zone: ZoneSeason, week: number, { measure, format, calendar }: Reading): FigureFace {
  const state = zoneState(zone, week);
  const origin = zoneOrigin(zone, week);
  const note = zone.zone.choices.get(week)?.note;
  const place = `${zone.zone.name}, ${calendar.words(week)}`;
  const marks = figureClass(measure, 'zone', `state-${state}`, note !== undefined && 'noted');
  if (state === 'off') {
    return { kind: 'figure', main: '', lines: [], className: marks, label: said(place, STATE_WORDS.off, note) };
  }
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
    label: said(
      place,
      sentence(
        `${format.volumeWords(litres)}, ${format.minutesWords(minutes)}${ORIGIN_WORDS[origin]}`,
        `${format.depthWords(rainMm)} of rain credited`,
        STATE_WORDS[state],
      ),
      note,
    ),
  };
}

/** The zone's whole season. */
export function zoneSeasonFace(zone: ZoneSeason, { measure, format }: Reading): FigureFace {
  const sum = (field: 'litres' | 'minutes' | 'rainCreditMm') => seasonSum(zone, field);
  const total = { litres: sum('litres'), minutes: sum('minutes'), rainMm: sum('rainCreditMm'), isClosed: false };
  const { main, lines } = figuresOf(total, measure, format);
  return {
    kind: 'figure',
    main,
    lines,
    className: figureClass(measure, 'zone', 'season'),
    label: saidOf(
      `${zone.zone.name}, whole season`,
      sentence(
        `${format.volumeWords(total.litres)}, ${format.minutesWords(total.minutes)}`,
        `${format.depthWords(total.rainMm)} of rain credited`,
      ),
    ),
  };
}

interface ZoneFigures {
  readonly litres: number;
  readonly minutes: number;
  readonly rainMm: number;
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

function said(place: string, words: string, note: string | undefined): string {
  const end = words.endsWith('.') ? words : `${words}.`;
  return note === undefined ? saidOf(place, end) : saidOf(place, end, `Note: ${note}`);
}

function groundM2(zone: ZoneSeason, week: number): number {
  let areaM2 = 0;
  for (const planting of zone.plantings) {
    if (plantingFigure(planting, 'groundDays', week) > 0) areaM2 += planting.planting.areaM2;
  }
  return areaM2;
}

function seasonSum(zone: ZoneSeason, field: 'litres' | 'minutes' | 'rainCreditMm'): number {
  let sum = 0;
  for (let week = 0; week < zone.weeks; week++) sum += zoneFigure(zone, field, week);
  return sum;
}
