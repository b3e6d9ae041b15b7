/** Records by zone id and week: choices, and what ran. */
import type { Issue } from '../issue.ts';
import { fieldsIn, type Loose, listIn } from '../loose.ts';
import type { Path } from '../place.ts';
import { dayRunRelations, openDaysRelations, spanOf, zoneWeekRelations } from './week-relations.ts';

export function choicesRelations(document: Loose, valid: Loose): readonly Issue[] {
  const span = spanOf(document['season']);
  return zoneRecords(document, valid, { at: ['choices'], recordsIn: (plan) => plan['choices'] }, (weeks, at, zone) => [
    ...zoneWeekRelations(weeks, at, span),
    ...openDaysRelations(weeks, at, zone),
  ]);
}

export function runsRelations(document: Loose, valid: Loose): readonly Issue[] {
  const span = spanOf(document['season']);
  const records = { at: ['log', 'runs'], recordsIn: (plan: Loose) => fieldsIn(plan['log'])['runs'] };
  return zoneRecords(document, valid, records, (weeks, at, zone) => [
    ...zoneWeekRelations(weeks, at, span),
    ...dayRunRelations(weeks, at, span, zone),
  ]);
}

/** Checks each zone's record unless the record, the zone and the season are what they were. */
function zoneRecords(
  document: Loose,
  valid: Loose,
  { at, recordsIn }: { readonly at: Path; readonly recordsIn: (plan: Loose) => unknown },
  check: (weeks: unknown, at: Path, zone: Loose) => readonly Issue[],
): readonly Issue[] {
  const [records, before] = [fieldsIn(recordsIn(document)), fieldsIn(recordsIn(valid))];
  const sameSeason = document['season'] === valid['season'];
  if (records === before && document['zones'] === valid['zones'] && sameSeason) return [];
  const zones = zonesById(document);
  const zonesBefore = document['zones'] === valid['zones'] ? zones : zonesById(valid);
  return Object.entries(records).flatMap(([id, weeks]): readonly Issue[] => {
    const zone = zones.get(id);
    if (zone === undefined) return [{ path: [...at, id], value: id, code: 'zone-unknown', values: {} }];
    if (sameSeason && weeks === before[id] && zone === zonesBefore.get(id)) return [];
    return check(weeks, [...at, id], zone);
  });
}

/** Of two zones with one id the first counts: that there are two is a fault of its own. */
function zonesById({ zones }: Loose): ReadonlyMap<unknown, Loose> {
  const byId = new Map<unknown, Loose>();
  for (const zone of listIn(zones).map(fieldsIn)) {
    if (!byId.has(zone['id'])) byId.set(zone['id'], zone);
  }
  return byId;
}
