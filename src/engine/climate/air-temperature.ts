/** The lowest and highest air temperature of a day, or their averages over a month. */
export interface TemperatureExtremes {
  readonly minTemperatureC: number;
  readonly maxTemperatureC: number;
}

/** Mean of the day's extremes, which stands for the mean of the day in every FAO-56 relation (eq. 9), degrees C. */
export function meanTemperature({ minTemperatureC, maxTemperatureC }: TemperatureExtremes): number {
  return (minTemperatureC + maxTemperatureC) / 2;
}

/**
 * How much warmer the day's highest temperature is than its lowest, degrees C.
 * Throws a RangeError where it is colder: two readings were exchanged, and no estimate of radiation can rest on them.
 */
export function temperatureRange({ minTemperatureC, maxTemperatureC }: TemperatureExtremes): number {
  if (maxTemperatureC < minTemperatureC) {
    throw new RangeError(
      `the highest temperature (${maxTemperatureC} °C) is below the lowest (${minTemperatureC} °C): exchange or correct them`,
    );
  }
  return maxTemperatureC - minTemperatureC;
}
