import type { ChartColours } from './chart-options.ts';

/** The chart's colours as the page resolves them now. Custom properties do not say; the key's swatches wear them. */
export function readColours(root: HTMLElement | DocumentFragment): ChartColours {
  const colourOf = (name: string): string => {
    const swatch = root.querySelector(`.swatch.${name}`);
    return swatch === null ? 'currentcolor' : getComputedStyle(swatch).color;
  };
  return {
    ink: colourOf('demand'),
    quiet: colourOf('soil'),
    line: colourOf('line'),
    water: colourOf('irrigation'),
    rain: colourOf('rain'),
    short: colourOf('short'),
    rest: colourOf('rest'),
    band: colourOf('band'),
  };
}
