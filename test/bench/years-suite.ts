/** The season over thirty years: ours against the bare loop, whose season of a year is run without its kept rain, as ours is. */
import { runThrough } from '../../src/engine/run-through.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import { gardenInYear, yearSeasons } from '../../src/engine/years/year-seasons.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { Bare } from './bare/bare.ts';
import { hold } from './contest.ts';
import { benchGarden } from './gardens.ts';
import type { Outcome, Suite } from './outcome.ts';

const ZONES = 50;
const YEARS = 30;

export const yearsSuite: Suite = { name: 'years', outcomes };

function* outcomes(): Generator<Outcome> {
  const season = thirtyYears(runSeason(gardenOf(benchGarden(ZONES))));
  const bares = Array.from({ length: YEARS }, (_, year) => new Bare(gardenInYear(season, year)));
  for (const bare of bares) bare.run();
  yield hold({
    name: `${YEARS} years, ${ZONES} zones`,
    ours: { run: () => runThrough(yearSeasons(season)), warmUps: 3, rounds: 9 },
    // Rain of the first week, as it may have been: every week after it is run again.
    limit: { run: () => bares.map((bare, year) => bare.setRain(0, year)), warmUps: 3, rounds: 9 },
    asked: { oursMs: 500 },
  });
}

/** The first thirty of the years that are made. */
function thirtyYears(season: Season): Season {
  const { days, rainMm, etoShare, basis, years: all } = season.weather.years();
  const isOfFirst = (_: number, at: number) => at % all < YEARS;
  const years = {
    ...{ basis, days, years: YEARS },
    rainMm: rainMm.filter(isOfFirst),
    etoShare: etoShare.filter(isOfFirst),
  };
  return { ...season, weather: { ...season.weather, years: () => years } };
}
