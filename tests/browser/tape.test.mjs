// The tape sheet of a garment, and which stitch and seam it is.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isTooWide, visit, violations } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { chooseFile, exportAll, go, kept, plan, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const sheet = `#/garment/${RACK[0].id}/tape`;
const point = (page, name) => page.getByRole("region", { name, exact: true });
const fields = (page, name) => point(page, name).getByRole("textbox");
const figure = (page, name) => point(page, name).locator("output");
/** The body of the garment's page, as it is kept. */
const facts = async (page) => JSON.parse((await storage(page))[`garment-assay/page/${RACK[0].id}`].split("\n")[1]);

/** Types a reading and leaves the field. */
async function read(page, name, place, text) {
  await fields(page, name).nth(place).fill(text);
  await fields(page, name).nth(place).blur();
}

test("a girth is read, read again, taken back, and survives loading, saving and bringing back", async () => {
  await visitWith(RACK.slice(0, 1), { path: `#/garment/${RACK[0].id}/checks` }, async ({ page }) => {
    await page.getByRole("link", { name: /^Tape sheet/ }).click();
    await page.getByRole("heading", { name: "Tape sheet" }).waitFor();
    await read(page, "Waist", 0, "42.5");
    // Twice 42.5, give or take twice 3 mm.
    await figure(page, "Waist").getByText("85.0 ± 0.6 cm").waitFor();
    await point(page, "Waist").getByRole("button", { name: /^Read again/ }).click();
    await until(() => fields(page, "Waist").nth(1).evaluate((field) => field === document.activeElement), Boolean, "the new field");
    await page.keyboard.type("42.9");
    await page.keyboard.press("Tab");
    await figure(page, "Waist").getByText(/^85\.4 ±/).waitFor();
    await main(page).getByText("1 of 9 measured").waitFor();
    await kept(page);

    await page.getByRole("button", { name: "Undo" }).click();
    await until(() => fields(page, "Waist").count(), (count) => count === 1, "the second reading to go");
    await page.getByRole("button", { name: "Undo" }).click();
    await until(() => fields(page, "Waist").first().inputValue(), (text) => text === "", "the first reading to go");
    assert.equal((await facts(page)).measures, undefined);

    await read(page, "Waist", 0, "85.5");
    await point(page, "Waist").getByRole("checkbox").check();
    await figure(page, "Waist").getByText(/^85\.5 ±/).waitFor();
    await read(page, "Inseam", 0, "32 in");
    await kept(page);
    const measures = {
      inseam: { readings: [{ amount: 32.0, unit: "in" }] },
      waist: { readings: [{ amount: 85.5, unit: "cm" }], round: true },
    };
    assert.deepEqual((await facts(page)).measures, measures);

    await reload(page);
    assert.equal(await fields(page, "Inseam").first().inputValue(), "32 in");
    assert.ok(await point(page, "Waist").getByRole("checkbox").isChecked());

    const { text } = await exportAll(page);
    await go(page, "#/", "Rack");
    await page.getByRole("button", { name: /^Delete / }).click();
    await chooseFile(page, text);
    await plan(page).getByRole("button", { name: "Merge" }).click();
    await page.getByText("Imported: 1 added").waitFor();
    await go(page, sheet, "Tape sheet");
    await figure(page, "Inseam").getByText(/^81\.3 ±/).waitFor();
    assert.deepEqual((await facts(page)).measures, measures);
  });
});

test("a reading that cannot be is told at its field, gives no figure, and leaves the others kept", async () => {
  await visitWith(RACK.slice(0, 1), { path: sheet, size: "small" }, async ({ page }) => {
    await read(page, "Hip", 0, "52");
    await point(page, "Hip").getByRole("button", { name: /^Read again/ }).click();
    for (const wrong of ["wide", "520", "-52", "52 g"]) {
      await read(page, "Hip", 1, wrong);
      await point(page, "Hip").getByRole("alert").filter({ hasText: "This one is not kept." }).waitFor();
      assert.equal(await fields(page, "Hip").nth(1).getAttribute("aria-invalid"), "true");
      assert.doesNotMatch(await figure(page, "Hip").innerText(), /\d/, wrong);
      assert.deepEqual((await facts(page)).measures.hip, { readings: [{ amount: 52, unit: "cm" }] });
    }
    assert.deepEqual(await violations(page), []);
    assert.ok(!(await isTooWide(page)));
    await read(page, "Hip", 1, "52.4");
    await figure(page, "Hip").getByText(/^104\.4 ±/).waitFor();
    assert.equal(await point(page, "Hip").getByRole("alert").count(), 0);
  });
});

test("stitch and seam are named by keyboard, and whoever cannot tell is left with more", async () => {
  await visit({ path: "#/bench/seam-kind", size: "desk" }, async ({ page }) => {
    const look = (name) => page.getByRole("group", { name });
    const said = main(page).getByRole("status");
    await look(/^1/).getByRole("radio", { name: /^The same line/ }).focus();
    await page.keyboard.press("Space");
    await said.getByText("The stitch: lockstitch (301).").waitFor();
    await page.keyboard.press("ArrowDown");
    await said.getByText("The stitch: two-thread chainstitch (401).").waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowUp"); // from the first, which is not chosen yet, round to the last
    await look(/^2/).getByRole("radio", { name: /^Can.t tell/, checked: true }).waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Space");
    await said.getByText("The seam: flat felled seam (LSc).").waitFor();
    await main(page).getByRole("list", { name: "Seam classes" }).getByText(/ISO 4916 class 2/).waitFor();

    await look(/^1/).locator("label").filter({ hasText: /^Can.t tell/ }).click();
    await said.getByText(/any of the 15 that we know/).waitFor();
    await look(/^2/).locator("label").filter({ hasText: /^Three/ }).click();
    await said.getByText(/407.* or .*605/).waitFor();
    await look(/^1/).locator("label").filter({ hasText: /^A rope/ }).click();
    await said.getByText(/^No stitch that we know looks so/).waitFor();
    assert.deepEqual(await violations(page), []);
    await main(page).getByRole("link", { name: /^Seam strength/ }).click();
    await page.getByRole("heading", { name: "Seam strength" }).waitFor();
  });
});
