/** A zone of their own for some plantings, on days on which there is time for it. */
import type { GardenZone } from '../../engine/garden.ts';
import { foundLike } from '../../explain/notices/notices-of.ts';
import { cutOff } from '../mix/kinds/cut.ts';
import type { MixContext } from '../mix/mix-context.ts';
import type { NoticeInPlan, RemedyCandidate } from './remedy.ts';
import { bySpareTime, inOrder } from './spare-time.ts';
import { ownWeekdays } from './weekdays.ts';

/** So many watering days a week are tried beside as many as the zone has. */
const DAYS_TRIED = [1, 2, 3] as const;

/** None where the garden's hours suffice: then any days do. */
export function ownZonesOnOtherDays(
  of: NoticeInPlan,
  { plan, zone }: MixContext,
  plantingIds: readonly string[],
  inGarden: GardenZone,
): readonly RemedyCandidate[] {
  const isPressed = foundLike('window-too-short', of.season).length + foundLike('too-long', of.season).length > 0;
  if (!isPressed || plantingIds.length >= zone.plantings.length) return [];
  const allowed = bySpareTime(of);
  const counts = new Set([ownWeekdays(of, inGarden).length, ...DAYS_TRIED].filter((days) => days <= allowed.length));
  return [...counts].flatMap((days): readonly RemedyCandidate[] => {
    const weekdays = inOrder(allowed.slice(0, days));
    const { changes, edits } = cutOff(plan, zone, plantingIds);
    const [change] = changes;
    const [added, ...moves] = edits;
    if (change?.kind !== 'cut' || added?.type !== 'add-zone') return [];
    const { wateringDaysByMonth: _usual, ...like } = added.zone;
    const onDays = { ...added, zone: { ...like, wateringDays: [...weekdays] } };
    return [
      {
        kind: 'own-zone-and-days',
        change,
        wateringDays: [{ zoneId: change.newZoneId, weekdays }],
        edit: { type: 'together', action: 'split-zone', edits: [onDays, ...moves] },
      },
    ];
  });
}
