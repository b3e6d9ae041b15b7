import { css } from 'lit';
import { forcedTokenRules, tokenRules } from '../../look/tokens.styles.ts';

/**
 * The grid lies in light DOM: its rules name its own element and classes and nothing else.
 *
 * `runnel-grid`: a height that fits a screen would cut the paper.
 * `.runnel-grid__key .runnel-key__ground`: in forced colours cells have no grounds.
 */
export const gridStyles = css`
  runnel-grid {
    ${tokenRules}
    display: flex;
    flex-direction: column;
    gap: 0.5rem;
    box-sizing: border-box;
    min-inline-size: 0;
    background: var(--_paper);
    color: var(--_ink);
    font-family: var(--_font);
    font-size: var(--_size);
    font-variant-numeric: tabular-nums lining-nums;
    line-height: 1.45;
    text-align: start;
  }

  runnel-grid[hidden] {
    display: none;
  }

  .runnel-grid__room {
    flex: 0 1 auto;
    overflow: hidden;
    min-block-size: 11rem;
    block-size: var(--_full);
    max-block-size: var(--runnel-grid-height, 75vh);
  }

  .runnel-grid__box {
    position: relative;
    isolation: isolate;
    overflow: hidden;
    inline-size: var(--_wide, auto);
    max-inline-size: 100%;
    block-size: var(--_whole, 100%);
  }

  /* The room of the library's edge, where the next week would show. */
  .runnel-grid__box::after {
    position: absolute;
    z-index: 200;
    inset-block: 0;
    inset-inline-end: 0;
    inline-size: 1px;
    background: var(--_paper);
    pointer-events: none;
    content: '';
  }

  .runnel-grid__waiting {
    max-inline-size: 42rem;
    margin: 0;
    padding: 0.75rem 1rem;
    border-inline-start: 4px solid var(--_ink);
  }

  .runnel-grid__waiting p {
    margin-block: 0 0.5rem;
  }

  .runnel-grid__tools option,
  .runnel-key span {
    unicode-bidi: plaintext;
  }

  @media (max-width: 37.5rem) {
    .runnel-grid__box::after {
      inline-size: 2px;
    }
  }

  @media print {
    runnel-grid {
      block-size: auto !important;
    }

    .runnel-grid__room {
      display: none;
    }
  }

  @media (forced-colors: active) {
    runnel-grid {
      ${forcedTokenRules}
    }
  }
`;
