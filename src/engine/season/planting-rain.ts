/** Effective rain of a planting, day by day. */
import type { GardenSite } from '../garden.ts';
import { monthlyEffectiveRainMm } from '../rain/effective-rain.ts';
import type { Weather } from '../weather.ts';
import type { PlantingDemand } from './planting-demand.ts';

/** Index of `normals` in RAIN_ORIGINS. */
const NORMALS = 0;

/**
 * Rain that enters the root zone on each day, mm; 0 out of the ground. On days from normals the month's effective rain
 * is shared in proportion to the day's rain; on observed days it is the day's own, and the balance decides what stays.
 */
export function plantingRain(demand: PlantingDemand, site: GardenSite, weather: Weather): Float64Array {
  const { rain, months } = weather;
  const shares = monthlyShares(demand, site, weather);
  const soakedMm = new Float64Array(weather.days);
  for (let day = demand.first; day < demand.end; day++) {
    soakedMm[day] =
      rain.origin[day] === NORMALS
        ? (rain.mm[day] as number) * (shares[months.ofDay[day] as number] as number)
        : (rain.soakedMm[day] as number);
  }
  return soakedMm;
}

/**
 * Share of a month's normal rain that counts, for each month of the season. The month's ETc is taken as if its days in
 * the ground were the whole month, so that a season that starts in mid-month credits by the same share. The usable
 * storage is the readily available water.
 */
export function monthlyShares(demand: PlantingDemand, site: GardenSite, weather: Weather): Float64Array {
  const { months } = weather;
  const count = months.calendarMonth.length;
  const etcMm = new Float64Array(count);
  const rawMm = new Float64Array(count);
  const groundDays = new Float64Array(count);
  for (let day = demand.first; day < demand.end; day++) {
    const month = months.ofDay[day] as number;
    etcMm[month] = (etcMm[month] as number) + (demand.etcMm[day] as number);
    rawMm[month] = (rawMm[month] as number) + (demand.rawMm[day] as number);
    groundDays[month] = (groundDays[month] as number) + 1;
  }
  return etcMm.map((etc, month) => {
    const rainMm = site.climate.rainMm[months.calendarMonth[month] as number] as number;
    const days = groundDays[month] as number;
    if (days === 0 || rainMm === 0) return 0;
    const effective = monthlyEffectiveRainMm(site.rain.method, {
      rainMm,
      etcMm: (etc / days) * (months.lengthDays[month] as number),
      usableStorageMm: (rawMm[month] as number) / days,
      fraction: site.rain.fraction,
    });
    return effective / rainMm;
  });
}
