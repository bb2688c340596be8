// A program that stops: it is said, what is kept can be saved to a file that the app takes in again, and the next start is sound.
//
// Nothing in the app lets it panic on purpose. What is used is a place where it relies on the browser, and rightly: the renderer expects that
// an element takes an attribute. A browser that refuses one makes it panic there, in the program as it is shipped, hook, trap and all.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { isTooWide, smallTargets, started, violations, visit } from "./harness.mjs";
import * as marked from "./picture.mjs";
import { garment } from "./rack.mjs";
import { answer, begin, chooseFile, garmentId, go, kept, next, openCheck, plan, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const crash = (page) => page.locator("#crash");
const button = (page, name) => crash(page).getByRole("button", { name });

/** A browser that refuses an attribute whose value has `window.refused` in it: always, or once. */
const refusing = (always) => (context) =>
  context.addInitScript((always) => {
    const { setAttribute } = window.Element.prototype;
    if (always) window.refused = always;
    window.Element.prototype.setAttribute = function (name, value) {
      if (window.refused && String(value).includes(window.refused)) {
        if (!always) window.refused = null;
        throw new window.DOMException("ordered by the test", "InvalidCharacterError");
      }
      return setAttribute.call(this, name, value);
    };
  }, always);

/** Saves what is offered after a crash; returns the file's text. */
async function saved(page) {
  const [download] = await Promise.all([page.waitForEvent("download"), button(page, "Save my notes to a file").click()]);
  assert.match(download.suggestedFilename(), /^garment-assay-rescue-\d{4}-\d\d-\d\d\.json$/);
  await crash(page).getByText(/^Saved\. Pages in the file/).waitFor();
  return readFile(await download.path(), "utf8");
}

/** Takes that file in elsewhere, and returns what is stored there then. */
async function takenIn(text, count) {
  let facts;
  await visit({}, async ({ page }) => {
    await chooseFile(page, text);
    await plan(page).getByText(`${count} new, will be added`).waitFor();
    await plan(page).getByRole("button", { name: "Merge" }).click();
    await page.getByText(`Imported: ${count} added`).waitFor();
    await kept(page);
    facts = Object.values(await storage(page)).map((page) => page.split("\n")[1]);
  });
  return facts.sort();
}
const factsOf = async (page) => Object.values(await storage(page)).map((text) => text.split("\n")[1]).sort();

/** Forgets what the crash itself put into the console: one trap, and what the browser says of it. */
function crashed(problems) {
  assert.ok(problems.length > 0, "a crash is in the console");
  problems.length = 0;
}

test("a panic in use is said, what was answered is saved to a file that comes in again, and loading again goes on", async () => {
  await visit({ before: refusing(), size: "small" }, async ({ page, problems }) => {
    await begin(page, { label: "In hand", price: "12" });
    const id = garmentId(page);
    for (let made = 0; made < 3; made += 1) {
      await answer(page, made % 2);
      await next(page);
    }
    const facts = await factsOf(page);
    // The mirror has what local storage lost: it is in the file too.
    await page.evaluate((key) => window.localStorage.removeItem(key), `garment-assay/page/${id}`);
    await page.evaluate(() => (window.refused = "#/settings"));
    await page.evaluate(() => (window.location.hash = "#/"));
    await crash(page).getByText(/stopped at something it did not expect\. What you answered before is kept.*invalid attribute key/s).waitFor();
    crashed(problems);
    assert.equal(await button(page, /^Open without/).count(), 0, "once is no row");
    // The page behind it is half made, and its heading may be gone.
    assert.deepEqual((await violations(page)).filter((one) => !one.startsWith("page-has-heading-one")), []);
    assert.ok(!(await isTooWide(page)));
    assert.deepEqual((await smallTargets(page)).filter((one) => /Save my|Load the/.test(one)), []);
    const text = await saved(page);
    assert.deepEqual(await takenIn(text, 1), facts);
    await button(page, "Load the page again").click();
    await started(page);
    await kept(page);
    assert.ok(await crash(page).isHidden());
    await go(page, `#/garment/${id}/checks`, "All checks");
    assert.equal(await main(page).locator("[data-state=answered]").count(), 3);
    await openCheck(page, /Stitch density/);
    await answer(page, 0);
  });
});

test("a garment at which every start stops is set aside with the others after the second, can be saved, and does not come back from the mirror", async () => {
  const rack = [garment("poison", { label: "Poisoned", answers: 2 }), garment("sound", { label: "Sound one", answers: 3 })];
  await visitWith(rack, {}, async ({ page, context, problems }) => {
    await kept(page);
    const facts = await factsOf(page);
    await refusing("Poisoned")(context);
    await page.reload();
    await button(page, "Load the page again").waitFor();
    assert.equal(await button(page, /^Open without/).count(), 0);
    await button(page, "Load the page again").click();
    await button(page, "Open without my notes").waitFor();
    await crash(page).getByText(/stopped twice in a row/).waitFor();
    const text = await saved(page);
    crashed(problems);
    await button(page, "Open without my notes").click();
    await started(page);
    await kept(page);
    await main(page).getByRole("heading", { name: "Pages that could not be read" }).waitFor();
    const aside = main(page).locator(".set-aside li").filter({ hasText: "The app stopped when it read this page" });
    assert.ok((await aside.count()) >= 2);
    // It can be used, and loading again is sound.
    await begin(page, { label: "Begun after" });
    await answer(page, 0);
    await reload(page);
    await kept(page);
    await go(page, "#/", "Rack");
    await main(page).getByText("Begun after").waitFor();
    assert.deepEqual(await takenIn(text, 2), facts);
    // Dropped for good: neither here nor from the mirror.
    while ((await aside.count()) > 0) {
      const before = await aside.count();
      await aside.first().getByRole("button", { name: "Drop it" }).click();
      await page.getByRole("dialog").getByRole("button", { name: "Drop it" }).click();
      await until(() => aside.count(), (count) => count === before - 1, "it to be dropped");
    }
    await kept(page);
    await reload(page);
    await kept(page);
    assert.deepEqual(Object.keys(await storage(page)).filter((key) => /poison|sound/.test(key)), []);
    assert.deepEqual(problems, []);
  });
});

test("where it is known which page was being read, that one alone is set aside", async () => {
  const rack = [garment("poison", { label: "Poisoned", answers: 2 }), garment("sound", { label: "Sound one", answers: 3 })];
  await visitWith(rack, {}, async ({ page, context, problems }) => {
    await kept(page);
    // No page is known that makes the reading panic. So the showing does, and the word of what was read last is put in its place.
    await refusing("Poisoned")(context);
    await context.addInitScript(() => {
      const { setAttribute } = window.Element.prototype;
      window.Element.prototype.setAttribute = function (name, value) {
        if (name === "data-reading") window.readLast = value;
        return setAttribute.call(this, name, name === "data-reading" ? "garment-assay/page/poison" : value);
      };
    });
    await page.reload();
    await button(page, "Load the page again").click();
    await button(page, "Open without the page it stopped at").waitFor();
    assert.match(await page.evaluate(() => window.readLast), /^(garment-assay\/.*)?$/);
    crashed(problems);
    await button(page, "Open without the page it stopped at").click();
    await started(page);
    await kept(page);
    await main(page).getByText("Sound one").waitFor();
    assert.equal(await main(page).locator(".set-aside li").count(), 1);
    await reload(page);
    await kept(page);
    assert.equal(await main(page).getByText("Poisoned", { exact: true }).count(), 0);
    assert.deepEqual(Object.keys(await storage(page)), ["garment-assay/page/sound"]);
  });
});

test("an error in the script that is not caught is said, and what is kept can be saved", async () => {
  await visitWith([garment("one", { label: "One", answers: 2 })], {}, async ({ page, problems }) => {
    await kept(page);
    const facts = await factsOf(page);
    // What the app calls without a second thought throws: the exception goes right through the program.
    await page.evaluate(() => {
      window.Node.prototype.removeChild = () => {
        throw new TypeError("ordered by the test");
      };
      window.Document.prototype.createTextNode = () => {
        throw new TypeError("ordered by the test");
      };
    });
    await page.evaluate(() => (window.location.hash = "#/settings"));
    await button(page, "Save my notes to a file").waitFor();
    await crash(page).getByText(/did not expect/).waitFor();
    crashed(problems);
    assert.deepEqual(await takenIn(await saved(page), 1), facts);
    await button(page, "Load the page again").click();
    await started(page);
    await go(page, "#/", "Rack");
    await main(page).getByText("One", { exact: true }).waitFor();
  });
});

const PICTURE = "#/bench/stitch-photo/picture";

test("a panic in the second program is said; the app itself goes on, and so does the next start", async () => {
  await visitWith([garment("one", { label: "One", answers: 2 })], { before: refusing() }, async ({ page, problems }) => {
    await kept(page);
    await page.evaluate(() => (window.refused = "image/*"));
    await page.evaluate((to) => (window.location.hash = to), PICTURE);
    await button(page, "Save my notes to a file").waitFor();
    await crash(page).getByText(/invalid attribute key/).waitFor();
    crashed(problems);
    await saved(page);
    await go(page, "#/garment/one/check/inseam", /./);
    await main(page).getByRole("radio").first().waitFor();
    await answer(page, 0);
    await button(page, "Load the page again").click();
    await started(page);
    assert.ok((await factsOf(page))[0].includes("inseam"));
    await go(page, PICTURE, /./);
    await main(page).locator("input[type=file]").first().waitFor({ state: "attached" });
    assert.ok(await crash(page).isHidden());
  });
});

test("a panic in the second thread is told of in words, the marks stay, and the picture can be read again", async () => {
  // The thread's own script in a browser that counts wrongly: a question of a handful of numbers says that it has two thousand million, for
  // which there is no room in all of the program's memory. That is a panic of the standard library, on the way to reading the question.
  const wrong = `
    const { get } = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(Float64Array.prototype), "length");
    Object.defineProperty(Float64Array.prototype, "length", { get() { return this.buffer.byteLength < 65536 ? 0x7fffffff : get.call(this); } });
  `;
  const before = (context) =>
    context.route("**/worker.js", async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: wrong + (await answer.text()) });
    });
  await visit({ path: PICTURE, before }, async ({ page, context, problems }) => {
    await main(page).locator("input[type=file]").first().setInputFiles(marked.FILE);
    await marked.board(page).waitFor();
    await marked.setMarks(page);
    const count = main(page).getByRole("button", { name: "Count the stitches" });
    await count.click();
    await main(page).getByText("Reading stopped at something unexpected. Your marks are kept. Try again.").waitFor();
    assert.ok(await crash(page).isHidden(), "the app itself has not stopped");
    problems.length = 0; // the trap is in the console
    await context.unroute("**/worker.js");
    assert.equal(await main(page).locator(".set-mark").count(), marked.TRUTH.marks.length);
    await count.click();
    await main(page).locator("output").first().waitFor();
  });
});
