// Handing on: tables read back by another house's reader, a collection alone as a file, text to the clipboard and to the system.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { isTooWide, smallTargets, violations } from "./harness.mjs";
import { garment, RACK } from "./rack.mjs";
import { addPerson, go, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const run = promisify(execFile);
const READER = fileURLToPath(new URL("../tables_elsewhere.py", import.meta.url));
const python = await run("python3", ["--version"]).then(
  () => true,
  () => false,
);

/** Words that a spreadsheet takes for something else, or that break a table that is written carelessly. */
const HARD = [
  "=1+1", '=HYPERLINK("http://x.invalid";"a")', "+49 30", "-5", "@SUM(A1)", "0042", "1E5", "3-4", "1/2", "10.11.", "Mar 27", "TRUE", "1,5", "1.5", "1;2",
  'a "b" c', "one\ntwo\n\nthree", "tab\there", "👖 größe 牛仔裤", "'quoted", "%", "=cmd|' /C x'!A0", "  led by spaces", "2026-11-26",
];
const hard = HARD.map((note, place) => garment(`h${place}`, { label: note.replaceAll("\n", " "), note, answers: 3, notes: { hang: note } }));

async function saved(page, button) {
  const [download] = await Promise.all([page.waitForEvent("download"), main(page).getByRole("button", { name: button }).click()]);
  const parts = [];
  for await (const part of await download.createReadStream()) parts.push(part);
  return { name: download.suggestedFilename(), text: Buffer.concat(parts).toString("utf8") };
}

async function sound(page) {
  assert.deepEqual(await violations(page), []);
  assert.ok(!(await isTooWide(page)));
  assert.deepEqual(await smallTargets(page), []);
}

async function readElsewhere(text) {
  const folder = await mkdtemp(join(tmpdir(), "tables-"));
  try {
    await writeFile(join(folder, "table.csv"), text);
    const { stdout } = await run("python3", [READER, "read", join(folder, "table.csv")], { maxBuffer: 1 << 24 });
    return JSON.parse(stdout);
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** One apostrophe in front is the mark that it is text. */
const unmarked = (text) => (text.startsWith("'") ? text.slice(1) : text);

test("tables of both forms come back word for word from Python’s reader", { skip: python ? false : "no python3 on this machine" }, async () => {
  await visitWith(hard, { path: "#/hand-on" }, async ({ page }) => {
    for (const form of ["Figures with a point", "Figures with a comma"]) {
      await main(page).getByText(form, { exact: false }).first().click();
      const rack = await readElsewhere((await saved(page, "Save the rack")).text);
      assert.equal(rack.length, hard.length);
      const answers = await readElsewhere((await saved(page, "Save the answers")).text);
      assert.equal(answers.length, hard.length * 3);
      for (const { id, note, label } of hard) {
        const row = rack.find((row) => row.id === id);
        assert.equal(unmarked(row.note), note);
        assert.equal(unmarked(row.label), label);
        assert.ok(!/^[=+\-@]/.test(row.note.trim()), row.note);
        assert.match(row.band_chance_percent, form.includes("comma") ? /^\d+,\d$/ : /^\d+\.\d$/);
        assert.equal(unmarked(answers.find((row) => row.id === id && row.check === "hang").note), note);
      }
    }
  });
});

test("the form of the browser’s language comes first", async () => {
  // The words are English in both; it is the browser's own form of numbers that counts.
  const before = (context) => context.addInitScript(() => window.location.protocol.startsWith("http") && window.localStorage.setItem("garment-assay/language", "en"));
  for (const [locale, form] of [["en-GB", /with a point/], ["de-DE", /with a comma/]]) {
    await visitWith(RACK, { path: "#/hand-on", before, context: { locale } }, async ({ page }) => {
      assert.ok(await main(page).getByRole("radio", { name: form }).isChecked(), locale);
      const { name, text } = await saved(page, "Save the rack");
      assert.match(name, /^garment-assay-rack-\d{4}-\d{2}-\d{2}\.csv$/);
      assert.ok(text.startsWith("\ufeff") && text.startsWith(locale === "de-DE" ? "id;kind" : "id,kind", 1));
      assert.equal(text.trimEnd().split("\r\n").length, RACK.length + 1);
      assert.ok(!text.includes("129"), "the ticket that lies face down");
    });
  }
});

test("a collection is handed on alone, the chosen ones too, and invented garments only by themselves", async () => {
  const rack = [{ ...RACK[0], collection: "Autumn '27" }, { ...RACK[1], collection: "Autumn '27", archived: true }, RACK[2], garment("invented-x", { label: "Never was" })];
  await visitWith(rack, { path: "#/hand-on", size: "small" }, async ({ page }) => {
    const garments = async () => JSON.parse((await saved(page, "Save the file")).text).garments.map(({ id }) => id).sort();
    await main(page).getByText("1 invented garment is left out", { exact: false }).waitFor();
    await sound(page);
    assert.deepEqual(await garments(), [RACK[0].id, RACK[1].id, RACK[2].id]);
    await main(page).getByLabel("Which garments").selectOption("Autumn '27");
    await main(page).getByText("2 garments, 1 of them put away.").waitFor();
    const { name } = await saved(page, "Save the file");
    assert.match(name, /^garment-assay-autumn-27-\d{4}-\d{2}-\d{2}\.json$/);
    assert.deepEqual(await garments(), [RACK[0].id, RACK[1].id]);

    await go(page, "#/", "Rack");
    await main(page).getByRole("button", { name: "Choose" }).click();
    await main(page).getByRole("checkbox", { name: /^Never was/ }).check();
    await main(page).getByRole("link", { name: "Export these" }).click();
    await page.getByRole("heading", { name: "Hand on" }).waitFor();
    assert.deepEqual(await garments(), ["invented-x"]);
    await main(page).getByLabel("Which garments").selectOption("In no collection");
    assert.deepEqual(await garments(), [RACK[2].id]);
  });
});

test("people’s measures are in the file only where that is ticked", async () => {
  await visitWith(RACK.slice(0, 2), {}, async ({ page }) => {
    await addPerson(page, "Robin", { "Waist girth": "86" });
    await go(page, "#/hand-on", "Hand on");
    const people = async () => JSON.parse((await saved(page, "Save the file")).text).people;
    assert.equal(await people(), undefined);
    await main(page).getByText("Also the body measures of people").click();
    assert.deepEqual((await people()).map(({ name }) => name), ["Robin"]);
    // With one garment only those it was tried on: nobody.
    await go(page, `#/hand-on/${RACK[0].id}`, "Hand on");
    assert.equal(await main(page).getByText("Also the body measures of people").count(), 0);
    assert.equal(await people(), undefined);
  });
});

test("text goes to the clipboard, and to the system only where the browser can", async () => {
  const before = async (context) => {
    await context.grantPermissions(["clipboard-write"]);
    await context.addInitScript(() => {
      Object.defineProperty(window.navigator, "share", { value: undefined, configurable: true });
      Object.defineProperty(window.navigator, "canShare", { value: undefined, configurable: true });
    });
  };
  await visitWith(RACK, { path: `#/hand-on/${RACK[0].id}`, before }, async ({ page, context }) => {
    const text = await main(page).getByLabel("About this garment").inputValue();
    assert.match(text, /^Dark rigid straight \(jeans\)\n/);
    assert.match(text, /Note: Heavier than it looks/);
    assert.equal(await main(page).getByRole("button", { name: /^Share/ }).count(), 0);
    await main(page).getByRole("button", { name: "Copy the text" }).click();
    await page.getByText("Copied.").waitFor();
    // The app itself may not read the clipboard (web/_headers), so it is pasted on a page that is not the app's.
    const other = await context.newPage();
    await other.setContent("<textarea></textarea>");
    await other.locator("textarea").focus();
    await other.keyboard.press("Control+V");
    assert.equal(await other.locator("textarea").inputValue(), text);
    await other.close();
    await main(page).getByLabel("Which garments").selectOption("All of them");
    const list = await main(page).getByLabel("The list").inputValue();
    assert.equal(list.split("\n").length, RACK.length + 1);
  });
});

test("the system is handed text and the files that it takes, and leaving it says nothing", async () => {
  const before = (context) =>
    context.addInitScript(() => {
      window.shared = [];
      window.navigator.canShare = ({ files }) => files.every((file) => file.type === "text/csv");
      window.navigator.share = async ({ title, text, files }) => {
        if (window.leaves) throw new window.DOMException("left", "AbortError");
        if (window.refuses) throw new window.DOMException("no", "NotAllowedError");
        window.shared.push({ title, text, files: await Promise.all((files ?? []).map(async (file) => [file.name, file.type, await file.text()])) });
      };
    });
  await visitWith(RACK.slice(0, 2), { path: "#/hand-on", before }, async ({ page }) => {
    assert.equal(await main(page).getByRole("button", { name: /\.json$/ }).count(), 0);
    await main(page).getByRole("button", { name: /^Share it: garment-assay-rack-.*\.csv$/ }).click();
    await page.getByText("Handed on.").waitFor();
    await main(page).getByRole("button", { name: "Share the text" }).click();
    const shared = await until(() => page.evaluate(() => window.shared), (shared) => shared.length === 2, "both");
    const [name, kind, text] = shared[0].files[0];
    assert.match(name, /\.csv$/);
    assert.equal(kind, "text/csv");
    assert.equal(text.trimEnd().split("\r\n").length, 3);
    assert.equal(shared[1].text, await main(page).getByLabel("The list").inputValue());
    await page.getByRole("button", { name: "Close this message" }).click();
    await page.evaluate(() => (window.leaves = true));
    await main(page).getByRole("button", { name: "Share the text" }).click();
    await page.evaluate(() => [(window.leaves = false), (window.refuses = true)]);
    await main(page).getByRole("button", { name: "Share the text" }).click();
    await page.getByText("The browser would not hand it on.", { exact: false }).waitFor();
    assert.equal(await page.getByText("Handed on.").count(), 0);
    await sound(page);
  });
});

test("an empty rack says that there is nothing to hand on", async () => {
  await visitWith([], { path: "#/hand-on" }, async ({ page }) => {
    await main(page).getByText("There is nothing to hand on yet.").waitFor();
    await sound(page);
  });
});
