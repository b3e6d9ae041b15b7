import { css } from 'lit';

/** Over the page: the choice above, or beside where there is room, and the pages. */
export const dialogStyles = css`
  dialog.paper {
    box-sizing: border-box;
    inline-size: 100vw;
    max-inline-size: none;
    block-size: 100dvh;
    max-block-size: none;
    margin: 0;
    padding: 0;
    border: 0;
    background: var(--_paper);
    color: var(--_ink);
  }

  dialog.paper[open] {
    display: flex;
    flex-direction: column;
  }

  .paper form {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1rem;
    align-items: end;
    padding: 0.75rem 1rem;
  }

  .paper h2 {
    flex-basis: 100%;
  }

  .paper label {
    display: grid;
    gap: 0.15rem;
    font-size: var(--_size-small);
  }

  .paper select {
    inline-size: 100%;
    min-inline-size: 0;
    min-block-size: 2.75rem;
    font-size: max(1rem, 16px);
  }

  .paper .buttons {
    display: flex;
    gap: 0.5rem;
    margin-inline-start: auto;
  }

  .paper button {
    min-block-size: 2.75rem;
  }

  .paper .primary {
    background: var(--_ink);
    color: var(--_paper);
  }

  .paper iframe {
    flex: 1 1 auto;
    inline-size: 100%;
    min-block-size: 0;
    border: 0;
    border-block-start: 1px solid var(--_line);
  }

  @media (min-width: 900px) {
    dialog.paper[open] {
      flex-direction: row;
    }

    .paper form {
      flex: none;
      flex-direction: column;
      flex-wrap: nowrap;
      align-items: stretch;
      inline-size: 19rem;
    }

    .paper h2 {
      flex-basis: auto;
    }

    .paper .buttons {
      margin-inline-start: 0;
    }
  }
`;
