/**
 * Figures by week and field, in one array outside of the heap of objects; weeks of a season that is run again from some week on have arrays
 * of their own, so that seasons which differ in few weeks share the others.
 */
export class WeekFigures {
  readonly weeks: number;
  readonly fields: number;
  /** Field f of week w is `block[w * fields + f]`, but for weeks that have a row. */
  readonly block: Float64Array;
  /** By week. Undefined where the season was run as a whole. */
  readonly rows: (readonly number[])[] | undefined;

  constructor(
    weeks: number,
    fields: number,
    block: Float64Array = new Float64Array(weeks * fields),
    rows?: WeekFigures['rows'],
  ) {
    this.weeks = weeks;
    this.fields = fields;
    this.block = block;
    this.rows = rows;
  }

  at(field: number, week: number): number {
    const row = this.rows?.[week];
    return (row ? row[field] : this.block[week * this.fields + field]) as number;
  }

  /** One field, by week. */
  of(field: number): Float64Array {
    return Float64Array.from({ length: this.weeks }, (_, week) => this.at(field, week));
  }

  /** Only for whoever computes the season. */
  put(week: number, row: readonly number[]): void {
    if (this.rows) this.rows[week] = row.slice();
    else this.block.set(row, week * this.fields);
  }
}

/** Made of fractions: an array of whole numbers would be made anew when the first fraction comes. */
export function zeros(count: number): number[] {
  return Array.from({ length: count }, () => 0.5).fill(0);
}
