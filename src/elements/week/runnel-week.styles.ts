import { css } from 'lit';

/**
 * One column on a phone, two where there is room.
 */
export const weekStyles = css`
  :host {
    container: runnel-week / inline-size;
  }

  header {
    display: grid;
    gap: 0.1rem;
  }

  h2 {
    font-size: calc(var(--_size) * 1.75);
    font-weight: 700;
    line-height: 1.15;
  }

  h2:focus {
    outline: none;
  }

  h3 {
    font-size: calc(var(--_size) * 1.25);
    line-height: 1.25;
  }

  section {
    margin-block-start: 1.1rem;
  }

  .head {
    display: flex;
    flex-wrap: wrap;
    gap: 0.1rem 1rem;
    align-items: baseline;
    justify-content: space-between;
  }

  .head > button {
    flex: none;
    align-self: center;
  }

  .one-line {
    flex-wrap: nowrap;
  }

  .told {
    margin-block-start: 0.75rem;
    padding: 0.5rem 0.75rem;
    border-inline-start: 3px solid var(--_ink);
  }

  button.plain {
    color: var(--_ink);
  }

  button {
    min-block-size: 2.75rem;
    border-color: var(--_ink);
    border-radius: 0.55rem;
    background: var(--_blank);
    font-weight: 600;
  }

  button.plain {
    min-block-size: 2rem;
    background: none;
    font-weight: 400;
  }

  .wide {
    inline-size: 100%;
    min-block-size: 3.25rem;
    margin-block-start: 0.6rem;
  }

  .wide .quiet {
    font-size: var(--_size-small);
    font-weight: 400;
  }

  .wide + .small {
    margin-block-start: 0.4rem;
  }

  .primary,
  .primary .quiet {
    background: var(--_ink);
    color: var(--_paper);
  }

  @media (forced-colors: active) {
    .primary,
    .segments [aria-pressed='true'] {
      forced-color-adjust: none;
    }
  }

  .runs > li {
    display: grid;
    grid-template-columns: 1.25rem minmax(0, 1fr) auto;
    align-items: center;
    padding-block: 0.5rem;
    border-block-end: 1px solid var(--_line);
  }

  .station {
    align-self: start;
    padding-block-start: 0.05rem;
  }

  .zone {
    margin-inline-end: 0.35rem;
    font-size: calc(var(--_size) * 1.07);
  }

  .run {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.8rem;
    align-items: baseline;
    line-height: 1.2;
  }

  .minutes {
    color: var(--_water);
    font-size: calc(var(--_size) * 1.75);
    font-weight: 700;
    white-space: nowrap;
  }

  .start {
    font-size: calc(var(--_size) * 1.07);
  }

  .ticked .minutes {
    color: var(--_quiet);
    font-weight: 400;
  }

  .tick {
    display: grid;
    place-items: center;
    inline-size: 3.25rem;
    block-size: 3.5rem;
    padding: 0;
    border: 0;
    background: none;
  }

  .tick .box {
    inline-size: 2.5rem;
    border-width: 2px;
    border-radius: 0.6rem;
  }

  .held,
  .tonight {
    margin-block-start: 0.75rem;
  }

  .steps {
    display: flex;
    gap: 0.5rem;
    margin-block-start: 0.6rem;
  }

  .steps button {
    flex: 1;
    border-color: var(--_line);
    font-weight: 400;
  }

  .cautions {
    display: grid;
    gap: 0.35rem;
    margin-block-start: 1.5rem;
    padding-block-start: 0.75rem;
    border-block-start: 1px solid var(--_line);
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .cautions h3 {
    font-size: inherit;
  }

  .cautions ul {
    display: grid;
    gap: 0.25rem;
  }

  @container runnel-week (min-width: 52rem) {
    .sides {
      display: grid;
      grid-template-columns: minmax(0, 24rem) minmax(0, 36rem);
      grid-template-rows: auto 1fr;
      gap: 0 3.5rem;
    }

    .sides > :first-child {
      grid-row: span 2;
    }

    .beside {
      grid-column: 2;
    }

    .row {
      grid-template-columns: minmax(0, 1fr) repeat(7, 2.5rem);
    }
  }

  @container runnel-week (min-width: 84rem) {
    .sides {
      grid-template-columns: minmax(0, 24rem) minmax(0, 36rem) minmax(0, 20rem);
      gap: 0 2.5rem;
    }

    .beside {
      grid-column: 3;
      grid-row: 1;
      padding-block-start: 1.1rem;
    }

    .beside .wide {
      padding-inline: 0.4rem;
    }

    .beside .cautions {
      margin-block-start: 1rem;
      border-block-start: 0;
    }
  }

  @media print {
    button:not(.cell, .tick),
    .forecast,
    .weather {
      display: none;
    }

    li,
    .row {
      break-inside: avoid;
    }
  }
`;
