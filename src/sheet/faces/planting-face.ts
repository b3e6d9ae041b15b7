/** A planting's week: gallons it received, that against its need, and the days its shut-off was open. */
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { toneOf } from '../tone.ts';
import { wateringDayCount } from '../watering-days.ts';
import { STATE_WORDS, saidOf, sentence } from '../words.ts';
import { type FigureFace, figureClass, moreClasses } from './cell-face.ts';
import type { Reading } from './reading.ts';

/** Needs below this round to nothing in any unit; a ratio to them would say nothing. */
const LEAST_NEED_MM = 0.05;

export function plantingFace(zone: ZoneSeason, member: PlantingSeason, week: number, reading: Reading): FigureFace {
  const { measure, format, calendar } = reading;
  const { planting } = member;
  const state = plantingState(member, week);
  const place = `${planting.name} in ${zone.zone.name}, ${calendar.words(week)}`;
  const marks = figureClass(measure, 'planting', `state-${state}`);
  if (state === 'off') {
    return { kind: 'figure', main: '', lines: [], className: marks, label: saidOf(place, `${STATE_WORDS.off}.`) };
  }
  const at = (field: Parameters<typeof plantingFigure>[1]) => plantingFigure(member, field, week);
  const litres = at('litres');
  const openDays = at('openDays');
  const minutes = zoneFigure(zone, 'minutesPerDay', week) * openDays;
  const rainMm = at('rainSoakedMm') - at('rainDrainedMm');
  const neededMm = at('neededMm');
  const ratio = neededMm < LEAST_NEED_MM ? '' : format.share(at('irrigationNetMm') / neededMm);
  const dayCount = wateringDayCount(zone.zone);
  const byHand = zone.zone.choices.get(week)?.openDays?.has(planting.id) === true;
  const one = { volume: format.volume(litres), minutes: format.minutes(minutes), rain: format.depth(rainMm) };
  const open = planting.hasShutOff ? `${openDays} of ${dayCount}` : '';
  return {
    kind: 'figure',
    main: measure === 'all' ? one.volume : one[measure],
    lines: measure === 'all' ? [ratio, open] : [],
    className: moreClasses(marks, `tone-${toneOf(at('irrigationGrossMm'))}`, byHand && 'by-hand'),
    label: saidOf(
      place,
      sentence(
        `received ${format.volumeWords(litres)}`,
        ratio === '' ? 'needed none' : `${ratio} of the ${format.volumeWords(at('neededLitres'))} needed at its roots`,
        planting.hasShutOff && `shut-off open ${openDays} of ${dayCount} watering days${byHand ? ', set by hand' : ''}`,
        STATE_WORDS[state],
      ),
    ),
  };
}

/** The planting's whole season. */
export function plantingSeasonFace(zone: ZoneSeason, member: PlantingSeason, reading: Reading): FigureFace {
  const { measure, format } = reading;
  const total = { litres: 0, minutes: 0, rainMm: 0, neededMm: 0, netMm: 0 };
  for (let week = 0; week < member.weeks; week++) {
    const at = (field: Parameters<typeof plantingFigure>[1]) => plantingFigure(member, field, week);
    total.litres += at('litres');
    total.minutes += zoneFigure(zone, 'minutesPerDay', week) * at('openDays');
    total.rainMm += at('rainSoakedMm') - at('rainDrainedMm');
    total.neededMm += at('neededMm');
    total.netMm += at('irrigationNetMm');
  }
  const ratio = total.neededMm < LEAST_NEED_MM ? '' : format.share(total.netMm / total.neededMm);
  const one = {
    volume: format.volume(total.litres),
    minutes: format.minutes(total.minutes),
    rain: format.depth(total.rainMm),
  };
  return {
    kind: 'figure',
    main: measure === 'all' ? one.volume : one[measure],
    lines: measure === 'all' ? [ratio] : [],
    className: figureClass(measure, 'planting', 'season'),
    label: saidOf(
      `${member.planting.name} in ${zone.zone.name}, whole season`,
      sentence(`received ${format.volumeWords(total.litres)}`, ratio !== '' && `${ratio} of its need`),
    ),
  };
}
