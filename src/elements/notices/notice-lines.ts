/** Notices in words, for elements that show the worst of them beside something else. */
import type { LitElement } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { plantingsOf } from '../../explain/notices/notice.ts';
import { describeNotice, type NoticeText } from '../../language/describe-notice.ts';
import type { Reader } from '../../language/reader.ts';
import { NoticeList } from './notice-list.ts';

export interface NoticeLine {
  /** Ids of those that it is about. */
  readonly plantings: readonly string[];
  /** Put into words where it is shown. */
  readonly text: () => NoticeText;
}

/** Worst first; undefined while they are fetched or looked for. */
export type NoticeLines = (season: Season, gardenName: string, reader: Reader) => readonly NoticeLine[] | undefined;

/** Of one element, which is drawn again once they are found. */
export function noticeLines(host: LitElement): NoticeLines {
  const list = new NoticeList(host);
  return (season, gardenName, reader) =>
    list.of(season)?.map(({ notice }) => ({
      plantings: plantingsOf(notice),
      text: () => describeNotice(notice, season, gardenName, reader),
    }));
}
