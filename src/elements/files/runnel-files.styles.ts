import { css } from 'lit';

/** `@media print`: it has nothing to say on paper. */
export const filesStyles = css`
  .parts {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr));
    gap: 1.25rem 2.5rem;
    margin-block-start: 0.75rem;
  }

  section {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.4rem;
    align-content: start;
    min-inline-size: 0;
  }

  p,
  li,
  dd {
    max-inline-size: 42rem;
    overflow-wrap: anywhere;
  }

  .stack {
    display: grid;
    gap: 1.25rem;
    align-content: start;
    min-inline-size: 0;
  }

  .waiting {
    grid-column: 1 / -1;
  }

  .in,
  .end {
    margin-block-start: 1.25rem;
    padding-block-start: 1rem;
    border-block-start: 1px solid var(--_line);
  }

  .actions,
  .status {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 0.75rem;
    align-items: center;
  }

  .actions {
    margin-block-start: 0.2rem;
  }

  .actions label {
    display: inline-flex;
    flex-wrap: wrap;
    gap: 0.25rem 0.5rem;
    align-items: center;
    max-inline-size: 100%;
  }

  .actions :is(select, input) {
    min-inline-size: 0;
    max-inline-size: 100%;
  }

  :is([type='time'], [type='date'], [type='number'], .next-year input:not([type='checkbox'])) {
    min-block-size: 2rem;
    padding-inline: 0.4rem;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
    background: var(--_paper);
    color: var(--_ink);
    font: inherit;
  }

  fieldset {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1rem;
    min-inline-size: 0;
    margin: 0.5rem 0 0;
    padding: 0;
    border: 0;
  }

  legend {
    padding: 0;
  }

  details .actions label {
    display: inline-flex;
    margin-block: 0;
  }

  .check {
    display: inline-flex;
    gap: 0.4rem;
    align-items: center;
    min-inline-size: 0;
    min-block-size: 2rem;
  }

  .check bdi {
    min-inline-size: 0;
    overflow-wrap: anywhere;
  }

  dl {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.15rem;
  }

  dl > div {
    display: flow-root;
  }

  dt {
    float: inline-start;
    margin-inline-end: 0.4rem;
    font-weight: 600;
  }

  dt::after {
    content: ':';
  }

  details {
    min-inline-size: 0;
  }

  details[open] {
    flex-basis: 100%;
  }

  details label {
    display: grid;
    gap: 0.25rem;
    margin-block: 0.35rem;
  }

  textarea {
    box-sizing: border-box;
    inline-size: 100%;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
    padding: 0.4rem;
    background: var(--_paper);
    color: var(--_ink);
    font: inherit;
    font-family: ui-monospace, monospace;
    font-size: var(--_size-small);
    white-space: pre;
  }

  .refused,
  .faults {
    padding-inline-start: 0.75rem;
    border-inline-start: 4px solid var(--_short);
  }

  .faults li {
    display: grid;
  }

  .faults ul {
    display: grid;
    gap: 0.2rem;
  }

  h4 {
    margin: 0 0 0.2rem;
    font-size: inherit;
  }

  .preview {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.6rem;
  }

  .scroll {
    overflow: auto;
    max-block-size: 22rem;
    max-inline-size: 42rem;
    border-block: 1px solid var(--_line);
  }

  thead th {
    position: sticky;
    inset-block-start: 0;
    background: var(--_paper);
  }

  tbody th {
    padding-block-start: 0.6rem;
    overflow-wrap: anywhere;
    white-space: normal;
  }

  td[colspan] {
    white-space: normal;
  }

  td:first-child {
    text-align: start;
  }

  .main {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
  }

  @media (hover: hover) {
    button.main:not(:disabled):hover {
      background: color-mix(in oklab, var(--_ink) 85%, var(--_paper));
    }
  }

  @media print {
    :host {
      display: none;
    }
  }
`;
