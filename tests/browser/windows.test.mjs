// Several tabs edit the same garments and different ones at once: none of what a tab was told is kept is lost, and all show one rack.

import assert from "node:assert/strict";
import { test } from "node:test";
import { CHECKS, garment } from "./rack.mjs";
import { go, kept, until, visitWith } from "./steps.mjs";

const SEED = Number(process.env.SEED ?? 26);
const main = (page) => page.getByRole("main");

/**
 * Edits in the page: each tab writes its own check's note, so that nobody but it takes back what it wrote. The rhythm and the garments are the
 * seed's. Runs in the page.
 * @returns {Promise<object>} the last note kept of each garment, by the name it began with
 */
async function edit({ seed, tab, check, ids, edits }) {
  let state = seed >>> 0;
  const chance = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const pause = (ms) => new Promise((done) => window.setTimeout(done, ms));
  const seen = async (look, what) => {
    for (const end = performance.now() + 30_000; performance.now() < end; await pause(0)) {
      const found = look();
      if (found) return found;
    }
    throw new Error(`tab ${tab} waited in vain for ${what} at ${window.location.hash}`);
  };
  const last = {};
  for (let number = 0; number < edits; number += 1) {
    const id = ids[Math.floor(chance() * ids.length)];
    // A garment that was parted goes on under its new name.
    let now = window.parted?.[id] ?? id;
    window.location.hash = `#/garment/${now}/check/${check}`;
    const field = await seen(() => {
      // It may be parted at this very moment: the address says what it is called now.
      now = window.location.hash.split("/")[2];
      // The page of this garment, and no longer that of the one before.
      const mine = [...document.querySelectorAll("main a")].some((link) => link.hash === `#/garment/${now}/check/${check}/photographs`);
      if (!mine) return null;
      document.querySelectorAll("main button[aria-expanded=false]").forEach((button) => /note/i.test(button.textContent) && button.click());
      return document.querySelector("main #check-note");
    }, "the note");
    const text = `tab ${tab} wrote ${number} on ${id}`;
    field.focus();
    field.value = text;
    field.dispatchEvent(new window.Event("change", { bubbles: true }));
    field.blur();
    await seen(() => Object.values(window.localStorage).some((page) => page.includes(text)), `“${text}” to be kept`);
    last[id] = text;
    const heard = window.location.hash.split("/")[2];
    if (heard !== now) window.parted = { ...window.parted, [id]: heard };
    if (chance() < 0.5) await pause(chance() * 60);
  }
  return last;
}

for (const [count, edits] of [[2, 40], [5, 20]]) {
  test(`${count} tabs make ${edits} edits each, and none is lost`, async (context) => {
    const ids = ["one", "two", "three", "four"];
    const garments = ids.map((id) => garment(id, { label: `Piece ${id}`, answers: 2 }));
    await visitWith(garments, {}, async ({ page, reopen }) => {
      const tabs = [page];
      while (tabs.length < count) tabs.push(await reopen());
      for (const tab of tabs) await go(tab, "#/garment/one/check/inseam", /./);
      const last = await Promise.all(
        tabs.map((tab, number) => tab.evaluate(edit, { seed: SEED + 1000 * count + number, tab: number, check: CHECKS[10 + number].key, ids, edits })),
      );
      for (const tab of tabs) await kept(tab);
      const texts = () => page.evaluate(() => Object.entries(window.localStorage).filter(([key]) => key.startsWith("garment-assay/page/")).map(([, text]) => text));
      // A tab may be about to hear that another took its place, and to save its own beside.
      const lost = (all) => last.flatMap((notes, tab) => Object.entries(notes).filter(([, note]) => !all.some((text) => text.includes(note))).map(([id, note]) => `tab ${tab}, the last note on ${id}: ${note}`));
      await until(async () => lost(await texts()), (lost) => lost.length === 0, "every note that was kept to be on the shelf");
      const all = await texts();
      for (const text of all) assert.ok(text.includes("\n"), "something was deleted");
      const rack = async (tab) => {
        // It shows thirty at first.
        const more = main(tab).getByRole("button", { name: /^Show \d+ more|^Show more/ });
        if (await more.count()) await more.first().click();
        const names = await main(tab).getByRole("button", { name: /^Delete / }).evaluateAll((buttons) => buttons.map((button) => button.getAttribute("aria-label") ?? button.textContent));
        return names.sort();
      };
      for (const tab of tabs) await go(tab, "#/", "Rack");
      const first = await until(() => rack(page), (names) => names.length === all.length, "every garment on the rack");
      for (const tab of tabs.slice(1)) await until(() => rack(tab), (names) => JSON.stringify(names) === JSON.stringify(first), "the same rack in every tab");
      // And so it is for a tab that is opened now.
      const fresh = await reopen();
      await until(() => rack(fresh), (names) => JSON.stringify(names) === JSON.stringify(first), "the same rack in a new tab");
      assert.equal(await main(fresh).locator(".set-aside li").count(), 0);
      const led = all.filter((text) => [...text.matchAll(/tab \d+ wrote \d+ on (\w+)/g)].some(([, id]) => !text.includes(`"label":"Piece ${id}`)));
      context.diagnostic(`${count * edits} edits, ${all.length - ids.length} garments more by conflicts, ${led.length} with a note meant for another`);
    });
  });
}

// Yew may give the thread back between drawing a page and telling its parts, where that takes long: the page then names one garment, and its
// field still writes to the other. The clock here makes every drawing long, and a hand that is as quick as can be writes at the first moment.
test("a note that is written while the page of another garment is being drawn goes where the page says", async () => {
  const ids = ["one", "two"];
  const garments = ids.map((id) => garment(id, { label: `Piece ${id}`, answers: 2 }));
  await visitWith(garments, {}, async ({ page }) => {
    const check = CHECKS[10].key;
    await go(page, `#/garment/one/check/${check}`, /./);
    await main(page).getByRole("button", { name: "Add a note" }).click();
    await main(page).getByLabel("Note on this check").waitFor();
    await page.evaluate(
      async ([check, ids]) => {
        const now = Date.now;
        let late = 0;
        Date.now = () => now() + (late += 20);
        for (let number = 0; number < 6; number += 1) {
          const id = ids[(number + 1) % 2];
          window.location.hash = `#/garment/${id}/check/${check}`;
          const isHere = () => [...document.querySelectorAll("main a")].some((link) => link.hash === `#/garment/${id}/check/${check}/photographs`);
          let field;
          for (const end = now() + 10_000; !field && now() < end; ) {
            await new Promise((done) => {
              const { port1, port2 } = new window.MessageChannel();
              port1.onmessage = done;
              port2.postMessage("");
            });
            if (!isHere()) continue;
            field = document.querySelector("main #check-note");
            if (!field) document.querySelectorAll("main button[aria-expanded=false]").forEach((button) => /note/i.test(button.textContent) && button.click());
          }
          field.value = `note ${number} on ${id}`;
          field.dispatchEvent(new window.Event("change", { bubbles: true }));
          await new Promise((done) => window.setTimeout(done, 100));
        }
        Date.now = now;
      },
      [check, ids],
    );
    await kept(page);
    const notes = await page.evaluate(() => Object.fromEntries(Object.entries(window.localStorage).filter(([key]) => key.startsWith("garment-assay/page/")).map(([key, text]) => [key.slice(19), /note \d on \w+/.exec(text)?.[0]])));
    assert.deepEqual(notes, { one: "note 5 on one", two: "note 4 on two" });
  });
});
