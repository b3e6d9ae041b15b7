/** From what the plantings ask for to the minutes that the zone would have to run. */
import type { ZoneRule } from '../../../engine/garden.ts';
import { MINUTES_ORIGINS, type MinutesOrigin } from '../../../engine/season/season.ts';
import { decides, isAnyOpen, isWatered, type MinutesRequest } from '../../../engine/season/zone-minutes.ts';
import type { TraceCodes } from '../trace-codes.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, input, minutes, volume } from '../trace-value.ts';
import { requestOf, type ZoneCell, type ZoneMember } from './zone-cell.ts';

interface Asking {
  readonly member: ZoneMember;
  readonly request: MinutesRequest;
}

export function zoneMinutesStep(cell: ZoneCell): TraceStep {
  const { rule } = cell.zoneSeason.zone;
  const all = cell.members.map((member) => ({ member, request: requestOf(cell, member) }));
  const named = all.find(({ request }) => isNamed(rule, request));
  // The thirstiest decides while the named planting is not watered.
  const kind = rule.kind === 'planting' && named === undefined ? 'thirstiest' : rule.kind;
  return {
    id: 'zone-minutes',
    variant: kind,
    source: [{ id: 'zone-rule' }, { id: 'rule-thirstiest', cite: 'Kjelgren, Beeson, Pittenger and Montague (2016)' }],
    inputs: named === undefined ? byRule(all, kind) : all.map((each) => namedInput(each, each === named)),
    result: minutes(cell.at('minutesWanted')),
  };
}

function isNamed(rule: ZoneRule, request: MinutesRequest): boolean {
  return rule.kind === 'planting' && request.plantingId === rule.plantingId && isWatered(request);
}

function namedInput({ member, request }: Asking, isTheNamed: boolean): TraceValue {
  return isTheNamed ? asked(member, request) : leftOut(member, 'not-named');
}

function byRule(all: readonly Asking[], kind: ZoneRule['kind']): readonly TraceValue[] {
  const anyOpen = isAnyOpen(all.map(({ request }) => request));
  return all.flatMap(({ member, request }) => {
    if (!decides(request, anyOpen)) return [leftOut(member, exclusionOf(request))];
    const asks = asked(member, request);
    return kind === 'area-weighted' ? [asks, litresOf(member, request)] : [asks];
  });
}

function asked({ name }: ZoneMember, { minutesPerDay }: MinutesRequest): TraceValue {
  return input({ id: 'planting', name }, minutes(minutesPerDay));
}

function leftOut({ name }: ZoneMember, why: TraceCodes['exclusion']): TraceValue {
  return input({ id: 'planting', name }, code('exclusion', why));
}

function litresOf({ name }: ZoneMember, { litresPerMinute }: MinutesRequest): TraceValue {
  return input({ id: 'litres-of-a-minute', name }, volume(litresPerMinute));
}

/** Of a planting that does not decide. */
function exclusionOf({ isPresent, litresPerMinute }: MinutesRequest): TraceCodes['exclusion'] {
  if (!isPresent) return 'out-of-ground';
  return litresPerMinute === 0 ? 'no-line' : 'shut-off';
}

export function originInput(cell: ZoneCell): TraceValue {
  return input('origin', code('origin', originOf(cell)));
}

export function originOf(cell: ZoneCell): MinutesOrigin {
  return MINUTES_ORIGINS[cell.at('origin')] as MinutesOrigin;
}
