import { css } from 'lit';

/**
 * `.swatch:not([hidden])`: each wears its colour, from which the drawing takes it; the moment's transition tells
 * when the colour changes.
 * `.on-paper`: between the page's beforeprint and afterprint. A colour that glides would be read while it is still
 * the screen's.
 */
export const chartStyles = css`
  .chart {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.5rem;
  }

  header {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1.5rem;
    align-items: baseline;
    justify-content: space-between;
  }

  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1rem;
  }

  .choices label {
    display: inline-flex;
    gap: 0.35rem;
    align-items: center;
    min-block-size: 1.5rem;
    cursor: pointer;
  }

  .choices input {
    margin: 0;
    accent-color: var(--_ink);
  }

  .choices :disabled + span {
    color: var(--_quiet);
  }

  .years {
    margin: 0;
  }

  .years select {
    max-inline-size: 100%;
    font: inherit;
  }

  .swatch.band {
    color: color-mix(in srgb, var(--_water) 22%, transparent);
    border-block: 1px solid var(--_water);
    background: currentcolor;
  }

  .plot {
    position: relative;
    block-size: var(--runnel-chart-height, 15rem);
    min-inline-size: 0;
    font-size: var(--_size-small);
    cursor: crosshair;
    touch-action: pan-y;
  }

  canvas {
    direction: ltr;
    max-inline-size: 100%;
  }

  .reading {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.75rem;
    align-items: baseline;
  }

  .moment {
    font-weight: 650;
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.75rem;
    margin: 0;
  }

  .key > div {
    display: flex;
    gap: 0.5rem;
    align-items: baseline;
  }

  dt {
    display: inline-flex;
    gap: 0.4rem;
    align-items: baseline;
    color: var(--_quiet);
  }

  dd {
    white-space: nowrap;
  }

  @media (max-width: 40rem) {
    .key {
      display: grid;
      flex: 1 1 100%;
      grid-template-columns: repeat(auto-fill, minmax(6.75rem, 1fr));
    }

    .key > div {
      display: block;
    }
  }

  h2 .swatch {
    inline-size: 1.3em;
    margin-inline-end: 0.5rem;
  }

  .swatch:not([hidden]) {
    display: inline-block;
  }

  .swatch {
    flex: none;
    inline-size: 1.1em;
    block-size: 0.75em;
    border: 1px solid currentcolor;
    color: var(--_line);
    transition: color 1ms;
    forced-color-adjust: none;
  }

  .swatch.demand {
    block-size: 0;
    margin-block-end: 0.25em;
    border-width: 0 0 3px;
    color: var(--_ink);
  }

  .swatch:is(.meter, .bound) {
    block-size: 0;
    margin-block-end: 0.25em;
    border-width: 0 0 3px;
    border-style: dotted;
    color: var(--_water);
  }

  .swatch.bound {
    border-block-end-width: 2px;
    border-style: dashed;
    color: var(--_ink);
  }

  .swatch.rest {
    background: repeating-linear-gradient(135deg, currentcolor 0 1.5px, transparent 1.5px 4px);
    color: var(--_quiet);
  }

  .swatch.short {
    background: repeating-linear-gradient(135deg, currentcolor 0 1.5px, transparent 1.5px 4px);
    color: var(--_short);
  }

  .swatch.soil {
    background: repeating-linear-gradient(
      color-mix(in srgb, currentcolor 12%, transparent) 0 2px,
      color-mix(in srgb, currentcolor 55%, transparent) 2px 3px
    );
    color: var(--_quiet);
  }

  .swatch.irrigation {
    background: color-mix(in srgb, currentcolor 50%, transparent);
    color: var(--_water);
  }

  .swatch.rain {
    background:
      radial-gradient(currentcolor 0.8px, transparent 1px) 0 0 / 4px 4px,
      color-mix(in srgb, currentcolor 18%, transparent);
    color: var(--_rain);
  }

  .scroll {
    overflow: auto;
    max-block-size: 22rem;
    margin-block-start: 0.5rem;
  }

  caption {
    padding-block-end: 0.35rem;
    color: var(--_quiet);
    text-align: start;
  }

  thead th {
    position: sticky;
    inset-block-start: 0;
    background: var(--_paper);
  }

  tbody th {
    font-weight: inherit;
  }

  tbody tr {
    border-block-start: 1px solid var(--_line);
  }

  tr.selected {
    background: color-mix(in oklab, var(--_ink) 12%, var(--_paper));
  }

  .on-paper {
    color-scheme: light;
  }

  .on-paper .swatch {
    transition: none;
  }

  .on-paper .plot {
    block-size: auto;
  }

  @media print {
    :host {
      break-inside: avoid;
    }

    details:not([open]),
    summary,
    .choices {
      display: none;
    }

    .scroll {
      overflow: visible;
      max-block-size: none;
    }
  }
`;
