/** One zone, one number: the minutes a watering day that suit its plantings by the zone's rule. */
import type { GardenPlanting, ZoneRule } from '../garden.ts';

/** A planting's say in its zone's minutes this week. */
export interface PlantingVoice {
  readonly plantingId: string;
  readonly hasShutOff: boolean;
  /** In the ground on at least one watering day of the week. */
  isPresent: boolean;
  /** Minutes a watering day that it asks for; Infinity where it has no line. */
  minutesPerDay: number;
  /** Litres that a minute a watering day brings it over the whole week, net. */
  litresPerMinute: number;
}

export function plantingVoice({ id, hasShutOff }: GardenPlanting): PlantingVoice {
  return { plantingId: id, hasShutOff, isPresent: false, minutesPerDay: 0, litresPerMinute: 0 };
}

/**
 * Minutes a watering day before any rounding.
 *
 * Plantings without a shut-off decide; those behind one only where there is no other, since theirs can be closed.
 * thirstiest: nobody goes short. area-weighted: the volume that all need over the flow they share. planting: the named
 * one alone, or the thirstiest while it is not watered. A planting without a line cannot be helped by minutes: it neither
 * asks for any nor keeps those behind a shut-off from deciding.
 */
export function zoneMinutes(rule: ZoneRule, voices: readonly PlantingVoice[]): number {
  if (rule.kind === 'planting') {
    const named = voices.find(({ plantingId }) => plantingId === rule.plantingId);
    if (named !== undefined && isWatered(named)) return named.minutesPerDay;
  }
  const anyOpen = isAnyOpen(voices);
  let thirstiest = 0;
  let litres = 0;
  let litresPerMinute = 0;
  for (let at = 0; at < voices.length; at++) {
    const voice = voices[at] as PlantingVoice;
    if (!decides(voice, anyOpen)) continue;
    if (voice.minutesPerDay > thirstiest) thirstiest = voice.minutesPerDay;
    litres += voice.minutesPerDay * voice.litresPerMinute;
    litresPerMinute += voice.litresPerMinute;
  }
  if (rule.kind !== 'area-weighted') return thirstiest;
  return litresPerMinute === 0 ? 0 : litres / litresPerMinute;
}

/** Whether a line brings it water on at least one watering day. */
export function isWatered(voice: PlantingVoice): boolean {
  return voice.isPresent && voice.litresPerMinute > 0;
}

/** Whether there is a planting with a line that no shut-off can close, on at least one watering day. */
export function isAnyOpen(voices: readonly PlantingVoice[]): boolean {
  return voices.some((voice) => isWatered(voice) && !voice.hasShutOff);
}

/** Whether a planting has a say in its zone's minutes. */
export function decides(voice: PlantingVoice, anyOpen: boolean): boolean {
  return isWatered(voice) && !(anyOpen && voice.hasShutOff);
}
