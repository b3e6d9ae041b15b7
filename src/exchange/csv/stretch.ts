/** Pauses of whoever goes through the rows of a long table. */

const ROWS_AT_A_STRETCH = 2000;

/** Whether to pause at a row, by its index. */
export const isStretchEnd = (index: number): boolean => index % ROWS_AT_A_STRETCH === ROWS_AT_A_STRETCH - 1;
