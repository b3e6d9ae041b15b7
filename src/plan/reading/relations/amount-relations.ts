/** Numbers that must agree with one another: in the climate, in a day's weather, in the supply. */
import type { Finding, Path } from '../finding.ts';
import { fieldsIn, listIn, numberIn } from '../loose.ts';

export function climateRelations(climate: unknown, at: Path): readonly Finding[] {
  const { eto, minTemperature, maxTemperature } = fieldsIn(climate);
  const findings: Finding[] = listIn(minTemperature).flatMap((low, month) =>
    atMost(low, listIn(maxTemperature)[month], [...at, 'minTemperature', month], 'the highest of its month'),
  );
  if (eto === undefined && (minTemperature === undefined || maxTemperature === undefined)) {
    const expected = 'reference ET by month, or else both the lowest and the highest temperature by month';
    findings.push({ path: [...at, 'eto'], value: eto, expected });
  }
  return findings;
}

export function dayRelations(day: unknown, at: Path): readonly Finding[] {
  const { minTemperature, maxTemperature, minHumidityPercent, maxHumidityPercent } = fieldsIn(day);
  return [
    ...atMost(minTemperature, maxTemperature, [...at, 'minTemperature'], 'the highest of the day'),
    ...atMost(minHumidityPercent, maxHumidityPercent, [...at, 'minHumidityPercent'], 'the highest of the day'),
  ];
}

export function supplyRelations(supply: unknown, at: Path): readonly Finding[] {
  const { tank, sources } = fieldsIn(supply);
  const { start, capacity } = fieldsIn(tank);
  const days = listIn(sources).map((source) => fieldsIn(source)['from']);
  return [
    ...atMost(start, capacity, [...at, 'tank', 'start'], 'what the tank holds'),
    ...days.flatMap((from, place): readonly Finding[] => {
      if (days.indexOf(from) === place) return [];
      const expected = `a day of its own: source ${days.indexOf(from) + 1} serves from ${from === undefined ? 'the first day' : 'that day'} too`;
      return [{ path: [...at, 'sources', place, 'from'], value: from, expected }];
    }),
  ];
}

function atMost(value: unknown, most: unknown, path: Path, what: string): readonly Finding[] {
  const [low, high] = [numberIn(value), numberIn(most)];
  if (low === undefined || high === undefined || low <= high) return [];
  return [{ path, value, expected: `at most ${what}, ${high}` }];
}
