// A long page is laid out in turns (src/app/parts/laid.rs): what stands stays, and the rest is put after it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { visit } from "./harness.mjs";
import { go } from "./steps.mjs";

test("the page of numbers is laid on part by part, and no part is made twice", async () => {
  await visit({}, async ({ page }) => {
    await page.locator("html[data-whole=yes]").waitFor({ state: "attached" });
    await go(page, "#/settings", "Settings");
    await page.evaluate(() => {
      window.made = [];
      const watch = new window.MutationObserver(() => {
        const main = document.querySelector("main");
        if (!location.hash.startsWith("#/numbers") || !main?.querySelector("section.card")) return;
        for (const section of main.querySelectorAll("section.card")) if (!window.made.includes(section)) window.made.push(section);
        (window.counts ??= []).push(main.querySelectorAll("section.card").length);
      });
      watch.observe(document.body, { subtree: true, childList: true });
    });
    await go(page, "#/numbers", "Where the numbers come from");
    await page.locator("main:not(:has([aria-busy=true]))").waitFor();
    const { made, standing, counts } = await page.evaluate(() => ({
      made: window.made.length,
      standing: window.made.filter((section) => section.isConnected).length,
      counts: [...new Set(window.counts)],
    }));
    assert.ok(counts.length > 3, `laid in turns, not at once: ${counts} parts stood`);
    assert.equal(standing, made, "what was laid first is still what stands");
    assert.equal(made, counts.at(-1), "each part was made once");
  });
});
