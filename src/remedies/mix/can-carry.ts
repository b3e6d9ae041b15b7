/** Whether the supply and the lines carry what a remedy asks of them. */

import { lineFault } from '../../engine/line/line-profile.ts';
import { feedOn } from '../../engine/line/zone-lines.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { sourceOn } from '../../engine/supply/source-on.ts';

/**
 * False where a zone would draw more than its source gives, or a changed line would not carry its pressure to the last
 * emitter, in any week in which that was not so before.
 */
export function canCarry(before: Season, after: Season, zoneIds: readonly string[]): boolean {
  const zones = after.zones.filter(({ zone }) => zoneIds.includes(zone.id));
  return zones.every((zone) => flowFits(zone, before, after) && linesFit(zone, before, after));
}

function flowFits(zone: ZoneSeason, before: Season, { garden }: Season): boolean {
  const old = before.zones.find((candidate) => candidate.zone.id === zone.zone.id);
  const { firstDay, weeks } = garden.span;
  for (let week = 0; week < weeks; week++) {
    const most = sourceOn(garden.supply, firstDay + 7 * week)?.flowLpm ?? Number.POSITIVE_INFINITY;
    const flow = zoneFigure(zone, 'flowLpm', week);
    if (flow > most && flow > (old === undefined ? 0 : zoneFigure(old, 'flowLpm', week))) return false;
  }
  return true;
}

function linesFit(zone: ZoneSeason, before: Season, { garden }: Season): boolean {
  const known = new Map(before.zones.flatMap(({ plantings }) => plantings).map((each) => [each.planting.id, each]));
  const { firstDay } = garden.span;
  return zone.plantings.every(({ planting }: PlantingSeason) => {
    const old = known.get(planting.id)?.planting;
    return planting.lines.every((line, index) => {
      const former = old?.lines[index];
      if (line === former) return true;
      const { kpa } = feedOn(planting, Math.max(line.from, planting.from, firstDay));
      if (lineFault(line, planting, kpa) === undefined) return true;
      return former !== undefined && old !== undefined && lineFault(former, old, kpa) !== undefined;
    });
  });
}
