// The browser is killed in the middle of many edits: what it had time to confirm is there at the next start, and nothing is unreadable.
//
// Five times for each run of the tests; KILLS=50 for more, SEED=n for others, KILL_AT=shown to kill as soon as an edit is on the screen.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { test } from "node:test";
import { newProfile } from "./harness.mjs";
import { CHECKS, garment, page as pageOf } from "./rack.mjs";
import { kept, until } from "./steps.mjs";

const KILLS = Number(process.env.KILLS ?? 5);
const SEED = Number(process.env.SEED ?? 26);
const AT_ONCE = process.env.KILL_AT === "shown";
const EDITS = 200;
const GARMENTS = 6;

const main = (page) => page.getByRole("main");
const ids = Array.from({ length: GARMENTS }, (_, number) => `k${number}`);
const CHECK_KEYS = CHECKS.slice(6, 26).map(({ key }) => key);

/** Numbers from 0 to 1 that a seed decides (mulberry32, a common 32-bit mixer). */
function chance(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Edits in the page, one after the other, by pressing what is on the screen, and telling what the screen says of each. Runs in the page. */
async function edit({ edits, from }) {
  const pause = () => new Promise((done) => window.setTimeout(done, 0));
  const seen = async (look) => {
    for (;;) {
      const found = look();
      if (found) return found;
      await pause();
    }
  };
  const keptNow = () => document.querySelector('.kept[data-state="kept"]');
  for (const [place, { id, check, choice }] of edits.entries()) {
    const number = from + place;
    window.location.hash = `#/garment/${id}/check/${check}`;
    // The options of this garment's check, and no longer those of the one before.
    const options = await seen(() => {
      const mine = [...document.querySelectorAll("main a")].some((link) => link.hash === `#/garment/${id}/check/${check}/photographs`);
      const inputs = [...document.querySelectorAll("main input[type=radio]")];
      return mine && inputs.length > 1 ? inputs : null;
    });
    await pause();
    const option = options[Math.floor(choice * options.length)];
    if (!option.isConnected || option.checked) continue;
    await window.told({ number, id, check, at: "asked" });
    const before = window.localStorage.getItem(`garment-assay/page/${id}`);
    const pressed = performance.now();
    option.click();
    await seen(() => document.querySelector("main input[type=radio]:checked"));
    const shown = performance.now();
    const text = window.localStorage.getItem(`garment-assay/page/${id}`);
    if (text === before) throw new Error(`edit ${number} is not in local storage`);
    await window.told({ number, id, at: "shown", text, after: shown - pressed });
    await seen(keptNow);
    await window.told({ number, id, at: "kept", text, after: performance.now() - pressed });
  }
}

/** Every process that names the profile's folder. */
async function alive(folder) {
  const found = [];
  for (const pid of (await readdir("/proc")).filter((name) => /^\d+$/.test(name))) {
    const line = await readFile(`/proc/${pid}/cmdline`, "utf8").catch(() => "");
    const state = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => ") Z");
    if (line.includes(folder) && !/\) Z/.test(state)) found.push(pid);
  }
  return found;
}

const number = (text) => JSON.parse(text.split("\n")[0]).rev;
const facts = (text) => text.split("\n")[1];
const pages = (page) =>
  page.evaluate(() => Object.fromEntries(Object.entries(window.localStorage).filter(([key]) => key.startsWith("garment-assay/page/"))));

test(`nothing that was confirmed is lost when the browser is killed ${KILLS} times in the middle of ${EDITS} edits`, async (context) => {
  const next = chance(SEED);
  const profile = await newProfile();
  const [lags, shownOnly] = [[], []];
  let [made, killed, lost] = [0, 0, 0];
  try {
    const { page: first } = await profile.start();
    // The rack is laid out by hand, and the app takes it into its mirror.
    await first.evaluate((laid) => laid.forEach(([key, text]) => window.localStorage.setItem(key, text)), ids.map((id) => pageOf(garment(id, { label: id, answers: 2 }))));
    await first.reload();
    await main(first).getByText("k0", { exact: true }).waitFor();
    await kept(first);
    let expected = await pages(first);
    await first.waitForTimeout(500);
    await profile.kill();

    const share = Math.ceil(EDITS / KILLS);
    for (let kill = 0; kill < KILLS; kill += 1) {
      const { page, problems } = await profile.start();
      await kept(page);
      await main(page).getByText("k0", { exact: true }).waitFor();
      const told = [];
      await page.exposeBinding("told", (_, word) => void told.push({ ...word, heard: Date.now() }));
      const edits = Array.from({ length: share * 4 }, () => ({
        id: ids[Math.floor(next() * GARMENTS)],
        check: CHECK_KEYS[Math.floor(next() * CHECK_KEYS.length)],
        choice: next(),
      }));
      let failed;
      page.evaluate(edit, { edits, from: made }).catch((error) => (failed = error));
      // So many are made; then, at a moment within the next, the end.
      await until(() => told.filter(({ at }) => at === "kept").length, (count) => count >= Math.max(1, share - 1) || failed, "the edits", 120_000);
      if (failed) throw failed;
      if (AT_ONCE) await until(() => told.at(-1).at, (word) => word === "shown", "an edit that is shown and not confirmed");
      else await page.waitForTimeout(next() * 120);
      const at = Date.now();
      await profile.kill();
      killed += 1;
      assert.deepEqual(await until(() => alive(profile.folder), (pids) => pids.length === 0, "every process to be gone"), []);
      assert.deepEqual(problems, []);

      made += told.filter(({ at }) => at === "shown").length;
      lags.push(...told.filter(({ at }) => at === "kept").map(({ after }) => after));
      const again = await profile.start();
      await kept(again.page);
      await main(again.page).getByText("k0", { exact: true }).waitFor();
      const there = await until(() => pages(again.page), (all) => Object.keys(all).length >= GARMENTS, "the rack");
      assert.equal(await main(again.page).locator(".set-aside li").count(), 0, "something is unreadable");
      assert.deepEqual(Object.keys(there).sort(), Object.keys(expected).sort(), "a garment too few or too many");
      for (const id of ids) {
        const key = `garment-assay/page/${id}`;
        const mine = told.filter((word) => word.id === id && word.text);
        const confirmed = mine.filter(({ at }) => at === "kept").at(-1)?.text ?? expected[key];
        // What came after the last that was confirmed may be there or not, but nothing older, and nothing else.
        const later = mine.filter(({ text }) => number(text) > number(confirmed)).map(({ text }) => facts(text));
        // The last may have been made, and the word of it not heard any more.
        const unheard = told.filter((word) => word.id === id).at(-1)?.at === "asked" && number(there[key]) === number(mine.at(-1)?.text ?? confirmed) + 1;
        assert.ok(
          facts(there[key]) === facts(confirmed) || later.includes(facts(there[key])) || unheard,
          `${id} after kill ${kill + 1}: confirmed ${confirmed}, there ${there[key]}, last word ${JSON.stringify(mine.at(-1))}`,
        );
        if (later.length > 0) {
          const gone = !later.includes(facts(there[key]));
          lost += gone;
          shownOnly.push({ gone, ms: at - mine.find(({ text }) => facts(text) === later[0]).heard });
        }
      }
      expected = there;
      assert.deepEqual(again.problems, []);
      await profile.kill();
    }
  } finally {
    await profile.remove();
  }
  lags.sort((a, b) => a - b);
  const at = (share) => lags[Math.floor((lags.length - 1) * share)]?.toFixed(1);
  context.diagnostic(
    JSON.stringify({ kills: killed, edits: made, "ms from the tap to confirmed": { half: at(0.5), "95 of 100": at(0.95), most: at(1) }, "shown and not yet confirmed": shownOnly, "of these lost": lost }),
  );
});
