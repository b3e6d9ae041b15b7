/** What is done with the frame on the strip: dragged, pressed to another place, and moved by keys. */

import type { Frame } from '../shared/events/frame-event.ts';
import type { ReadyView } from '../shared/plan-state.ts';

/** Where a frame may go. */
export interface FrameBounds {
  readonly weeks: number;
  /** All zones of the season, by id, in the order of the lanes. */
  readonly zones: readonly string[];
  readonly thisWeek: number | undefined;
}

type Place = Pick<Frame, 'week' | 'weeks' | 'zones'>;

/** A frame that begins at a week and a zone, held inside the season. */
export function frameAt(frame: Place, week: number, zone: number, { weeks, zones }: FrameBounds): Place {
  const first = clamp(Math.round(week), 0, Math.max(0, weeks - frame.weeks));
  const top = clamp(Math.round(zone), 0, Math.max(0, zones.length - frame.zones.length));
  return { week: first, weeks: frame.weeks, zones: zones.slice(top, top + frame.zones.length) };
}

/** Where a key leads a frame; undefined for a key that does not move it. */
export function frameAfterKey(key: string, frame: Place, bounds: FrameBounds): Place | undefined {
  const at = bounds.zones.indexOf(frame.zones[0] ?? '');
  const { week, weeks } = frame;
  const to: Readonly<Record<string, readonly [week: number, zone: number]>> = {
    ArrowLeft: [week - 1, at],
    ArrowRight: [week + 1, at],
    ArrowUp: [week, at - 1],
    ArrowDown: [week, at + 1],
    PageUp: [week - weeks, at],
    PageDown: [week + weeks, at],
    Home: [0, at],
    End: [bounds.weeks, at],
    t: [(bounds.thisWeek ?? week) - WEEKS_BEFORE, at],
  };
  const place = to[key.length === 1 ? key.toLowerCase() : key];
  return place && frameAt(frame, place[0], place[1], bounds);
}

/** Weeks that stand before this one where the frame goes back to it, as in a sheet that opens. */
export const WEEKS_BEFORE = 3;

export function isSamePlace(one: Place, other: Place): boolean {
  return one.week === other.week && one.zones[0] === other.zones[0];
}

export function boundsOf({ season }: ReadyView, thisWeek: number | undefined): FrameBounds {
  return { weeks: season.garden.span.weeks, zones: season.zones.map(({ zone }) => zone.id), thisWeek };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
