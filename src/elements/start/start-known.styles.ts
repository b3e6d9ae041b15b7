import { css } from 'lit';

/** What stands beside the steps, at their foot, at their beginning and at their end. */
export const startKnownStyles = css`
  .known {
    display: grid;
    gap: 0.4rem;
    min-inline-size: 0;
  }

  .finding {
    margin: 0;
    font-size: var(--_size-large);
    line-height: 1.2;
    text-wrap: balance;
  }

  .strip {
    display: block;
    inline-size: 100%;
    block-size: auto;
  }

  .strip text {
    fill: var(--_ink);
    font-size: 12px;
  }

  .strip :is(.month, .when, .flow) {
    font-size: 11px;
  }

  .strip :is(.month, .when) {
    fill: var(--_quiet);
  }

  .strip .when {
    text-anchor: middle;
  }

  .strip .unknown {
    fill: none;
    stroke: var(--_line);
    stroke-dasharray: 3 3;
  }

  .strip .part {
    overflow: visible;
  }

  .strip :is(.source-band, .source-guess) {
    fill: color-mix(in oklab, var(--_water) 25%, var(--_paper));
    stroke: var(--_water);
  }

  .strip .days-run {
    stroke: var(--_water);
  }

  .strip .source-guess {
    stroke-dasharray: 3 3;
  }

  .strip .days-run.is-guess {
    opacity: 0.8;
  }

  .strip .lack {
    fill: var(--_short);
  }

  .strip .eto-name {
    fill: var(--_growth);
  }

  .strip .rain-name {
    fill: var(--_rain);
  }

  .strip .rain {
    fill: var(--_rain);
    opacity: 0.55;
  }

  .strip .eto {
    fill: none;
    stroke: var(--_growth);
    stroke-width: 2;
  }

  .strip .need {
    fill: var(--_ink);
    opacity: 0.3;
  }

  .strip .got {
    fill: var(--_water);
  }

  .key span {
    display: inline-block;
    inline-size: 0.6rem;
    block-size: 0.75rem;
    margin-inline-start: 0.75rem;
  }

  .key-need {
    background: var(--_ink);
    opacity: 0.3;
  }

  .key-lack {
    background: var(--_short);
  }

  .key-got {
    background: var(--_water);
  }

  .assumptions {
    margin-block-start: 0.75rem;
    padding-block-start: 0.5rem;
    border-block-start: 1px solid var(--_line);
  }

  .assumptions h3 {
    margin-block: 0 0.3rem;
  }

  .assumptions li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0 0.75rem;
    align-items: baseline;
    padding-block: 0.2rem;
    font-size: var(--_size-small);
  }

  .assumptions li .does {
    flex-wrap: nowrap;
  }

  .bed {
    max-inline-size: 24rem;
    margin-block: 0.75rem;
  }

  .bed text {
    fill: currentColor;
    stroke: none;
    font-size: 13px;
    font-weight: 600;
  }

  .foot {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1rem;
    align-items: center;
    position: sticky;
    inset-block-end: 0;
    z-index: 5;
    margin-block-start: 1rem;
    padding-block: 0.6rem;
    border-block-start: 1px solid var(--_line);
    background: var(--_paper);
  }

  .skip {
    margin-inline-start: auto;
  }

  .places {
    display: grid;
    gap: 0.25rem;
    margin: 0.25rem 0;
    padding: 0;
    list-style: none;
  }

  .places button {
    inline-size: 100%;
    text-align: start;
  }

  .step .weather > .fields {
    grid-template-columns: minmax(0, 1fr);
    margin-block-start: 0.6rem;
  }

  @container (max-width: 480px) {
    .fields > .field:has(select) {
      grid-column: 1 / -1;
    }

    .skip {
      margin-inline-start: 0;
      line-height: 1.35;
    }

    .skip button {
      min-block-size: 2rem;
    }
  }

  .entries {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 17rem), 1fr));
    gap: 1rem 1.5rem;
    margin-block: 1rem;
  }

  .entry {
    display: grid;
    gap: 0.3rem;
    justify-items: start;
    align-content: start;
  }

  .entry p {
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .entry button {
    min-block-size: 2.75rem;
  }

  .three {
    max-inline-size: 60ch;
    font-size: var(--_size-large);
    line-height: 1.35;
  }

  .worst {
    max-inline-size: 70ch;
  }

  .told-season > .actions {
    margin-block-start: 1rem;
  }

  .told-season > :is(.rows, .assumptions) {
    max-inline-size: 46rem;
  }
`;
