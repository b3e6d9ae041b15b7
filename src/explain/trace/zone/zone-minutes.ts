/** From what the plantings ask for on a morning to the minutes that the zone would have to run. */
import type { ZoneRule } from '../../../engine/garden.ts';
import { MINUTES_ORIGINS, type MinutesOrigin } from '../../../engine/season/season.ts';
import type { ToldMorning } from '../../../engine/season/told-morning.ts';
import { decides, isAnyOpen, isWatered, zoneMinutes } from '../../../engine/season/zone-minutes.ts';
import { isDeciding } from '../../../engine/season/zone-morning.ts';
import type { TraceCodes } from '../trace-codes.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, input, minutes, volume } from '../trace-value.ts';
import { type MorningRequest, requestsOf, type ZoneCell } from './zone-cell.ts';

export function zoneMinutesStep(cell: ZoneCell, morning: ToldMorning): TraceStep {
  const { rule } = cell.zoneSeason.zone;
  const all = requestsOf(cell, morning);
  const named = all.find((each) => isNamed(rule, each));
  // The thirstiest decides while the named planting is not watered.
  const kind = rule.kind === 'planting' && named === undefined ? 'thirstiest' : rule.kind;
  const wanted = morning.decided?.wanted;
  return {
    id: 'zone-minutes',
    day: cell.season.garden.span.firstDay + morning.day,
    variant: kind,
    source: [{ id: 'zone-rule' }, { id: 'rule-thirstiest', cite: 'Kjelgren, Beeson, Pittenger and Montague (2016)' }],
    inputs: named === undefined ? byRule(all, kind) : all.map((each) => namedInput(each, each === named)),
    result: minutes(
      wanted ??
        zoneMinutes(
          rule,
          all.map(({ request }) => request),
        ),
    ),
  };
}

/** Those of a morning by whose need the zone's minutes are rounded up. */
export function decidersOf(cell: ZoneCell, morning: ToldMorning): readonly MorningRequest[] {
  const all = requestsOf(cell, morning);
  const requests = all.map(({ request }) => request);
  return all.filter(({ request }) => isDeciding(cell.zoneSeason.zone.rule, requests, request));
}

function isNamed(rule: ZoneRule, { request }: MorningRequest): boolean {
  return rule.kind === 'planting' && request.plantingId === rule.plantingId && isWatered(request);
}

function namedInput(each: MorningRequest, isTheNamed: boolean): TraceValue {
  return isTheNamed ? asked(each) : leftOut(each, 'not-named');
}

function byRule(all: readonly MorningRequest[], kind: ZoneRule['kind']): readonly TraceValue[] {
  const anyOpen = isAnyOpen(all.map(({ request }) => request));
  return all.flatMap((each) => {
    if (!decides(each.request, anyOpen)) return [leftOut(each, exclusionOf(each))];
    return kind === 'area-weighted' ? [asked(each), litresOf(each)] : [asked(each)];
  });
}

function asked({ member: { name }, request }: MorningRequest): TraceValue {
  return input({ id: 'planting', name }, minutes(request.minutesPerDay));
}

function leftOut({ member: { name } }: MorningRequest, why: TraceCodes['exclusion']): TraceValue {
  return input({ id: 'planting', name }, code('exclusion', why));
}

function litresOf({ member: { name }, request }: MorningRequest): TraceValue {
  return input({ id: 'litres-of-a-minute', name }, volume(request.litresPerMinute));
}

/** Of a planting that does not decide. */
function exclusionOf({ request: { isPresent, litresPerMinute } }: MorningRequest): TraceCodes['exclusion'] {
  if (!isPresent) return 'not-there';
  return litresPerMinute === 0 ? 'no-line' : 'shut-off';
}

export function originInput(cell: ZoneCell): TraceValue {
  return input('origin', code('origin', originOf(cell)));
}

export function originOf(cell: ZoneCell): MinutesOrigin {
  return MINUTES_ORIGINS[cell.at('origin')] as MinutesOrigin;
}
