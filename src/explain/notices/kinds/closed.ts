import type { PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import { atLeast, lackOf, lackSeverity } from '../lack.ts';
import type { Notice, NoticeSeverity } from '../notice.ts';
import { fewRunsOf, type Run } from '../runs.ts';
import { wantsOf } from '../wants.ts';

/** Zones shut by hand while plantings in them go short: one notice for each run of such weeks, over all the plantings. */
export function closed({ zones }: Season): readonly Notice[] {
  return zones.flatMap((zone) => {
    const short = zone.plantings
      .map((own): ShutOut => ({ own, weeks: wantsOf(zone, own).closed }))
      .filter(({ weeks }) => weeks.length > 0);
    const weeks = [...new Set(short.flatMap((member) => member.weeks))].sort((left, right) => left - right);
    return fewRunsOf(weeks).map((run) => noticeOf(zone, run, short));
  });
}

interface ShutOut {
  readonly own: PlantingSeason;
  readonly weeks: readonly number[];
}

function noticeOf(zone: ZoneSeason, run: Run, short: readonly ShutOut[]): Notice {
  let severity: NoticeSeverity = 'note';
  const figures = { unmetLitres: 0, neededLitres: 0, dryWeeks: 0, plantings: 0 };
  for (const { own, weeks } of short) {
    const within = weeks.filter((week) => run.weeks.includes(week));
    if (within.length === 0) continue;
    const lack = lackOf(own, within);
    severity = atLeast(severity, lackSeverity(lack, own.planting.areaM2));
    figures.unmetLitres += lack.unmetLitres;
    figures.neededLitres += lack.neededLitres;
    figures.dryWeeks = Math.max(figures.dryWeeks, lack.dryWeeks);
    figures.plantings++;
  }
  return { kind: 'closed', severity, remedy: 'open-zone', zoneId: zone.zone.id, ...run, figures };
}
