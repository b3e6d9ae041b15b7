import { css } from 'lit';

/**
 * `details *`: what a details element unfolds does not inherit from the host.
 * `.section`: room for what stays on top of the page.
 * `.months`: on a phone four columns share what there is.
 */
export const gardenStyles = css`
  details * {
    box-sizing: border-box;
  }

  h2 {
    margin-block-end: 0.75rem;
  }

  h3 {
    margin-block: 1.25rem 0.5rem;
  }

  h4 {
    margin: 0.75rem 0 0;
    font-weight: 650;
  }

  .section {
    scroll-margin-block-start: 3.75rem;
  }

  details {
    border-block-start: 1px solid var(--_line);
  }

  summary {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.75rem;
    align-items: baseline;
    inline-size: auto;
    position: relative;
    padding-block: 0.55rem;
    padding-inline-start: 1.2rem;
    color: inherit;
    font-weight: 600;
    text-decoration: none;
    overflow-wrap: anywhere;
  }

  summary::-webkit-details-marker {
    display: none;
  }

  summary::before {
    content: '\\25b8' / '';
    position: absolute;
    inset-inline-start: 0;
    color: var(--_ink);
  }

  [open] > summary::before {
    content: '\\25be' / '';
  }

  summary .quiet {
    font-size: var(--_size-small);
    font-weight: 400;
  }

  .part-body {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9rem;
    justify-items: start;
    padding: 0.35rem 0 1rem 1.1rem;
  }

  .part-body > details,
  fieldset {
    inline-size: 100%;
  }

  .often {
    display: grid;
    gap: 0.35rem;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .often .quiet {
    display: block;
    font-size: var(--_size-small);
  }

  fieldset {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.6rem;
    justify-items: start;
    min-inline-size: 0;
    margin: 0;
    padding: 0.5rem 0 0.25rem 0.9rem;
    border: 0;
    border-inline-start: 2px solid var(--_line);
  }

  legend {
    float: inline-start;
    padding: 0;
    font-weight: 600;
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 14.5rem), 1fr));
    gap: 0.8rem 1.5rem;
    inline-size: 100%;
    clear: both;
  }

  .field,
  label {
    grid-template-columns: minmax(0, 1fr);
  }

  .field {
    display: grid;
    gap: 0.2rem;
    align-content: start;
    min-inline-size: 0;
  }

  .wide,
  .fields > .help {
    grid-column: 1 / -1;
  }

  .fields > .help {
    order: 1;
  }

  label {
    display: grid;
    gap: 0.2rem;
  }

  .label {
    font-weight: 600;
  }

  input:not([type='checkbox'], [type='radio']),
  select {
    inline-size: 100%;
    min-block-size: 2.1rem;
    margin: 0;
    padding: 0.15rem 0.5rem;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
    background: var(--_paper);
    color: var(--_ink);
    font: inherit;
    font-variant-numeric: inherit;
  }

  input::placeholder {
    color: var(--_quiet);
    opacity: 1;
    font-style: italic;
  }

  input[aria-invalid] {
    border: 2px solid var(--_short);
  }

  .with-unit {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.5rem;
    align-items: center;
  }

  .check {
    display: flex;
    gap: 0.5rem;
    align-items: center;
    min-block-size: 2.1rem;
    cursor: pointer;
  }

  .check input {
    flex: none;
    inline-size: 1.15rem;
    block-size: 1.15rem;
    margin: 0;
    accent-color: var(--_ink);
  }

  .weekdays {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.1rem;
  }

  .help,
  .derived {
    color: var(--_quiet);
    font-size: var(--_size-small);
    line-height: 1.35;
  }

  .refused,
  .wrong,
  .too-long {
    color: var(--_short);
    font-weight: 600;
  }

  [hidden] {
    display: none;
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
  }

  .months {
    table-layout: fixed;
    inline-size: 100%;
    max-inline-size: 32rem;
  }

  .months input {
    box-sizing: border-box;
    text-align: end;
  }

  .months th {
    white-space: normal;
  }

  .months th:first-child {
    inline-size: 4.25rem;
  }

  .months td {
    vertical-align: top;
    white-space: normal;
  }

  .cautions {
    display: grid;
    gap: 0.3rem;
    margin-block-start: 1.5rem;
    padding-block-start: 0.5rem;
    border-block-start: 1px solid var(--_line);
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  @media (pointer: coarse) {
    input:not([type='checkbox'], [type='radio']),
    select,
    .check {
      min-block-size: 2.75rem;
    }
  }

  @media print {
    button {
      display: none;
    }
  }
`;
