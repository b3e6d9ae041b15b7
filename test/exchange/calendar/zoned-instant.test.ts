import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { isTimeZone, ZonedClock } from '../../../src/exchange/calendar/zoned-instant.ts';

const instant = (timeZone: string, day: string, hour: number, minute: number) =>
  new Date(new ZonedClock(timeZone).instantOf(dayNumber(day), 60 * hour + minute)).toISOString();

describe('a time that clocks of a place show, as an instant', () => {
  // RFC 5545, 3.3.5: its three examples, by what it says of each.
  it.each([
    ['America/New_York', '1997-07-14', 13, 30, '1997-07-14T17:30:00.000Z'],
    ['America/New_York', '2007-11-04', 1, 30, '2007-11-04T05:30:00.000Z'],
    ['America/New_York', '2007-03-11', 2, 30, '2007-03-11T07:30:00.000Z'],
  ])('%s, %s at %i:%i, as the standard has it', (zone, day, hour, minute, expected) => {
    expect(instant(zone, day, hour, minute)).toBe(expected);
  });

  // By the rules of the IANA Time Zone Database: the half hour of Lord Howe, and places that never move their clocks.
  it.each([
    ['Australia/Lord_Howe', '2027-04-04', 1, 45, '2027-04-03T14:45:00.000Z'],
    ['Australia/Lord_Howe', '2027-10-03', 2, 15, '2027-10-02T15:45:00.000Z'],
    ['Asia/Kolkata', '2027-06-01', 5, 0, '2027-05-31T23:30:00.000Z'],
    ['UTC', '2027-06-01', 0, 0, '2027-06-01T00:00:00.000Z'],
    ['Pacific/Kiritimati', '2027-06-01', 5, 0, '2027-05-31T15:00:00.000Z'],
  ])('%s, %s at %i:%i', (zone, day, hour, minute, expected) => {
    expect(instant(zone, day, hour, minute)).toBe(expected);
  });

  it('is refused in a time zone that is none', () => {
    expect(isTimeZone('America/New_York')).toBe(true);
    expect(isTimeZone('Mars/Olympus')).toBe(false);
    expect(() => new ZonedClock('Mars/Olympus')).toThrow(RangeError);
  });
});
