/** What version 2 reckons otherwise of the water that lines and sources of a plan of version 1 give. */
import { monthOfWeek } from '../../engine/calendar.ts';
import { LINE_KINDS, type LineKind } from '../../engine/line/line-kinds.ts';
import { DRY_DOWN_DAYS } from '../../engine/plants/dry-down.data.ts';
import { isAnnualCrop } from '../../engine/plants/find-crop.ts';
import { DEFAULTS } from '../defaults.ts';
import { dayIn, fieldsIn, type Loose, listIn, numberIn } from '../reading/loose.ts';
import { MOST_WEEKS } from '../schema/site.ts';
import type { VersionChange } from './version-change.ts';

/** Each only where the plan has such lines or sources. */
export function waterChanges({ supply, zones, ...document }: Loose): readonly VersionChange[] {
  const sources = listIn(fieldsIn(supply)['sources']).map(fieldsIn);
  const underPressure = sources.filter(({ pressure }) => pressure !== undefined).length;
  const buckets = sources.filter(({ flow }) => fieldsIn(flow)['kind'] === 'bucket').length;
  const mixed = listIn(zones).map(fieldsIn).filter(isMixed).length;
  const loops = listIn(zones)
    .flatMap((zone) => linesOf(fieldsIn(zone)))
    .filter(({ layout }) => fieldsIn(layout)['kind'] === 'loops').length;
  const plantings = listIn(zones).flatMap((zone) => listIn(fieldsIn(zone)['plantings']).map(fieldsIn));
  const wetted = plantings.filter(({ lines }) => listIn(lines).map(fieldsIn).some(isDrip)).length;
  const drying = plantings.filter(isDriedDown).length;
  const frozen = frozenMonths(document);
  const growing = plantings.filter(({ need }) => isAnnual(fieldsIn(need))).length;
  const told: readonly (false | VersionChange)[] = [
    underPressure > 0 && { code: 'flow-at-pressure', values: { sources: underPressure } },
    buckets > 0 && { code: 'bucket-share', values: { sources: buckets, share: DEFAULTS.bucketShare } },
    mixed > 0 && { code: 'efficiency-by-line', values: { zones: mixed } },
    loops > 0 && { code: 'loop-emitters', values: { lines: loops } },
    wetted > 0 && { code: 'ground-wetted', values: { plantings: wetted } },
    growing > 0 && { code: 'roots-grow', values: { plantings: growing } },
    drying > 0 && { code: 'dry-down', values: { plantings: drying } },
    frozen > 0 && { code: 'frozen-ground', values: { months: frozen } },
  ];
  return told.filter((change) => change !== false);
}

/** Emitters that may wet a part of the ground. */
export function isDrip({ kind }: Loose): boolean {
  return kind === 'dripline' || kind === 'point';
}

function isAnnual({ kind, crop }: Loose): boolean {
  return kind === 'crop' && isAnnualCrop(crop);
}

function isDriedDown({ need }: Loose): boolean {
  const { kind, crop } = fieldsIn(need);
  return kind === 'crop' && Object.hasOwn(DRY_DOWN_DAYS, String(crop));
}

/** Of the season's months, by the normals' lowest temperature. */
function frozenMonths({ site, season, units }: Loose): number {
  const lowest = listIn(fieldsIn(fieldsIn(site)['climate'])['minTemperature']);
  const { firstDay, weeks } = fieldsIn(season);
  const first = dayIn(firstDay);
  if (first === undefined) return 0;
  const length = Math.min(MOST_WEEKS, numberIn(weeks) ?? 0);
  const months = new Set(Array.from({ length }, (_, week) => monthOfWeek(first + 7 * week)));
  const freezing = units === 'us' ? 32 : 0;
  return [...months].filter((month) => (numberIn(lowest[month]) ?? freezing) < freezing).length;
}

/** One efficiency stood for spray and drip together, unless the plan gave one. */
function isMixed(zone: Loose): boolean {
  if (zone['application'] !== undefined) return false;
  const methods = linesOf(zone).flatMap(({ kind }) => {
    const facts = Object.hasOwn(LINE_KINDS, String(kind)) ? LINE_KINDS[kind as LineKind] : undefined;
    return facts === undefined || facts.emitters === 'none' ? [] : [facts.method];
  });
  return new Set(methods).size > 1;
}

function linesOf(zone: Loose): readonly Loose[] {
  return listIn(zone['plantings']).flatMap((planting) => listIn(fieldsIn(planting)['lines']).map(fieldsIn));
}
