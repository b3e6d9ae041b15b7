/** What reads and writes tables, with its library: fetched when it is first wanted. */
export { seasonToCsv } from '../../exchange/csv/season-to-csv.ts';
export { tableFromCsv } from '../../exchange/csv/table-from-csv.ts';
