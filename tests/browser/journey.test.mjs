// The whole way of somebody with a pair in hand: check it, stop and come back, read the result, save everything, lose it, get it back.

import assert from "node:assert/strict";
import { test } from "node:test";
import { visit } from "./harness.mjs";
import { CHECKS, exported, garment, RACK } from "./rack.mjs";
import {
  answer, answered, answers, begin, chooseFile, exportAll, garmentId, go, hash, headline, kept, moved, next, openCheck, openResult, plan,
  question, reload, storage, until, visitWith,
} from "./steps.mjs";

const main = (page) => page.getByRole("main");

/** Writes a note on the check on the screen, by leaving the field. */
async function noteOnCheck(page, text) {
  await main(page).getByRole("button", { name: "Add a note" }).click();
  await main(page).getByLabel("Note on this check").fill(text);
  await main(page).getByLabel("Note on this check").blur();
  await kept(page);
}

/** Says yes to both questions before everything is erased. */
async function erase(page) {
  await go(page, "#/settings", "Settings");
  await page.getByRole("button", { name: "Erase everything" }).click();
  await page.getByRole("dialog", { name: "Erase everything?" }).getByRole("button", { name: "Erase" }).click();
  await page.getByRole("dialog", { name: "Really everything?" }).getByRole("button", { name: "Yes, erase all" }).click();
  await page.getByText("Everything is erased.").waitFor();
}

test("a pair is checked from the first question to the result, saved, erased and brought back", async () => {
  await visit({}, async ({ page }) => {
    await begin(page, { label: "Mid-blue straight leg", place: "Second floor", price: "89.90" });
    const id = garmentId(page);
    const seen = new Set();
    let skipped;
    for (let made = 0; made < 23; made += 1) {
      const put = await question(page);
      assert.ok(!seen.has(put), `asked twice: ${put}`);
      if (made === 7) skipped = put;
      if (put !== skipped) seen.add(put); // what is skipped may be asked again, and is skipped again
      if (made === 4) {
        await main(page).getByRole("button", { name: "Can't tell" }).click();
        await main(page).getByRole("button", { name: "Take answer back" }).waitFor();
      } else if (put === skipped) {
        await main(page).getByRole("button", { name: "Skip for now" }).waitFor(); // and so it is left
      } else {
        await answer(page, made % 3);
      }
      if (made === 9) await noteOnCheck(page, "Seen under the lamp by the till");
      await next(page);
    }

    // A typed count, at the check reached through the list.
    await openCheck(page, /Stitch density/);
    await main(page).getByRole("button", { name: /Measure it/ }).click();
    await main(page).getByRole("textbox", { name: "Stitches", exact: true }).fill("24");
    await main(page).getByRole("textbox", { name: "Length", exact: true }).fill("76");
    // 24 stitches over 76 mm are 24 / 7.6 = 3.16 to the cm, or 3.16 × 2.54 = 8.02 to the inch (25.4 mm by definition).
    await main(page).locator("output").filter({ hasText: /3\.16.* per cm|8\.0.* per in/ }).waitFor();
    await main(page).getByRole("button", { name: "Use this reading" }).click();
    await main(page).getByRole("button", { name: "Used" }).waitFor();
    await kept(page);

    // An earlier answer changed, and taken back again.
    const listed = await answered(page);
    assert.ok(listed.length >= 21, `answered: ${listed.length}`);
    assert.ok(listed.some((line) => /can.t tell/.test(line)) && listed.some((line) => /skipped/.test(line)));
    await main(page).locator("[data-state=answered]").first().getByRole("link").click();
    await answers(page).first().waitFor();
    const [first, before] = [hash(page), await headline(page)];
    const chosen = await answers(page).evaluateAll((radios) => radios.findIndex((radio) => radio.checked));
    const other = chosen === 0 ? (await answers(page).count()) - 1 : 0;
    await answer(page, other);
    const after = await until(() => headline(page), (now) => now !== before, "the tape to move");
    await page.getByRole("button", { name: "Undo" }).click();
    await until(() => headline(page), (now) => now === before, "the tape to move back");
    assert.equal(hash(page), first);
    assert.ok(await answers(page).nth(chosen).isChecked());
    await answer(page, other);
    await until(() => headline(page), (now) => now === after, "the tape to move again");

    // A word on the garment.
    await go(page, `#/garment/${id}/details`, "Details");
    await main(page).getByLabel("Note").fill("Try one size down");
    await main(page).getByLabel("Note").blur();
    await kept(page);

    // In the middle the page is loaded again: nothing is lost and nothing is judged otherwise.
    const list = await answered(page);
    await reload(page);
    assert.deepEqual(await answered(page), list);
    assert.equal(await headline(page), after);

    await openResult(page);
    assert.equal(await headline(page), after);
    const why = await moved(page);
    assert.ok(why.length >= 12, `moved: ${why.length}`);
    assert.ok(await main(page).getByText("Try one size down").isVisible());
    assert.ok(await main(page).getByText("EUR 89.90").isVisible());

    const saved = await exportAll(page);
    assert.match(saved.name, /^garment-assay-\d{4}-\d\d-\d\d\.json$/);
    await erase(page);
    assert.deepEqual(await storage(page), {});
    await page.getByRole("link", { name: "Check a garment" }).waitFor();

    await chooseFile(page, saved.text);
    await plan(page).getByText("1 new, will be added").waitFor();
    assert.deepEqual(await storage(page), {}, "nothing is changed before the word is given");
    await plan(page).getByRole("button", { name: "Merge" }).click();
    await page.getByText("Imported: 1 added").waitFor();
    await kept(page);
    await go(page, `#/garment/${id}/result`, "What this does not say");
    assert.equal(await headline(page), after);
    assert.deepEqual(await moved(page), why);
    await openCheck(page, /Stitch density/);
    assert.equal(await main(page).getByRole("textbox", { name: "Stitches", exact: true }).inputValue(), "24");
  });
});

test("erasing is asked twice, and either no keeps everything", async () => {
  await visitWith(RACK, { path: "#/settings" }, async ({ page }) => {
    const before = await storage(page);
    const button = page.getByRole("button", { name: "Erase everything" });
    await button.click();
    await page.getByRole("dialog").getByRole("button", { name: "Keep it" }).click();
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await button.click();
    await page.getByRole("dialog").getByRole("button", { name: "Erase" }).click();
    await page.getByRole("dialog", { name: "Really everything?" }).waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    assert.deepEqual(await storage(page), before);
  });
});

test("a file that was cut, altered or made elsewhere is refused with a sentence and changes nothing", async () => {
  await visitWith(RACK, {}, async ({ page }) => {
    const before = await storage(page);
    const whole = exported([garment("new-1", { label: "Another", answers: 4 })]);
    const wrongs = {
      [whole.slice(0, whole.length / 2)]: /cut short or was altered/,
      [whole.replace("Another", "Anothar")]: /cut short or was altered/,
      [whole.replace('"form": 1', '"form": 99')]: /newer version/,
      '{"kind": "something else"}': /not a rack exported/,
      "not even that": /not a rack exported/,
    };
    for (const [text, sentence] of Object.entries(wrongs)) {
      await chooseFile(page, text);
      const told = page.getByRole("alert").filter({ hasText: sentence });
      await told.waitFor();
      assert.match(await told.innerText(), /Nothing was changed/);
      assert.equal(await plan(page).count(), 0);
    }
    assert.deepEqual(await storage(page), before);
  });
});

test("the same file once more would change nothing, and says so", async () => {
  await visitWith(RACK, {}, async ({ page }) => {
    const { text } = await exportAll(page);
    await chooseFile(page, text);
    await plan(page).getByText(`${RACK.length} here already, unchanged`).waitFor();
    await plan(page).getByText("It would change nothing.").waitFor();
    assert.ok(await plan(page).getByRole("button", { name: "Merge" }).isDisabled());
  });
});

test("merging keeps both of two that differ, once", async () => {
  const file = exported([{ ...RACK[0], label: "Dark rigid, seen again" }, garment("new-1", { label: "Another", answers: 4 })]);
  await visitWith(RACK.slice(0, 2), {}, async ({ page }) => {
    await chooseFile(page, file);
    await plan(page).getByText("1 new, will be added").waitFor();
    await plan(page).getByText("1 not as here: both will be kept").waitFor();
    await plan(page).getByRole("button", { name: "Merge" }).click();
    await page.getByText("Imported: 2 added").waitFor();
    await chooseFile(page, file);
    await plan(page).getByText("It would change nothing.").waitFor();
    await go(page, "#/", "Rack");
    for (const label of ["Dark rigid straight", "Dark rigid, seen again (from a file)", "Another"]) {
      await main(page).locator("b").getByText(label, { exact: true }).waitFor();
    }
  });
});

test("replacing makes the rack what the file holds, and can be undone", async () => {
  const file = exported([{ ...RACK[0], label: "Dark rigid, seen again" }, garment("new-1", { label: "Another", answers: 4 })]);
  await visitWith(RACK.slice(0, 2), {}, async ({ page }) => {
    const facts = async () => Object.fromEntries(Object.entries(await storage(page)).map(([key, text]) => [key, text.split("\n")[1]]));
    const before = await facts();
    await chooseFile(page, file);
    await plan(page).getByRole("radio", { name: /^Replace/ }).check();
    await plan(page).getByText("1 not as here: the file’s takes the place of yours").waitFor();
    await plan(page).getByText("1 not in the file: will be deleted here").waitFor();
    assert.deepEqual(await facts(), before);
    await plan(page).getByRole("button", { name: "Replace" }).click();
    await page.getByText("Imported: 1 added, 1 replaced, 1 deleted").waitFor();
    await go(page, "#/", "Rack");
    assert.equal(await main(page).getByRole("button", { name: /^Delete / }).count(), 2);
    await page.getByRole("button", { name: "Undo" }).click();
    await main(page).getByText("Pale tapered, sale rail").waitFor();
    await kept(page);
    const restored = await facts();
    for (const [key, text] of Object.entries(before)) assert.equal(restored[key], text, key);
  });
});

test("every answer in the fixture is one that the app knows", async () => {
  const all = garment("all", { label: "All", answers: CHECKS.length, quality: 0.6 });
  const variants = [0, 0.5, 1].map((quality, place) => garment(`all-${place}`, { answers: CHECKS.length, quality }));
  await visitWith([all, ...variants], {}, async ({ page }) => {
    for (const { id } of [all, ...variants]) {
      await go(page, `#/garment/${id}/checks`, "All checks");
      await main(page).getByText(`${CHECKS.length} of ${CHECKS.length} answered`).waitFor();
    }
  });
});
