/** Published monthly ETo, inches, January first, with the printed or added-up total of the year. */
export type PublishedRow = readonly [place: string, months: readonly number[], total: number];

/**
 * Reference ET zones of California, inches a month: California Department of Water Resources and University of California Davis,
 * *Reference Evapotranspiration Zones* map (1999). From memory, but for zone 14, which was seen month for month.
 */
export const CALIFORNIA_ZONES: readonly PublishedRow[] = [
  ['zone 1', [0.93, 1.4, 2.48, 3.3, 4.03, 4.5, 4.65, 4.03, 3.3, 2.48, 1.2, 0.62], 32.92],
  ['zone 2', [1.24, 1.68, 3.1, 3.9, 4.65, 5.1, 4.96, 4.65, 3.9, 2.79, 1.8, 1.24], 39.01],
  ['zone 3', [1.86, 2.24, 3.72, 4.8, 5.27, 5.7, 5.58, 5.27, 4.2, 3.41, 2.4, 1.86], 46.31],
  ['zone 4', [1.86, 2.24, 3.41, 4.5, 5.27, 5.7, 5.89, 5.58, 4.5, 3.41, 2.4, 1.86], 46.62],
  ['zone 5', [0.93, 1.68, 2.79, 4.2, 5.58, 6.3, 6.51, 5.89, 4.5, 3.1, 1.5, 0.93], 43.91],
  ['zone 6', [1.86, 2.24, 3.41, 4.8, 5.58, 6.3, 6.51, 6.2, 4.8, 3.72, 2.4, 1.86], 49.68],
  ['zone 7', [0.62, 1.4, 2.48, 3.9, 5.27, 6.3, 7.44, 6.51, 4.8, 2.79, 1.2, 0.62], 43.33],
  ['zone 8', [1.24, 1.68, 3.41, 4.8, 6.2, 6.9, 7.44, 6.51, 5.1, 3.41, 1.8, 0.93], 49.42],
  ['zone 9', [2.17, 2.8, 4.03, 5.1, 5.89, 6.6, 7.44, 6.82, 5.7, 4.03, 2.7, 1.86], 55.14],
  ['zone 10', [0.93, 1.68, 3.1, 4.5, 5.89, 7.2, 8.06, 7.13, 5.1, 3.1, 1.5, 0.93], 49.12],
  ['zone 11', [1.55, 2.24, 3.1, 4.5, 5.89, 7.2, 8.06, 7.44, 5.7, 3.72, 2.1, 1.55], 53.05],
  ['zone 12', [1.24, 1.96, 3.41, 5.1, 6.82, 7.8, 8.06, 7.13, 5.4, 3.72, 1.8, 0.93], 53.37],
  ['zone 13', [1.24, 1.96, 3.1, 4.8, 6.51, 7.8, 8.99, 7.75, 5.7, 3.72, 1.8, 0.93], 54.3],
  ['zone 14', [1.55, 2.24, 3.72, 5.1, 6.82, 7.8, 8.68, 7.75, 5.7, 4.03, 2.1, 1.55], 57.04],
  ['zone 15', [1.24, 2.24, 3.72, 5.7, 7.44, 8.1, 8.68, 7.75, 5.7, 4.03, 2.1, 1.24], 57.94],
  ['zone 16', [1.55, 2.52, 4.03, 5.7, 7.75, 8.7, 9.3, 8.37, 6.3, 4.34, 2.4, 1.55], 62.51],
  ['zone 17', [1.86, 2.8, 4.65, 6.0, 8.06, 9.0, 9.92, 8.68, 6.6, 4.34, 2.7, 1.86], 66.47],
  ['zone 18', [2.48, 3.36, 5.27, 6.9, 8.68, 9.6, 9.61, 8.68, 6.9, 4.96, 3.0, 2.17], 71.61],
];

/**
 * Monthly ETo printed in ordinances, inches. Vacaville and Lagoon Valley: municipal code of Vacaville, Table 14.27.030.A, seen. The
 * others: California Code of Regulations, Title 23, Model Water Efficient Landscape Ordinance, Appendix A, months from memory.
 * Sacramento's total is printed as 51.9, though its months, as recalled, add up to 52.1.
 */
export const ORDINANCE_ROWS: readonly PublishedRow[] = [
  ['Vacaville', [0.7, 1.4, 3.2, 5.2, 6.3, 7.6, 8.2, 7.2, 5.5, 4.3, 1.6, 1.1], 52.3],
  ['Lagoon Valley', [1.1, 1.7, 2.8, 4.0, 5.5, 6.1, 7.8, 6.0, 4.8, 3.1, 1.4, 0.9], 45.2],
  ['Fresno', [0.9, 1.7, 3.3, 4.8, 6.7, 7.8, 8.4, 7.1, 5.2, 3.2, 1.4, 0.6], 51.1],
  ['San Francisco', [1.5, 1.3, 2.4, 3.0, 3.7, 4.6, 4.9, 4.8, 4.1, 2.8, 1.3, 0.7], 35.1],
  ['Los Angeles', [2.2, 2.7, 3.7, 4.7, 5.5, 5.8, 6.2, 5.9, 5.0, 3.9, 2.6, 1.9], 50.1],
  ['San Diego', [2.1, 2.4, 3.4, 4.6, 5.1, 5.3, 5.7, 5.6, 4.3, 3.6, 2.4, 2.0], 46.5],
  ['Sacramento', [1.0, 1.8, 3.2, 4.7, 6.4, 7.7, 8.4, 7.2, 5.4, 3.7, 1.7, 0.9], 52.1],
];
