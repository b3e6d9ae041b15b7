import type { DayNumber } from '../calendar.ts';
import type { SupplySource } from '../garden.ts';

/** The source that serves on a day: the last that has begun by then; undefined where none has. */
export function sourceOn<Source extends Pick<SupplySource, 'from'>>(
  { sources }: { readonly sources: readonly Source[] },
  day: DayNumber,
): Source | undefined {
  return sources.findLast(({ from }) => from <= day);
}
