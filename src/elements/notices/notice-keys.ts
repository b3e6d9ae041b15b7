import type { Notice } from '../../explain/notices/notice.ts';

/** A key for each notice by which it is known again in the next season: no two are alike. */
export function noticeKeys(notices: readonly Notice[]): ReadonlyMap<Notice, string> {
  const counts = new Map<string, number>();
  return new Map(
    notices.map((notice) => {
      const { kind, zoneId, plantingId, lineIndex } = notice;
      const key = JSON.stringify([kind, zoneId, plantingId, lineIndex]);
      const count = (counts.get(key) ?? 0) + 1;
      counts.set(key, count);
      return [notice, `${key} ${count}`];
    }),
  );
}
