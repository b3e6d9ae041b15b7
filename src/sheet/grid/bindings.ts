import type Handsontable from 'handsontable/base';
import type { SeasonBinding } from './season-binding.ts';

const bindings = new WeakMap<object, SeasonBinding>();

/** The season that a grid is bound to. */
export function bindingOf(hot: object): SeasonBinding | undefined {
  return bindings.get(hot);
}

export function setBinding(hot: Handsontable.Core, binding: SeasonBinding | undefined): void {
  if (binding === undefined) bindings.delete(hot);
  else bindings.set(hot, binding);
}
