/** A zone's week or season in words. */
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import type { Reading } from '../faces/reading.ts';
import { zoneTotal } from '../totals/zone-total.ts';
import { ORIGIN_WORDS, STATE_WORDS, sentence } from '../words.ts';

export function zoneSentence(zone: ZoneSeason, week: number, { format, calendar }: Reading): string {
  const place = `${zone.zone.name}, ${calendar.words(week)}`;
  const note = zone.zone.choices.get(week)?.note;
  const noted = note === undefined ? '' : ` Note: ${note}`;
  const state = zoneState(zone, week);
  if (state === 'off') return `${place}: ${STATE_WORDS.off}.${noted}`;
  const at = (field: Parameters<typeof zoneFigure>[1]) => zoneFigure(zone, field, week);
  const run = `${format.minutesWords(at('minutes'))}${ORIGIN_WORDS[zoneOrigin(zone, week)]}`;
  const words = sentence(
    `${format.volumeWords(at('litres'))}, ${run}`,
    `${format.depthWords(at('rainCreditMm'))} of rain credited`,
    STATE_WORDS[state],
  );
  return `${place}: ${words}${noted}`;
}

export function zoneSeasonSentence(zone: ZoneSeason, { format }: Reading): string {
  const { litres, minutes, rainMm } = zoneTotal(zone);
  const words = sentence(
    `${format.volumeWords(litres)}, ${format.minutesWords(minutes)}`,
    `${format.depthWords(rainMm)} of rain credited`,
  );
  return `${zone.zone.name}, whole season: ${words}`;
}
