/** Days whose figure was read, by where their readings come from. */
import type { ReadingOrigin } from '../../../engine/garden-weather.ts';
import type { Season } from '../../../engine/season/season.ts';

export interface OriginDays {
  /** Undefined where it was typed, or is no reading of the day. */
  readonly from: ReadingOrigin | undefined;
  readonly indexes: readonly number[];
}

const ORIGINS = [undefined, 'file', 'service', 'estimate'] as const;

/** In a fixed order, none without days. `indexes`: days of the season. */
export function byReadingOrigin(
  { garden: { span, observed } }: Season,
  field: 'rainFrom' | 'etoFrom',
  indexes: readonly number[],
): readonly OriginDays[] {
  const fromOf = (index: number) => observed.days.get(span.firstDay + index)?.[field];
  return ORIGINS.map((from) => ({ from, indexes: indexes.filter((index) => fromOf(index) === from) })).filter(
    (part) => part.indexes.length > 0,
  );
}
