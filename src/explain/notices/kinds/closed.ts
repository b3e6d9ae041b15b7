import type { PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { fewRunsOf, type Run } from '../runs.ts';
import type { NoticeSeverity } from '../severity.ts';
import { atLeast } from '../severity.ts';
import { shortageIn, shortageSeverity, shortageWeeks } from '../shortage.ts';

/** Zones shut by hand while plantings in them go short: one notice for each run of such weeks, over all the plantings. */
export function closed({ zones }: Season): readonly FoundNotice<'closed'>[] {
  return zones.flatMap((zone) => {
    const short = zone.plantings
      .map((own): ShortPlanting => ({ own, weeks: shortageWeeks(zone, own).closed }))
      .filter(({ weeks }) => weeks.length > 0);
    const weeks = [...new Set(short.flatMap((member) => member.weeks))].sort((left, right) => left - right);
    return fewRunsOf(weeks).map((run) => noticeOf(zone, run, short));
  });
}

interface ShortPlanting {
  readonly own: PlantingSeason;
  readonly weeks: readonly number[];
}

function noticeOf(zone: ZoneSeason, run: Run, short: readonly ShortPlanting[]): FoundNotice<'closed'> {
  let severity: NoticeSeverity = 'note';
  const figures = { unmetLitres: 0, neededLitres: 0, dryWeeks: 0, plantings: 0 };
  for (const { own, weeks } of short) {
    const within = weeks.filter((week) => run.weeks.includes(week));
    if (within.length === 0) continue;
    const shortage = shortageIn(own, within);
    severity = atLeast(severity, shortageSeverity(shortage, own.planting.areaM2));
    figures.unmetLitres += shortage.unmetLitres;
    figures.neededLitres += shortage.neededLitres;
    figures.dryWeeks = Math.max(figures.dryWeeks, shortage.dryWeeks);
    figures.plantings++;
  }
  return { kind: 'closed', severity, zoneId: zone.zone.id, ...run, figures };
}
