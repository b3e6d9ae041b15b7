import { css } from 'lit';
import { forcedTokenRules, tokenRules } from '../../look/tokens.styles.ts';

/**
 * The planner lies in light DOM: its rules name its own elements and classes and nothing else. Wide enough, it is as high as the page
 * lets it be. The rules of what stands in it come with that: `planner-sheet.styles.ts`.
 *
 * `min-inline-size`: a container has no width of its own, and would vanish where a page lets its parts be as wide as they are.
 */
export const plannerStyles = css`
  runnel-planner {
    ${tokenRules}
    display: flex;
    flex-direction: column;
    min-inline-size: min(100%, 20rem);
    container: runnel-planner / inline-size;
    background: var(--_paper);
    color: var(--_ink);
  }

  runnel-planner[hidden] {
    display: none;
  }

  runnel-planner > runnel-plan {
    display: flex;
    flex: 1 1 auto;
    flex-direction: column;
    min-block-size: 0;
  }

  runnel-planner-sheet {
    display: flex;
    flex: 1 1 auto;
    flex-direction: column;
    gap: 0.1rem;
    box-sizing: border-box;
    min-block-size: 0;
    padding: 0.4rem clamp(0.75rem, 1.7cqi, 1.5rem);
  }

  runnel-planner > runnel-plan::part(autosave) {
    padding-inline: clamp(0.75rem, 1.7cqi, 1.5rem);
  }

  .runnel-planner__waiting {
    margin: 0;
    padding: 1rem clamp(0.75rem, 1.7cqi, 1.5rem);
    color: var(--_quiet);
    font: 400 var(--_size) / 1.45 var(--_font);
  }

  @media (min-width: 700px) {
    runnel-planner[full-page] {
      block-size: calc(100dvh - var(--_beside, 0px));
      min-block-size: 34rem;
    }
  }

  @media (forced-colors: active) {
    runnel-planner {
      ${forcedTokenRules}
    }
  }
`;
