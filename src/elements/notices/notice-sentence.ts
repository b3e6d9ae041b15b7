import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import { noticeFigures } from '../../language/format/notice-figures.ts';
import type { Reader } from '../../language/reader.ts';
import { NOTICE_SENTENCES } from '../shared/words/notice-sentences.ts';
import { noticeWords } from '../shared/words/notice-words.ts';

/** What is the matter, to go on after a name and a colon. */
export function noticeSentence(
  notice: Pick<Notice, 'kind' | 'figures' | 'groups'>,
  season: Pick<Season, 'zones'>,
  reading: Reader,
): string {
  const zoneName = (id: string) => season.zones.find(({ zone }) => zone.id === id)?.zone.name ?? id;
  return NOTICE_SENTENCES[notice.kind](noticeFigures(notice, noticeWords, reading, zoneName));
}
