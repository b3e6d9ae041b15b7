/** Weeks that are taken over or run again together: a power of two. */
export const SPAN_WEEKS = 16;

/**
 * Figures by week and field, in one array outside of the heap of objects. Where a season is run again from some week on, spans of weeks
 * have arrays of their own, so that seasons which differ in few weeks share the others.
 */
export class WeekFigures {
  readonly weeks: number;
  readonly fields: number;
  /** Field f of week w is `block[w * fields + f]`, but for weeks in a span of their own. */
  readonly block: Float64Array;
  /** By span. Undefined where the season was run as a whole. */
  readonly spans: Float64Array[] | undefined;

  constructor(
    weeks: number,
    fields: number,
    block: Float64Array = new Float64Array(weeks * fields),
    spans?: WeekFigures['spans'],
  ) {
    this.weeks = weeks;
    this.fields = fields;
    this.block = block;
    this.spans = spans;
  }

  at(field: number, week: number): number {
    return this.arrayOf(week)[this.startOf(week) + field] as number;
  }

  /** What a week's figures lie in: the same array where neither they nor their neighbours were run again. */
  arrayOf(week: number): Float64Array {
    return this.spans?.[spanOf(week)] ?? this.block;
  }

  /** Where they begin in it. */
  startOf(week: number): number {
    return (this.spans?.[spanOf(week)] ? week % SPAN_WEEKS : week) * this.fields;
  }

  /** Adds a span of weeks of others, which may have more fields; `first` is its first week. */
  addSpan(other: WeekFigures, first: number): void {
    const { fields, block } = this;
    const from = other.arrayOf(first);
    let start = other.startOf(first);
    const end = Math.min(first + SPAN_WEEKS, this.weeks) * fields;
    for (let at = first * fields; at < end; at += fields) {
      for (let field = 0; field < fields; field++) (block[at + field] as number) += from[start + field] as number;
      start += other.fields;
    }
  }

  /** Before weeks are run again: the span of one is no other season's any more. */
  own(week: number): void {
    const { spans, fields, block } = this;
    const at = spanOf(week);
    const start = at * SPAN_WEEKS * fields;
    if (spans) spans[at] = spans[at]?.slice() ?? block.slice(start, start + SPAN_WEEKS * fields);
  }
}

/** By whole numbers alone: it is asked for each figure that is read. */
function spanOf(week: number): number {
  return (week / SPAN_WEEKS) | 0;
}

/** Made of fractions: an array of whole numbers would be made anew when the first fraction comes. */
export function zeros(count: number): number[] {
  return Array.from({ length: count }, () => 0.5).fill(0);
}
