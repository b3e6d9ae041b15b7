/** A planting's week: gallons it received, that against its need, and the days its shut-off was open. */
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { toneOf } from '../tone.ts';
import { type PlantingTotal, plantingTotal, plantingWeek } from '../totals/planting-total.ts';
import { isShutOffByHand, wateringDayCount } from '../watering-days.ts';
import { type FigureFace, figureClass, mainFigure, moreClasses } from './cell-face.ts';
import type { Reading } from './reading.ts';

export function plantingFace(zone: ZoneSeason, member: PlantingSeason, week: number, reading: Reading): FigureFace {
  const { measure } = reading;
  const { planting } = member;
  const state = plantingState(member, week);
  const marks = figureClass(measure, 'planting', `state-${state}`);
  if (state === 'off') return { kind: 'figure', main: '', lines: [], className: marks };
  const openDays = plantingFigure(member, 'openDays', week);
  const open = planting.hasShutOff ? `${openDays} of ${wateringDayCount(zone.zone)}` : '';
  const byHand = isShutOffByHand(zone.zone, planting.id, week);
  const tone = `tone-${toneOf(plantingFigure(member, 'irrigationGrossMm', week))}`;
  return {
    kind: 'figure',
    ...figuresOf(plantingWeek(zone, member, week), [open], reading),
    className: moreClasses(marks, tone, byHand && 'by-hand'),
  };
}

/** The planting's whole season. */
export function plantingSeasonFace(zone: ZoneSeason, member: PlantingSeason, reading: Reading): FigureFace {
  return {
    kind: 'figure',
    ...figuresOf(plantingTotal(zone, member), [], reading),
    className: figureClass(reading.measure, 'planting', 'season'),
  };
}

function figuresOf(
  total: PlantingTotal,
  more: readonly string[],
  reading: Reading,
): Pick<FigureFace, 'main' | 'lines'> {
  const ratio = total.metShare === undefined ? '' : reading.format.share(total.metShare);
  return { main: mainFigure(total, reading), lines: reading.measure === 'all' ? [ratio, ...more] : [] };
}
