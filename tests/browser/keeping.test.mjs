// The browser's promise is asked for once there is something to lose, and an export is spoken of where there is no promise.

import assert from "node:assert/strict";
import { test } from "node:test";
import { violations, visit } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { answer, begin, exportAll, go, next, openResult, reload, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const ASK = "What you note lies in this browser only";
const shown = (page, text) => page.getByText(text).count();

/** A browser that has promised nothing, and answers so when it is asked. */
const promising = (answer) => (context) =>
  context.addInitScript((answer) => {
    let given = false;
    window.asked = 0;
    if (!window.StorageManager) return; // the blank page before
    window.StorageManager.prototype.persisted = async () => given;
    window.StorageManager.prototype.persist = async () => {
      window.asked += 1;
      return (given = answer);
    };
  }, answer);
const asked = (page) => page.evaluate(() => window.asked);

test("the promise is asked for after some answers, by a tap, once", async () => {
  await visit({ before: promising(true) }, async ({ page }) => {
    assert.equal(await shown(page, ASK), 0, "nothing is there to lose");
    await begin(page, { label: "First" });
    for (let made = 0; made < 4; made += 1) {
      await answer(page, 0);
      assert.equal(await shown(page, ASK), 0, "not in the middle of a check");
      await next(page);
    }
    await openResult(page);
    await page.getByText(ASK).waitFor();
    assert.deepEqual(await violations(page), []);
    assert.equal(await asked(page), 0);
    await page.getByRole("button", { name: "Ask it to keep my notes" }).click();
    await page.getByText("The browser has promised to keep what you note here.").waitFor();
    assert.equal(await asked(page), 1);
    assert.equal(await shown(page, ASK), 0);
    await go(page, "#/settings", "Settings");
    await main(page).getByText("The browser has promised to keep your notes").waitFor();
  });
});

test("whoever says no is not asked again, and can still ask in the settings", async () => {
  await visit({ before: promising(false) }, async ({ page }) => {
    await begin(page, { label: "First" });
    for (let made = 0; made < 3; made += 1) {
      await answer(page, 0);
      await next(page);
    }
    await go(page, "#/", "Rack");
    await page.getByRole("button", { name: "No", exact: true }).click();
    await until(() => shown(page, ASK), (count) => count === 0, "the line gone");
    await reload(page);
    assert.equal(await shown(page, ASK), 0);
    assert.equal(await asked(page), 0);
    await go(page, "#/settings", "Settings");
    await main(page).getByRole("button", { name: "Ask it to keep my notes" }).click();
    await page.getByText("The browser has not promised it. Export now and then.").waitFor();
  });
});

const DAY = 86_400_000;
const ago = (days) => new Date(Date.now() - days * DAY).toISOString().slice(0, 10);
const garment = (id, days) => ({ id, family: "jeans", label: id, noted: ago(days) });
const ONLY_HERE = /in this browser only, which may throw away/;

test("garments in no file are spoken of after a while, until that is put off or they are exported", async () => {
  const old = [garment("one", 20), garment("two", 1)];
  await visitWith(old, { before: promising(false) }, async ({ page }) => {
    await page.getByText(ONLY_HERE).waitFor();
    await page.getByText(/^2 garments are in this browser only/).waitFor();
    await page.getByRole("button", { name: "Not now" }).click();
    await until(() => shown(page, ONLY_HERE), (count) => count === 0, "the line gone");
    await reload(page);
    assert.equal(await shown(page, ONLY_HERE), 0);
  });
  await visitWith(old, { before: promising(false) }, async ({ page }) => {
    await page.getByText(ONLY_HERE).waitFor();
    await page.getByRole("link", { name: "Export", exact: true }).click();
    await main(page).getByText("2 garments are in no export.").waitFor();
    await exportAll(page);
    await main(page).getByText(/^Last exported/).waitFor();
    await go(page, "#/", "Rack");
    assert.equal(await shown(page, ONLY_HERE), 0);
    await reload(page);
    assert.equal(await shown(page, ONLY_HERE), 0);
  });
  await visitWith([garment("new", 3)], { before: promising(false) }, async ({ page }) => {
    await go(page, "#/settings", "Settings");
    await main(page).getByText("1 garment is in no export.").waitFor();
    await go(page, "#/", "Rack");
    assert.equal(await shown(page, ONLY_HERE), 0, "three days are not long");
  });
  await visitWith(old, {}, async ({ page }) => {
    await main(page).getByText("two", { exact: true }).waitFor();
    assert.equal(await shown(page, ONLY_HERE), 0, "this browser has promised");
  });
});

test("the line is on the page from the start: nothing is pushed away by it", async () => {
  const moved = async (context) => {
    await promising(false)(context);
    await context.addInitScript(() => {
      window.moved = [];
      new window.PerformanceObserver((list) => window.moved.push(...list.getEntries().map(({ value }) => value))).observe({ type: "layout-shift", buffered: true });
    });
  };
  await visitWith(RACK, { before: moved }, async ({ page }) => {
    await page.getByText(ASK).waitFor();
    await page.waitForTimeout(500); // for what might still come
    // 0.1 is what Core Web Vitals call good; of this line alone it was 0.19.
    assert.ok((await page.evaluate(() => window.moved.reduce((sum, value) => sum + value, 0))) < 0.05, "something moved");
  });
});
