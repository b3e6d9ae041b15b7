import { css } from 'lit';
import { forcedTokenRules, tokenRules } from '../../look/tokens.styles.ts';

/**
 * The grid lies in light DOM: its rules name its own element and classes and nothing else.
 *
 * `runnel-grid`: a height that fits a screen would cut the paper.
 * `.runnel-grid__key .runnel-key__ground`: in forced colours cells have no grounds.
 */
export const gridStyles = css`
  runnel-grid {
    ${tokenRules}
    display: flex;
    flex-direction: column;
    gap: 0.5rem;
    box-sizing: border-box;
    min-inline-size: 0;
    background: var(--_paper);
    color: var(--_ink);
    font-family: var(--_font);
    font-size: var(--_size);
    font-variant-numeric: tabular-nums lining-nums;
    line-height: 1.45;
    text-align: start;
  }

  runnel-grid[hidden] {
    display: none;
  }

  .runnel-grid__tools {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 0.75rem;
    align-items: center;
  }

  .runnel-grid__tools :is(button, select, input[type='search']) {
    display: inline-block;
    box-sizing: border-box;
    inline-size: auto;
    max-inline-size: 100%;
    block-size: auto;
    min-block-size: max(2rem, 28px);
    margin: 0;
    padding-block: 0;
    padding-inline: 0.6rem;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
    background: var(--_paper);
    color: var(--_ink);
    font: inherit;
    letter-spacing: inherit;
    text-transform: inherit;
  }

  .runnel-grid__tools :is(button, select, summary) {
    cursor: pointer;
  }

  .runnel-grid__measures {
    display: flex;
    min-inline-size: 0;
    margin: 0;
    padding: 0;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
  }

  .runnel-grid__measures legend {
    position: absolute;
    overflow: hidden;
    inline-size: 1px;
    block-size: 1px;
    clip-path: inset(50%);
    white-space: nowrap;
  }

  .runnel-grid__measures label {
    position: relative;
    display: grid;
    cursor: pointer;
  }

  .runnel-grid__measures input {
    position: absolute;
    inset: 0;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }

  .runnel-grid__measures span {
    display: grid;
    align-items: center;
    box-sizing: border-box;
    min-block-size: calc(2rem - 2px);
    padding-inline: 0.6rem;
    border-radius: 0.3rem;
  }

  .runnel-grid__measures :checked + span {
    background: var(--_ink);
    color: var(--_paper);
  }

  .runnel-grid__measures :focus-visible + span,
  .runnel-grid__tools :is(button, select, summary, input):focus-visible {
    outline: 2px solid var(--_water);
    outline-offset: 2px;
  }

  .runnel-grid__more summary {
    inline-size: fit-content;
    color: var(--_water);
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.2em;
  }

  .runnel-grid__more > div {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1rem;
    align-items: center;
    padding-block-start: 0.4rem;
  }

  .runnel-grid__more[open] {
    flex-basis: 100%;
  }

  .runnel-grid__box {
    flex: 0 1 auto;
    overflow: hidden;
    min-block-size: 11rem;
    block-size: var(--_full);
    max-block-size: var(--runnel-grid-height, 75vh);
  }

  .runnel-grid__waiting {
    max-inline-size: 42rem;
    margin: 0;
    padding: 0.75rem 1rem;
    border-inline-start: 4px solid var(--_water);
  }

  .runnel-grid__waiting p {
    margin-block: 0 0.5rem;
  }

  .runnel-grid__key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.15rem 1rem;
    align-items: center;
    margin: 0;
    padding: 0;
    color: var(--_quiet);
    font-size: var(--_size-small);
    list-style: none;
  }

  .runnel-grid__key li {
    display: flex;
    gap: 0.35rem;
    align-items: center;
    white-space: nowrap;
  }

  .runnel-key__tones {
    display: flex;
    border: 1px solid var(--_line);
  }

  .runnel-key__tones i {
    inline-size: 0.8rem;
    block-size: 0.8rem;
  }

  .runnel-key__sign {
    display: inline-block;
    box-sizing: border-box;
    inline-size: 20px;
    block-size: 20px;
  }

  .runnel-key__closed,
  .runnel-key__by-hand,
  .runnel-key__run,
  .runnel-key__noted {
    border: 1px solid var(--_line);
  }

  .runnel-grid__tools option,
  .runnel-key span {
    unicode-bidi: plaintext;
  }

  .runnel-grid__print {
    display: none;
  }

  @media print {
    runnel-grid {
      block-size: auto !important;
    }

    .runnel-grid__tools,
    .runnel-grid__box,
    .runnel-grid__key {
      display: none;
    }

    .runnel-grid__print {
      display: block;
      font-size: 8pt;
      line-height: 1.25;
    }

    .runnel-grid__print table {
      display: table !important;
      overflow: visible !important;
      inline-size: 100%;
      max-inline-size: none !important;
      margin: 0 0 1rem !important;
      border-collapse: collapse !important;
    }

    .runnel-grid__print :is(table, thead, tbody, tr, th, td) {
      float: none !important;
      max-inline-size: none !important;
    }

    .runnel-grid__print thead {
      display: table-header-group !important;
    }

    .runnel-grid__print tbody {
      display: table-row-group !important;
    }

    .runnel-grid__print tr {
      display: table-row !important;
      break-inside: avoid;
    }

    .runnel-grid__print :is(th, td) {
      display: table-cell !important;
      inline-size: auto !important;
      padding: 1pt 3pt;
      border-block-end: 0.5pt solid currentcolor;
      text-align: end;
      vertical-align: top;
    }

    .runnel-grid__print th {
      font-weight: 400;
    }

    .runnel-grid__print th:first-child {
      text-align: start;
    }

    .runnel-print-planting th:first-child {
      padding-inline-start: 10pt;
    }
  }

  @media (pointer: coarse) {
    .runnel-grid__tools :is(button, select, input[type='search'], summary),
    .runnel-grid__measures span {
      min-block-size: 2.75rem;
    }
  }

  @media (forced-colors: active) {
    runnel-grid {
      ${forcedTokenRules}
    }

    .runnel-grid__key .runnel-key__ground {
      display: none;
    }

    .runnel-key__sign,
    .runnel-grid__measures :checked + span {
      forced-color-adjust: none;
    }
  }
`;
