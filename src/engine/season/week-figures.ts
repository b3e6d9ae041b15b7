/** Figures by week and field. Each week has an array of its own, so that seasons which differ in few weeks share the others. */
export class WeekFigures {
  /** By week. Only whoever computes a season writes into them, and only into its own. */
  readonly rows: number[][];

  constructor(rows: number[][]) {
    this.rows = rows;
  }

  get weeks(): number {
    return this.rows.length;
  }

  at(field: number, week: number): number {
    return this.rows[week]?.[field] as number;
  }

  /** One field, by week. */
  of(field: number): Float64Array {
    return Float64Array.from(this.rows, (row) => row[field] as number);
  }
}

/** Made of fractions: an array of whole numbers would be made anew when the first fraction comes. */
export function zeros(count: number): number[] {
  return Array.from({ length: count }, () => 0.5).fill(0);
}

export function emptyWeeks(weeks: number, fields: number): WeekFigures {
  const none = zeros(fields);
  return new WeekFigures(Array.from({ length: weeks }, () => none.slice()));
}
