/** Names of the parts that an edit speaks of. */
import { dayNumber, isIsoDate } from '../../../engine/calendar.ts';
import type { Plan } from '../../schema/plan-schema.ts';
import { weekFirstDay, weekOf } from '../../season-weeks.ts';
import { dayInWords } from '../../words/day-words.ts';
import { shortText } from '../../words/short-text.ts';

export function zoneName(plan: Plan, id: string): string {
  return shortText(plan.zones.find((zone) => zone.id === id)?.name ?? id);
}

export function plantingName(plan: Plan, id: string): string {
  const plantings = plan.zones.flatMap((zone) => zone.plantings);
  return shortText(plantings.find((planting) => planting.id === id)?.name ?? id);
}

/** `Beds, week of 5 July`, by the first day of the week that holds the day. */
export function cellName(plan: Plan, { zone, week }: { readonly zone: string; readonly week: string }): string {
  return `${zoneName(plan, zone)}, ${weekName(plan, week)}`;
}

/** `week of 5 July`. */
export function weekName({ season }: Plan, day: string): string {
  if (!isIsoDate(day)) return `week of ${shortText(day)}`;
  const week = weekOf(season, day);
  const isInside = week >= 0 && week < season.weeks;
  return `week of ${dayInWords(dayNumber(isInside ? weekFirstDay(season, week) : day))}`;
}

/** `1 minute`, `45 minutes`. */
export function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

/** Fields of a change as a list: `area, root depth and note`. */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
