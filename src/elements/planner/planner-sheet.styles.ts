import { css } from 'lit';

/**
 * Of the planner's views, in light DOM as well. Wide enough, they scroll within it, and the season's does not scroll at all; on a phone
 * the page scrolls. What scrolls cuts off at its padding, so that has room for the ring around what has the focus.
 *
 * `@media print`: the view that stands there, and what is to be filled in or unfolded has nothing to say on paper.
 */
export const plannerSheetStyles = css`
  .runnel-planner__bar {
    flex: none;
  }

  .runnel-planner__head {
    display: flex;
    flex: none;
    flex-wrap: wrap;
    gap: 0 1.5rem;
    align-items: end;
    justify-content: space-between;
    border-block-end: 1px solid var(--_line);
  }

  .runnel-planner__nav {
    min-inline-size: 0;
  }

  .runnel-planner__tools {
    padding-block-end: 0.3rem;
    font: 400 var(--_size-small) / 1.45 var(--_font);
  }

  .runnel-planner__view {
    display: flex;
    flex: 1 1 auto;
    flex-direction: column;
    gap: 0.6rem;
    min-inline-size: 0;
    min-block-size: 0;
    padding-block-start: 0.35rem;
  }

  .runnel-planner__view[hidden] {
    display: none;
  }

  .runnel-planner__view > * {
    flex: none;
    outline: none;
  }

  .runnel-planner__desk {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1.25rem;
    min-inline-size: 0;
  }

  .runnel-planner__grid {
    --runnel-grid-height: var(--runnel-planner-grid-height, 75vh);
  }

  .runnel-planner__strip {
    --runnel-chart-height: clamp(4rem, 23vh - 110px, 6rem);
    --runnel-strip-lanes: clamp(88px, 12.5vh, 126px);
  }

  runnel-planner-panel {
    display: block;
    min-inline-size: 0;
    font: 400 var(--_size) / 1.45 var(--_font);
  }

  .runnel-planner__tabs {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2rem;
    border-block-end: 1px solid var(--_line);
    white-space: nowrap;
  }

  .runnel-planner__tabs [role='tab'] {
    min-block-size: 2.1rem;
    margin: 0;
    padding: 0;
    border: solid transparent;
    border-width: 2px 0;
    border-radius: 0;
    background: none;
    color: var(--_quiet);
    font: inherit;
    letter-spacing: inherit;
    text-transform: none;
    cursor: pointer;
  }

  .runnel-planner__tabs [role='tab'][aria-selected='true'] {
    border-block-end-color: var(--_ink);
    color: var(--_ink);
    font-weight: 650;
  }

  .runnel-planner__tabs small {
    color: var(--_short);
    font-size: var(--_size-small);
    font-weight: 400;
  }

  .runnel-planner__tabs [role='tab']:focus-visible {
    outline: 2px solid var(--_ink);
    outline-offset: -3px;
  }

  .runnel-planner__pane {
    padding-block-start: 0.4rem;
  }

  .runnel-planner__pane[hidden] {
    display: none;
  }

  .runnel-planner__pane > * {
    outline: none;
  }

  @container runnel-planner (min-width: 700px) {
    .runnel-planner__view:not(.runnel-planner__view-season) {
      position: relative;
    }

    .runnel-planner__view {
      overflow: auto;
      margin-inline: -0.25rem;
      padding-inline: 0.25rem;
    }
  }

  @container runnel-planner (min-width: 900px) {
    .runnel-planner__view-season {
      overflow: hidden;
    }

    .runnel-planner__desk {
      flex: 1 1 auto;
      grid-template: minmax(0, 1fr) / minmax(0, 1fr) clamp(16.4rem, 22.5cqi, 22rem);
      column-gap: clamp(1.1rem, 1.8cqi, 1.65rem);
      min-block-size: 0;
    }

    .runnel-planner__grid,
    runnel-planner-panel {
      min-block-size: 0;
    }

    runnel-planner-panel {
      display: flex;
      flex-direction: column;
    }

    .runnel-planner__pane {
      position: relative;
      overflow: auto;
      min-block-size: 0;
    }
  }

  @container runnel-planner (max-width: 699px) {
    .runnel-planner__nav {
      position: sticky;
      z-index: 200;
      inset-block-end: 0;
      order: 1;
      margin-inline: calc(-1 * clamp(0.75rem, 1.7cqi, 1.5rem));
      margin-block-end: -0.5rem;
      border-block: 1px solid var(--_line);
      border-block-end: 0;
      background: var(--_paper);
    }

    .runnel-planner__week {
      --_foot: 3.5rem;
    }

    .runnel-planner__view-scrolled {
      overflow: hidden auto;
    }

    .runnel-planner__view-scrolled > .runnel-planner__week {
      --_foot: 0rem;
    }
  }

  @media (min-width: 700px) {
    [full-page] .runnel-planner__grid {
      --runnel-grid-height: var(--runnel-planner-grid-height, 100vh);
    }
  }

  @media print {
    runnel-planner,
    runnel-planner[full-page] {
      color-scheme: light;
      display: block;
      block-size: auto !important;
      background: none;
    }

    runnel-planner > runnel-plan,
    runnel-planner-sheet,
    runnel-planner-panel,
    .runnel-planner__view:not([hidden]),
    .runnel-planner__desk {
      display: block;
    }

    .runnel-planner__view,
    .runnel-planner__pane {
      overflow: visible;
    }

    .runnel-planner__tabs {
      display: none;
    }

    :is(.runnel-planner__view, .runnel-planner__desk) > * {
      margin-block-end: 1.25rem;
    }
  }

  @media (forced-colors: active) {
    .runnel-planner__tabs [role='tab'] {
      border-color: Canvas;
    }

    .runnel-planner__tabs [role='tab'][aria-selected='true'] {
      border-block-end-color: Highlight;
    }
  }
`;
