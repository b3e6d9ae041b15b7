import { css, unsafeCSS } from 'lit';
import { textField } from '../../look/text-field.ts';

/** `.pointed`: the same ground as the week's header has in the sheet. */
export const traceStyles = css`
  header {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.3rem;
    justify-items: start;
  }

  label {
    display: flex;
    max-inline-size: 100%;
    flex-wrap: wrap;
    gap: 0.25rem 0.5rem;
    align-items: center;
  }

  .week,
  .result {
    white-space: nowrap;
  }

  .pointed {
    background: color-mix(in oklab, var(--_ink) 18%, var(--_paper));
    box-shadow: 0 2px 0 var(--_ink);
  }

  .answer {
    display: grid;
    gap: 0.4rem;
    margin-block-start: 0.4rem;
  }

  .groups {
    margin-block-start: 0.8rem;
    border-block-start: 1px solid var(--_line);
  }

  .group {
    border-block-end: 1px solid var(--_line);
  }

  .group > summary {
    grid-template-columns: 1.1rem auto minmax(0, 1fr);
    align-items: center;
    min-block-size: 2.2rem;
  }

  .groups {
    container-type: inline-size;
  }

  @media (pointer: fine) {
    .groups {
      margin-block-start: 0.5rem;
    }

    .group > summary {
      min-block-size: 1.85rem;
    }
  }

  .comes-to {
    text-align: end;
  }

  ol {
    display: grid;
    gap: 0.75rem;
    margin-block: 0.4rem 0.9rem;
  }

  summary {
    display: grid;
    grid-template-columns: 1.1rem minmax(5rem, 1fr) minmax(0, auto);
    gap: 0 0.25rem;
    align-items: baseline;
    inline-size: auto;
    min-block-size: auto;
    color: inherit;
    text-decoration: none;
  }

  summary::-webkit-details-marker {
    display: none;
  }

  summary::before {
    content: '\\25b8' / '';
    color: var(--_ink);
  }

  details[open] > summary::before {
    content: '\\25be' / '';
  }

  .result {
    padding-inline-start: 0.75rem;
    font-weight: 650;
  }

  .says {
    grid-column: 2 / -1;
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .working {
    display: grid;
    gap: 0.5rem;
    margin: 0.4rem 0 0.6rem 0.35rem;
    padding-inline-start: 0.9rem;
    border-inline-start: 2px solid var(--_line);
    font-size: var(--_size-small);
  }

  .formula {
    overflow-wrap: anywhere;
  }

  dl {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.1rem 1rem;
    margin: 0;
  }

  dt {
    color: var(--_quiet);
  }

  dd {
    text-align: end;
    white-space: nowrap;
  }

  dd.word {
    white-space: normal;
  }

  @container (max-width: 15rem) {
    li summary {
      grid-template-columns: 1.1rem minmax(0, 1fr);
    }

    li .result {
      grid-column: 2;
      padding: 0;
      white-space: normal;
    }
  }

  @media (hover: hover) {
    summary:hover .title {
      text-decoration: underline;
      text-decoration-thickness: 1px;
      text-underline-offset: 0.2em;
    }
  }

  @media print {
    .empty {
      display: none;
    }
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1rem;
    align-items: start;
    padding-block-start: 0.35rem;
  }

  .actions details[open] {
    flex-basis: 100%;
  }

  .actions summary {
    min-block-size: 1.75rem;
  }

  .actions form {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 0.75rem;
    align-items: end;
  }

  .actions label {
    display: grid;
    gap: 0.15rem;
  }

  .actions output {
    flex-basis: 100%;
  }

  .actions output:empty {
    display: none;
  }

  .actions :is(input, textarea) {
    box-sizing: border-box;
    inline-size: 6em;
    min-block-size: 2rem;
    padding: 0.2rem 0.4rem;
    ${unsafeCSS(textField)}
  }

  .actions textarea {
    inline-size: 14em;
    max-inline-size: 100%;
  }

  @media print {
    .actions {
      display: none;
    }
  }
`;
