/** What a field for a time of the day holds, `05:00`, and minutes after midnight. */

export function timeOfMinute(minute: number): string {
  return [Math.floor(minute / 60), minute % 60].map((part) => String(part).padStart(2, '0')).join(':');
}

/** Undefined where the field is empty. */
export function minuteOfTime(time: string): number | undefined {
  const [, hours, minutes] = /^(\d\d):(\d\d)/.exec(time) ?? [];
  return hours === undefined ? undefined : 60 * Number(hours) + Number(minutes);
}
