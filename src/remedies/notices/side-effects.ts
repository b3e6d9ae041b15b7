import type { Season } from '../../engine/season/season.ts';
import { type Notice, type NoticeKind, plantingsOf } from '../../explain/notices/notice.ts';
import { NOTICE_KINDS } from '../../explain/notices/notice-kinds.ts';
import { noticesOf } from '../../explain/notices/notices-of.ts';
import { SEVERITIES } from '../../explain/notices/severity.ts';
import { lossesBetween } from './losses.ts';

/**
 * Warnings and dangers that come with a change, worst first: where there was none like it, or only a lesser one. A lack of water is a
 * lack whatever its cause, and of a planting that loses nothing it is none. In a part that the change has made a kind that was there before is nothing new: half of a bed is as it was
 * in the whole.
 */
export function sideEffects(season: Season, next: Season): readonly Notice[] {
  const before = noticesOf(season);
  const known = new Map<string, number>();
  for (const notice of before) {
    const grade = SEVERITIES.indexOf(notice.severity);
    for (const key of keysOf(notice)) known.set(key, Math.min(grade, known.get(key) ?? grade));
  }
  const ids = new Set(
    season.zones.flatMap(({ zone, plantings }) => [zone.id, ...plantings.map((each) => each.planting.id)]),
  );
  const losing = new Set(
    lossesBetween(season, next).flatMap(({ plantingId, litresBeyondStep }) =>
      litresBeyondStep > 0 ? [plantingId] : [],
    ),
  );
  const isLost = (id: string) => losing.has(id) || !ids.has(id);
  const isKnownPart = ({ zoneId, ...of }: Notice) =>
    [zoneId, ...plantingsOf(of)].every((id) => id === undefined || ids.has(id));
  return noticesOf(next).filter((notice) => {
    if (notice.severity === 'note') return false;
    const grade = SEVERITIES.indexOf(notice.severity);
    const isNew = keysOf(notice, 'missingLitres' in notice.figures ? isLost : undefined).some(
      (key) => (known.get(key) ?? SEVERITIES.length) > grade,
    );
    return isNew && (isKnownPart(notice) || before.every((other) => familyOf(other.kind) !== familyOf(notice.kind)));
  });
}

/** One for each planting or line that a notice names and that is asked for; of a planting whatever zone it stands in. */
function keysOf(notice: Notice, isAsked: (plantingId: string) => boolean = () => true): readonly string[] {
  const { kind, zoneId, lineIndex } = notice;
  const plantings = plantingsOf(notice);
  const family = familyOf(kind);
  if (plantings.length === 0) return [`${family} ${zoneId}`];
  return plantings.filter(isAsked).map((id) => `${family} ${id} ${lineIndex}`);
}

/** Kinds that one place finds: they tell of one trouble by its cause. */
function familyOf(kind: NoticeKind): number {
  return FINDERS.indexOf(NOTICE_KINDS[kind].find);
}

const FINDERS = Object.values(NOTICE_KINDS).map(({ find }) => find);
