import { css, unsafeCSS } from 'lit';
import { textField } from '../../look/text-field.ts';

export const mixStyles = css`
  :host {
    display: grid;
    gap: 1.75rem;
    grid-template-columns: minmax(0, 1fr);
  }

  header,
  section {
    display: grid;
    gap: 0.6rem;
    grid-template-columns: minmax(0, 1fr);
    justify-items: start;
  }

  header > *,
  section > * {
    max-inline-size: 100%;
  }

  h3 {
    font-size: calc(var(--_size) * 1.12);
  }

  h4 {
    margin: 0;
    font-size: inherit;
    font-weight: 650;
    overflow-wrap: anywhere;
    text-wrap: balance;
  }

  header p,
  section > p {
    max-inline-size: 72ch;
  }

  .choices,
  form {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1.25rem;
    align-items: center;
  }

  label {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 0.5rem;
    align-items: center;
    max-inline-size: 100%;
  }

  .as-if {
    padding-inline-start: 0.75rem;
    border-inline-start: 3px solid var(--_ink);
  }

  .scroller {
    overflow-x: auto;
    inline-size: 100%;
  }

  td,
  th {
    border-block-end: 1px solid var(--_line);
  }

  tfoot :is(td, th) {
    border-block-end: 0;
    font-weight: 650;
  }

  th[scope='row'] {
    text-align: start;
    font-weight: inherit;
  }

  th[scope='col'] {
    white-space: normal;
    vertical-align: bottom;
  }

  .remedies {
    display: grid;
    gap: 0;
    grid-template-columns: minmax(0, 1fr);
    box-sizing: border-box;
    inline-size: 100%;
    padding-inline-start: 1.6rem;
    list-style: decimal;
  }

  .remedies > li {
    padding-block: 0.8rem;
    border-block-start: 1px solid var(--_line);
  }

  .remedies > li::marker {
    color: var(--_quiet);
    font-weight: 650;
  }

  .remedies > li > * {
    max-inline-size: 76ch;
  }

  .promise {
    color: var(--_growth);
    font-weight: 600;
  }

  .remedies button {
    margin-block-start: 0.4rem;
  }

  .leave {
    box-sizing: border-box;
    inline-size: 100%;
    padding-block: 0.8rem;
    padding-inline-start: 1.6rem;
    border-block: 1px solid var(--_line);
  }

  .calendar ul {
    padding-block: 0.3rem;
    padding-inline-start: 0.9rem;
    border-inline-start: 2px solid var(--_line);
  }

  .taken {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1rem;
    align-items: center;
    padding-inline-start: 0.75rem;
    border-inline-start: 4px solid var(--_growth);
  }

  .tried {
    order: -1;
    padding: 0.75rem;
    border: 2px dashed var(--_ink);
    border-radius: 0.4rem;
  }

  .tried input {
    box-sizing: border-box;
    min-block-size: 2rem;
    max-inline-size: 100%;
    padding-inline: 0.4rem;
    ${unsafeCSS(textField)}
  }

  .compared .parts {
    min-inline-size: 14ch;
    text-align: start;
    white-space: normal;
  }

  .compared .do {
    white-space: nowrap;
  }

  .compared caption {
    color: var(--_quiet);
    text-align: start;
  }

  .steps,
  .shopping {
    margin: 0;
    padding-inline-start: 1.4rem;
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.75rem;
  }

  .cautions {
    gap: 0.3rem;
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .cautions li {
    max-inline-size: 72ch;
  }

  @media (max-width: 35rem) {
    .scroller:has([data-head]) :is(table, tbody, tfoot, tr) {
      display: block;
    }

    .scroller:has([data-head]) :is(tbody, tfoot) th {
      display: block;
      padding-block-start: 0.75rem;
      border: 0;
      font-weight: 650;
    }

    .scroller:has([data-head]) thead {
      display: none;
    }

    .compared caption,
    .compared td:is(.do, [colspan]) {
      display: block;
      text-align: start;
    }

    .compared .do {
      padding-block-end: 0.75rem;
    }

    .compared td.parts[data-head] {
      text-align: end;
    }

    td[data-head] {
      display: flex;
      gap: 1rem;
      justify-content: space-between;
    }

    td[data-head]::before {
      color: var(--_quiet);
      content: attr(data-head);
      text-align: start;
    }

    td[data-head]:empty {
      display: none;
    }
  }

  @media print {
    form,
    button,
    .trial {
      display: none;
    }

    .picture > li,
    .remedies > li {
      break-inside: avoid;
    }
  }
`;
