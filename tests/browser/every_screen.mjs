// Goes through every screen of screens.mjs and judges each.

import { address, settled, visit } from "./harness.mjs";
import { page as pageOf, RACK, stored } from "./rack.mjs";
import { SCREENS } from "./screens.mjs";
import { visitWith } from "./steps.mjs";

/**
 * Goes through the screens in one window, and collects what `judge` finds on each.
 * @param {object} options of `visit`; `plain` leaves out the screens that one comes to by doing something, which is done in English
 * @param {(page: import("playwright-core").Page) => Promise<string[]>} judge
 * @returns {Promise<string[]>} findings, each with the name of its screen
 */
export async function onEveryScreen(options, judge) {
  const found = [];
  for (const filled of [false, true]) {
    const screens = SCREENS.filter((screen) => (screen.filled ?? true) === filled && !screen.alone && !(options.plain && screen.act));
    const go = filled ? (body) => visitWith(RACK, options, body) : (body) => visit(options, body);
    await go(async ({ page }) => {
      for (const { name, path = "#/", act } of screens) {
        // Loaded anew, so that nothing that was open on the screen before stands in the way.
        await page.goto(`${page.url().split("#")[0]}?${name}${path}`);
        // The frame in index.html has a heading too; and a check stays behind its lesson, out of sight.
        await page.locator("#app:not(:has(.skeleton)) main h1:visible").first().waitFor();
        await settled(page);
        await act?.(page);
        for (const line of await judge(page)) found.push(`${name}: ${line}`);
      }
    });
  }
  return found;
}

/** Does the same with the screens that want a window of their own, each of which is prepared by `options.before` and by its own. */
export async function onEveryScreenAlone(options, judge) {
  const found = [];
  for (const screen of SCREENS.filter(({ alone }) => alone)) {
    const pages = [...((screen.filled ?? true) ? RACK.map((garment) => pageOf(garment)) : []), ...(screen.pages ?? [])];
    const context = { ...options.context, ...stored(await address(), pages) };
    const args = [...(options.args ?? []), ...(screen.args ?? [])];
    const before = async (context) => {
      await options.before?.(context);
      await screen.before?.(context);
    };
    await visit({ ...options, path: screen.path, context, args, before }, async ({ page }) => {
      await screen.act?.(page);
      await settled(page);
      for (const line of await judge(page)) found.push(`${screen.name}: ${line}`);
    });
  }
  return found;
}
