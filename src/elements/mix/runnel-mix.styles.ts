import { css } from 'lit';

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
    border-inline-start: 3px solid var(--_water);
  }

  .definitions {
    position: absolute;
  }

  .picture {
    display: grid;
    gap: 0;
  }

  .picture > li {
    display: grid;
    grid-template-columns: minmax(11rem, 1fr) minmax(14rem, 1.1fr) minmax(16rem, 1.4fr);
    gap: 0.5rem 2rem;
    align-items: center;
    padding-block: 0.9rem;
    border-block-start: 1px solid var(--_line);
  }

  .who {
    display: grid;
    gap: 0.2rem;
  }

  .verdict {
    display: grid;
  }

  .verdict :is(.small) {
    color: var(--_quiet);
  }

  .over strong {
    color: var(--_rain);
  }

  :is(.short, .none) strong {
    color: var(--_short);
  }

  .right strong {
    color: var(--_growth);
  }

  .bars {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 0.35rem 0.75rem;
    align-items: center;
  }

  .bars dt {
    color: var(--_quiet);
  }

  .bars dd {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 5.5em;
    gap: 0.6rem;
    align-items: center;
  }

  .bars span {
    text-align: end;
    white-space: nowrap;
  }

  .bar {
    inline-size: 100%;
    block-size: 0.85rem;
    overflow: visible;
  }

  .strip {
    inline-size: 100%;
    max-inline-size: 30rem;
  }

  .strip text {
    fill: var(--_quiet);
    font-size: 9px;
  }

  .need {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
    vector-effect: non-scaling-stroke;
  }

  .base {
    fill: none;
    stroke: var(--_line);
  }

  .stays {
    fill: var(--_water);
  }

  .hatch-ground {
    fill: color-mix(in oklab, var(--_rain) 25%, var(--_paper));
  }

  .hatch-line {
    fill: var(--_rain);
  }

  path.short {
    fill: var(--_short);
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.25rem;
    margin-block-start: -1rem;
    color: var(--_quiet);
  }

  .key li {
    display: flex;
    gap: 0.4rem;
    align-items: center;
  }

  .swatch {
    inline-size: 1.5rem;
    block-size: 0.75rem;
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
    border: 2px dashed var(--_water);
    border-radius: 0.4rem;
  }

  .actions {
    display: flex;
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

  @media (max-width: 60rem) {
    .picture > li {
      grid-template-columns: minmax(0, 1fr);
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
