/** What a page does for the bench: the same by ours and by the bare grid, so that the one cannot be asked for less. */
export interface BenchPage {
  /** Puts the grid on the page, drawn. */
  open(): Promise<void>;
  /** A cell that is drawn, by row and week of the season. */
  cell(row: number, week: number): HTMLTableCellElement;
}

declare global {
  /** Set by the page's script. */
  var benchPage: BenchPage;
}

export const ZONES = 200;
/** The grid on the page; its window is larger. */
export const BOX = { widthPx: 1400, heightPx: 640 };
export const LICENSE_KEY = 'non-commercial-and-evaluation';

export const frame = (): Promise<unknown> => new Promise((resolve) => requestAnimationFrame(resolve));

/** Both have their names and the season's total before the first week. */
export function cellAt(row: number, week: number): HTMLTableCellElement {
  const rows = document.querySelectorAll('.ht_master tbody tr');
  const td = rows[row]?.querySelectorAll('td')[2 + week];
  if (td === undefined) throw new Error(`row ${row} has no week ${week}`);
  return td;
}
