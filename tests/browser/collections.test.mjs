// Garments grouped: moved, renamed, put away, taken out again; and a colleague's file merged so that neither's notes are lost.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isTooWide, smallTargets, violations } from "./harness.mjs";
import { exported, RACK } from "./rack.mjs";
import { chooseFile, exportAll, go, hash, kept, plan, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const rows = (page) => main(page).locator(".rack-row");
const which = (page) => main(page).getByRole("combobox", { name: "Collection", exact: true });
const facts = async (page) =>
  Object.fromEntries(
    Object.values(await storage(page))
      .map((text) => JSON.parse(text.split("\n")[1]))
      .map((garment) => [garment.id, garment]),
  );
const undo = (page) => page.getByRole("button", { name: "Undo" }).click();

async function sound(page) {
  assert.deepEqual(await violations(page), []);
  assert.ok(!(await isTooWide(page)));
  assert.deepEqual(await smallTargets(page), []);
}

async function tick(page, ...labels) {
  await main(page).getByRole("button", { name: "Choose" }).click();
  for (const label of labels) await main(page).getByRole("checkbox", { name: label }).check();
}

async function move(page, name, ...labels) {
  await tick(page, ...labels);
  await main(page).getByRole("button", { name: "Move to a collection" }).click();
  await main(page).getByLabel(/^Move \d+ garments?/).fill(name);
  await sound(page);
  await main(page).getByRole("button", { name: "Move", exact: true }).click();
}

for (const size of ["small", "desk"]) {
  test(`ticked garments are moved, shown alone, renamed together and brought back, on a ${size} screen`, async () => {
    await visitWith(RACK, { size }, async ({ page }) => {
      assert.equal(await which(page).count(), 0);
      await move(page, "Autumn show", /^Dark rigid/, /^Sample 7/);
      await page.getByText("In Autumn show: 2 garments.").waitFor();
      await which(page).selectOption("Autumn show");
      assert.equal(await rows(page).count(), 2);
      await which(page).selectOption("In no collection");
      assert.equal(await rows(page).count(), RACK.length - 2);
      await which(page).selectOption("Autumn show");
      await main(page).getByText("Rename this collection").click();
      await main(page).getByLabel("Its name").fill("Milan, autumn");
      await sound(page);
      await main(page).getByRole("button", { name: "Rename", exact: true }).click();
      await page.getByText("Autumn show is now called Milan, autumn.").waitFor();
      assert.equal(await rows(page).count(), 2);
      await kept(page);
      const named = async () => Object.values(await facts(page)).map((garment) => garment.collection).filter(Boolean);
      assert.deepEqual(await named(), ["Milan, autumn", "Milan, autumn"]);
      await undo(page);
      await until(named, (names) => names.every((name) => name === "Autumn show") && names.length === 2, "the old name");
      await reload(page);
      await which(page).selectOption("Autumn show");
      assert.equal(await rows(page).count(), 2);
      // An empty name takes them out.
      await move(page, "", /^Dark rigid/);
      await page.getByText("Out of their collections: 1 garment.").waitFor();
      assert.equal(await rows(page).count(), 1);
    });
  });
}

test("what is put away is out of sight and not gone, and one tap takes it back", async () => {
  await visitWith(RACK, {}, async ({ page }) => {
    const before = await facts(page);
    await tick(page, /^Dark rigid/, /^Pale tapered/);
    await sound(page);
    await main(page).getByRole("button", { name: "Put away" }).click();
    await page.getByText("Put away: 2 garments.").waitFor();
    await main(page).getByText(`${RACK.length} garments noted, 2 of them put away`).waitFor();
    assert.equal(await rows(page).count(), RACK.length - 2);
    await kept(page);
    await undo(page);
    await until(() => rows(page).count(), (count) => count === RACK.length, "both back");
    await kept(page);
    assert.deepEqual(await facts(page), before);

    await tick(page, /^Dark rigid/);
    await main(page).getByRole("button", { name: "Put away" }).click();
    await which(page).selectOption("Put away (1)");
    assert.equal(await rows(page).count(), 1);
    await tick(page, /^Dark rigid/);
    await main(page).getByRole("button", { name: "Take out again" }).click();
    await page.getByText("Taken out again: 1 garment.").waitFor();
    // Nothing is put away any more, so there is nothing to choose between, and all stand there again.
    assert.equal(await rows(page).count(), RACK.length);
    assert.equal(await which(page).count(), 0);
    await main(page).getByRole("button", { name: "Choose" }).click();
    await main(page).getByRole("button", { name: `Tick all ${RACK.length}` }).click();
    await main(page).getByRole("button", { name: "Put away" }).click();
    await main(page).getByText("Every garment is put away.", { exact: false }).waitFor();
    await sound(page);
  });
});

test("the page of details names a collection, offers those there are, and puts away", async () => {
  await visitWith([{ ...RACK[0], collection: "Spring" }, RACK[1]], { path: `#/garment/${RACK[1].id}/details` }, async ({ page }) => {
    const field = main(page).getByLabel("Collection", { exact: true });
    const list = await field.getAttribute("list");
    assert.deepEqual(await page.locator(`#${list} option`).evaluateAll((options) => options.map((option) => option.value)), ["Spring"]);
    await field.fill(" Spring ");
    await field.blur();
    await kept(page);
    assert.equal((await facts(page))[RACK[1].id].collection, "Spring");
    await main(page).getByText("still teaches what other tickets are likely to be", { exact: false }).waitFor();
    await main(page).getByRole("button", { name: "Put away" }).click();
    await page.getByText("Put away: Pale tapered, sale rail.").waitFor();
    await main(page).getByRole("button", { name: "Take out again" }).waitFor();
    await undo(page);
    await main(page).getByRole("button", { name: "Put away" }).waitFor();
    await sound(page);
    await main(page).getByRole("link", { name: "Hand it on" }).click();
    await page.getByRole("heading", { name: "Hand on" }).waitFor();
    assert.equal(hash(page), `#/hand-on/${RACK[1].id}`);
  });
});

/** The same garment as a colleague went on with it. */
const THEIRS = {
  ...RACK[0],
  label: "Style 0042",
  note: "Zip runs smooth.",
  answers: [...RACK[0].answers.slice(0, 29), { check: "care-label", judged: "clear" }],
  notes: { hang: "One hem lower." },
};
const MINE = { ...RACK[0], notes: { hang: "Left leg turns." } };

test("a colleague’s file shows where both differ, and joined nothing of either’s notes is lost", async () => {
  await visitWith([MINE, RACK[1]], { size: "small" }, async ({ page }) => {
    const before = await facts(page);
    await chooseFile(page, exported([THEIRS]));
    const pair = plan(page).getByRole("group", { name: "Dark rigid straight" });
    await pair.getByText("Style 0042").waitFor();
    await pair.getByText("Zip runs smooth.").waitFor();
    assert.ok(await pair.getByLabel("Keep both").isChecked());
    await sound(page);
    await pair.getByText("Join them in one").click();
    await pair.getByText("Joined: yours, theirs goes into the note").waitFor();
    await pair.getByText("Joined: both").first().waitFor();
    await plan(page).getByText("1 not as here: both will be joined, as you chose below").waitFor();
    await sound(page);
    await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
    await page.getByText("Imported: 0 added, 0 replaced, 1 joined, 0 deleted.").waitFor();
    await kept(page);
    const joined = (await facts(page))[MINE.id];
    assert.equal(joined.label, MINE.label);
    assert.equal(joined.note, `${MINE.note}\n\n${THEIRS.note}\nAlso called: Style 0042`);
    assert.equal(joined.notes.hang, "Left leg turns.\n\nOne hem lower.");
    assert.deepEqual(joined.answers.slice(0, MINE.answers.length), MINE.answers);
    assert.deepEqual(joined.answers.slice(MINE.answers.length), [{ check: "care-label", judged: "clear" }]);
    // Joined once more, it stays what it is.
    await chooseFile(page, exported([THEIRS]));
    await plan(page).getByText("Join them in one").click();
    await plan(page).getByText("It would change nothing.").waitFor();
    await plan(page).getByRole("button", { name: "Leave it" }).click();
    await undo(page);
    await until(async () => (await facts(page))[MINE.id].note, (note) => note === MINE.note, "mine as it was");
    assert.deepEqual(await facts(page), before);
  });
});

test("what another window changes while a file is open is in what is joined", async () => {
  await visitWith([MINE, RACK[1]], {}, async ({ page, reopen }) => {
    await chooseFile(page, exported([THEIRS]));
    await plan(page).getByText("Join them in one").click();
    await plan(page).getByText("1 not as here: both will be joined, as you chose below").waitFor();
    const second = await reopen();
    await go(second, `#/garment/${MINE.id}/details`, /./);
    await main(second).getByRole("button", { name: "Put away" }).click();
    await kept(second);
    await page.bringToFront();
    await page.waitForTimeout(500); // nothing on the page tells that it has heard
    await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
    await page.getByText("Imported: 0 added, 0 replaced, 1 joined, 0 deleted.").waitFor();
    await kept(page);
    const joined = (await facts(page))[MINE.id];
    assert.equal(joined.archived, true);
    assert.equal(joined.note, `${MINE.note}\n\n${THEIRS.note}\nAlso called: Style 0042`);
  });
});

test("each pair becomes what was chosen for it, and all at once where that is wished", async () => {
  const theirs = [THEIRS, { ...RACK[1], place: "Stand 9" }];
  await visitWith([MINE, RACK[1]], {}, async ({ page }) => {
    const choose = async (words) => {
      await chooseFile(page, exported(theirs));
      await plan(page).getByRole("button", { name: words, exact: true }).click();
    };
    await choose("Keep mine");
    await plan(page).getByText("It would change nothing.").waitFor();
    await choose("Take theirs");
    await plan(page).getByRole("group", { name: /^Pale tapered/ }).getByText("Keep both").click();
    await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
    await page.getByText("Imported: 1 added, 1 replaced, 0 deleted.").waitFor();
    await kept(page);
    const now = Object.values(await facts(page));
    assert.equal(now.length, 3);
    assert.deepEqual(now.map((garment) => garment.label).sort(), ["Pale tapered, sale rail", "Pale tapered, sale rail (from a file)", "Style 0042"]);
    const { text } = await exportAll(page);
    assert.equal(JSON.parse(text).count, 3);
  });
});
