import { css } from 'lit';

export const weekStyles = css`
  header {
    display: grid;
    gap: 0.35rem;
  }

  .steps {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    margin-block-start: 0.35rem;
  }

  .zones {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 19rem), 1fr));
    gap: 0 2.5rem;
    margin-block: 1rem 1.5rem;
  }

  article {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.3rem;
    align-content: start;
    padding-block: 0.85rem;
    border-block-start: 1px solid var(--_line);
  }

  .runs h3::before {
    content: '\\25cf' / '';
    margin-inline-end: 0.4rem;
    color: var(--_water);
  }

  .rests h3::before {
    content: '\\25cb' / '';
    margin-inline-end: 0.4rem;
    color: var(--_quiet);
  }

  .task strong {
    display: block;
    font-size: calc(var(--_size) * 1.15);
    font-weight: 650;
  }

  .soak + .quiet {
    display: block;
  }

  .rests .task {
    color: var(--_quiet);
  }

  dl {
    display: grid;
    grid-template-columns: minmax(0, max-content) minmax(0, 1fr);
    gap: 0.1rem 0.75rem;
  }

  dt {
    grid-column: 1;
    font-weight: 600;
  }

  dd {
    grid-column: 2;
  }

  .state {
    font-weight: 600;
  }

  .dry,
  .short {
    color: var(--_short);
  }

  .over {
    color: var(--_rain);
  }

  .note {
    padding-inline-start: 0.75rem;
    border-inline-start: 2px solid var(--_line);
    overflow-wrap: anywhere;
  }

  .check {
    display: flex;
    gap: 0.5rem;
    align-items: center;
    inline-size: fit-content;
    min-block-size: 2rem;
    cursor: pointer;
  }

  .weather {
    display: grid;
    gap: 0.35rem;
    margin-block-start: 0.75rem;
  }

  .rain-entry,
  .rain-entry label,
  .log li {
    display: flex;
    flex-wrap: wrap;
    gap: 0.35rem 0.6rem;
    align-items: center;
  }

  .entry {
    display: inline-flex;
    flex-wrap: wrap;
    gap: 0.3rem;
    align-items: center;
    min-inline-size: 0;
  }

  .entry input {
    inline-size: 4.5rem;
    min-block-size: 2rem;
    padding-inline: 0.4rem;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
    background: var(--_paper);
    color: var(--_ink);
    font: inherit;
    text-align: end;
  }

  .entry input[aria-invalid='true'] {
    border-color: var(--_short);
  }

  .entry .refused {
    flex-basis: 100%;
    max-inline-size: 18rem;
    color: var(--_short);
    font-size: var(--_size-small);
    overflow-wrap: anywhere;
  }

  .entry .refused[hidden] {
    display: none;
  }

  .closing {
    margin-block-start: 0.75rem;
  }

  .log ul {
    display: grid;
    gap: 0.35rem;
    margin-block-start: 0.35rem;
  }

  .log .day {
    min-inline-size: 5.5rem;
  }

  .forecast table {
    inline-size: auto;
  }

  .forecast :is(th, td) {
    padding: 0.15rem 0.75rem 0.15rem 0;
    border: 0;
    font-weight: 400;
    text-align: start;
  }

  [type='checkbox'] {
    inline-size: 1.2rem;
    block-size: 1.2rem;
    margin: 0;
    accent-color: var(--_water);
  }

  .cautions {
    display: grid;
    gap: 0.35rem;
    padding-block-start: 0.75rem;
    border-block-start: 1px solid var(--_line);
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .cautions ul {
    display: grid;
    gap: 0.25rem;
  }

  @media (pointer: coarse) {
    .check,
    .entry input {
      min-block-size: 2.75rem;
    }
  }

  @media print {
    .steps,
    .closing,
    .weather,
    .log {
      display: none;
    }

    article {
      break-inside: avoid;
    }
  }
`;
