// A second-hand piece: the switch, the checks of wear beside those of the make, both readings, and what the switch does not touch.

import assert from "node:assert/strict";
import { test } from "node:test";
import { RACK } from "./rack.mjs";
import { answer, answered, answers, begin, garmentId, go, headline, kept, openCheck, openResult, question, reload, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const SWITCH = /^Second-hand/;
/** Checks of wear, as the list names them, and the answer given, counted from the best. */
const WEAR = [
  ["Stains on it", 0],
  ["Moths, mould and smell", 0],
  ["Wear where it rubs", 1],
  ["Cloth against the light", 1],
  ["Seams under strain", 2],
  ["Stretch that is left", 2],
];

const leftCard = (page) => main(page).locator("section").filter({ has: page.getByRole("heading", { name: "What is left in it" }) });
/** What the second tape on the result says. */
const leftSaid = async (page) => (await leftCard(page).locator(".tape-lead").innerText()).replace(/\s+/g, " ").trim();

test("a second-hand sweater gets two readings, and neither moves the other", async () => {
  await visitWith([], {}, async ({ page }) => {
    await go(page, "#/new", "Check a garment");
    await page.getByText(SWITCH).click();
    await page.locator(".families label").filter({ hasText: "Sweater or cardigan" }).click();
    await page.getByRole("button", { name: "Start checking" }).click();
    await answers(page).first().waitFor();
    await kept(page);
    const id = garmentId(page);

    // One answer about the make, then six about wear: each has a drawing for each answer, and a place on a sweater to look.
    await openCheck(page, /Evenness of the loops/);
    await answer(page, 2);
    const made = await headline(page);
    for (const [name, place] of WEAR) {
      await openCheck(page, new RegExp(name));
      assert.equal(await main(page).locator("label:has(input[type=radio]) svg").count(), await answers(page).count(), name);
      await main(page).getByText("what is left in it", { exact: true }).waitFor();
      await answer(page, place);
    }
    // The lesson of a check of wear stands in a course for all families, and leads back to the check.
    await openCheck(page, /Stretch that is left/);
    await main(page).getByRole("link", { name: "Read about this check" }).click();
    await until(() => new URL(page.url()).hash, (now) => now === `#/learn/second-hand/worn-stretch/for/${id}`, "the lesson's address");
    await main(page).getByText(/^Of second-hand pieces that nobody has looked at, \d+ % count as Much left or As new/).waitFor();
    await page.getByRole("heading", { name: "How it is faked" }).waitFor();
    await main(page).getByRole("link", { name: "Read: back to the check" }).click();
    await answers(page).first().waitFor();

    // What is worth doing is said where something was found.
    await openCheck(page, /Seams under strain/);
    await main(page).getByText(/^What to do:/).waitFor();
    await main(page).getByText(/Ten minutes with needle and thread/).waitFor();
    await main(page).getByText(/Armpits, shoulders, neck/).waitFor();

    await openResult(page);
    assert.equal(await headline(page), made, "wear moves no band of the make");
    const left = await leftSaid(page);
    assert.match(left, /left|life|Worn out|As new|Too early/);
    assert.equal(await leftCard(page).locator(".moved li").count(), WEAR.length);
    assert.equal(await main(page).getByText(/explains neither what this one asks/).count(), 1);
    assert.ok((await main(page).locator("details").innerText()).includes("Take care"));

    // Another answer about the make leaves what is left as it was.
    await openCheck(page, /How close it is knitted/);
    await answer(page, 3);
    await openResult(page);
    assert.equal(await leftSaid(page), left);
    const both = [await headline(page), left];

    // It survives a reload, and the rack says it in a word.
    await reload(page);
    await go(page, `#/garment/${id}/result`, "What this does not say");
    assert.deepEqual([await headline(page), await leftSaid(page)], both);
    await go(page, "#/", "Rack");
    await main(page).getByText(/second-hand: /).waitFor();

    // Off, the checks of wear are gone from the list and the result; on again, their answers are where they were.
    await go(page, `#/garment/${id}/details`, "Details");
    await page.getByText(SWITCH).click();
    await kept(page);
    await go(page, `#/garment/${id}/result`, "What this does not say");
    assert.equal(await leftCard(page).count(), 0);
    assert.equal(await headline(page), both[0]);
    assert.equal((await answered(page)).length, 2);
    assert.equal(await main(page).getByRole("heading", { name: /What is left in it/ }).count(), 0);
    await go(page, `#/garment/${id}/details`, "Details");
    await page.getByText(SWITCH).click();
    await kept(page);
    assert.equal((await answered(page)).length, 2 + WEAR.length);
    await main(page).getByRole("heading", { name: /What is left in it/ }).waitFor();
    await go(page, `#/garment/${id}/result`, "What this does not say");
    assert.deepEqual([await headline(page), await leftSaid(page)], both);
  });
});

test("an answer about wear is taken back like any other, and the walk puts both kinds", async () => {
  await visitWith([], {}, async ({ page }) => {
    await begin(page, { kind: "Jeans", label: "Rail by the door" });
    const id = garmentId(page);
    await go(page, `#/garment/${id}/details`, "Details");
    await page.getByText(SWITCH).click();
    await kept(page);

    await openCheck(page, /Wear where it rubs/);
    await answer(page, 3);
    assert.match(await headline(page), /left|Worn out|Too early/);
    await main(page).getByRole("button", { name: "Undo" }).click();
    await until(() => headline(page), (said) => said.startsWith("Not checked yet"), "the answer to go");
    // Undo goes on to the switch itself.
    await main(page).getByRole("button", { name: "Undo" }).click();
    await kept(page);
    await go(page, `#/garment/${id}/details`, "Details");
    assert.equal(await page.getByRole("checkbox", { name: SWITCH }).isChecked(), false);
    await page.getByText(SWITCH).click();
    await kept(page);

    // Ten steps of the walk.
    await go(page, `#/garment/${id}`, /./);
    const kinds = [];
    for (let made = 0; made < 10; made += 1) {
      await answers(page).first().waitFor();
      kinds.push((await main(page).getByText("what is left in it", { exact: true }).count()) > 0);
      await answer(page, 1);
      const before = await question(page);
      await main(page).getByRole("button", { name: "Next check" }).click();
      await until(() => question(page), (now) => now !== before, "the next check");
    }
    assert.ok(kinds.includes(true) && kinds.includes(false), JSON.stringify(kinds));
  });
});

test("the switch is found and turned with keys alone", async () => {
  await visitWith([], {}, async ({ page }) => {
    await go(page, "#/new", "Check a garment");
    const box = page.getByRole("checkbox", { name: SWITCH });
    for (let pressed = 0; pressed < 40 && !(await box.evaluate((element) => element === document.activeElement)); pressed += 1) {
      await page.keyboard.press("Tab");
    }
    await page.keyboard.press("Space");
    assert.equal(await box.isChecked(), true);
    await page.getByLabel("A name for it").focus();
    await page.keyboard.press("Enter");
    await answers(page).first().waitFor();
    await kept(page);
    await go(page, `#/garment/${garmentId(page)}/checks`, "All checks");
    await main(page).getByRole("heading", { name: /What is left in it/ }).waitFor();
  });
});

test("old garments are new, and side by side says what is left only where one was worn", async () => {
  await visitWith(RACK.slice(0, 2), {}, async ({ page }) => {
    const [first, second] = RACK;
    await go(page, `#/beside/${first.id}/${second.id}`, "Side by side");
    assert.equal(await main(page).getByText("What is left in it").count(), 0);
    await go(page, `#/garment/${first.id}/details`, "Details");
    assert.equal(await page.getByRole("checkbox", { name: SWITCH }).isChecked(), false);
    await page.getByText(SWITCH).click();
    await kept(page);
    await go(page, `#/beside/${first.id}/${second.id}`, "Side by side");
    await main(page).getByText("What is left in it").waitFor();
    await main(page).getByText(/explains no second-hand ticket/).waitFor();
    await go(page, `#/garment/${first.id}/ticket`, "Behind the ticket");
    await main(page).getByText(/explains neither what this one asks/).waitFor();
    assert.equal(await main(page).getByText("Learn from this garment’s ticket").count(), 0);
  });
});
