/** What undo calls a remedy that is several edits. */
import { shortText } from '../../plan/words/short-text.ts';

export function cutLabel(planting: string, zone: string): string {
  return `${shortText(planting)}: half of it to ${shortText(zone)}`;
}

export function daysLabel(zones: readonly string[]): string {
  return `${zones.map((name) => shortText(name)).join(', ')}: other watering days`;
}

export const FEWER_MINUTES = 'Fewer minutes in the weeks that ask too much';
