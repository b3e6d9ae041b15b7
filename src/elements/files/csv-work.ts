/** What reads and writes tables, with its library: fetched when it is first wanted. */
export { seasonCsvSteps } from '../../exchange/csv/season-to-csv.ts';
export { sheetsSteps } from '../../exchange/csv/table-from-csv.ts';
