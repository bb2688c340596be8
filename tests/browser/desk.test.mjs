// The quick sheet: a sample by the keyboard alone, the next one that repeats what stays, and the same by touch.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isTooWide, smallTargets, violations, visit } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { answered, go, hash, kept, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const rows = (page) => main(page).locator(".quick-row");
const active = (page) => main(page).locator(".quick-row[data-active=true]");
const activeName = (page) => active(page).locator(".quick-row-name b").innerText();
const lead = (page) => main(page).locator(".quick-tape .tape-lead").innerText();
const aloud = (page) => page.locator(".desk > .unseen[role=status]").innerText();
const field = (page, name) => main(page).getByLabel(name, { exact: true });
const focusedId = (page) => page.evaluate(() => document.activeElement.id);
/** Whether the keyboard is on an answer of the active row. */
const onRow = (page) => page.evaluate(() => document.activeElement.closest(".quick-row")?.dataset.active === "true" && document.activeElement.getAttribute("role") === "radio");
/** The answer chosen in the row of that check, or nothing. */
const chosen = async (page, name) => {
  const row = rows(page).filter({ has: page.getByText(name, { exact: true }) });
  const levels = row.locator("[aria-checked=true]");
  return (await levels.count()) === 0 ? undefined : levels.first().getAttribute("aria-label");
};
const toRows = async (page) => {
  await page.keyboard.press("Enter");
  await until(() => onRow(page), Boolean, "the keyboard on a row");
};

async function press(page, key, next = true) {
  const before = await activeName(page);
  await page.keyboard.press(key);
  if (next) await until(() => activeName(page), (name) => name !== before, `another row after ${key}`);
  return before;
}

test("two samples in a row with keys alone; the second repeats kind, stand, supplier, collection and currency", async () => {
  await visit({ size: "desk", path: "#/desk" }, async ({ page }) => {
    await until(() => focusedId(page), (id) => id === "quick-name", "the keyboard in the name");
    assert.deepEqual(Object.keys(await storage(page)), [], "nothing is on the rack before the first entry");
    const type = async (text, tabs = 1) => {
      await page.keyboard.type(text);
      for (let tab = 0; tab < tabs; tab += 1) await page.keyboard.press("Tab");
    };
    await type("Relaxed tee");
    await until(() => hash(page), (now) => /^#\/desk\/./.test(now), "the sample's own address");
    assert.equal(await focusedId(page), "quick-style", "the keyboard stays in the hand's way");
    await type("T-0042");
    await type("11,50");
    await page.keyboard.press("g"); // British pounds, by the first letter of the list
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab"); // wholesale stands
    await page.keyboard.press("t"); // what it is: by its first letter, too
    await until(() => field(page, "What it is").inputValue(), (key) => key !== "jeans", "another kind");
    const kind = await field(page, "What it is").inputValue();
    await page.keyboard.press("Tab");
    await type("Hall 3, stand 21");
    await type("Loom and Ladle");
    await page.keyboard.type("Spring test");
    await toRows(page);

    // Twelve answers; each goes on by itself, the band moves and is said.
    const before = await lead(page);
    const names = [];
    for (let made = 0; made < 12; made += 1) names.push(await press(page, made % 3 === 0 ? "1" : "2"));
    assert.equal(new Set(names).size, 12);
    const after = await until(() => lead(page), (now) => now !== before, "another band");
    await until(() => aloud(page), (said) => said !== "", "the band to be said");
    assert.ok((await aloud(page)).length > 3 && after !== before);
    assert.match(await chosen(page, names[0]), /^1: /);
    assert.match(await chosen(page, names[1]), /^2: /);
    await kept(page);

    const first = hash(page).split("/")[2];
    await page.keyboard.press("n");
    await until(() => focusedId(page), (id) => id === "quick-name", "the next sample");
    assert.equal(hash(page), "#/desk");
    const head = async () => Promise.all(["A name for it", "Style number", "Price", "Currency", "Kind of price", "What it is", "Stand", "Supplier", "Collection"].map((name) => field(page, name).inputValue()));
    assert.deepEqual(await head(), ["", "", "", "GBP", "wholesale", kind, "Hall 3, stand 21", "Loom and Ladle", "Spring test"]);
    assert.equal(await main(page).locator(".quick-row [aria-checked=true]").count(), 0);
    await page.keyboard.type("Boxy tee");
    await toRows(page);
    await press(page, "2");
    await kept(page);
    const second = hash(page).split("/")[2];
    assert.notEqual(second, first);

    // Both are ordinary garments: the rack has them, the other pages too, and a reload loses nothing.
    await reload(page);
    assert.equal(await field(page, "A name for it").inputValue(), "Boxy tee");
    assert.equal(await field(page, "Currency").inputValue(), "GBP");
    assert.equal(await main(page).locator(".quick-row [aria-checked=true]").count(), 1);
    await go(page, `#/garment/${first}/checks`, "All checks");
    assert.equal((await answered(page)).length, 12);
    await main(page).getByRole("link", { name: "On one sheet" }).click();
    await until(() => hash(page), (now) => now === `#/desk/${first}`, "its sheet");
    assert.equal(await field(page, "Price").inputValue(), "11.50");
    await go(page, "#/", "Rack");
    await main(page).getByText(/GBP\s11.50 wholesale/).waitFor();
    assert.equal(await main(page).locator(".rack-row").count(), 2);
  });
});

test("arrows, taking back, cannot tell, the search and a typed reading", async () => {
  await visitWith([RACK[4]], { size: "desk", path: `#/desk/${RACK[4].id}` }, async ({ page }) => {
    await field(page, "A name for it").focus();
    await toRows(page);
    const first = await activeName(page);
    await press(page, "ArrowDown");
    await press(page, "ArrowUp");
    assert.equal(await activeName(page), first);

    // To the right is looking: nothing is answered, the line beside it changes, Enter gives it.
    const side = main(page).locator(".quick-line");
    const line = await side.innerText();
    await page.keyboard.press("ArrowRight");
    await until(() => side.innerText(), (now) => now !== line, "another line");
    assert.equal(await chosen(page, first), undefined);
    const onto = await press(page, "Enter");
    assert.match(await chosen(page, first), /^2: /);
    assert.equal(onto, first);

    await press(page, "ArrowUp");
    await page.keyboard.press("0");
    await until(() => chosen(page, first), (now) => now === undefined, "the answer to be taken back");
    assert.ok(await onRow(page));
    await press(page, "x");
    await rows(page).first().getByText("can’t tell").waitFor();
    await press(page, "ArrowUp");
    await page.keyboard.press("Backspace");
    await until(() => rows(page).first().getByText("can’t tell").count(), (count) => count === 0, "it to be taken back");

    // A digit beyond the last answer does nothing.
    await page.keyboard.press("9");
    assert.equal(await activeName(page), first);
    assert.equal(await chosen(page, first), undefined);

    await page.keyboard.press("/");
    await until(() => page.evaluate(() => document.activeElement.type), (type) => type === "search", "the search");
    await page.keyboard.type("DENSITY stitch");
    await main(page).getByText(/^Enter goes to:/).waitFor();
    await page.keyboard.press("Enter");
    await until(() => onRow(page), Boolean, "the row found");
    assert.equal(await activeName(page), "Stitch density");

    await page.keyboard.press("m");
    await until(() => focusedId(page), (id) => id === "quick-reading-0", "the reading");
    await page.keyboard.type("24");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await main(page).getByRole("alert").waitFor();
    await page.keyboard.type("3 in");
    const counted = await press(page, "Enter");
    const said = rows(page).filter({ has: page.getByText(counted, { exact: true }) }).locator("small");
    assert.match(await said.innerText(), /^8\.00?/);
    assert.ok(await onRow(page));

    await page.keyboard.press("?");
    await main(page).getByText("next sample; this one is kept").waitFor();
    await page.keyboard.press("/");
    await page.keyboard.type("nothing at all");
    await main(page).getByText("No check has that in its name.").waitFor();
    await page.keyboard.press("Escape");
    await until(() => onRow(page), Boolean, "back on the row");

    // The rows are one stop of the tab key, and the row left with it is the row come back to.
    const here = await activeName(page);
    assert.equal(await main(page).locator(".quick-row [tabindex='0']").count(), 1);
    await page.keyboard.press("Tab");
    assert.ok(!(await onRow(page)));
    await page.keyboard.press("Shift+Tab");
    assert.ok(await onRow(page));
    assert.equal(await activeName(page), here);
    assert.deepEqual(await violations(page), []);
  });
});

test("another is begun from a garment, counts as not sure, and goes again with undo", async () => {
  await visitWith([RACK[0]], { size: "desk", path: `#/garment/${RACK[0].id}/details` }, async ({ page }) => {
    const begin = () => main(page).getByRole("button", { name: "Begin another from this one" }).click();
    const label = await main(page).getByLabel("A name for it").inputValue();
    await begin();
    await until(() => hash(page), (now) => /^#\/garment\/.+\/details$/.test(now) && !now.includes(RACK[0].id), "the new garment's details");
    assert.equal(await main(page).getByLabel("A name for it").inputValue(), label);
    assert.equal(await main(page).getByLabel("Price").inputValue(), "");
    await page.getByRole("button", { name: "Undo", exact: true }).click();
    await page.getByRole("heading", { name: "Rack" }).waitFor();
    assert.equal(await main(page).locator(".rack-row").count(), 1);

    await page.goto(page.url().replace(/#.*/, `#/desk/${RACK[0].id}`));
    await rows(page).first().waitFor();
    const given = await main(page).locator(".quick-row [aria-checked=true]").count();
    await begin();
    await until(() => hash(page), (now) => now.startsWith("#/desk/") && !now.includes(RACK[0].id), "the new garment's sheet");
    assert.equal(await main(page).locator(".quick-row [aria-checked=true]").count(), given);
    assert.equal(await main(page).locator(".quick-row-name small").getByText("not sure", { exact: true }).count(), given);
    await kept(page);
    await go(page, "#/", "Rack");
    assert.equal(await main(page).locator(".rack-row").count(), 2);
  });
});

for (const size of ["small", "phone"]) {
  test(`a sample by touch: ${size}`, async () => {
    await visit({ size, path: "#/desk" }, async ({ page }) => {
      await field(page, "A name for it").fill("Thumbed pair");
      for (let row = 0; row < 5; row += 1) await rows(page).nth(row).getByRole("radio").nth(1).tap();
      await until(() => main(page).locator(".quick-row [aria-checked=true]").count(), (count) => count === 5, "five answers");
      assert.doesNotMatch(await lead(page), /Not checked/);
      // A name opens its drawings beneath, and one of them can be tapped too.
      await rows(page).nth(5).locator(".quick-row-name").tap();
      const drawn = main(page).locator(".quick-drawn li");
      await drawn.first().tap();
      const name = await rows(page).nth(5).locator(".quick-row-name b").innerText();
      await until(() => chosen(page, name), (now) => /^1: /.test(now ?? ""), "the first answer");
      await main(page).getByRole("button", { name: "Take answer back" }).tap();
      await until(() => chosen(page, name), (now) => now === undefined, "no answer");
      await main(page).getByRole("button", { name: "Can’t tell" }).tap();
      await rows(page).nth(5).getByText("can’t tell").waitFor();
      assert.ok(!(await isTooWide(page)), "too wide");
      assert.deepEqual(await smallTargets(page), []);
      assert.deepEqual(await violations(page), []);
      // The band stays in view to the last row.
      await rows(page).last().scrollIntoViewIfNeeded();
      const box = await main(page).locator(".quick-tape").boundingBox();
      assert.ok(box.y > -1 && box.y + box.height < page.viewportSize().height / 3, `the band is at ${box.y}, ${box.height} high`);
      await main(page).getByRole("link", { name: "Next sample" }).tap();
      await until(() => field(page, "A name for it").inputValue(), (text) => text === "", "the next sample");
      await go(page, "#/", "Rack");
      await main(page).getByText("Thumbed pair").waitFor();
    });
  });
}
