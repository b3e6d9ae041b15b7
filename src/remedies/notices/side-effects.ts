import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import { noticesOf } from '../../explain/notices/notices-of.ts';

/**
 * Warnings and dangers of other kinds than a notice's own that come with a change, worst first. In a part that the change has
 * made a kind that was there before is nothing new: half of a bed is as it was in the whole.
 */
export function sideEffects(season: Season, next: Season, { kind }: Notice): readonly Notice[] {
  const before = noticesOf(season);
  const known = new Set(before.map(keyOf));
  const ids = new Set(season.zones.flatMap(({ zone }) => [zone.id, ...zone.plantings.map((each) => each.id)]));
  const isKnownPart = ({ zoneId, plantingId }: Notice) =>
    [zoneId, plantingId].every((id) => id === undefined || ids.has(id));
  return noticesOf(next).filter(
    (notice) =>
      notice.severity !== 'note' &&
      notice.kind !== kind &&
      !known.has(keyOf(notice)) &&
      (isKnownPart(notice) || before.every((other) => other.kind !== notice.kind)),
  );
}

function keyOf({ kind, severity, zoneId, plantingId, lineIndex }: Notice): string {
  return JSON.stringify([kind, severity, zoneId, plantingId, lineIndex]);
}
