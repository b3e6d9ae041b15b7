import { css, unsafeCSS } from 'lit';
import { visuallyHidden } from '../../look/visually-hidden.ts';

/** The controls above the sheet and its key, which may stand elsewhere in the page. */
export const toolsStyles = css`
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
    min-block-size: 28px;
    margin: 0;
    padding-block: 0;
    padding-inline: 0.6rem;
    border: 1px solid var(--_line);
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
    flex-wrap: wrap;
    min-inline-size: 0;
    margin: 0;
    padding: 0;
    border: 1px solid var(--_line);
    border-radius: 0.4rem;
  }

  .runnel-grid__measures legend {
    ${unsafeCSS(visuallyHidden)}
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
    min-block-size: 26px;
    padding-inline: 0.6rem;
  }

  .runnel-grid__measures :checked + span {
    background: var(--_blank);
    box-shadow: inset 0 -2px 0 var(--_ink);
    font-weight: 650;
  }

  .runnel-grid__measures :focus-visible + span,
  .runnel-grid__tools :is(button, select, summary, input):focus-visible {
    outline: 2px solid var(--_ink);
    outline-offset: 2px;
  }

  .runnel-grid__more {
    min-inline-size: 0;
  }

  .runnel-grid__more summary {
    inline-size: fit-content;
    color: var(--_ink);
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

  .runnel-planner__tools .runnel-grid__more {
    position: relative;
    flex-basis: auto;
  }

  .runnel-planner__tools .runnel-grid__more > div {
    position: absolute;
    z-index: 210;
    inset-block-start: 100%;
    inset-inline-end: 0;
    padding: 0.6rem 0.75rem;
    inline-size: max-content;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
    background: var(--_paper);
  }

  .runnel-grid__key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.15rem 0.9rem;
    align-items: center;
    margin: 0;
    padding: 0;
    color: var(--_quiet);
    font-size: calc(var(--_size) * 0.8);
    list-style: none;
  }

  .runnel-grid__key li {
    display: flex;
    gap: 0.3rem;
    align-items: center;
    white-space: nowrap;
  }

  .runnel-grid__key .runnel-key__ground {
    flex-wrap: wrap;
  }

  .runnel-key__tones {
    display: flex;
    flex-wrap: wrap;
  }

  .runnel-key__tones span {
    min-inline-size: 1.6rem;
    padding-inline: 0.3rem;
    color: var(--_ink);
    line-height: 1.5;
    text-align: center;
  }

  .runnel-key__sign {
    display: inline-block;
    box-sizing: border-box;
    inline-size: 18px;
    block-size: 18px;
  }

  .runnel-key__closed,
  .runnel-key__by-hand,
  .runnel-key__run,
  .runnel-key__noted {
    border: 1px solid var(--_line);
  }

  @media print {
    .runnel-grid__tools,
    .runnel-grid__key {
      display: none;
    }
  }

  @media (pointer: coarse) {
    .runnel-grid__tools :is(button, select, input[type='search'], summary),
    .runnel-grid__measures span {
      min-block-size: 2.75rem;
    }
  }

  @media (forced-colors: active) {
    .runnel-grid__key .runnel-key__ground {
      display: none;
    }

    .runnel-key__sign {
      forced-color-adjust: none;
    }

    .runnel-grid__measures :checked + span {
      background: Highlight;
      color: HighlightText;
      forced-color-adjust: none;
    }
  }
`;
