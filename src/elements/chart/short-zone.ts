import type { Season } from '../../engine/season/season.ts';
import { totalsOf } from './totals-of.ts';

/** From this share on, nearly all that a garden lacks is one zone's. */
const NEARLY_ALL = 0.8;

/** The name of the zone that nearly all of the season's lack is in; undefined where it is spread, or nothing lacks. */
export function shortZone({ zones, totals }: Season): string | undefined {
  if (zones.length < 2) return undefined;
  const all = lackOf(totalsOf(totals).unmet);
  return zones.find((zone) => all > 0 && lackOf(totalsOf(zone).unmet) >= NEARLY_ALL * all)?.zone.name;
}

const lackOf = (unmet: Float64Array): number => unmet.at(-1) ?? 0;
