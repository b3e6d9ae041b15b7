import { formatCount } from '../../language/format/count.ts';
import { formatMinutes } from '../../language/format/minutes.ts';
import type { Reader } from '../../language/reader.ts';
import { noticeWords } from '../shared/words/notice-words.ts';

const DAY_MINUTES = 1440;

/** Minutes of a timer; a whole day and more is said in hours. */
export function longMinutes(minutes: number, reader: Reader): string {
  return minutes < DAY_MINUTES
    ? formatMinutes(minutes, reader)
    : formatCount(Math.round(minutes / 60), noticeWords.hour, reader.locale);
}
