import { type Season, ZONE_FIELDS as Z } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const ROUNDING = 1e-9;

/**
 * Zones that run and whose timer can only be set in steps longer than the soil takes in before water runs off: one notice each. A warning
 * from twice as long on.
 */
export function stepTooLong({ zones }: Season): readonly FoundNotice<'step-too-long'>[] {
  return zones.flatMap(({ zone, figures, weeks }) => {
    const { id, timerStepMinutes, longestCycleMinutes } = zone;
    if (timerStepMinutes <= longestCycleMinutes * (1 + ROUNDING)) return [];
    const running = weeksWhere(weeks, (week) => figures.at(Z.minutes, week) > 0);
    return oneRunOf(running).map(
      (run): FoundNotice<'step-too-long'> => ({
        kind: 'step-too-long',
        severity: timerStepMinutes >= 2 * longestCycleMinutes ? 'warning' : 'note',
        zoneId: id,
        ...run,
        figures: { timerStepMinutes, longestCycleMinutes },
      }),
    );
  });
}
