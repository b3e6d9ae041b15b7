import { css } from 'lit';

/** Of the curves of a strip, their scale and names, and the lane of what the supply has. */
export const stripCurvesStyles = css`
  .strip {
    --_rain-area: color-mix(in oklab, var(--_rain) 30%, var(--_paper));
    --_hatch: repeating-linear-gradient(
      -45deg,
      transparent 0 4px,
      color-mix(in oklab, var(--_quiet) 55%, transparent) 4px 5px
    );
    container: runnel-strip / inline-size;
  }

  .curves {
    position: relative;
    block-size: var(--runnel-chart-height, 6rem);
  }

  svg {
    display: block;
    inline-size: 100%;
    overflow: visible;
  }

  :host(:dir(rtl)) :is(svg, .rest) {
    scale: -1 1;
  }

  .areas,
  .rest {
    position: absolute;
    inset: 0;
    block-size: 100%;
  }

  .rest {
    background: var(--_hatch);
  }

  .areas path {
    fill: none;
    stroke-linejoin: round;
    vector-effect: non-scaling-stroke;
  }

  .areas .rain {
    fill: var(--_rain-area);
  }

  .areas .kept {
    fill: var(--runnel-tone-3);
  }

  .areas .tick {
    stroke: color-mix(in oklab, var(--_ink) 14%, transparent);
    stroke-width: 1px;
  }

  .areas .top {
    stroke: var(--_quiet);
    stroke-width: 1px;
  }

  .areas .demand {
    stroke: var(--_ink);
    stroke-width: 2px;
  }

  .areas .short {
    stroke: var(--_short);
    stroke-width: 4.5px;
  }

  .areas .allowance {
    stroke: var(--_ink);
    stroke-dasharray: 6 4;
    stroke-width: 1px;
  }

  .areas .meter {
    stroke: var(--_water);
    stroke-dasharray: 2 3;
    stroke-width: 2px;
  }

  .label.allowance {
    z-index: 1;
    inset-inline: 5px auto;
    translate: 0 calc(100% + 2px);
  }

  .reserve {
    position: relative;
    margin-block-start: 4px;
    background: var(--_blank);
  }

  .reserve svg {
    block-size: 14px;
    forced-color-adjust: none;
  }

  :is(.reserve, .scale) span {
    position: absolute;
    inset-inline-end: calc(100% + 8px);
    font-size: 11px;
    white-space: nowrap;
  }

  .reserve span {
    line-height: 14px;
  }

  .reserve .within {
    fill: var(--runnel-tone-3);
  }

  .reserve .beyond {
    fill: var(--_short);
  }

  .scale span {
    color: var(--_quiet);
    line-height: 1;
    translate: 0 50%;
  }

  .label {
    position: absolute;
    inset-inline-end: 5px;
    padding: 1px 3px;
    font-size: 12px;
    line-height: 1;
    white-space: nowrap;
    translate: 0 50%;
  }

  /* Lines pass behind a name, and never through it. */
  .label:is(.allowance, .notKept) {
    background: var(--_paper);
  }

  /* No scrap of the area shows beyond its name. */
  .label.notKept {
    inset-inline-end: 0;
    padding-inline-end: 8px;
  }

  .label.kept {
    background: var(--runnel-tone-3);
  }

  .label.rain {
    background: var(--_rain-area);
  }

  /* Where areas are narrower than their names, these stand above with a sample. */
  .line.area {
    display: none;
  }

  .line.area::before {
    inline-size: 12px;
    block-size: 10px;
    border: 0;
    background: var(--runnel-tone-3);
    vertical-align: -1px;
  }

  .line.rain::before {
    background: var(--_rain-area);
  }

  .line.notKept::before {
    box-sizing: border-box;
    border: 1px solid var(--_quiet);
    background: var(--_hatch);
  }

  @container runnel-strip (max-width: 36rem) {
    .line {
      padding-inline-end: 0;
      font-size: 12px;
    }

    .line.area {
      display: block;
    }

    .labels,
    .now b {
      display: none;
    }
  }
`;
