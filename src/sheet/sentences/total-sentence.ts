/** The whole garden's week or season in words. */
import type { Reading } from '../faces/reading.ts';
import type { GardenTotal } from '../totals/garden-total.ts';
import { sentence, TOTAL_NAME } from '../words.ts';

/** `when` is a week in words, or the whole season. */
export function totalSentence(total: GardenTotal, when: string, { format }: Reading): string {
  const words = sentence(
    format.volumeWords(total.litres),
    `${format.minutesWords(total.minutes)} of run time, zone after zone`,
    `rain stood in for ${format.volumeWords(total.savedLitres)}`,
  );
  return `${TOTAL_NAME}, ${when}: ${words}`;
}
