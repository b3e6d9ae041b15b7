/** From what the plantings ask for to the minutes that the zone runs. */
import type { ZoneRule } from '../../../engine/garden.ts';
import { MINUTES_ORIGINS, type MinutesOrigin } from '../../../engine/season/season.ts';
import { decides, isAnyOpen, isWatered, type PlantingVoice } from '../../../engine/season/zone-minutes.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { minutes, volume, words } from '../trace-value.ts';
import { voiceOf, type ZoneCell, type ZoneMember } from './zone-cell.ts';

const RULES: Readonly<Record<ZoneRule['kind'], Pick<TraceStep, 'says' | 'formula'>>> = {
  thirstiest: {
    says: 'All lines of the zone run together, so it runs as long as its thirstiest planting asks: nobody goes short.',
    formula: 'minutes = the greatest of the minutes asked for',
  },
  'area-weighted': {
    says: 'All lines of the zone run together, for as long as brings all plantings together what they need together.',
    formula: 'minutes = Σ (minutes asked for × litres of a minute) / Σ litres of a minute',
  },
  planting: {
    says: 'All lines of the zone run together, as long as the planting named in the plan asks.',
    formula: 'minutes = the minutes that the named planting asks for',
  },
};

export function zoneMinutesStep(cell: ZoneCell): TraceStep {
  const { rule } = cell.zoneSeason.zone;
  const voices = cell.members.map((member) => ({ member, voice: voiceOf(cell, member) }));
  const named = voices.find(({ voice }) => isNamed(rule, voice));
  const kind = rule.kind === 'planting' && named === undefined ? 'thirstiest' : rule.kind;
  const anyOpen = isAnyOpen(voices.map(({ voice }) => voice));
  const inputs = voices.flatMap(({ member, voice }) => {
    if (named !== undefined)
      return voice === named.voice ? [asked(member, voice)] : [words(member.label, 'not the named one')];
    if (!decides(voice, anyOpen)) return [words(member.label, whyNot(voice, anyOpen))];
    const said = asked(member, voice);
    return kind === 'area-weighted' ? [said, litresOf(member, voice)] : [said];
  });
  return {
    id: 'zone-minutes',
    title: 'Minutes a watering day wanted',
    ...RULES[kind],
    source:
      'Rule for a mixed zone set in the plan; thirstiest: Kjelgren, Beeson, Pittenger and Montague (2016), from memory',
    inputs: inputs.length > 0 ? inputs : [words('Plantings in the ground', 'none')],
    result: minutes('Minutes a watering day wanted', cell.at('minutesWanted')),
  };
}

function isNamed(rule: ZoneRule, voice: PlantingVoice): boolean {
  return rule.kind === 'planting' && voice.plantingId === rule.plantingId && isWatered(voice);
}

function asked({ label }: ZoneMember, { minutesPerDay }: PlantingVoice): TraceValue {
  return minutes(label, minutesPerDay);
}

function litresOf({ label }: ZoneMember, { litresPerMinute }: PlantingVoice): TraceValue {
  return volume(`${label}, net water of a minute on each watering day`, litresPerMinute);
}

function whyNot({ isPresent, hasShutOff, litresPerMinute }: PlantingVoice, anyOpen: boolean): string {
  if (!isPresent) return 'in the ground on no watering day';
  if (litresPerMinute === 0) return 'has no line that brings water';
  return hasShutOff && anyOpen ? 'behind a shut-off, does not decide' : '';
}

const ORIGIN_LABELS: Readonly<Record<MinutesOrigin, string>> = {
  computed: 'calculated',
  'hand-set': 'set by hand',
  run: 'really run',
  closed: 'closed for the week by hand',
};

export function originWords(cell: ZoneCell): TraceValue {
  return words('The minutes are', ORIGIN_LABELS[originOf(cell)]);
}

export function originOf(cell: ZoneCell): MinutesOrigin {
  return MINUTES_ORIGINS[cell.at('origin')] as MinutesOrigin;
}
