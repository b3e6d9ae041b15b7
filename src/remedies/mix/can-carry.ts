/** Whether the supply and the lines carry what a remedy asks of them. */

import { lineFault } from '../../engine/line/line-profile.ts';
import { feedOn } from '../../engine/line/zone-lines.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { sourceOn } from '../../engine/supply/source-on.ts';

/**
 * False where a zone would draw more than its source gives, and by more than it ever did before, or a changed line would not carry its
 * pressure to the last emitter where that was not so before. A zone that is cut off is held to the ones that its plantings stood in.
 */
export function canCarry(before: Season, after: Season, zoneIds: readonly string[]): boolean {
  const zones = after.zones.filter(({ zone }) => zoneIds.includes(zone.id));
  return zones.every((zone) => flowFits(zone, before, after) && linesFit(zone, before, after));
}

function flowFits(zone: ZoneSeason, before: Season, after: Season): boolean {
  const ids = new Set(zone.plantings.map(({ planting }) => planting.id));
  const olds = before.zones.filter((old) => {
    return old.zone.id === zone.zone.id || old.plantings.some(({ planting }) => ids.has(planting.id));
  });
  return greatestLoad(zone, after) <= Math.max(1, ...olds.map((old) => greatestLoad(old, before)));
}

/** The greatest share of what its source gives that a zone draws in any week. */
function greatestLoad(zone: ZoneSeason, { garden }: Season): number {
  const { firstDay, weeks } = garden.span;
  let load = 0;
  for (let week = 0; week < weeks; week++) {
    const most = sourceOn(garden.supply, firstDay + 7 * week)?.flowLpm ?? Number.POSITIVE_INFINITY;
    load = Math.max(load, zoneFigure(zone, 'flowLpm', week) / most);
  }
  return load;
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
