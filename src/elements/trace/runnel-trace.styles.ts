import { css } from 'lit';

export const traceStyles = css`
  header {
    display: grid;
    gap: 0.4rem;
    justify-items: start;
  }

  label {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 0.5rem;
    align-items: center;
  }

  ol {
    display: grid;
    gap: 0.9rem;
    margin-block-start: 1rem;
  }

  .result {
    display: flex;
    gap: 0 1rem;
    align-items: baseline;
    justify-content: space-between;
  }

  .result strong {
    flex: none;
    font-weight: 650;
  }

  details {
    margin-block-start: 0.15rem;
    font-size: var(--_size-small);
  }

  .working {
    display: grid;
    gap: 0.5rem;
    margin-block: 0.4rem 0.6rem;
    padding-inline-start: 0.75rem;
    border-inline-start: 2px solid var(--_line);
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
`;
