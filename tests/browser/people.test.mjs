// People: two of them with measures in inches, what is not believed, loading again, deleting and undo, two windows, files with and without them.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isTooWide, smallTargets, violations, visit } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { addPerson, chooseFile, exportAll, go, hash, kept, measureField, mirror, plan, reload, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const listed = (page) => main(page).locator("ul.people li").allInnerTexts();
const lines = (texts) => texts.map((text) => text.replace(/\s+/g, " ").trim());

/** What is stored of people, by their names: the facts of their pages. */
const stored = async (page) => {
  const texts = await page.evaluate(() => Object.entries(window.localStorage).filter(([key]) => key.startsWith("garment-assay/person/")).map(([, text]) => text));
  return Object.fromEntries(texts.filter((text) => text.includes("\n")).map((text) => JSON.parse(text.split("\n")[1])).map((body) => [body.name ?? "", body]));
};

async function inches(page) {
  await go(page, "#/settings", "Settings");
  await main(page).getByLabel("Lengths and weights").selectOption("imperial");
}

/** Saves what the button of that name exports. */
async function exported(page, button) {
  const [download] = await Promise.all([page.waitForEvent("download"), main(page).getByRole("button", { name: button, exact: true }).click()]);
  const parts = [];
  for await (const part of await download.createReadStream()) parts.push(part);
  return JSON.parse(Buffer.concat(parts).toString("utf8"));
}

test("two people are added in inches, stand by name, and are there after loading again; one is deleted and comes back", async () => {
  await visit({ size: "small" }, async ({ page }) => {
    await inches(page);
    await main(page).getByRole("link", { name: /^People/ }).click();
    await main(page).getByText("Nobody yet. Measures stay on this device.").waitFor();
    const robin = await addPerson(page, "Robin", { "Waist girth": "34 1/2", "Hip girth": "98 cm" });
    assert.equal(hash(page), `#/people/${robin}`);
    const kim = await addPerson(page, "kim", { "Inside leg": "31" });
    assert.deepEqual((await stored(page)).Robin.measures, { hip: { amount: 98, unit: "cm" }, waist: { amount: 34.5, unit: "in" } });

    await go(page, "#/people", "People");
    assert.deepEqual(lines(await listed(page)), ["kim 1 of 13 measures", "Robin 2 of 13 measures"]);
    await reload(page);
    assert.deepEqual(lines(await listed(page)), ["kim 1 of 13 measures", "Robin 2 of 13 measures"]);
    await main(page).getByRole("link", { name: /^Robin/ }).click();
    await page.getByRole("heading", { name: "Robin", level: 1 }).waitFor();
    assert.equal(await measureField(page, "Waist girth").inputValue(), "34.5");
    assert.equal(await measureField(page, "Hip girth").inputValue(), "98 cm", "as it was given");
    assert.equal(await measureField(page, "Height").inputValue(), "");

    await main(page).getByRole("button", { name: "Delete this person" }).click();
    await until(async () => hash(page), (now) => now === "#/people", "the list");
    await main(page).getByRole("link", { name: /^Robin/ }).waitFor({ state: "detached" });
    assert.deepEqual(Object.keys(await stored(page)), ["kim"]);
    await page.getByRole("button", { name: "Undo" }).click();
    await main(page).getByRole("link", { name: /^Robin/ }).waitFor();
    assert.deepEqual((await stored(page)).Robin.measures.waist, { amount: 34.5, unit: "in" });
    await reload(page);
    assert.equal((await listed(page)).length, 2);
    await kept(page);
    assert.deepEqual(Object.keys(await mirror(page)).filter((key) => key.includes("/person/")).sort(), [kim, robin].map((id) => `garment-assay/person/${id}`).sort());
  });
});

test("what is not believed gets a sentence, nothing typed or kept is lost, and a measure taken away comes back", async () => {
  await visit({ size: "small" }, async ({ page }) => {
    await addPerson(page, "Robin", { "Waist girth": "86" });
    const field = measureField(page, "Waist girth");
    await field.fill("34");
    await field.blur();
    const alert = main(page).getByRole("alert");
    await alert.filter({ hasText: "If you read inches, type “34 in”. Not kept; 86 cm stays." }).waitFor();
    assert.equal(await field.inputValue(), "34");
    assert.equal(await field.getAttribute("aria-invalid"), "true");
    assert.equal(await page.evaluate((id) => document.getElementById(id)?.textContent.includes("40 to 200 cm"), await field.getAttribute("aria-describedby")), true);
    assert.deepEqual((await stored(page)).Robin.measures, { waist: { amount: 86, unit: "cm" } });
    for (const wrong of ["wide", "8600", "3 kg", "-86"]) {
      await field.fill(wrong);
      await field.blur();
      await alert.filter({ hasText: "Not kept; 86 cm stays." }).waitFor();
      assert.equal(await field.inputValue(), wrong);
    }
    // Another field takes its reading meanwhile, and what is wrong stays to be put right.
    await measureField(page, "Hip girth").fill("0,98 m");
    await measureField(page, "Hip girth").blur();
    await until(async () => (await stored(page)).Robin.measures.hip, (hip) => hip?.amount === 0.98 && hip.unit === "m", "the hip");
    assert.equal(await field.inputValue(), "-86");
    assert.deepEqual(await violations(page), []);
    assert.deepEqual(await smallTargets(page), []);
    assert.ok(!(await isTooWide(page)));

    await field.fill("34 in");
    await field.blur();
    await alert.waitFor({ state: "detached" });
    assert.deepEqual((await stored(page)).Robin.measures.waist, { amount: 34, unit: "in" });
    await field.fill("");
    await field.blur();
    await page.getByText("Taken away: waist girth.").waitFor();
    assert.equal((await stored(page)).Robin.measures.waist, undefined);
    await page.getByRole("button", { name: "Undo" }).click();
    await until(() => field.inputValue(), (text) => text === "34 in", "the waist again");
    assert.deepEqual((await stored(page)).Robin.measures.waist, { amount: 34, unit: "in" });
    // Another name, and no name.
    const name = main(page).getByLabel("What you call them");
    await name.fill("  Robin B ");
    await name.blur();
    await page.getByRole("heading", { name: "Robin B", level: 1 }).waitFor();
    await name.fill("");
    await name.blur();
    await page.getByRole("heading", { name: "No name", level: 1 }).waitFor();
    assert.deepEqual(Object.keys(await stored(page)), [""]);
  });
});

test("a file holds people only where that is ticked; merged elsewhere it brings them, and erasing takes them", async () => {
  let without, whole;
  await visitWith(RACK.slice(0, 1), { path: "#/settings" }, async ({ page }) => {
    assert.equal(JSON.parse((await exportAll(page)).text).people, undefined);
    await addPerson(page, "Robin", { "Waist girth": "34.5 in" });
    await addPerson(page, "Kim");
    await go(page, "#/settings", "Settings");
    const tick = main(page).getByRole("checkbox", { name: "Also the body measures of people" });
    assert.equal(await tick.isChecked(), false);
    without = await exported(page, "Export garments and settings");
    assert.ok(!JSON.stringify(without).includes("Robin") && without.people === undefined && without.garments.length === 1);
    await main(page).locator("label").filter({ hasText: "Also the body measures of people" }).click();
    whole = await exported(page, "Export everything");
    assert.deepEqual(whole.people.map((person) => person.name), ["Kim", "Robin"]);
    // Off again the next time.
    await go(page, "#/people", "People");
    await go(page, "#/settings", "Settings");
    assert.equal(await tick.isChecked(), false);
    // A file without people leaves those here alone, and says so.
    await chooseFile(page, JSON.stringify(without));
    await plan(page).getByText("It holds no body measures. The people here stay as they are.").waitFor();
    await plan(page).getByRole("button", { name: "Leave it" }).click();

    await main(page).getByRole("button", { name: "Erase everything" }).click();
    await page.getByRole("dialog").getByText(/the 1 garment, the measures of all 2 people/).waitFor();
    await page.getByRole("dialog").getByRole("button", { name: "Erase" }).click();
    await page.getByRole("dialog").getByText("1 garment and the measures of 2 people will be gone.").waitFor();
    await page.getByRole("dialog").getByRole("button", { name: "Yes, erase all" }).click();
    await page.getByText("Everything is erased.").waitFor();
    assert.deepEqual(await stored(page), {});
    await until(() => mirror(page), (pages) => Object.keys(pages).length === 0, "the mirror to be empty");
    await reload(page);
    await go(page, "#/people", "People");
    await main(page).getByText("Nobody yet.").waitFor();
  });
  await visit({}, async ({ page }) => {
    await addPerson(page, "Sam");
    await chooseFile(page, JSON.stringify(whole));
    await plan(page).getByRole("heading", { name: "People and their body measures" }).waitFor();
    await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
    await page.getByText("Imported: 3 added, 0 replaced, 0 deleted.").waitFor();
    assert.deepEqual(Object.keys(await stored(page)).sort(), ["Kim", "Robin", "Sam"]);
    assert.deepEqual((await stored(page)).Robin.measures, whole.people[1].measures);
    await page.getByRole("button", { name: "Undo" }).click();
    await until(async () => Object.keys(await stored(page)), (names) => names.join() === "Sam", "the import to be undone");
  });
});

test("a person changed in two windows at once is kept twice, and one deleted elsewhere closes here", async () => {
  // A window that is deaf hears of a change too late, as happens when both are written in the same moment.
  const before = (context) =>
    context.addInitScript(() => window.addEventListener("storage", (event) => window.deaf && event.stopImmediatePropagation(), true));
  await visit({ before }, async ({ page, reopen }) => {
    const id = await addPerson(page, "Robin", { "Waist girth": "86" });
    const other = await reopen();
    await go(other, `#/people/${id}`, "Robin");
    assert.equal(await measureField(other, "Waist girth").inputValue(), "86");
    // Word of it comes at once.
    await measureField(page, "Hip girth").fill("98");
    await measureField(page, "Hip girth").blur();
    await until(() => measureField(other, "Hip girth").inputValue(), (text) => text === "98", "word from the other window");
    // Deleted there, it closes here.
    await main(other).getByRole("button", { name: "Delete this person" }).click();
    await page.getByText("This person was deleted in another window.").waitFor();
    await until(async () => hash(page), (now) => now === "#/people", "the list");
    await other.getByRole("button", { name: "Undo" }).click();
    await main(page).getByRole("link", { name: /^Robin/ }).click();
    await page.getByRole("heading", { name: "Robin", level: 1 }).waitFor();
    await main(other).getByRole("link", { name: /^Robin/ }).click();
    await other.evaluate(() => (window.deaf = true));
    await measureField(page, "Waist girth").fill("87");
    await measureField(page, "Waist girth").blur();
    await kept(page);
    await measureField(other, "Waist girth").fill("88");
    await measureField(other, "Waist girth").blur();
    await other.getByText("Both are kept; you go on with yours.").waitFor();
    await other.getByRole("heading", { name: "Robin (this window)", level: 1 }).waitFor();
    const both = await stored(page);
    assert.deepEqual([both.Robin.measures.waist.amount, both["Robin (this window)"].measures.waist.amount], [87, 88]);
    assert.equal(hash(other), `#/people/${both["Robin (this window)"].id}`);
  });
});

test("a person is added and measured with keys alone, and how to take a measure is said", async () => {
  await visit({ path: "#/people" }, async ({ page }) => {
    const tabTo = async (words) => {
      for (let pressed = 0; pressed < 60; pressed += 1) {
        await page.keyboard.press("Tab");
        const now = await page.evaluate(() => {
          const element = document.activeElement;
          return (element.getAttribute("aria-label") ?? element.labels?.[0]?.textContent ?? element.textContent).trim();
        });
        if (words.test(now)) return;
      }
      throw new Error(`Tab never reached ${words}`);
    };
    await tabTo(/^What you call them$/);
    await page.keyboard.type("Robin");
    await page.keyboard.press("Enter");
    const heading = await until(() => page.evaluate(() => [document.activeElement.localName, document.activeElement.textContent]), ([tag]) => tag === "h1", "the heading");
    assert.equal(heading[1], "Robin");
    await tabTo(/^Height, in centimetres?$/);
    await page.keyboard.type("171");
    await tabTo(/^How to take it: height$/);
    await page.keyboard.press("Enter");
    await main(page).getByText("From the floor to the top of the head.").waitFor();
    assert.deepEqual((await stored(page)).Robin.measures, { height: { amount: 171, unit: "cm" } });
    assert.deepEqual(await violations(page), []);
  });
});

test("from a garment the way back leads to its fitting room, and an address of nobody to the list", async () => {
  await visitWith(RACK.slice(0, 1), {}, async ({ page }) => {
    const id = await addPerson(page, "Robin");
    await go(page, `#/people/${id}/for/${RACK[0].id}`, "Robin");
    assert.equal(await page.getByRole("link", { name: "Back to the fitting room" }).getAttribute("href"), `#/garment/${RACK[0].id}/fit`);
    await go(page, `#/people/${id}/for/nothing-there`, "Robin");
    await until(async () => hash(page), (now) => now === `#/people/${id}`, "the person without the garment");
    await go(page, "#/people/nobody-there", "People");
    await until(async () => hash(page), (now) => now === "#/people", "the list");
  });
});
