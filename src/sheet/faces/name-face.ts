/** The first column: what a row is, and a little about it. */
import type { GardenPlanting } from '../../engine/garden.ts';
import { rowName } from '../cell-name.ts';
import { NO_BREAK } from '../sheet-format.ts';
import type { SheetRow } from '../sheet-row.ts';
import { wateringDayCount } from '../watering-days.ts';
import { classNames, type NameFace } from './cell-face.ts';
import type { Reading } from './reading.ts';

export function nameFace(row: SheetRow, { measure, format }: Reading): NameFace {
  const className = classNames('name', row.kind, measure !== 'all' && 'low');
  switch (row.kind) {
    case 'eto':
    case 'rain':
      return { kind: 'name', name: rowName(row), detail: format.depthUnit, className };
    case 'total':
      return { kind: 'name', name: rowName(row), detail: totalUnits(measure, format.volumeUnit), className };
    case 'planting':
      return { kind: 'name', name: row.planting.planting.name, detail: kindOf(row.planting.planting), className };
    case 'zone': {
      const { name, plantings } = row.zone.zone;
      const days = wateringDayCount(row.zone.zone);
      const isOpen = plantings.length > 0 ? row.isOpen : undefined;
      return {
        kind: 'name',
        name,
        detail: `${days}${NO_BREAK}${days === 1 ? 'day' : 'days'} a${NO_BREAK}week`,
        className,
        isOpen,
      };
    }
  }
}

function kindOf({ coefficient, hasShutOff }: GardenPlanting): string {
  return hasShutOff ? `${coefficient.label}, shut-off` : coefficient.label;
}

function totalUnits(measure: Reading['measure'], volumeUnit: string): string {
  if (measure === 'minutes') return 'min';
  return measure === 'rain' ? `${volumeUnit} saved by rain` : volumeUnit;
}
