/** One entry of a calendar file (RFC 5545, 3.6.1). */
import { contentLine, instantValue, textValue } from './content-line.ts';

const MINUTE_MS = 60_000;

export interface CalendarEvent {
  readonly uid: string;
  /** Instants, ms since 1970. */
  readonly start: number;
  readonly end: number;
  readonly title: string;
  /** Line by line. */
  readonly says: readonly string[];
}

export interface EventWriting {
  /** Ms since 1970. */
  readonly writtenAt: number;
  readonly alarmMinutes?: number | undefined;
}

/** From when sequences are counted, so that they stay below 2^31 for thousands of years. */
const FIRST_SEQUENCE = Date.UTC(2020, 0, 1);

export function eventText(
  { uid, start, end, title, says }: CalendarEvent,
  { writtenAt, alarmMinutes }: EventWriting,
): string {
  const written = instantValue(writtenAt);
  return [
    contentLine('BEGIN', 'VEVENT'),
    contentLine('UID', uid),
    contentLine('DTSTAMP', written),
    contentLine('LAST-MODIFIED', written),
    contentLine('SEQUENCE', String(Math.max(0, Math.floor((writtenAt - FIRST_SEQUENCE) / MINUTE_MS)))),
    contentLine('DTSTART', instantValue(start)),
    contentLine('DTEND', instantValue(end)),
    contentLine('SUMMARY', textValue(title)),
    contentLine('DESCRIPTION', textValue(says.join('\n'))),
    // Nobody is busy while a timer runs.
    contentLine('TRANSP', 'TRANSPARENT'),
    ...(alarmMinutes === undefined ? [] : alarmLines(alarmMinutes, title)),
    contentLine('END', 'VEVENT'),
  ].join('');
}

function alarmLines(minutes: number, title: string): readonly string[] {
  return [
    contentLine('BEGIN', 'VALARM'),
    contentLine('ACTION', 'DISPLAY'),
    contentLine('TRIGGER', `-PT${Math.round(minutes)}M`),
    contentLine('DESCRIPTION', textValue(title)),
    contentLine('END', 'VALARM'),
  ];
}
