// That every screen can be read and used by everyone: axe, no sideways scrolling, and targets that a finger finds.

import assert from "node:assert/strict";
import { test } from "node:test";
import { onEveryScreen } from "./every_screen.mjs";
import { isTooWide, smallTargets, violations } from "./harness.mjs";

/** A window in which text is that large, chosen in the app. */
const withText = (size) => ({
  before: (context) =>
    context.addInitScript((size) => {
      if (window.location.protocol.startsWith("http")) window.localStorage.setItem("garment-assay/settings", JSON.stringify({ text_size: size }));
    }, size),
});

/**
 * What axe finds. Where a pinned bar covers part of a link, axe calls the link too small; so whatever it finds too small is judged
 * again in a window as tall as the page, where nothing is covered.
 */
async function axe(page) {
  const found = await violations(page);
  if (!found.some((line) => line.startsWith("target-size"))) return found;
  const viewport = page.viewportSize();
  await page.setViewportSize({ ...viewport, height: await page.evaluate(() => document.documentElement.scrollHeight + 200) });
  const again = await violations(page);
  await page.setViewportSize(viewport);
  return [...found.filter((line) => !line.startsWith("target-size")), ...again.filter((line) => line.startsWith("target-size"))];
}

for (const size of ["phone", "desk"]) {
  for (const scheme of ["light", "dark"]) {
    test(`axe finds nothing on any screen: ${size}, ${scheme}`, async () => {
      assert.deepEqual(await onEveryScreen({ size, scheme, context: { reducedMotion: "reduce" } }, axe), []);
    });
  }
}

test("axe finds nothing on any screen with text at twice its size", async () => {
  assert.deepEqual(await onEveryScreen({ ...withText("200"), context: { reducedMotion: "reduce" } }, axe), []);
});

test("no screen can be moved sideways, 320 pixels wide", async () => {
  const judge = async (page) => ((await isTooWide(page)) ? ["too wide"] : []);
  assert.deepEqual(await onEveryScreen({ size: "small", context: { viewport: { width: 320, height: 640 } } }, judge), []);
});

test("no screen can be moved sideways with text at twice its size, 360 pixels wide", async () => {
  const judge = async (page) => {
    assert.equal(await page.evaluate(() => document.documentElement.dataset.text), "200");
    return (await isTooWide(page)) ? ["too wide"] : [];
  };
  assert.deepEqual(await onEveryScreen({ size: "small", ...withText("200") }, judge), []);
});

test("whatever is pressed is large enough for a finger", async () => {
  assert.deepEqual(await onEveryScreen({ size: "small" }, (page) => smallTargets(page)), []);
});
