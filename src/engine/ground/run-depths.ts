/** How deep the runs of a week wet the ground of a zone's plantings. */
import { isWettedAlone, tawOn } from '../season/planting-demand.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../season/season.ts';
import { shareIn } from '../season/wetted-week.ts';
import { zoneMornings } from '../season/zone-season.ts';
import { zoneFigure } from '../season/zone-week.ts';
import { readilyOfWettedMm, readyMm } from '../soil/two-stores.ts';
import { longestUsefulMinutes, wettedDepthM } from './run-depth.ts';

/** A run of a day, as one planting takes it. */
export interface RunDepth {
  readonly plantingId: string;
  /** Counted from the season's first day. */
  readonly day: number;
  readonly minutes: number;
  /** How deep the soil is wet after it, m, and how deep the planting roots. */
  readonly depthM: number;
  readonly rootDepthM: number;
  /** Minutes beyond which water passes the roots. */
  readonly usefulMinutes: number;
  /** What passes them though its plants use their fill that day, mm over the ground that is wetted. */
  readonly drainedMm: number;
}

const MM_PER_M = 1000;

/**
 * Of each watering day of a week on which a zone runs, for each planting in the ground whose line is open. Of a container the depth is that
 * of its mix as if it lay under the canopy.
 */
export function runDepths({ garden: { site }, weather }: Season, zone: ZoneSeason, week: number): readonly RunDepth[] {
  const mornings = zoneMornings({ zone: zone.zone, site, weather }, zone, week);
  return mornings.flatMap(({ day, minutes, plantings }) =>
    plantings.flatMap(({ isPresent, openMask, depletionMm, dryMm, netMm: netOfMinuteMm }, index) => {
      const own = zone.plantings[index];
      const isOpen = (openMask >> (day - 7 * week)) & 1;
      if (own === undefined || !isPresent || !isOpen || minutes === 0 || netOfMinuteMm === 0) return [];
      const { planting } = own;
      const share = shareIn(planting, week);
      const netMm = (minutes * netOfMinuteMm) / share;
      const rootDepthM = rootDepthOnM(zone, own, day);
      const missingMm = depletionMm + usedMm(own, { day, share, dryMm, runs: zoneFigure(zone, 'runsADay', week) });
      return [
        {
          plantingId: planting.id,
          day,
          minutes,
          depthM: wettedDepthM({ netMm, depletionMm, rootDepthM }),
          rootDepthM,
          usefulMinutes: longestUsefulMinutes(missingMm, netOfMinuteMm / share),
          drainedMm: Math.max(0, netMm - missingMm),
        },
      ];
    }),
  );
}

interface RunDay {
  readonly day: number;
  readonly share: number;
  /** Depletion of the ground that stays dry, mm over it. */
  readonly dryMm: number;
  /** Equal runs of the day. */
  readonly runs: number;
}

/**
 * What plants that are not short draw from the ground that is wetted on the day of a run, mm over it; of a container up to its last run,
 * which what is used later leaves as full as it was.
 */
function usedMm({ demand, planting }: PlantingSeason, { day, share, dryMm, runs }: RunDay): number {
  const etcMm = demand.etcMm[day] as number;
  if (planting.container !== undefined) return etcMm * (1 - 1 / runs);
  if (share === 1 || isWettedAlone(demand, day)) return etcMm / share;
  return readilyOfWettedMm(share, etcMm, Number.POSITIVE_INFINITY, readyMm(dryMm, demand.rawMm[day] as number));
}

/** How deep a planting roots on a day of the season, m. */
export function rootDepthOnM(
  { zone }: Pick<ZoneSeason, 'zone'>,
  { demand, planting }: Pick<PlantingSeason, 'demand' | 'planting'>,
  day: number,
): number {
  const { availableWater = zone.soil.availableWater } = planting.rootZone;
  return tawOn(demand, day) / MM_PER_M / availableWater;
}
