// Garments side by side, the gap between two tickets, a stranger between two, and the habit in guesses.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isTooWide, smallTargets, visit, violations } from "./harness.mjs";
import { GUESSED, RACK, YEN } from "./rack.mjs";
import { go, hash, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const card = (page, name) => main(page).locator("section.card").filter({ has: page.getByRole("heading", { name }) });
const beside = (...garments) => `#/beside/${garments.map(({ id }) => id).join("/")}`;

/** Judged by axe, by width, and by the size of what is pressed. */
async function sound(page) {
  assert.deepEqual(await violations(page), []);
  assert.ok(!(await isTooWide(page)));
  assert.deepEqual(await smallTargets(page), []);
}

/** The amounts of the gap's table, the gap itself last. */
async function amounts(page) {
  await card(page, "What the gap in price pays for").locator("summary").click();
  const cells = await card(page, "What the gap in price pays for").locator("tbody td").allInnerTexts();
  return cells.map((text) => Number(text.split(" ±")[0].replace("−", "-").replaceAll("\u202f", "")));
}

test("two jeans are ticked on the rack, set side by side, and the steps add up to the gap", async () => {
  await visitWith(RACK, { size: "small" }, async ({ page }) => {
    await main(page).getByRole("button", { name: "Choose" }).click();
    assert.ok(await main(page).getByRole("button", { name: "Set side by side" }).isDisabled());
    await main(page).getByRole("checkbox", { name: /^Pale tapered/ }).check();
    await main(page).getByText("1 chosen. Choose another to set it beside.").waitFor();
    await main(page).getByRole("checkbox", { name: /^Dark rigid/ }).check();
    await sound(page);
    await main(page).getByRole("link", { name: "Set side by side" }).click();
    await page.getByRole("heading", { name: "Side by side" }).waitFor();
    assert.equal(hash(page), beside(RACK[1], RACK[0]));
    await main(page).getByText("B is better made than A", { exact: false }).waitFor();
    await card(page, "What the gap in price pays for").getByText(/^B asks EUR\s195.10 more than A\. What you checked accounts for about EUR\s\d+ of that/).waitFor();
    await sound(page);

    const parts = await amounts(page);
    const gap = parts.pop();
    assert.ok(Math.abs(gap - 195.1) < 0.05, `${gap}`);
    // Each is rounded to what its spread deserves, so the sum may miss by half of that for each.
    assert.ok(Math.abs(parts.reduce((sum, part) => sum + part, 0) - gap) < 0.05 * parts.length * 10, `${parts}`);
    assert.ok(parts.length > 4);

    const before = await card(page, "Where they differ").locator(".sbs-row").count();
    await main(page).getByRole("button", { name: /^Show all/ }).click();
    await until(() => card(page, "Where they differ").locator(".sbs-row").count(), (count) => count > before, "more rows");
    await sound(page);
  });
});

test("no more than four stand side by side, and leaving it brings the rack back", async () => {
  await visitWith(RACK, { size: "desk" }, async ({ page }) => {
    await main(page).getByRole("button", { name: "Choose" }).focus();
    await page.keyboard.press("Enter");
    const boxes = main(page).getByRole("checkbox");
    for (const place of [0, 1, 2, 3]) {
      await boxes.nth(place).focus();
      await page.keyboard.press("Space");
    }
    await main(page).getByText("4 chosen.", { exact: true }).waitFor();
    await boxes.nth(4).focus();
    await page.keyboard.press("Space");
    await main(page).getByText("5 chosen. Side by side there is room for 4.").waitFor();
    assert.ok(await main(page).getByRole("button", { name: "Set side by side" }).isDisabled());
    await boxes.nth(4).focus();
    await page.keyboard.press("Space");
    await main(page).getByRole("link", { name: "Set side by side" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Side by side" }).waitFor();
    assert.equal(await main(page).getByRole("list", { name: "Garments" }).getByRole("listitem").count(), 4);
    await sound(page);
    await page.goBack();
    await main(page).getByRole("button", { name: "Choose" }).click();
    await main(page).getByRole("button", { name: "Leave it" }).click();
    await main(page).getByRole("link", { name: "Check a garment" }).waitFor();
  });
});

test("a stranger is placed between two that are known in one tap, and resembles one in this and the other in that", async () => {
  await visitWith(RACK, { path: beside(RACK[2], RACK[0], RACK[1]) }, async ({ page }) => {
    await main(page).getByRole("button", { name: "Place A between C and B" }).click();
    const stranger = card(page, "A stranger between two");
    await stranger.getByText(/^By \d+ checks in which C and B differ, A (stands \d+ per cent of the way from C to B, give or take \d+|lies beyond)/).waitFor();
    await stranger.getByText(/^Most like B in \d+ of \d+/).waitFor();
    await sound(page);
  });
});

test("tickets in two currencies meet by the exchange in the rates, and it says so", async () => {
  await visitWith([...RACK, YEN], { path: beside(RACK[0], YEN) }, async ({ page }) => {
    // 24 000 yen at 150 for a dollar and 0.88 euros for one: 140.80.
    await card(page, "Ticket").getByText("about EUR 140").waitFor();
    await card(page, "Ticket").getByText(/^Converted at 0\.88 EUR for 1 USD \(judgement/).waitFor();
    await card(page, "What the gap in price pays for").getByText(/^A asks about EUR\s74 more than B\./).waitFor();
    await sound(page);
    await card(page, "Ticket").getByRole("link", { name: "Change the rates" }).click();
    await page.getByRole("heading", { name: "Rates" }).waitFor();
    await main(page).getByLabel("Market").selectOption("jp");
    await go(page, beside(RACK[0], YEN), "Side by side");
    await card(page, "Ticket").getByText("In JPY").waitFor();
  });
});

test("what cannot be set side by side says why, and a price that lies face down stays there", async () => {
  await visitWith(RACK, { path: beside(RACK[0], RACK[6]) }, async ({ page }) => {
    await card(page, "What the gap in price pays for").getByText("A ticket lies face down.", { exact: false }).waitFor();
    assert.doesNotMatch(await main(page).innerText(), /12\s?900/);
    await go(page, beside(RACK[0], RACK[5]), "Side by side");
    await main(page).getByText("One is a retail ticket and the other a wholesale price.", { exact: false }).waitFor();
    await go(page, "#/beside/nobody/a1-rigid", "Side by side");
    await page.getByRole("link", { name: /^My everyday pair/ }).click();
    await until(() => hash(page), (now) => now === beside(RACK[0], RACK[2]), "the two side by side");
  });
  await visit({ path: "#/beside" }, async ({ page }) => {
    await page.getByRole("heading", { name: "It takes two" }).waitFor();
    await sound(page);
  });
});

test("guesses stand in a picture, and a habit is named only once there are enough", async () => {
  await visitWith(GUESSED.slice(0, 3), { path: "#/", size: "small" }, async ({ page }) => {
    await main(page).getByRole("link", { name: "Your guesses, and the habit in them" }).click();
    await page.getByRole("heading", { name: "Your guesses" }).waitFor();
    await main(page).getByText(/^2 more guesses until anything can be said/).waitFor();
    assert.doesNotMatch(await main(page).innerText(), /too narrow|You guess too/);
    await sound(page);
  });
  await visitWith([...GUESSED, RACK[6]], { path: "#/guesses", size: "small" }, async ({ page }) => {
    await main(page).getByText("2 of 9 inside").waitFor();
    await main(page).getByText(/^Your ranges look too narrow/).waitFor();
    await main(page).getByText(/^You guess too low/).waitFor();
    await main(page).getByText(/^The tool.s own ranges.* held 8 of 9\./).waitFor();
    await main(page).locator("summary").filter({ hasText: "Numbers" }).click();
    await main(page).getByRole("cell", { name: /^EUR\s79$/ }).waitFor();
    await sound(page);
  });
  await visit({ path: "#/guesses" }, async ({ page }) => {
    await page.getByRole("heading", { name: "Guess before you look" }).waitFor();
    await sound(page);
  });
});
