import 'axe-core';
import type * as axe from 'axe-core';

declare global {
  interface Window {
    /** The library has no export in native modules; it puts itself here. */
    readonly axe: typeof axe;
  }
}

/**
 * What axe reports about an element and all inside it, a line each. `known` names rules that are known to fail there, each with
 * the selector of what it may fail on.
 */
export async function accessibilityFaults(
  element: Element,
  known: Readonly<Record<string, string>> = {},
): Promise<readonly string[]> {
  const { violations } = await window.axe.run(element, { rules: { region: { enabled: false } } });
  return violations.flatMap(({ id, nodes }) =>
    nodes
      .map((node) => node.target.flat().join(' '))
      .filter((target) => known[id] === undefined || !document.querySelector(target)?.matches(known[id]))
      .map((target) => `${id}: ${target}`),
  );
}
