/** What undo calls a remedy. */
import { type Quantity, type UnitSystem, unitOf } from '../../engine/units.ts';
import { shortText } from '../../plan/words/short-text.ts';

/** A value of the plan with its unit: `0.6 gph`. */
export function inUnits(value: number, quantity: Quantity, units: UnitSystem): string {
  return `${value} ${unitOf(quantity, units).name}`;
}

export function ofPlanting(name: string, what: string): string {
  return `${shortText(name)}: ${what}`;
}

export const DOUBLED = 'a second line beside the first';

export function laidAgain(layout: 'rows' | 'loops', count: number): string {
  const one = layout === 'rows' ? 'row' : 'loop';
  return `${count} ${one}${count === 1 ? '' : 's'} of line${layout === 'loops' ? ' round each plant' : ''}`;
}

export const SHUT_OFF = 'a shut-off in front of it';

export function moved(names: readonly string[], zone: string): string {
  return `${names.map((name) => shortText(name)).join(', ')} to ${shortText(zone)}`;
}
