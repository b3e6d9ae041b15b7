/** The whole garden's week or season: gallons and minutes of all zones together. */
import type { GardenTotal } from '../totals/garden-total.ts';
import { type FigureFace, figureClass } from './cell-face.ts';
import type { Reading } from './reading.ts';

export function totalFace(total: GardenTotal, { measure, format }: Reading): FigureFace {
  const one = {
    volume: format.volume(total.litres),
    minutes: format.minutes(total.minutes),
    rain: format.volume(total.savedLitres),
  };
  return {
    kind: 'figure',
    main: measure === 'all' ? one.volume : one[measure],
    lines: measure === 'all' ? [`${one.minutes} min`] : [],
    className: figureClass(measure, 'total'),
  };
}
