/** The weather of many years, as it is given to engine and oracle alike: of the place where it is known, else made. */
import type { Garden } from '../../src/engine/garden.ts';
import { madeYears } from '../../src/engine/rain/made-years.ts';
import { recordedYears } from '../../src/engine/rain/recorded-years.ts';
import type { SeasonYears } from '../../src/engine/rain/season-years.ts';
import type { WeatherDay } from './weather.ts';

/** Made or read when they are first asked for. */
export function yearsOf({ site, span }: Garden, weather: readonly WeatherDay[]): () => SeasonYears {
  let found: SeasonYears | undefined;
  const { firstDay } = span;
  const recorded = () => {
    const etoMm = Float64Array.from(weather, ({ usualEtoMm }) => usualEtoMm);
    return site.years === undefined ? undefined : recordedYears(site.years, { firstDay, etoMm });
  };
  const made = () => {
    const { rainMm: monthlyRainMm, rainDays } = site.climate;
    return madeYears({ firstDay, days: weather.length, monthlyRainMm, rainDays });
  };
  return () => {
    found ??= recorded() ?? made();
    return found;
  };
}
