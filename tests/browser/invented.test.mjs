// The invented rack: one tap adds it, one takes it out, each garment opens on every screen, and nothing of it touches one's own.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { visit } from "./harness.mjs";
import { begin, go, kept, reload, until } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const FILE = JSON.parse(await readFile(new URL("../../web/invented-rack.json", import.meta.url), "utf8"));
const rows = (page) => main(page).locator(".rack-row");
const add = async (page) => {
  await main(page).getByRole("button", { name: "Look round in an invented rack" }).click();
  await until(() => rows(page).count(), (count) => count >= FILE.count, "the invented garments");
};

test("an empty rack offers it, one tap adds it, it survives a reload, one tap takes it out, and undo brings it back", async () => {
  await visit({}, async ({ page }) => {
    await add(page);
    assert.equal(await rows(page).count(), FILE.count);
    await kept(page);
    await reload(page);
    // Rows are laid in turns.
    await until(() => rows(page).count(), (count) => count === FILE.count, "the garments again");
    await main(page).getByRole("button", { name: "Take the invented rack out" }).click();
    await main(page).getByRole("heading", { name: "Take a garment in your hands" }).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await until(() => rows(page).count(), (count) => count === FILE.count, "the garments back");
    await main(page).getByRole("button", { name: "Take the invented rack out" }).click();
    await until(() => rows(page).count(), (count) => count === 0, "an empty rack");
    await kept(page);
    await reload(page);
    assert.equal(await rows(page).count(), 0);
  });
});

test("one’s own garments and people stay when it goes, and it can be added from the settings", async () => {
  await visit({}, async ({ page }) => {
    await begin(page, { label: "My own", price: "55" });
    await go(page, "#/settings", "Settings");
    await main(page).getByRole("button", { name: "Look round in an invented rack" }).click();
    await main(page).getByText(`${FILE.count} garments here are invented.`).waitFor();
    await go(page, "#/guesses", "Your guesses");
    await main(page).getByRole("link", { name: /Straight, dark indigo/ }).waitFor();
    await go(page, "#/people", "People");
    await main(page).getByText("Robin (invented)").waitFor();
    await go(page, "#/settings", "Settings");
    await main(page).getByRole("button", { name: "Take the invented rack out" }).click();
    await go(page, "#/", "Rack");
    await until(() => rows(page).count(), (count) => count === 1, "one garment");
    assert.match(await rows(page).innerText(), /My own/);
  });
});

test("every screen of each of its garments opens without a fault", async () => {
  await visit({}, async ({ page }) => {
    await add(page);
    for (const { id, fit } of FILE.garments) {
      for (const [screen, sign] of [
        ["result", ".tape svg"],
        ["checks", "a"],
        ["ticket", "h2"],
        ["tape", "h2"],
        ["details", "input"],
        ...(fit ? [["fit", "h2"]] : []),
      ]) {
        await page.evaluate((to) => (window.location.hash = to), `#/garment/${id}/${screen}`);
        await main(page).locator(sign).first().waitFor();
      }
    }
    assert.equal(await page.locator("#crash").isVisible(), false);
  });
});

test("where it cannot be fetched a sentence says so, and it can be tried again", async () => {
  await visit({}, async ({ page, problems }) => {
    await page.route("**/invented-rack.json", (route) => route.abort());
    await main(page).getByRole("button", { name: "Look round in an invented rack" }).click();
    await main(page).getByRole("alert").filter({ hasText: "could not be fetched" }).waitFor();
    // Provoked here.
    problems.length = 0;
    await page.unroute("**/invented-rack.json");
    await add(page);
  });
});
