/** How long after a move of its slider a what-if's picture has changed, and what holds the page up meanwhile. */
import type { Browser, Page } from '@playwright/test';
import type { FileServer } from '../../tests/browser/file-server.ts';
import type { BenchRow } from '../bench-result.ts';
import { enterDemo, longestTaskMs, median, settled, verdict, watchedPage } from './with-browser.ts';

const targetMs = 100;
const taskTargetMs = 50;

export async function dragRows(browser: Browser, server: FileServer): Promise<BenchRow[]> {
  const page = await watchedPage(browser, server.address);
  await enterDemo(page);
  await settled(page);
  await page.goto('./#/forecast');
  await settled(page);
  // Every warmth that the slider can take is worked out ahead, in the worker's free time.
  await page.waitForFunction(() => document.querySelector('.tryout[data-ready="true"]') !== null, null, {
    timeout: 120_000,
  });
  await longestTaskMs(page);
  const mouths = await moves(page, 'the animals ate', [110, 120, 130, 140, 150, 160, 150, 140, 130, 120]);
  const warmth = await moves(page, 'the place were', [0.5, 1, 1.5, 2, 2.5, 3, 2.5, 2, 1.5, 1]);
  const dragging = await longestTaskMs(page);
  await page.goto('./#/plan');
  await settled(page);
  const planning = await longestTaskMs(page);
  await page.context().close();
  return [
    answerRow('a what-if of more mouths', mouths),
    answerRow('a what-if of a warmer place', warmth),
    taskRow('longest task of the main thread while dragging', dragging),
    taskRow('longest task of the main thread while the plan is worked out and drawn', planning),
  ];
}

function answerRow(what: string, ms: number[]): BenchRow {
  return {
    what: `${what}, from the slider's move to the changed picture, median of ${ms.length}`,
    figure: `${median(ms).toFixed(0)} ms, at worst ${Math.max(...ms).toFixed(0)} ms`,
    baseline: `${targetMs} ms`,
    ratio: median(ms) / targetMs,
    target: verdict(`at most ${targetMs} ms`, median(ms) <= targetMs),
  };
}

export function taskRow(what: string, ms: number): BenchRow {
  return {
    what,
    figure: ms === 0 ? 'none over 50 ms' : `${ms.toFixed(0)} ms`,
    baseline: `${taskTargetMs} ms`,
    ratio: ms / taskTargetMs,
    target: verdict(`at most ${taskTargetMs} ms`, ms <= taskTargetMs),
  };
}

/** Milliseconds from each move to the frame in which the band has another shape. */
async function moves(page: Page, label: string, values: number[]): Promise<number[]> {
  const slider = page.getByLabel(label);
  const took: number[] = [];
  for (const value of values) {
    took.push(
      await slider.evaluate(async (input, to) => {
        const shape = () => document.querySelector('path.middle')?.getAttribute('d');
        const before = shape();
        const began = performance.now();
        (input as HTMLInputElement).value = String(to);
        input.dispatchEvent(new Event('input', { bubbles: true }));
        while (shape() === before) await new Promise((resolve) => requestAnimationFrame(resolve));
        return performance.now() - began;
      }, value),
    );
    await page.waitForTimeout(60);
  }
  return took;
}
