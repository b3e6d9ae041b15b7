/** Mean pressure of the air at an elevation above the sea, kPa (FAO-56 eq. 7); 1800 m gives 81.8 (Example 2). */
export function atmosphericPressure(elevationM: number): number {
  return 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;
}
