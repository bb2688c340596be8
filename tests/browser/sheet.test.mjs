// A garment on one printed page: one page of A4 and of Letter however much was answered, its text complete, and a ticket that lies face
// down not on it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { readFile } from "node:fs/promises";
import { printed } from "./pdf.mjs";
import { JACKET, OFFERS, RACK } from "./rack.mjs";
import { go, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const INVENTED = JSON.parse(await readFile(new URL("../../web/invented-rack.json", import.meta.url), "utf8"));

test("the sheet of every invented garment is one page of A4 and of Letter, and another program reads all its text there", async () => {
  await visitWith([], {}, async ({ page }) => {
    await main(page).getByRole("button", { name: "Look round in an invented rack" }).click();
    await until(() => main(page).locator(".rack-row").count(), (count) => count === INVENTED.count, "the garments");
    for (const { id } of INVENTED.garments) {
      await go(page, `#/garment/${id}/sheet`, "Sheet");
      await printed(page, id);
    }
  });
});

test("sheets of a long check, of a jacket and of an offer are one page with all their text", async () => {
  const long = { ...RACK[5], note: "The pocket bags are thin and the hem is chain stitched. ".repeat(12) };
  const noted = [long, JACKET, OFFERS[0]];
  await visitWith(noted, { size: "desk" }, async ({ page }) => {
    for (const { id } of noted) {
      await go(page, `#/garment/${id}/sheet`, "Sheet");
      await printed(page, id);
    }
  });
});

test("every answer stands on the printed page, and the button opens the dialogue", async () => {
  await visitWith(RACK, {}, async ({ page }) => {
    const { id } = RACK[0];
    await go(page, `#/garment/${id}/checks`, "All checks");
    await go(page, `#/garment/${id}/sheet`, "Sheet");
    await page.emulateMedia({ media: "print" });
    const rows = main(page).locator(".sheet-answers li");
    assert.equal(await rows.count(), RACK[0].answers.filter((answer) => !answer.skipped).length);
    for (const row of await rows.all()) assert.ok(await row.isVisible(), await row.innerText());
    await page.emulateMedia({ media: "screen" });
    await page.evaluate(() => {
      window.print = () => (window.printed = true);
    });
    await main(page).getByRole("button", { name: "Print" }).click();
    assert.equal(await page.evaluate(() => window.printed), true);
  });
});

test("a ticket that lies face down is not on the sheet", async () => {
  const covered = RACK.find((garment) => garment.ticket?.face_down);
  await visitWith(RACK, {}, async ({ page }) => {
    await go(page, `#/garment/${covered.id}/sheet`, "Sheet");
    const text = await main(page).locator(".sheet").innerText();
    assert.ok(!text.includes(String(Math.floor(covered.ticket.minor / 100))), text);
  });
});
