// The main way with the keyboard alone: where focus goes, and what is said aloud.

import assert from "node:assert/strict";
import { test } from "node:test";
import { visit } from "./harness.mjs";
import { manyGarments, RACK } from "./rack.mjs";
import { hash, headline, until, visitWith } from "./steps.mjs";

/** What has focus: its role or tag, and its words. */
const focused = (page) =>
  page.evaluate(() => {
    const element = document.activeElement;
    const label = element.getAttribute("aria-label") ?? element.labels?.[0]?.textContent ?? element.textContent;
    return { tag: element.localName, type: element.type ?? "", words: label.replace(/\s+/g, " ").trim() };
  });

/** Presses Tab until something with such words has focus; a person would not go on for ever either. */
async function tabTo(page, words, key = "Tab") {
  const passed = [];
  for (let pressed = 0; pressed < 60; pressed += 1) {
    await page.keyboard.press(key);
    const now = await focused(page);
    if (words.test(now.words) && now.tag !== "body" && now.tag !== "html") return now;
    passed.push(`${now.tag} ${now.words.slice(0, 30)}`);
  }
  throw new Error(`Tab never reached ${words}; it passed: ${passed.join(" | ")}`);
}

/** Waits until the heading of the opened screen has focus, and tells its words. */
async function openedHeading(page, level) {
  // A page whose code is on the way has a heading of its own until then.
  const now = await until(() => focused(page), ({ tag, words }) => tag === level && words !== "One moment", `focus on an ${level}`);
  return now.words;
}

/** What the live region says. */
const aloud = (page) => page.locator(".unseen[role=status]").innerText();

for (const size of ["phone", "desk"]) {
  test(`a check is started, five answers given, the result seen and the rack found again with keys alone: ${size}`, async () => {
    await visit({ size }, async ({ page }) => {
      await tabTo(page, /^Check a garment$/);
      await page.keyboard.press("Enter");
      assert.equal(await openedHeading(page, "h1"), "Check a garment");

      await tabTo(page, /^A name for it$/);
      await page.keyboard.type("Keyed pair");
      await page.keyboard.press("Enter"); // a form is sent from any of its fields
      const questions = new Set([await openedHeading(page, "h2")]);

      for (let made = 0; made < 5; made += 1) {
        // The answers are one stop of the tab key, the arrows move among them.
        const stop = await until(
          async () => (await page.keyboard.press("Tab"), focused(page)),
          ({ type }) => type === "radio",
          "the answers",
        );
        assert.equal(stop.tag, "input");
        await page.keyboard.press(made % 2 === 0 ? "Space" : "ArrowDown");
        const said = await until(() => headline(page), (text) => text && !text.startsWith("Not checked"), "a band");
        await until(() => aloud(page), (text) => text === `${said}.`, "the band to be said");
        assert.equal(await page.getByText(`${said}.`, { exact: true }).count(), 1, "it is said in one place only");
        const [heading, now] = [[...questions].at(-1), hash(page)];
        await tabTo(page, /^Next check$/);
        await page.keyboard.press("Enter");
        await until(() => hash(page), (to) => to !== now, "the next check");
        const opened = await until(() => focused(page), ({ tag, words }) => tag === "h2" && words !== heading, "focus on the next question");
        assert.ok(!questions.has(opened.words), `asked twice: ${opened.words}`);
        questions.add(opened.words);
        assert.equal(await aloud(page), "", "nothing is said over the question");
      }

      await tabTo(page, /^See the result$/);
      await page.keyboard.press("Enter");
      assert.equal(await openedHeading(page, "h1"), "Keyed pair");
      assert.match(hash(page), /\/result$/);
      await tabTo(page, /^(Back to the rack|Rack)$/);
      await page.keyboard.press("Enter");
      assert.equal(await openedHeading(page, "h1"), "Rack");
      await tabTo(page, /Keyed pair/);
    });
  });
}

test("every screen that is opened takes focus to its heading, and a reader to its top", async () => {
  await visitWith(RACK, { size: "desk" }, async ({ page }) => {
    const id = RACK[0].id;
    for (const [to, level, words] of [
      ["#/settings", "h1", /^Settings$/],
      ["#/numbers", "h1", /^Where the numbers come from$/],
      [`#/garment/${id}/result`, "h1", /^Dark rigid straight$/],
      [`#/garment/${id}/checks`, "h1", /^All checks$/],
      [`#/garment/${id}/details`, "h1", /^Details$/],
      [`#/garment/${id}/check/inseam`, "h2", /\?$/],
      ["#/new", "h1", /^Check a garment$/],
      ["#/", "h1", /^Rack$/],
    ]) {
      await page.evaluate((to) => {
        window.scrollTo(0, 5000);
        window.location.hash = to;
      }, to);
      await until(() => focused(page), (now) => now.tag === level && words.test(now.words), `focus on the heading of ${to}`);
      assert.equal(await page.evaluate(() => window.scrollY), 0);
    }
  });
});

/** What covers the element that has focus, at its middle; empty when nothing does, or when it is out of the window altogether. */
const coveredBy = (page) =>
  page.evaluate(() => {
    const element = document.activeElement;
    const shown = (element.labels?.[0] ?? element).getBoundingClientRect();
    const [x, y] = [shown.left + shown.width / 2, shown.top + Math.min(shown.height / 2, 20)];
    const on = document.elementFromPoint(x, y);
    const same = !on || (on === element || element.contains(on) || on.contains(element) || element.labels?.[0]?.contains(on));
    return same ? "" : `${element.localName} "${element.textContent.trim().slice(0, 30)}" at ${Math.round(y)}: ${on?.closest("[class]")?.className ?? on}`;
  });

test("what has focus is never hidden under a pinned bar (WCAG 2.2, 2.4.11)", async () => {
  await visitWith(RACK, { size: "small" }, async ({ page }) => {
    const found = [];
    for (const to of ["#/settings", "#/", `#/garment/${RACK[0].id}/result`, `#/garment/${RACK[0].id}/checks`, `#/garment/${RACK[3].id}/check/metal`]) {
      await page.evaluate((to) => (window.location.hash = to), to);
      await until(() => focused(page), ({ tag }) => /^h[12]$/.test(tag), "focus on a heading");
      for (const key of ["Tab", "Shift+Tab"]) {
        for (let pressed = 0; pressed < 30; pressed += 1) {
          await page.keyboard.press(key);
          if (await page.evaluate(() => document.activeElement === document.body)) break;
          // The browser brings it into view a moment later, if it is not.
          const covered = await until(() => coveredBy(page), (what) => what === "", "", 300).catch(() => coveredBy(page));
          if (covered) found.push(`${to}, ${key}: ${covered}`);
        }
      }
    }
    assert.deepEqual(found, []);
  });
});

test("a confirmation keeps focus within it, and gives it back", async () => {
  await visitWith(RACK, { path: "#/settings" }, async ({ page }) => {
    await page.getByRole("button", { name: "Erase everything" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor();
    for (let pressed = 0; pressed < 6; pressed += 1) {
      const inside = await page.evaluate(() => document.activeElement === document.body || document.activeElement.closest("dialog") !== null);
      assert.ok(inside, "focus has left the dialog");
      await page.keyboard.press("Tab");
    }
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await until(() => focused(page), ({ words }) => words === "Erase everything", "focus back on the button");
    assert.equal(await page.getByRole("heading", { level: 1 }).innerText(), "Settings");
  });
});

test("undo takes focus nowhere, and the answer is said again", async () => {
  await visitWith(RACK, { path: `#/garment/${RACK[4].id}/check/inseam` }, async ({ page }) => {
    await page.getByRole("main").locator("label:has(input[type=radio])").first().click();
    const said = await until(() => aloud(page), (text) => text !== "", "the band to be said");
    await page.getByRole("button", { name: "Undo" }).focus();
    await page.keyboard.press("Enter");
    await until(() => aloud(page), (text) => text !== said && text !== "", "the band before to be said");
    assert.match(await aloud(page), /^Not checked yet/);
  });
});

test("a long rack shows its first rows, and the next on demand, with the keyboard where it was", async () => {
  await visitWith(manyGarments(70), {}, async ({ page }) => {
    const rows = page.getByRole("main").locator("li.rack-row");
    await until(() => rows.count(), (count) => count === 30, "the first thirty");
    const more = page.getByRole("button", { name: /^Show more/ });
    assert.equal(await more.innerText(), "Show more (40 left)");
    await more.focus();
    await page.keyboard.press("Enter");
    await until(() => rows.count(), (count) => count === 60, "thirty more");
    await until(() => focused(page), ({ words }) => words === "Show more (10 left)", "the keyboard still on the button");
    await page.keyboard.press("Enter");
    await until(() => rows.count(), (count) => count === 70, "the rest");
    assert.equal(await more.count(), 0);
  });
});

test("what is half-typed stays when the app has something else to say", async () => {
  await visitWith(RACK, { path: `#/garment/${RACK[0].id}/lot` }, async ({ page }) => {
    const field = page.getByRole("main").getByLabel("Pieces in the lot");
    await field.focus();
    await page.keyboard.type("12");
    // As the copy for use without a network does, whenever it stands otherwise than before.
    for (const told of ["loading current", "whole current"]) {
      await page.evaluate((detail) => document.dispatchEvent(new window.CustomEvent("flight-told", { detail })), told);
      await page.waitForTimeout(100);
    }
    await page.keyboard.type("0");
    assert.equal(await field.inputValue(), "120");
  });
});
