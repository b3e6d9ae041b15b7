/** Outcomes as a table to read. */
import { isMet, type Outcome } from './outcome.ts';

const HEADS = ['', 'ours ms', 'peer ms', 'limit ms', 'peer / ours', 'ours / limit', 'asked'] as const;

export function tableOf(outcomes: readonly Outcome[]): string {
  const rows = [HEADS, ...outcomes.map(cellsOf)];
  const widths = HEADS.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows.map((row) => row.map((cell, column) => pad(cell, widths[column] ?? 0, column)).join('  ')).join('\n');
}

export function cellsOf(outcome: Outcome): readonly string[] {
  const { name, ours_ms: ours, peer_ms: peer, limit_ms: limit, unit } = outcome;
  return [
    unit === undefined ? name : `${name}, ${unit}`,
    figure(ours),
    figure(peer),
    figure(limit),
    figure(peer === null ? null : peer / ours),
    figure(limit === null ? null : ours / limit),
    askedIn(outcome),
  ];
}

function askedIn(outcome: Outcome): string {
  const { peerOverOurs, oursOverLimit, oursMs } = outcome.asked ?? {};
  const words = [
    ...(peerOverOurs === undefined ? [] : [`peer / ours at least ${peerOverOurs}`]),
    ...(oursOverLimit === undefined ? [] : [`ours / limit at most ${oursOverLimit}`]),
    ...(oursMs === undefined ? [] : [`ours at most ${oursMs} ms`]),
  ];
  return words.length === 0 ? '' : `${words.join(', ')}: ${isMet(outcome) ? 'met' : 'MISSED'}`;
}

/** Three digits that count. */
function figure(value: number | null): string {
  if (value === null) return '';
  return value >= 100 ? value.toFixed(0) : value.toPrecision(3);
}

function pad(cell: string, width: number, column: number): string {
  return column === 0 || column === HEADS.length - 1 ? cell.padEnd(width) : cell.padStart(width);
}
