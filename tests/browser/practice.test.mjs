// Practice: a run by its code is the same for two people, a run of one's own is kept as skill, and a wrong code says why.

import assert from "node:assert/strict";
import { test } from "node:test";
import { visit } from "./harness.mjs";
import { go, reload, until } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const card = (page) => main(page).locator(".practice-question");

/** What is asked, as it is drawn and worded. */
const asked = (page) =>
  card(page).evaluate((card) => [card.querySelector("h2").textContent, ...[...card.querySelectorAll(".practice-shown path, .practice-evidence b")].map((part) => part.getAttribute("d") ?? part.textContent)].join("|"));

/** Answers with the first choice there is, and returns whether it was right. */
async function answer(page) {
  const choice = card(page).locator(".practice-choices button").first();
  if (await choice.isVisible()) {
    await choice.click();
  } else {
    await card(page).locator("label.chip").nth(2).click();
    await card(page).getByRole("button", { name: "Answer" }).click();
  }
  await card(page).locator(".practice-told").waitFor();
  return (await card(page).locator(".practice-told").getAttribute("data-right")) === "true";
}

test("a run by its code asks two people the same, whatever they answer", async () => {
  const runs = [];
  let code;
  for (const first of [true, false]) {
    await visit({}, async ({ page }) => {
      await go(page, "#/practice", "Practise");
      if (first) {
        await main(page).getByText("Hand out a run").click();
        code = await main(page).locator(".practice-code").innerText();
        assert.match(code, /^[2-9A-Z]{4}-[2-9A-Z]{4}$/);
      }
      const field = main(page).getByLabel("A code that you were given");
      await field.fill("2222-2223");
      await field.blur();
      await main(page).getByText("This code does not check.").waitFor();
      await field.fill(code.toLowerCase());
      await field.blur();
      const questions = [];
      for (let place = 0; place < 12; place += 1) {
        await card(page).waitFor();
        questions.push(await asked(page));
        await answer(page);
        await card(page).getByRole("button", { name: "Next" }).click();
        await until(async () => (await main(page).locator(".practice-told").count()) === 0, Boolean, "the next question");
      }
      await main(page).getByText(new RegExp(`The run ${code}`)).waitFor();
      runs.push(questions);
    });
  }
  assert.equal(new Set(runs[0]).size, 12);
  assert.deepEqual(runs[0], runs[1]);
});

test("what was answered is kept, told with its width, and forgotten only with a way back", async () => {
  await visit({}, async ({ page }) => {
    await go(page, "#/practice", "Practise");
    // One topic alone: untick all the others.
    for (const name of ["Count the stitches", "Grade the pucker", "Restarts and skips", "Seams from inside", "Whiskers", "The weave", "Steepness of a twill", "Yarn or print", "Whole garments"]) {
      await main(page).getByText(name, { exact: true }).first().click();
    }
    await main(page).getByRole("button", { name: "Start", exact: true }).click();
    let right = 0;
    for (let place = 0; place < 6; place += 1) {
      right += Number(await answer(page));
      if (place < 5) await card(page).getByRole("button", { name: "Next" }).click();
    }
    await main(page).getByRole("button", { name: "Stop here" }).click();
    await main(page).getByRole("heading", { name: `${right} of 6 right` }).waitFor();
    const kept = JSON.parse(await page.evaluate(() => window.localStorage.getItem("garment-assay/practice")));
    assert.equal(kept.trials.length, 6);
    assert.equal(kept.trials.filter((trial) => trial.right).length, right);
    await reload(page);
    await go(page, "#/practice", "Practise");
    await main(page).getByText(/ to .* · 6 answers/).waitFor();
    await main(page).getByRole("button", { name: "Forget all of it" }).click();
    await until(async () => (await main(page).getByText(/· 6 answers/).count()) === 0, Boolean, "it to be forgotten");
    await page.getByRole("button", { name: "Undo" }).last().click();
    await main(page).getByText(/ · 6 answers/).waitFor();
  });
});
