// A buyer's offer and lot: prices by quantity landed, a lot by a sample with what was found, and what the sample cannot tell.

import assert from "node:assert/strict";
import { test } from "node:test";
import { RACK } from "./rack.mjs";
import { go, kept, reload, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const id = RACK[0].id;
const field = (page, name) => main(page).getByLabel(name, { exact: true });
async function fill(page, name, text) {
  await field(page, name).fill(text);
  await field(page, name).blur();
}
async function price(page, from, amount) {
  await field(page, "From how many pieces").fill(from);
  await main(page).getByLabel(/^Price of a piece/).fill(amount);
  await main(page).getByRole("button", { name: "Add this price" }).click();
}
const landed = (page) => main(page).getByRole("region", { name: "Landed cost by quantity" });

test("an offer is noted, lands price by price, survives a reload and is taken back step by step", async () => {
  await visitWith(RACK.slice(0, 1), {}, async ({ page }) => {
    await go(page, `#/garment/${id}/result`, "Result");
    await main(page).getByRole("link", { name: "Offer", exact: true }).click();
    await page.getByRole("heading", { name: "Offer", exact: true }).waitFor();
    await main(page).getByText("Note a price, and you see what it comes to once landed.").waitFor();
    await fill(page, "Supplier", "Mill on the hill");
    await fill(page, "Style number", "0042");
    // The currency of the market that the rates start with.
    await field(page, "Currency").selectOption("EUR");
    await field(page, "What is in it").selectOption("FOB");
    await price(page, "300", "14");
    await price(page, "1000", "12,50");
    await fill(page, "Smallest order, pieces", "300");
    await main(page).getByLabel(/^Retail ticket/).fill("90");
    await main(page).getByLabel(/^Retail ticket/).blur();
    await until(() => landed(page).locator("tbody tr").count(), (count) => count === 2, "two rows");
    const cells = await landed(page).locator("tbody tr").evaluateAll((rows) => rows.map((row) => [...row.cells].map((cell) => cell.textContent)));
    assert.deepEqual(cells.map(([from]) => from), ["300", "1000"]);
    const figures = cells.map((row) => row.slice(1, 3).map((text) => Number(text.replace(/[^\d.]/g, ""))));
    assert.ok(figures[0][0] > 14 && figures[1][0] < figures[0][0], JSON.stringify(cells));
    assert.ok(figures[1][1] > figures[0][1], "more pieces leave more margin");
    // What is delivered with duty paid lands at its price.
    await field(page, "What is in it").selectOption("DDP");
    await until(() => landed(page).locator("tbody tr").first().innerText(), (text) => text.includes("14.00"), "the price itself");

    // What is no price says so, and nothing is lost.
    await price(page, "50", "much");
    await main(page).getByRole("alert").waitFor();
    assert.equal(await main(page).getByLabel(/^Price of a piece/).inputValue(), "much");
    await field(page, "Delivery from").fill("2027-02-01");
    await field(page, "Delivery to").fill("2027-03-01");
    await field(page, "Delivery to").blur();
    await main(page).getByRole("checkbox", { name: "On the short list" }).check();
    await kept(page);
    await reload(page);
    assert.equal(await field(page, "Style number").inputValue(), "0042");
    assert.deepEqual([await field(page, "Delivery from").inputValue(), await field(page, "Delivery to").inputValue()], ["2027-02-01", "2027-03-01"]);
    await main(page).getByRole("button", { name: /^Take away: from 300/ }).click();
    await until(() => landed(page).locator("tbody tr").count(), (count) => count === 1, "one row");
    await main(page).getByRole("button", { name: "Take back" }).click();
    await until(() => landed(page).locator("tbody tr").count(), (count) => count === 2, "two rows again");
    await main(page).getByRole("link", { name: "See the result" }).click();
    await main(page).getByText(/Mill on the hill · 0042 · on the short list/).waitFor();
  });
});

test("a lot of 200 at 1.0 follows the arrow to 50 pieces, fails at the second bad one, and says what it cannot tell", async () => {
  await visitWith(RACK.slice(0, 1), { size: "small" }, async ({ page }) => {
    await go(page, `#/garment/${id}/lot`, "Lot");
    await fill(page, "Pieces in the lot", "1");
    await main(page).getByRole("alert").filter({ hasText: "two pieces or more" }).waitFor();
    await fill(page, "Pieces in the lot", "200");
    const row = (name) => main(page).getByRole("row", { name: new RegExp(`^${name}`) });
    await field(page, "Limit for major").selectOption("1.0");
    await until(() => row("Major").innerText(), (text) => /50\s+1\s+2\s+0\s+H/.test(text), "letter H");
    await main(page).getByText(/Letter G has no plan at this limit; the table leads down to a larger sample, letter H/).waitFor();
    assert.equal(await main(page).locator(".lot-stand").getAttribute("data-stands"), "Not begun");
    await main(page).getByRole("img", { name: /^Chance to pass/ }).waitFor();

    const next = () => main(page).getByRole("button", { name: "Next piece" }).click();
    await next();
    await field(page, "Defect").selectOption("open-seam");
    assert.equal(await field(page, "Class").inputValue(), "major");
    await main(page).getByRole("button", { name: "Note it on this piece" }).click();
    await until(() => row("Major").innerText(), (text) => /50\s+1\s+2\s+1/.test(text), "one bad");
    await next();
    await field(page, "Defect").selectOption("own-words");
    await field(page, "In your words").fill("<b>crooked</b> label");
    await main(page).getByRole("button", { name: "Note it on this piece" }).click();
    await until(() => main(page).locator(".lot-stand").getAttribute("data-stands"), (stands) => stands === "Fails", "a verdict");
    await main(page).getByText("<b>crooked</b> label").waitFor();
    await kept(page);
    await reload(page);
    assert.equal(await main(page).locator(".lot-stand").getAttribute("data-stands"), "Fails");
    await main(page).getByRole("button", { name: /^Take away: <b>crooked/ }).click();
    await until(() => main(page).locator(".lot-stand").getAttribute("data-stands"), (stands) => stands === "Open", "open again");
    await fill(page, "Looked at", "50");
    await until(() => main(page).locator(".lot-stand").getAttribute("data-stands"), (stands) => stands === "Passes", "passes");
    await main(page).getByText(/no more than 9\.\d % of the lot is bad/).waitFor();
    await main(page).getByRole("button", { name: "Clear this inspection" }).click();
    await main(page).getByText(/From the number of pieces follows how many to look at/).waitFor();
    await main(page).getByRole("button", { name: "Take back" }).click();
    await until(() => main(page).locator(".lot-stand").count(), (count) => count === 1, "the inspection back");
  });
});
