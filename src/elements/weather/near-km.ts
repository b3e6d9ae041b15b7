/** Weather of a place farther away, or in another country, is not that of the garden: common practice, no source. */
export const NEAR_KM = 100;
