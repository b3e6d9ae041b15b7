/**
 * Water that is taken away in a week: from what all zones would run, as it looks on the week's first day. The zone that is last in order goes
 * first, down to nothing before the next is touched; exempt ones never, nor weeks of which a person gave anything.
 */
import type { Garden, GardenZone } from '../../src/engine/garden.ts';

/** What a zone would run in the week, gross litres. */
export interface PlannedZone {
  readonly zone: GardenZone;
  readonly litres: number;
  /** Whether anything of the week was set, run, closed or written down by a person: then it is never cut. */
  readonly isGiven: boolean;
}

/** Litres that the week may have; undefined where no cut names it. The later in the list counts. */
export function allowedLitres({ supply, span }: Garden, week: number, planned: number): number | undefined {
  const first = span.firstDay + 7 * week;
  const cut = supply.cuts?.findLast(({ from, to }) => from <= first && first <= to);
  return cut === undefined ? undefined : (cut.litresPerWeek ?? (1 - cut.share) * planned);
}

/** What each zone keeps of its minutes, in the garden's order. */
export function keptShares(zones: readonly PlannedZone[], allowed: number): readonly number[] {
  const planned = zones.reduce((sum, { litres }) => sum + litres, 0);
  const kept = zones.map(() => 1);
  let excess = planned - allowed;
  for (const place of placesLastFirst(zones)) {
    const litres = zones[place]?.litres ?? 0;
    const taken = Math.min(litres, Math.max(0, excess));
    if (taken > 0) kept[place] = 1 - taken / litres;
    excess -= taken;
  }
  return kept;
}

/** Where nothing may be left, whatever is planned: not for a zone either that was not expected to run. */
export function noShares(zones: readonly PlannedZone[]): readonly number[] {
  const cut = placesLastFirst(zones);
  return zones.map((_, place) => (cut.includes(place) ? 0 : 1));
}

/** Those that may be cut: the greatest order first, of equal ones the later in the list. */
function placesLastFirst(zones: readonly PlannedZone[]): readonly number[] {
  const orderOf = (place: number) => zones[place]?.zone.cutOrder ?? place + 1;
  return zones
    .flatMap(({ zone, isGiven }, place) => (zone.cutExempt === true || isGiven ? [] : [place]))
    .sort((one, other) => orderOf(other) - orderOf(one) || other - one);
}
