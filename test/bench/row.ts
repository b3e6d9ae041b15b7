/** One line of the bench: medians in milliseconds, and how many times as long the peer takes. */
export interface BenchRow {
  readonly name: string;
  readonly ours_ms: number;
  /** What a person would use instead; null where it is not measured at this size. */
  readonly peer_ms: number | null;
  /** The least that the same work can take: a bare loop over typed arrays. */
  readonly limit_ms: number | null;
  readonly ratio: number | null;
}

export function asTable(rows: readonly BenchRow[]): string {
  const cells = rows.map(({ name, ours_ms, peer_ms, limit_ms, ratio }) => [
    name,
    written(ours_ms),
    written(peer_ms),
    written(limit_ms),
    ratio === null ? '' : `${ratio.toFixed(1)} x`,
    limit_ms === null ? '' : `${(ours_ms / limit_ms).toFixed(1)} x`,
  ]);
  const table = [['', 'ours ms', 'peer ms', 'limit ms', 'peer/ours', 'ours/limit'], ...cells];
  const widths = table[0]?.map((_, column) => Math.max(...table.map((row) => row[column]?.length ?? 0))) ?? [];
  return table
    .map((row) =>
      row
        .map((cell, column) => (column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0)))
        .join('  '),
    )
    .join('\n');
}

function written(ms: number | null): string {
  return ms === null ? '' : ms.toFixed(3);
}
