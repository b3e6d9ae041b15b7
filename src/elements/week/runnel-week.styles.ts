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

  input {
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
    .check {
      min-block-size: 2.75rem;
    }
  }

  @media print {
    .steps {
      display: none;
    }

    article {
      break-inside: avoid;
    }
  }
`;
