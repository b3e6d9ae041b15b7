import { fromSi, type UnitSystem } from '../../../engine/units.ts';
import { MOST_IN_A_DAY_MM } from '../../../plan/packed-days.ts';
import { boundsOf } from '../../../plan/schema/quantity.ts';
import { areMisprints } from '../misread.ts';

const SYSTEMS: readonly UnitSystem[] = ['us', 'metric'];

/**
 * The only unit system in which a file's figures are physically possible: a summer of 71 degrees is none of °C. Undefined where both
 * are, or neither. `element`: TMAX, TMIN or PRCP; others do not count.
 */
export function unitsBySize(
  figures: readonly { readonly element: string; readonly text: string }[],
): UnitSystem | undefined {
  const possible = SYSTEMS.filter((system) => {
    const [low, high] = boundsOf('temperature', system);
    const most = fromSi(MOST_IN_A_DAY_MM.rain, 'depth', system);
    const isPossible = (element: string, value: number) =>
      element === 'PRCP' ? value >= 0 && value <= most : value >= low && value <= high;
    return ['PRCP', 'TMAX', 'TMIN'].every((element) => {
      const values = figures
        .filter((figure) => figure.element === element && figure.text !== '')
        .map(({ text }) => Number(text));
      const impossible = values.filter((value) => !Number.isNaN(value) && !isPossible(element, value)).length;
      return areMisprints(impossible, values.length);
    });
  });
  return possible.length === 1 ? possible[0] : undefined;
}
