/** A thin row a zone and a tile a week in the tone of its water; tiles alike are one path, however many there are. */
import { svg, type TemplateResult } from 'lit';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneState } from '../../engine/season/zone-week.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { TONES, toneOf } from '../../look/tones.ts';
import { weekSign } from '../../sheet/cells/week-sign.ts';
import { groundM2 } from '../../sheet/totals.ts';

export interface Lanes {
  readonly zones: readonly ZoneSeason[];
  readonly units: UnitSystem;
  readonly thisWeek: number | undefined;
}

/** Paths by what they are filled with, in weeks and rows. */
export function lanePaths({ zones, units, thisWeek }: Lanes): {
  readonly tones: readonly string[];
  readonly closed: string;
  readonly short: string;
} {
  const tones = Array.from({ length: TONES }, () => '');
  let closed = '';
  let short = '';
  for (const [row, zone] of zones.entries()) {
    for (let week = 0; week < zone.weeks; week++) {
      const state = zoneState(zone, week);
      if (state === 'off') continue;
      const tile = `M${week},${row}h1v1h-1z`;
      if (state === 'closed') closed += tile;
      else tones[toneOf(zoneFigure(zone, 'litres', week) / groundM2(zone, week), units)] += tile;
      const sign = weekSign(zone, week, thisWeek);
      if (sign === 'dry' || sign === 'short') short += `M${week + 0.3},${row + 0.15}h.4l-.2,.7z`;
    }
  }
  return { tones, closed, short };
}

export function laneTiles(lanes: Lanes, weeks: number): TemplateResult {
  const { tones, closed, short } = lanePaths(lanes);
  return svg`<svg class="tiles" viewBox="0 0 ${weeks} ${lanes.zones.length}" preserveAspectRatio="none" aria-hidden="true">
    <defs>
      <pattern id="closed" width=".16" height=".5" patternUnits="userSpaceOnUse">
        <path class="hatch" d="M0,.5 L.16,0" />
      </pattern>
    </defs>
    ${tones.map((d, tone) => svg`<path class="tone-${tone}" d=${d} />`)}
    <path class="tone-0" d=${closed} /><path class="closed" d=${closed} />
    <path class="pips" d=${short} />
  </svg>`;
}
