// Goes through every screen of screens.mjs and judges each.

import { address, settled, visit } from "./harness.mjs";
import { page as pageOf, RACK, stored } from "./rack.mjs";
import { SCREENS } from "./screens.mjs";
import { visitWith } from "./steps.mjs";

/** `SCREENS="lot rack"` keeps to those, while one works on them. */
const wanted = (process.env.SCREENS ?? "").split(" ").filter(Boolean);
/** `FOUND=1` tells each finding as soon as it is made. */
const finding = (found, name) => (line) => {
  found.push(`${name}: ${line}`);
  if (process.env.FOUND) console.error(found.at(-1));
};
const CHOSEN = SCREENS.filter(({ name }) => wanted.length === 0 || wanted.includes(name));

/**
 * Goes through the screens in one window, and collects what `judge` finds on each.
 * @param {object} options of `visit`; `plain` leaves out the screens that one comes to by doing something, which is done in English; `unreached`, a list, takes the
 *   names of those that could not be come to
 * @param {(page: import("playwright-core").Page) => Promise<string[]>} judge
 * @returns {Promise<string[]>} findings, each with the name of its screen
 */
export async function onEveryScreen(options, judge) {
  const found = [];
  for (const filled of [false, true]) {
    const screens = CHOSEN.filter((screen) => (screen.filled ?? true) === filled && !screen.alone && !(options.plain && screen.act));
    const go = filled ? (body) => visitWith(RACK, options, body) : (body) => visit(options, body);
    await go(async ({ page }) => {
      for (const { name, path = "#/", act } of screens) {
        // Loaded anew, so that nothing that was open on the screen before stands in the way.
        await page.goto(`${page.url().split("#")[0]}?${name}${path}`);
        // The frame in index.html has a heading too; and a check stays behind its lesson, out of sight.
        await page.locator("#app:not(:has(.skeleton)) main h1:visible").first().waitFor();
        await settled(page);
        try {
          await act?.(page);
        } catch (reason) {
          if (!options.unreached) throw reason;
          options.unreached.push(name);
        }
        (await judge(page, name)).forEach(finding(found, name));
      }
    });
  }
  return found;
}

/** Does the same with the screens that want a window of their own, each of which is prepared by `options.before` and by its own. */
export async function onEveryScreenAlone(options, judge) {
  const found = [];
  for (const screen of CHOSEN.filter(({ alone }) => alone)) {
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
      (await judge(page, screen.name)).forEach(finding(found, screen.name));
    });
  }
  return found;
}

/** One moment and one row of chances for every window, so that what is written on a screen is the same each time. */
export const STEADY_CONTEXT = { timezoneId: "UTC" };
export async function steady(context) {
  await context.clock.setFixedTime(new Date("2026-03-02T10:00:00Z"));
  await context.addInitScript(() => {
    let state = 20260302;
    const next = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return state;
    };
    Math.random = () => next() / 2 ** 32;
    window.crypto.getRandomValues = (into) => {
      const bytes = new Uint8Array(into.buffer, into.byteOffset, into.byteLength);
      for (let place = 0; place < bytes.length; place += 1) bytes[place] = next() >>> 24;
      return into;
    };
  });
}

/** Goes through all screens, each in a window of its own, so that none is coloured by the one before. */
export async function onEachScreen(options, judge) {
  for (const screen of CHOSEN) {
    const pages = [...((screen.filled ?? true) ? RACK.map((garment) => pageOf(garment)) : []), ...(screen.pages ?? [])];
    const context = { ...options.context, ...stored(await address(), pages) };
    const before = async (context) => {
      await options.before?.(context);
      await screen.before?.(context);
    };
    await visit({ ...options, path: screen.path, context, args: [...(options.args ?? []), ...(screen.args ?? [])], before }, async ({ page, context }) => {
      await screen.act?.(page);
      await settled(page);
      await judge(page, screen.name, context);
    });
  }
}
