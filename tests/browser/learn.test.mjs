// Learning: from a check to its lesson and back with nothing lost, a course read by keyboard, marks that stay, and lessons without their
// longer text.

import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, visit } from "./harness.mjs";
import { begin, go, hash, question, reload, until } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const heading = (page, name, level) => main(page).getByRole("heading", { name, level, exact: true });
const unsure = (page) => main(page).getByRole("checkbox", { name: "I am not sure of this" });
const TEXTS = /\/learn\/[a-z-]+\.txt$/;

test("a check leads to its lesson and back, and nothing half-said is lost", async () => {
  await visit({}, async ({ page }) => {
    const asked = [];
    page.on("request", (request) => TEXTS.test(request.url()) && asked.push(new URL(request.url()).pathname));
    await begin(page, { label: "To be read about" });
    const [before, where] = [await question(page), hash(page)];
    await main(page).getByText("I am not sure of this").click();
    assert.ok(await unsure(page).isChecked());
    assert.deepEqual(asked, [], "texts are fetched before anybody reads");

    await main(page).getByRole("link", { name: "Read about this check" }).click();
    await heading(page, "What you may find", 2).waitFor();
    await settled(page);
    const [, , id, , check] = where.split("/");
    assert.equal(hash(page), `#/learn/jeans/${check}/for/${id}`);
    assert.deepEqual(asked, ["/learn/jeans.txt"]);
    // The question stands there once for the eye and once for the ear; the check itself is out of both.
    await heading(page, before, 2).waitFor();
    for (const name of ["What becomes of it", "What it does not tell", "How you may be misled", "How it is faked", "How well this is known"]) {
      await heading(page, name, 3).waitFor();
    }
    assert.equal(await main(page).getByRole("radio").count(), 0);
    // The screen's own heading has the keyboard, not that of the check which is out of sight.
    await until(() => page.evaluate(() => document.activeElement.localName), (name) => name === "h1", "the heading to have the keyboard");

    await main(page).getByRole("link", { name: "Back to the check", exact: true }).first().click();
    await main(page).getByRole("radio").first().waitFor();
    assert.equal(hash(page), where);
    assert.equal(await question(page), before);
    assert.ok(await unsure(page).isChecked(), "the tick is lost");
    // The browser's own way back leads there too.
    await main(page).getByRole("link", { name: "Read about this check" }).click();
    await heading(page, "What you may find", 2).waitFor();
    await page.goBack();
    await main(page).getByRole("radio").first().waitFor();
    assert.ok(await unsure(page).isChecked());
    assert.equal(asked.length, 1, "fetched once");
  });
});

test("a course is read by keyboard, its marks stay, and are forgotten only with a way back", async () => {
  await visit({}, async ({ page }) => {
    await main(page).getByRole("link", { name: /^Or learn first/ }).click();
    await main(page).getByText("You have read none yet.").waitFor();
    await main(page).getByRole("link", { name: /^Jeans 0 of \d+ read$/ }).click();
    await heading(page, "First: the 5 that tell most", 2).waitFor();
    await settled(page);
    const order = await main(page).locator(".lessons a b").allInnerTexts();
    await main(page).getByRole("link", { name: /^Begin: / }).click();
    for (const [place, name] of order.slice(0, 2).entries()) {
      await heading(page, name, 1).waitFor();
      await main(page).getByText(`lesson ${place + 1} of ${order.length}`).waitFor();
      const on = main(page).getByRole("link", { name: "Read: next lesson" });
      await on.focus();
      await page.keyboard.press("Enter");
    }
    await heading(page, order[2], 1).waitFor();
    await main(page).getByRole("link", { name: `Before: ${order[1].toLowerCase()}` }).click();
    await heading(page, order[1], 1).waitFor();
    await main(page).getByRole("button", { name: "Mark as not read" }).click();
    await main(page).getByRole("link", { name: "Read: next lesson" }).waitFor();

    const kept = JSON.parse(await page.evaluate(() => window.localStorage.getItem("garment-assay/lessons")));
    assert.equal(kept.read.length, 1);
    await reload(page);
    await go(page, "#/learn", "Learn");
    await main(page).getByRole("link", { name: /^Jeans 1 of \d+ read$/ }).waitFor();
    await main(page).getByRole("button", { name: "Forget what I read" }).click();
    await main(page).getByText("You have read none yet.").waitFor();
    await page.getByRole("button", { name: "Undo" }).last().click();
    await main(page).getByRole("link", { name: /^Jeans 1 of \d+ read$/ }).click();
    await main(page).getByRole("link", { name: `Go on: ${order[1].toLowerCase()}` }).waitFor();
  });
});

test("the last lesson leads back to its course, and addresses that nobody made to what there is", async () => {
  await visit({}, async ({ page }) => {
    await go(page, "#/learn/jeans", "Jeans: the course");
    await main(page).locator(".lessons a").last().click();
    await main(page).getByRole("link", { name: "Read: back to the course" }).click();
    await main(page).getByText(/1 of \d+ read/).waitFor();
    await go(page, "#/learn/jeans/no-such-check", "Jeans: the course");
    await go(page, "#/learn/no-such-family", "Learn");
    // Of a garment that is gone: the lesson stays, the garment goes from its address.
    const first = await main(page).locator(".courses a").first().getAttribute("href");
    await go(page, `${first}`, "Jeans: the course");
    const lesson = await main(page).locator(".lessons a").first().getAttribute("href");
    await go(page, `${lesson}/for/nobody`, "What you may find");
    await until(() => hash(page), (now) => now === lesson, "the address without the garment");
  });
});

test("without its text a lesson says so and shows the rest, and the next opening tries again", async () => {
  let gone = true;
  const before = (context) => context.route(TEXTS, (route) => (gone ? route.abort() : route.continue()));
  await visit({ before }, async ({ page, problems }) => {
    await go(page, "#/learn/woven-shirt/collar", "The collar");
    await main(page).getByText("There is more to read, and it could not be fetched.").waitFor();
    await heading(page, "How telling it is", 2).waitFor();
    await main(page).getByText("The best answer alone makes that").waitFor();
    assert.ok(problems.every((problem) => /learn\/woven-shirt\.txt/.test(problem) || /Failed to load resource/.test(problem)), problems.join("\n"));
    gone = false;
    await go(page, "#/learn/woven-shirt/cuff", "The cuffs");
    await heading(page, "How it is faked", 3).waitFor();
    problems.length = 0;
  });
});

test("what is no text of ours is not shown, and the sentence says what to do", async () => {
  const before = (context) => context.route(TEXTS, (route) => route.fulfill({ body: "<!doctype html><p>Sign in to this network" }));
  await visit({ before }, async ({ page }) => {
    await go(page, "#/learn/t-shirt/neck-rib", "The neck");
    await main(page).getByText("There is more to read, and it cannot be shown.").waitFor();
    assert.equal(await main(page).getByText("Sign in").count(), 0);
  });
});

test("of two drawn answers the worse is asked for, and both are named once one was chosen", async () => {
  await visit({}, async ({ page }) => {
    await go(page, "#/learn/jeans/pucker", "Seam pucker");
    const card = main(page).locator(".which-worse");
    const choices = card.getByRole("button");
    assert.equal(await choices.count(), 2);
    assert.deepEqual(await choices.locator("span").allInnerTexts(), ["The first", "The second"]);
    const levels = await main(page).locator(".lesson-levels b").allInnerTexts();
    await choices.first().click();
    const named = await until(() => choices.locator("span").allInnerTexts(), (names) => !names.includes("The first"), "their names");
    const [one, other] = named.map((name) => levels.indexOf(name));
    assert.ok(one >= 0 && other >= 0 && Math.abs(one - other) === 1, named.join(", "));
    await card.getByText(one < other ? "Yes, that is the worse of the two." : "The other is the worse.").waitFor();
    await choices.nth(1).click();
    await card.getByText(one < other ? "The other is the worse." : "Yes, that is the worse of the two.").waitFor();
  });
});
