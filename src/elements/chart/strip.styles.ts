import { css, unsafeCSS } from 'lit';
import { TONES, toneDeclarations } from '../../look/tones.ts';

const tones = unsafeCSS(
  Array.from(
    { length: TONES },
    (_, tone) => `.tone-${tone} { fill: ${tone === 0 ? 'var(--_blank)' : `var(--runnel-tone-${tone})`}; }`,
  ).join('\n'),
);

/**
 * `--_lead`: as wide as what stands before the weeks of the sheet, so that tiles and weeks begin at one edge.
 * `.tiles`: drawn left to right, and turned where the page runs the other way; likewise what `strip-curves.styles.ts` has.
 */
export const stripStyles = css`
  .strip {
    print-color-adjust: exact;
    ${unsafeCSS(toneDeclarations)}
    display: block;
  }

  header {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.5rem;
    align-items: baseline;
    justify-content: space-between;
  }

  h2 {
    font-size: calc(var(--_size) * 1.07);
    line-height: 1.45;
  }

  .lines {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1rem;
  }

  .line {
    padding-inline-end: 8px;
    font-size: var(--_size-small);
  }

  .line::before {
    display: inline-block;
    inline-size: 22px;
    margin-inline-end: 6px;
    border-block-start: 2px solid var(--_ink);
    vertical-align: 4px;
    content: '';
  }

  .line.meter::before {
    border-block-start: 2px dotted var(--_water);
  }

  b {
    font-weight: 650;
  }

  .plot {
    --_lane: clamp(6px, calc(var(--runnel-strip-lanes, 112px) / var(--_lanes)), 13px);
    position: relative;
    margin-inline-start: var(--_lead, var(--runnel-strip-lead, 10.5rem));
  }

  .months {
    position: relative;
    overflow-x: clip;
    block-size: 18px;
    border-block-start: 1px solid var(--_ink);
    color: var(--_quiet);
    font-size: 11px;
    line-height: 18px;
  }

  .months span {
    position: absolute;
    padding-inline-start: 4px;
    border-inline-start: 1px solid var(--_quiet);
    line-height: 12px;
  }

  .lanes {
    position: relative;
    touch-action: pan-y;
    cursor: pointer;
  }

  .tiles {
    overflow: hidden;
    block-size: calc(var(--_lane) * var(--_lanes));
  }

  .tiles path {
    stroke: var(--_paper);
    stroke-width: 1px;
    vector-effect: non-scaling-stroke;
  }

  .tiles .closed {
    fill: url('#closed');
  }

  .tiles .hatch {
    stroke: var(--_quiet);
  }

  .tiles .pips {
    fill: var(--_short);
  }

  ${tones}

  ol {
    position: absolute;
    inset-block: 0;
    inset-inline-end: calc(100% + 8px);
    max-inline-size: var(--_lead, var(--runnel-strip-lead, 10.5rem));
  }

  li {
    overflow: hidden;
    block-size: var(--_lane);
    font-size: 11px;
    line-height: var(--_lane);
    text-align: end;
    text-overflow: ellipsis;
    white-space: nowrap;
  }

  .frame {
    position: absolute;
    box-sizing: border-box;
    margin: -1px;
    border: 2px solid var(--_ink);
    border-radius: 2px;
    box-shadow: inset 0 0 0 1px var(--_paper);
    cursor: grab;
    touch-action: none;
  }

  .frame:active {
    cursor: grabbing;
  }

  .frame::after {
    position: absolute;
    inset-block-end: -6px;
    inset-inline-start: calc(50% - 16px);
    inline-size: 32px;
    block-size: 8px;
    border-radius: 4px;
    background: var(--_ink);
    box-shadow: 0 0 0 1px var(--_paper);
    content: '';
  }

  .frame:focus-visible {
    outline: 2px solid var(--_ink);
    outline-offset: 3px;
  }

  .now,
  .pointed {
    position: absolute;
    inset-block: 0;
    pointer-events: none;
  }

  .pointed {
    border: solid color-mix(in oklab, var(--_ink) 50%, transparent);
    border-width: 0 1px;
  }

  .now::before {
    position: absolute;
    inset-block: 0 calc(100% - var(--runnel-chart-height, 6rem));
    border-inline-start: 1px solid var(--_ink);
    content: '';
  }

  .now::after {
    position: absolute;
    inset-block: calc(var(--runnel-chart-height, 6rem) + 19px) 0;
    inset-inline: -1px 0;
    border: solid var(--_ink);
    border-width: 0 1px;
    content: '';
  }

  .now b {
    position: absolute;
    inset-block-start: calc(var(--runnel-chart-height, 6rem) + 1px);
    padding-inline: 6px;
    background: var(--_ink);
    color: var(--_paper);
    font-size: 11px;
    font-weight: 400;
    line-height: 17px;
    white-space: nowrap;
  }

  @media print {
    .frame,
    .now,
    .pointed {
      display: none;
    }
  }

  @media (forced-colors: active) {
    .strip {
      forced-color-adjust: none;
    }
  }
`;
