/** A planting's week or season in words. */
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import type { Reading } from '../faces/reading.ts';
import { plantingTotal, plantingWeek } from '../totals/planting-total.ts';
import { isShutOffByHand, wateringDayCount } from '../watering-days.ts';
import { STATE_WORDS, sentence } from '../words.ts';

export function plantingSentence(
  zone: ZoneSeason,
  member: PlantingSeason,
  week: number,
  { format, calendar }: Reading,
): string {
  const { planting } = member;
  const place = `${planting.name} in ${zone.zone.name}, ${calendar.words(week)}`;
  const state = plantingState(member, week);
  if (state === 'off') return `${place}: ${STATE_WORDS.off}.`;
  const { litres, neededLitres, metShare } = plantingWeek(zone, member, week);
  const open = `${plantingFigure(member, 'openDays', week)} of ${wateringDayCount(zone.zone)} watering days`;
  const byHand = isShutOffByHand(zone.zone, planting.id, week) ? ', set by hand' : '';
  const need =
    metShare === undefined
      ? 'needed none'
      : `${format.share(metShare)} of the ${format.volumeWords(neededLitres)} needed at its roots`;
  const words = sentence(
    `received ${format.volumeWords(litres)}`,
    need,
    planting.hasShutOff && `shut-off open ${open}${byHand}`,
    STATE_WORDS[state],
  );
  return `${place}: ${words}`;
}

export function plantingSeasonSentence(zone: ZoneSeason, member: PlantingSeason, { format }: Reading): string {
  const { litres, metShare } = plantingTotal(zone, member);
  const need = metShare !== undefined && `${format.share(metShare)} of its need`;
  const words = sentence(`received ${format.volumeWords(litres)}`, need);
  return `${member.planting.name} in ${zone.zone.name}, whole season: ${words}`;
}
