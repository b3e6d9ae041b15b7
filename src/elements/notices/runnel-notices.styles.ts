import { css } from 'lit';

/** `.more::details-content`: paper unfolds nothing: all of them stand there. */
export const noticesStyles = css`
  section + section {
    margin-block-start: 1.5rem;
  }

  ul {
    display: grid;
    gap: 0.9rem;
    margin-block-start: 0.75rem;
  }

  .notice {
    display: grid;
    grid-template-columns: 1.25rem minmax(0, 1fr);
    gap: 0.1rem 0.5rem;
  }

  .notice > * {
    grid-column: 2;
  }

  .notice > .sign {
    grid-column: 1;
    grid-row: 1;
    margin-block-start: 0.2em;
  }

  .about {
    margin-block-start: 0.75rem;
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .severity {
    font-size: var(--_size-small);
    font-weight: 650;
  }

  .danger :is(.severity, .sign) {
    color: var(--_short);
  }

  .filled {
    fill: currentcolor;
  }

  .cut,
  .mark,
  .outlined {
    fill: none;
    stroke: currentcolor;
    stroke-width: 1.5;
  }

  .cut {
    stroke: var(--_paper);
    stroke-width: 1.8;
  }

  .remedies {
    margin-block-start: 0.15rem;
  }

  .remedies ol {
    display: grid;
    gap: 0.9rem;
    margin-block: 0.6rem;
    padding-inline-start: 1.4rem;
    list-style: decimal;
  }

  .remedies ul {
    gap: 0.35rem;
    margin-block: 0.6rem;
  }

  .remedies button {
    margin-block-start: 0.35rem;
  }

  .taken {
    display: flex;
    flex-wrap: wrap;
    gap: 0.35rem 1rem;
    align-items: center;
    padding-inline-start: 0.75rem;
    border-inline-start: 3px solid var(--_ink);
  }

  .on-paper {
    display: none;
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.25rem;
    margin-block-start: 0.15rem;
  }

  .more {
    margin-block-start: 0.9rem;
  }

  .faults {
    padding-inline-start: 0.75rem;
    border-inline-start: 4px solid var(--_short);
  }

  .faults li {
    display: grid;
  }

  .cautions {
    margin-block-start: 1.75rem;
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .cautions ul {
    gap: 0.35rem;
    margin-block-start: 0.35rem;
  }

  @media print {
    .notice {
      break-inside: avoid;
    }

    .more::details-content {
      content-visibility: visible;
      block-size: auto;
    }

    .more > summary,
    .actions,
    .remedies,
    .taken {
      display: none;
    }

    .on-paper {
      display: block;
    }
  }
`;
