// How long a person waits: from a tap to the repainted tape, to open a full rack, to search it, to start. Not a test: `make bench`.
//   node tests/browser/measure.mjs [GARMENTS] [SLOWDOWN]
//
// Tap: from the event's own time stamp (when the browser got the touch) to the first task after the frame in which the tape's
// aria-label changed: MutationObserver, then requestAnimationFrame, then a message, which runs once that frame is handed over.
// Milliseconds depend on this machine and its load, so each is also given in units of a busy loop timed on the same page just
// before: about 10 ms of plain arithmetic on an idle desk computer of 2024.

import { address, closeAll, visit } from "./harness.mjs";
import { exported, manyGarments, page as pageOf, stored } from "./rack.mjs";
import { answers, chooseFile, go, next, until } from "./steps.mjs";

const [count = 500, slowdown = 4] = process.argv.slice(2).map(Number);
/** Fewest taps that must have moved the tape; a check that speaks of cost alone does not. */
const TAPS = 24;

/** Puts the stop watch into the page. */
const watches = (context) =>
  context.addInitScript(() => {
    window.painted = () =>
      new Promise((done) =>
        window.requestAnimationFrame(() => {
          const channel = new window.MessageChannel();
          channel.port1.onmessage = () => done(performance.now());
          channel.port2.postMessage("");
        }),
      );
    /** Milliseconds of a fixed amount of arithmetic, the median of five. */
    window.busy = () => {
      const times = [];
      for (let turn = 0; turn < 5; turn += 1) {
        const start = performance.now();
        let sum = 0;
        for (let step = 1; step < 4_000_000; step += 1) sum += (step % 7) / step;
        times.push(performance.now() - start + (sum < 0 ? 1 : 0));
      }
      return times.sort((a, b) => a - b)[2];
    };
    /** When the page was first painted, and when the app had taken its place and was painted. */
    const watching = new window.MutationObserver(async () => {
      if (document.documentElement.dataset.ready !== "yes") return;
      watching.disconnect();
      const rack = await window.painted();
      window.started = { rack, shown: performance.getEntriesByType("paint").find(({ name }) => name === "first-contentful-paint")?.startTime ?? rack };
    });
    watching.observe(document, { subtree: true, attributes: true, attributeFilter: ["data-ready"] });
    /** From the next event of that kind to the frame after `changed()` first holds. A watch that has seen no change ends when the next begins. */
    window.time = (kind, changed) => {
      window.timed = undefined;
      window.watched?.disconnect();
      let start;
      window.addEventListener(kind, (event) => (start ??= event.timeStamp), { capture: true, once: true });
      const observer = new window.MutationObserver(async () => {
        if (start === undefined || !changed()) return;
        observer.disconnect();
        const settled = performance.now();
        window.timed = { update: settled - start, paint: (await window.painted()) - start };
      });
      window.watched = observer;
      observer.observe(document.querySelector("#app"), { subtree: true, childList: true, attributes: true, characterData: true });
    };
    new window.PerformanceObserver((list) => (window.taps = [...(window.taps ?? []), ...list.getEntries().map(({ name, duration }) => ({ name, duration }))])).observe({ type: "event", durationThreshold: 16 });
  });

const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const median = (numbers) => sorted(numbers)[Math.floor(numbers.length / 2)];
const rows = [];
function note(what, times, unit) {
  const [middle, worst] = [median(times), Math.max(...times)];
  rows.push({ what, n: times.length, "median ms": middle.toFixed(0), "worst ms": worst.toFixed(0), "median/busy": (middle / unit).toFixed(2), "worst/busy": (worst / unit).toFixed(2) });
}
const timed = (page) => until(() => page.evaluate(() => window.timed), Boolean, "the stop watch");

const garments = manyGarments(count);
// The garment that is tapped on has no answers yet.
garments[0].answers = [];
// One in fifty has ten photographs: of a thousand garments, two hundred. The rack shows none of them, but every page is read with them.
for (let place = 0; place < count; place += 50) {
  garments[place].photographs = Array.from({ length: 10 }, (_, nth) => ({ id: String(place * 10 + nth).padStart(32, "0"), size: [1600, 1200], added: "2026-03-01", caption: `Seam ${nth}` }));
}
const context = stored(await address(), garments.map((garment) => pageOf(garment)));

try {
  // Start: from the navigation to the first heading of the app, with the files in the browser's cache after the first time.
  await visit({ context, before: watches, throttle: slowdown }, async ({ page }) => {
    const unit = await page.evaluate(() => window.busy());
    console.log(`${count} garments, processor ${slowdown} times slower, phone size; one busy loop: ${unit.toFixed(1)} ms`);
    const starts = [];
    for (let turn = 0; turn < 5; turn += 1) {
      await page.reload();
      starts.push(await until(() => page.evaluate(() => window.started), Boolean, "the start"));
    }
    note("start: reload to the frame of the page", starts.map(({ shown }) => shown), unit);
    note(`start: reload to the rack of ${count}`, starts.map(({ rack }) => rack), unit);

    await go(page, `#/garment/${garments[0].id}`, /\?$/);
    await answers(page).first().waitFor();
    const [taps, updates] = [[], []];
    for (let tap = 0; taps.length < TAPS && tap < 40; tap += 1) {
      const label = page.getByRole("main").locator("label:has(input[type=radio])").nth(tap % 2);
      await label.scrollIntoViewIfNeeded();
      await page.evaluate(() => {
        const tape = () => document.querySelector("main .tape-lead")?.textContent + document.querySelector("main .tape-line")?.getAttribute("d");
        const before = tape();
        window.time("pointerup", () => tape() !== before);
      });
      await label.tap();
      const changed = await until(() => page.evaluate(() => window.timed), Boolean, "the tape", 1500).catch(() => undefined);
      if (changed) {
        taps.push(changed.paint);
        updates.push(changed.update);
      }
      await next(page);
    }
    note("tap on an answer to the repainted tape", taps, unit);
    note("  of which until the page has changed", updates, unit);
    const events = (await page.evaluate(() => window.taps ?? [])).filter(({ name }) => name === "pointerup" || name === "click");
    if (events.length > 0) note("  Event Timing: every click of the walk (steps of 8)", events.map(({ duration }) => duration), unit);

    // What goes on in turns after the first screenful is done before a hand comes back.
    const pause = () => page.waitForTimeout(600);
    const opens = [];
    for (let turn = 0; turn < 5; turn += 1) {
      await go(page, "#/settings", "Settings");
      await pause();
      await page.evaluate(() => window.time("click", () => document.querySelectorAll("main ul.rack > li, main li.rack-row").length > 0));
      await page.getByRole("link", { name: "Back to the rack" }).tap();
      opens.push((await timed(page)).paint);
    }
    note(`open the rack of ${count}`, opens, unit);

    const searches = [];
    const field = page.getByRole("searchbox");
    for (const word of ["s", "st", "sta", "tapered 3", "", "wide", "", "ecru 12", "x", ""]) {
      const before = await page.getByRole("main").getByRole("listitem").first().innerText().catch(() => "");
      await pause();
      await page.evaluate((before) => window.time("input", () => (document.querySelector("main li")?.innerText ?? "") !== before), before);
      await field.fill(word);
      const changed = await until(() => page.evaluate(() => window.timed), Boolean, "the search", 1500).catch(() => undefined);
      if (changed) searches.push(changed.paint);
    }
    note(`search in ${count}`, searches, unit);

    const sorts = [];
    for (const order of ["name", "best", "dearest", "worth", "oldest", "newest"]) {
      const before = await page.getByRole("main").getByRole("listitem").first().innerText();
      await pause();
      await page.evaluate((before) => window.time("change", () => (document.querySelector("main li")?.innerText ?? "") !== before), before);
      await page.getByLabel("Order").selectOption(order);
      const changed = await until(() => page.evaluate(() => window.timed), Boolean, "the order", 3000).catch(() => undefined);
      if (changed) note(`sort ${count}: ${order}`, [changed.paint], unit);
      if (changed) sorts.push(changed.paint);
    }
    note("sort, all six", sorts, unit);

    // What a thumb sees: the longest wait between two frames while the rows go by, and while more of them are asked for.
    const grown = [];
    for (let turn = 0; turn < 5; turn += 1) {
      const rows = await page.getByRole("main").locator("li.rack-row").count();
      await page.evaluate((rows) => window.time("click", () => document.querySelectorAll("main li.rack-row").length > rows), rows);
      const button = page.getByRole("button", { name: /^Show more/ });
      await button.scrollIntoViewIfNeeded();
      await pause();
      await button.tap();
      grown.push((await timed(page)).paint);
    }
    note("show more rows", grown, unit);
    await pause();
    const gaps = await page.evaluate(async () => {
      const gaps = [];
      let last = await new Promise(window.requestAnimationFrame);
      window.scrollTo(0, 0);
      while (window.scrollY + window.innerHeight < document.documentElement.scrollHeight - 40 && gaps.length < 400) {
        window.scrollBy(0, 120);
        const now = await new Promise(window.requestAnimationFrame);
        gaps.push(now - last);
        last = now;
      }
      return gaps;
    });
    note(`scroll ${gaps.length} frames, from frame to frame`, gaps, unit);
    console.log(`scrolling: ${gaps.filter((gap) => gap > 25).length} of ${gaps.length} frames came a frame late or more`);

    const more = garments.map((garment) => ({ ...garment, id: `more-${garment.id}` }));
    await chooseFile(page, exported(more));
    await page.getByRole("button", { name: "Merge" }).waitFor();
    await page.evaluate(() => window.time("click", () => document.body.innerText.includes("Imported:")));
    await page.getByRole("button", { name: "Merge" }).tap();
    note(`import ${count} more, from the word to the notice`, [(await timed(page)).paint], unit);
  });
  console.table(rows);
} finally {
  await closeAll();
}
