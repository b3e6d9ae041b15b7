import type { LitElement } from 'lit';
import { LatePart, type LocaleSource } from '../shared/late-part.ts';
import type { NoticeLines } from './notice-lines.ts';

/** Of one element; what finds them and puts them into words is fetched when they are first asked for. */
export function lateNoticeLines(host: LitElement, plan: LocaleSource): NoticeLines {
  const lines = new LatePart(host, plan, async () => (await import('./notice-lines.ts')).noticeLines(host));
  return (season, gardenName, reader) => lines.part?.(season, gardenName, reader);
}
