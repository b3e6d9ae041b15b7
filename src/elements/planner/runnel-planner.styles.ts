import { css } from 'lit';
import { forcedTokenRules, tokenRules } from '../../look/tokens.styles.ts';

/**
 * The planner lies in light DOM: its rules name its own elements and classes and nothing else. Wide enough, the season
 * stands left and fills the window, and what explains it stands right; below that, all is one column.
 *
 * `.runnel-planner__right`: what stays in sight does so beside the season, and not over what is below it.
 * `scroll-margin`: room for the way from part to part, which stays on top.
 * `@media print`: grids break badly over pages, and what is to be filled in or unfolded has nothing to say on paper.
 * `.runnel-planner__week`: the week's list goes to the shed door.
 */
export const plannerStyles = css`
  runnel-planner {
    ${tokenRules}
    display: block;
    background: var(--_paper);
    color: var(--_ink);
  }

  runnel-planner[hidden] {
    display: none;
  }

  runnel-planner-sheet {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1rem;
    box-sizing: border-box;
    padding: 0.75rem clamp(0.25rem, 1vw, 1rem);
  }

  runnel-planner > runnel-plan::part(autosave) {
    padding-inline: clamp(0.25rem, 1vw, 1rem);
  }

  .runnel-planner__right {
    min-inline-size: 0;
  }

  .runnel-planner__season,
  .runnel-planner__side,
  .runnel-planner__below {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1.25rem;
    align-content: start;
    min-inline-size: 0;
  }

  .runnel-planner__grid {
    --runnel-grid-height: var(--runnel-planner-grid-height, clamp(14rem, 41vh, 40rem));
  }

  .runnel-planner__chart {
    --runnel-chart-height: clamp(8.5rem, 24vh, 16rem);
  }

  :is(.runnel-planner__season, .runnel-planner__side, .runnel-planner__below) > * {
    scroll-margin-block-start: 3.75rem;
  }

  .runnel-planner__side > *,
  .runnel-planner__below > :not(details) {
    outline: none;
  }

  .runnel-planner__below {
    gap: 2rem;
    padding-block-start: 1rem;
  }

  .runnel-planner__more > summary {
    inline-size: fit-content;
    min-block-size: 2rem;
    color: var(--_water);
    font: 650 var(--_size) / 1.45 var(--_font);
    cursor: pointer;
  }

  .runnel-planner__nav {
    position: sticky;
    z-index: 200;
    inset-block-start: 0;
  }

  @media (max-width: 48rem) {
    .runnel-planner__grid {
      --runnel-grid-height: var(--runnel-planner-grid-height, clamp(18rem, 60vh, 40rem));
    }
  }

  @media (min-width: 48rem) {
    .runnel-planner__nav {
      position: static;
    }

    .runnel-planner__side {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      column-gap: 2.5rem;
    }
  }

  @media (min-width: 80rem) {
    runnel-planner-sheet {
      grid-template-columns: minmax(0, 1fr) 22rem;
      column-gap: 2.5rem;
    }

    .runnel-planner__bar,
    .runnel-planner__nav,
    .runnel-planner__below {
      grid-column: 1 / -1;
    }

    .runnel-planner__side {
      position: sticky;
      inset-block-start: 1rem;
      grid-template-columns: minmax(0, 1fr);
      overflow: auto;
      max-block-size: calc(100vh - 2rem);
    }
  }

  @media print {
    runnel-planner {
      color-scheme: light;
      background: none;
    }

    runnel-planner-sheet,
    .runnel-planner__season,
    .runnel-planner__side,
    .runnel-planner__below {
      display: block;
    }

    .runnel-planner__week {
      break-before: page;
    }

    .runnel-planner__garden,
    .runnel-planner__more:not([open]) {
      display: none;
    }

    :is(.runnel-planner__season, .runnel-planner__side, .runnel-planner__below) > * {
      margin-block-end: 1.25rem;
    }

    .runnel-planner__side {
      position: static;
      overflow: visible;
      max-block-size: none;
    }
  }

  @media (forced-colors: active) {
    runnel-planner {
      ${forcedTokenRules}
    }
  }
`;
