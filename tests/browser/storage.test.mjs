// What happens to what was answered when storage is full, forbidden, damaged, newer, shared by two windows or cut off by a crash.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { address, newProfile, visit } from "./harness.mjs";
import { garment, page as pageOf, RACK, stored } from "./rack.mjs";
import { answer, answered, answers, begin, exportAll, garmentId, go, hash, headline, kept, mirror, moved, next, openResult, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const alert = (page, words) => page.getByRole("alert").filter({ hasText: words });
const own = { label: "Own pair", answers: 3 };
const KEY = "garment-assay/page/own";

/** Answers as they stand in a stored page. */
const inPage = (text) => JSON.parse(text.split("\n")[1]).answers.length;

/** Fills local storage to the last character. */
async function fill(page) {
  await page.evaluate(() => {
    let part = "x".repeat(1 << 20);
    for (let number = 0; part.length > 0; number += 1) {
      try {
        window.localStorage.setItem(`filler-${number}`, part);
      } catch {
        part = part.slice(0, part.length >> 1);
      }
    }
  });
}

const empty = (page) =>
  page.evaluate(() => Object.keys(window.localStorage).filter((key) => key.startsWith("filler-")).forEach((key) => window.localStorage.removeItem(key)));

test("when storage is full the reserve takes the last answers, then a sentence says what is not kept, until there is room", async () => {
  await visit({}, async ({ page }) => {
    await begin(page, { label: "Full house" });
    const key = `garment-assay/page/${garmentId(page)}`;
    await answer(page, 0);
    await next(page);
    assert.ok((await page.evaluate(() => window.localStorage.getItem("garment-assay/ballast")))?.length > 0);

    await fill(page);
    await answer(page, 0);
    assert.equal(inPage((await storage(page))[key]), 2, "the reserve made room");
    assert.equal(await page.evaluate(() => window.localStorage.getItem("garment-assay/ballast")), null);
    await alert(page, /room/).waitFor();

    await next(page);
    await fill(page);
    await answer(page, 1);
    await alert(page, /Not kept: the latest changes to 1 garment/).waitFor();
    assert.equal(inPage((await storage(page))[key]), 2, "what was kept before still is");
    await next(page);
    await answer(page, 1); // the app goes on
    const said = await headline(page);
    const { text } = await exportAll(page);
    assert.equal(JSON.parse(text).garments[0].answers.length, 4, "what is not kept can be exported");

    await empty(page);
    await page.goBack();
    await answers(page).first().waitFor();
    assert.equal(await headline(page), said);
    await next(page);
    await answer(page, 0);
    await alert(page, /Not kept/).waitFor({ state: "detached" });
    assert.equal(inPage((await storage(page))[key]), 5);
    assert.equal((await mirror(page))[key], (await storage(page))[key]);
  });
});

test("once there is room again the next answer takes the sentence away and sets a reserve aside", async () => {
  await visit({}, async ({ page }) => {
    await begin(page, { label: "Full house" });
    await fill(page);
    await answer(page, 0);
    await alert(page, /room/).waitFor();
    await empty(page);
    await next(page);
    await answer(page, 0);
    await until(() => alert(page, /./).count(), (count) => count === 0, "the sentence to go", 3000);
    assert.ok((await page.evaluate(() => window.localStorage.getItem("garment-assay/ballast")))?.length > 0, "there is a reserve again");
  });
});

test("where local storage is forbidden the app opens, says so, can be used and exported", async () => {
  const before = (context) =>
    context.addInitScript(() => {
      const refuse = () => {
        throw new window.DOMException("refused", "SecurityError");
      };
      Object.defineProperty(window, "localStorage", { get: refuse });
    });
  await visit({ before }, async ({ page }) => {
    await alert(page, /does not let the app keep anything/).waitFor();
    await begin(page, { label: "Nowhere kept" });
    await answer(page, 0);
    await next(page);
    await answer(page, 0);
    await alert(page, /Not kept: the latest changes to 1 garment/).waitFor();
    await openResult(page);
    assert.equal((await moved(page)).length, 2);
    const { text } = await exportAll(page);
    assert.equal(JSON.parse(text).garments[0].answers.length, 2);
  });
});

test("where IndexedDB is forbidden everything is kept in local storage alone", async () => {
  const before = (context) =>
    context.addInitScript(() => {
      const refuse = () => {
        throw new window.DOMException("refused", "SecurityError");
      };
      Object.defineProperty(window, "indexedDB", { get: refuse });
    });
  await visit({ before }, async ({ page }) => {
    await begin(page, { label: "One copy" });
    await answer(page, 0);
    await next(page);
    await answer(page, 1);
    const list = await answered(page);
    await reload(page);
    assert.deepEqual(await answered(page), list);
    assert.equal(await alert(page, /./).count(), 0);
  });
});

/** A page of which one character was flipped. */
const flipped = (text) => text.replace("jeans", "jeanz");

test("a damaged page is set aside, its text can be saved, and the others are as they were", async () => {
  const [key, text] = pageOf(garment("own", own));
  const context = stored(await address(), [...RACK.map((one) => pageOf(one)), [key, flipped(text)]]);
  await visit({ context }, async ({ page }) => {
    const aside = main(page).locator("section").filter({ has: page.getByRole("heading", { name: "Pages that could not be read" }) });
    await aside.getByText("This page is damaged").waitFor();
    assert.equal(await main(page).getByRole("button", { name: /^Delete / }).count(), RACK.length);
    const [download] = await Promise.all([page.waitForEvent("download"), aside.getByRole("button", { name: "Save its text" }).click()]);
    assert.equal(await readFile(await download.path(), "utf8"), flipped(text));
    const asked = () => page.getByRole("dialog", { name: "Drop this page?" });
    await aside.getByRole("button", { name: "Drop it" }).click();
    await asked().getByRole("button", { name: "Keep it" }).click();
    assert.notEqual((await storage(page))[key], undefined, "a no keeps it");
    await aside.getByRole("button", { name: "Drop it" }).click();
    await asked().getByRole("button", { name: "Drop it" }).click();
    await aside.waitFor({ state: "detached" });
    assert.equal((await storage(page))[key], undefined);
    await go(page, `#/garment/${RACK[0].id}/result`, "What this does not say");
  });
});

test("a damaged page is healed from the mirror, and so is one that is lost", async () => {
  await visitWith([garment("own", own), garment("two", { label: "Second pair", answers: 2 })], {}, async ({ page }) => {
    const before = await until(() => mirror(page), (pages) => Object.keys(pages).length === 2, "the mirror");
    await page.evaluate((key) => {
      window.localStorage.setItem(key, window.localStorage.getItem(key).replace("jeans", "jeanz"));
      window.localStorage.removeItem("garment-assay/page/two");
    }, KEY);
    await reload(page);
    await main(page).getByText("Own pair").waitFor();
    await main(page).getByText("Second pair").waitFor();
    assert.equal(await page.getByRole("heading", { name: "Pages that could not be read" }).count(), 0);
    assert.deepEqual(await storage(page), before);
  });
});

test("a page of a newer version is left as it is, and said to be one", async () => {
  const newer = '{"form":99,"rev":3}\nin words not known yet';
  const context = stored(await address(), [pageOf(RACK[0]), ["garment-assay/page/newer", newer]]);
  await visit({ context }, async ({ page }) => {
    await main(page).getByText(/written by a newer version/).waitFor();
    await reload(page);
    assert.equal((await storage(page))["garment-assay/page/newer"], newer);
    await main(page).getByText("Dark rigid straight").waitFor();
  });
});

test("an answer in one window shows in the other", async () => {
  await visitWith([garment("own", own)], { path: "#/garment/own/check/inseam" }, async ({ page, reopen }) => {
    const other = await reopen();
    const before = await headline(other);
    await answer(page, 0);
    const said = await headline(page);
    assert.notEqual(said, before);
    await until(() => headline(other), (now) => now === said, "the other window to follow");
    await until(() => answers(other).nth(0).isChecked(), Boolean, "the answer in the other window");
    await next(other);
    await answer(other, 0);
    assert.deepEqual(Object.keys(await storage(page)), [KEY], "one after the other is no conflict");
  });
});

test("two windows that answer at the same time are both kept", async () => {
  // A window that is deaf hears of a change too late, as happens when both are written in the same moment.
  const before = (context) =>
    context.addInitScript(() => window.addEventListener("storage", (event) => window.deaf && event.stopImmediatePropagation(), true));
  await visitWith([garment("own", own)], { path: "#/garment/own/check/inseam", before }, async ({ page, reopen }) => {
    const other = await reopen();
    await other.evaluate(() => (window.deaf = true));
    await answer(page, 0);
    await answer(other, 3);
    const pages = await until(() => storage(page), (pages) => Object.keys(pages).length === 2, "two pages");
    assert.match(pages[KEY], /"check":"inseam","judged":"felled-flat"/);
    const ours = Object.entries(pages).find(([key]) => key !== KEY)[1];
    assert.match(ours, /"check":"inseam","judged":"overlock"/);
    await other.getByText("Both are kept; you go on with yours.").waitFor();
    await until(() => garmentId(other), (id) => id !== "own", "the new name");
    await go(page, "#/", "Rack");
    await until(() => main(page).getByRole("button", { name: /^Delete / }).count(), (count) => count === 2, "both on the rack");
  });
});

test("a deleted garment comes back with undo, and stays gone without", async () => {
  await visitWith([garment("own", own), RACK[0]], {}, async ({ page }) => {
    const facts = async () => (await storage(page))[KEY].split("\n")[1];
    const before = await facts();
    const remove = main(page).getByRole("button", { name: "Delete Own pair" });
    await remove.click();
    await page.getByText("Deleted: Own pair.").waitFor();
    assert.equal(await remove.count(), 0);
    await page.getByRole("button", { name: "Undo" }).click();
    await remove.waitFor();
    assert.equal(await facts(), before);
    await remove.click();
    await kept(page);
    await reload(page);
    await main(page).getByText("Dark rigid straight").waitFor();
    assert.equal(await main(page).getByText("Own pair").count(), 0);
    await page.evaluate((key) => window.localStorage.removeItem(key), KEY);
    await reload(page);
    await kept(page);
    assert.equal(await main(page).getByText("Own pair").count(), 0, "the mirror does not bring it back");
  });
});

test("a garment that is deleted in another window while it is open here is said to be gone", async () => {
  await visitWith([garment("own", own), RACK[0]], {}, async ({ page, reopen }) => {
    const other = await reopen();
    await go(other, "#/garment/own/result", "What this does not say");
    await main(page).getByRole("button", { name: "Delete Own pair" }).click();
    await other.getByText("This garment was deleted in another window.").waitFor();
    await until(() => hash(other), (now) => now === "#/", "the rack");
    await page.getByRole("button", { name: "Undo" }).click();
    await main(other).getByText("Own pair").waitFor();
  });
});

test("erasing everything in one window empties the other, and nothing comes back", async () => {
  await visitWith([garment("own", own), RACK[0]], {}, async ({ page, reopen }) => {
    const other = await reopen();
    await go(other, "#/garment/own/result", "What this does not say");
    await go(page, "#/settings", "Settings");
    await page.getByRole("button", { name: "Erase everything" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Erase", exact: true }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Yes, erase all" }).click();
    await main(other).getByRole("heading", { name: "Take a garment in your hands" }).waitFor();
    await until(() => mirror(page), (pages) => Object.keys(pages).length === 0, "an empty mirror");
    await reload(other);
    await main(other).getByRole("heading", { name: "Take a garment in your hands" }).waitFor();
    assert.deepEqual(await storage(other), {});
  });
});

test("nothing that was acknowledged is lost when the browser is killed", async () => {
  const profile = await newProfile();
  try {
    let { page } = await profile.start();
    await begin(page, { label: "Killed at once" });
    const id = garmentId(page);
    for (let made = 0; made < 4; made += 1) {
      await answer(page, made % 2);
      if (made < 3) await next(page);
    }
    const said = await headline(page);
    await profile.kill();
    ({ page } = await profile.start());
    await main(page).getByText("Killed at once").waitFor();
    await go(page, `#/garment/${id}/result`, "What this does not say");
    assert.equal(await headline(page), said);
    assert.equal((await answered(page)).length, 4);
  } finally {
    await profile.remove();
  }
});
