// The rates: changing one, putting it back, undo, another market, and that all of it travels.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isTooWide, smallTargets, visit, violations } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { chooseFile, exportAll, go, plan, reload, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
/** The rate of exactly that name: "Zip" is not "Zip of a dress". */
const row = (page, name) => main(page).locator("li.rate").filter({ has: page.getByText(name, { exact: true }) });
/** A rate of the other family has a name much like it. */
const THREAD = "Thread, a pair of jeans";
/** The stored settings. */
const settings = async (page) => JSON.parse(await page.evaluate(() => window.localStorage.getItem("garment-assay/settings")));

/** Unfolds a group of rates. */
const unfold = (page, name) => main(page).locator("summary").filter({ hasText: name }).click();

/** Opens the fields of a rate and types into them. */
async function type(page, name, texts) {
  await row(page, name).getByRole("button", { name: /^Change / }).click();
  for (const [label, text] of Object.entries(texts)) await row(page, name).getByLabel(label, { exact: true }).fill(text);
}
const use = (page, name) => row(page, name).getByRole("button", { name: "Use these" }).click();

test("a rate is changed, marked as yours, put back, and undone, and the day stands beside it", async () => {
  await visit({ path: "#/settings", size: "small" }, async ({ page }) => {
    await main(page).getByRole("link", { name: /^Rates/ }).click();
    await page.getByRole("heading", { name: "Rates" }).waitFor();
    await unfold(page, "Trims");
    await row(page, "Zip").getByText("0.12 – 0.6, usually 0.3").waitFor();
    await type(page, "Zip", { Low: "0.2", Usual: "0,5", High: "1" });
    await use(page, "Zip");
    await row(page, "Zip").getByText("0.2 – 1, usually 0.5").waitFor();
    await row(page, "Zip").getByText(/^yours, of \d+ \w+ 20\d\d$/).waitFor();
    assert.deepEqual(Object.keys((await settings(page)).rates), ["zip"]);
    const kept = (await settings(page)).rates.zip;
    assert.deepEqual([kept.low, kept.usual, kept.high], [0.2, 0.5, 1]);

    await page.getByRole("button", { name: "Undo" }).click();
    await row(page, "Zip").getByText("0.12 – 0.6, usually 0.3").waitFor();
    assert.deepEqual((await settings(page)).rates, {});

    await type(page, "Zip", { High: "0.7" });
    await use(page, "Zip");
    await type(page, THREAD, { High: "0.9" });
    await use(page, THREAD);
    await row(page, "Zip").getByRole("button", { name: "Put it back as it came: Zip" }).click();
    await until(async () => Object.keys((await settings(page)).rates), (keys) => keys.join() === "thread", "zip to be as it came");
    await type(page, "Labels, a pair of jeans", { High: "0.9" });
    await use(page, "Labels, a pair of jeans");
    await main(page).getByText("2 rates of this market are yours.").waitFor();
    await page.getByRole("button", { name: "Put every rate back as it came" }).click();
    await main(page).getByText("Every rate of this market is as it came.").waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await main(page).getByText("2 rates of this market are yours.").waitFor();
    assert.deepEqual(await violations(page), []);
    assert.deepEqual(await smallTargets(page), []);
    assert.ok(!(await isTooWide(page)));
    await reload(page);
    await main(page).getByText("2 rates of this market are yours.").waitFor();
  });
});

test("a rate that cannot be gets a sentence, and nothing typed or kept is lost", async () => {
  await visit({ path: "#/rates" }, async ({ page }) => {
    await main(page).getByRole("searchbox").fill("overhead");
    await type(page, "Factory overhead", { Low: "3 %", Usual: "12", High: "dear" });
    await use(page, "Factory overhead");
    await row(page, "Factory overhead").getByRole("alert").filter({ hasText: "Start with a number" }).waitFor();
    for (const wrong of ["2", "-20", "1e9", ""]) {
      await row(page, "Factory overhead").getByLabel("High").fill(wrong);
      await use(page, "Factory overhead");
      await row(page, "Factory overhead").getByRole("alert").filter({ hasText: "Nothing was changed." }).waitFor();
      assert.equal(await row(page, "Factory overhead").getByLabel("Usual").inputValue(), "12");
    }
    // What is half typed stays while something else is looked for.
    await main(page).getByRole("searchbox").fill("zip");
    await main(page).getByRole("searchbox").fill("velvet");
    await main(page).getByText("No rate of this market fits that.").waitFor();
    await main(page).getByRole("searchbox").fill("overhead");
    assert.equal(await row(page, "Factory overhead").getByLabel("Usual").inputValue(), "12");
    assert.deepEqual(await violations(page), []);
    await row(page, "Factory overhead").getByLabel("High").fill("15");
    await page.keyboard.press("Enter");
    await row(page, "Factory overhead").getByText("3 – 15, usually 12").waitFor();
    const focus = await page.evaluate(() => document.activeElement.getAttribute("aria-label"));
    assert.equal(focus, "Change Factory overhead");
  });
});

test("market and rates go into the file that everything is exported to, and come back from it", async () => {
  await visitWith(RACK.slice(0, 1), { path: "#/rates" }, async ({ page }) => {
    await main(page).getByLabel("Market").selectOption("in");
    await unfold(page, "Exchange rate");
    await type(page, "Rupees for a dollar", { Low: "90", Usual: "91", High: "92" });
    await use(page, "Rupees for a dollar");
    await row(page, "Rupees for a dollar").getByText("90 – 92, usually 91").waitFor();
    const { text } = await exportAll(page);
    assert.equal(JSON.parse(text).settings.market, "in");

    await go(page, "#/rates", "Rates");
    await page.getByRole("button", { name: "Put every rate back as it came" }).click();
    await main(page).getByLabel("Market").selectOption("jp");
    await until(async () => (await settings(page)).market, (market) => market === "jp", "the market");
    await chooseFile(page, text);
    await plan(page).getByLabel(/^Replace/).check();
    await plan(page).getByRole("button", { name: "Replace" }).click();
    await go(page, "#/rates", "Rates");
    assert.equal(await main(page).getByLabel("Market").inputValue(), "in");
    await unfold(page, "Exchange rate");
    await row(page, "Rupees for a dollar").getByText("90 – 92, usually 91").waitFor();
    // Its own rates wait while another market is looked at.
    await main(page).getByLabel("Market").selectOption("uk");
    await main(page).getByText("1 of another market waits").waitFor();
  });
});

test("rates that a newer version wrote go along unread, and another window's are not written over", async () => {
  const stored = { market: "in", currency: "INR", rates: { glue: { low: 1, usual: 2, high: 3, as_of: "2026-01-02" } } };
  const before = (context) =>
    context.addInitScript((text) => {
      if (window.location.protocol !== "http:") return; // the empty page before the app's has no storage
      if (!window.localStorage.getItem("garment-assay/settings")) window.localStorage.setItem("garment-assay/settings", text);
    }, JSON.stringify(stored));
  await visit({ path: "#/rates", before }, async ({ page, reopen }) => {
    await main(page).getByText(/^1 more cannot be read/).waitFor();
    const other = await reopen();
    await unfold(page, "Trims");
    await type(page, "Zip", { High: "0.7" });
    await use(page, "Zip");
    await unfold(other, "Trims");
    await row(other, "Zip").getByText("0.12 – 0.7, usually 0.3").waitFor();
    await type(other, THREAD, { High: "0.9" });
    await use(other, THREAD);
    await until(async () => Object.keys((await settings(page)).rates).sort(), (keys) => keys.join() === "glue,thread,zip", "all three");
    assert.deepEqual((await settings(page)).rates.glue, stored.rates.glue);
  });
});

test("a rate that was changed is marked behind the ticket, in the part that it acts on and in no other", async () => {
  await visitWith([RACK[0]], { path: "#/rates" }, async ({ page }) => {
    await main(page).getByRole("heading", { name: "Rates" }).waitFor();
    await unfold(page, "Trims");
    await type(page, THREAD, { High: "0.9" });
    await use(page, THREAD);
    await row(page, THREAD).getByText(/^yours, of/).waitFor();
    await go(page, `#/garment/${RACK[0].id}/ticket`, "Behind the ticket");
    const changed = main(page).locator("small.changed");
    await until(() => changed.count(), (count) => count === 1, "one part marked");
    const marked = main(page).locator("details, li").filter({ has: page.locator("small.changed") });
    assert.match(await marked.first().innerText(), /Trims|Thread/);
  });
});
