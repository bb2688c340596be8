// How many keys a sample takes on the quick sheet, how long for a scripted hand, and how long from a key or tap to the repainted band.
// Not a test: `make bench`.
//   node tests/browser/measure_desk.mjs [SLOWDOWN]
//
// The hand works the real page. Its pauses are ASSUMPTIONS, stated below: nobody has timed people. Handling the garment itself, turning
// it out or laying it flat, is not in them: what is measured is the noting, with a look at each check.

import { performance } from "node:perf_hooks";
import { closeAll, slow, visit } from "./harness.mjs";
import { hash, until } from "./steps.mjs";

const [slowdown = 4] = process.argv.slice(2).map(Number);
/** Seconds a person is taken to need. Judgement, both. */
const PAUSE = { key: 0.06, look: 1.5 };
const ANSWERS = 12;
const AIM = 90;

const pause = (seconds) => new Promise((done) => setTimeout(done, seconds * 1000));
const focusedId = (page) => page.evaluate(() => document.activeElement.id);
const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const median = (numbers) => sorted(numbers)[Math.floor(numbers.length / 2)];

/** Presses a key, after the time that takes. */
async function key(page, done, name) {
  await pause(PAUSE.key);
  done.keys += 1;
  await page.keyboard.press(name);
}

async function type(page, done, text) {
  for (const letter of text) await key(page, done, letter);
}

async function look(done) {
  done.looks += 1;
  await pause(PAUSE.look);
}

/** One sample from the empty name to the empty name of the next; `full` fills in what later samples repeat. */
async function sample(page, { name, style, price, full }) {
  const done = { keys: 0, looks: 0 };
  const start = performance.now();
  await look(done);
  await type(page, done, name);
  await key(page, done, "Tab");
  await type(page, done, style);
  await key(page, done, "Tab");
  await type(page, done, price);
  if (full) {
    await key(page, done, "Tab");
    await key(page, done, "E");
    for (let tab = 0; tab < 3; tab += 1) await key(page, done, "Tab");
    for (const text of ["Hall 3, stand 21", "Loom and Ladle", "Spring test"]) {
      await look(done);
      await type(page, done, text);
      if (text !== "Spring test") await key(page, done, "Tab");
    }
  }
  await key(page, done, "Enter");
  await until(() => page.evaluate(() => document.activeElement.getAttribute("role")), (role) => role === "radio", "the rows");
  for (let made = 0; made < ANSWERS; made += 1) {
    await look(done);
    await key(page, done, String(1 + (made % 2)));
  }
  const made = await until(() => page.locator(".quick-row [aria-checked=true]").count(), (count) => count === ANSWERS, "all answers");
  await look(done); // at the band
  await key(page, done, "n");
  await until(async () => [hash(page), await focusedId(page)].join(" "), (now) => now === "#/desk quick-name", "the next sample");
  return { seconds: (performance.now() - start) / 1000, made, ...done };
}

try {
  const rows = [];
  await visit({ size: "desk", path: "#/desk" }, async ({ page }) => {
    await until(() => focusedId(page), (id) => id === "quick-name", "the name");
    const samples = [
      ["the first, with the whole head", { name: "Relaxed straight, ink", style: "RS-0042", price: "18.50", full: true }],
      ["the next, which repeats", { name: "Relaxed straight, ecru", style: "RS-0043", price: "19.20" }],
      ["and the next", { name: "Tapered, black", style: "TP-0007", price: "21" }],
    ];
    for (const [what, sheet] of samples) {
      const { seconds, keys, looks, made } = await sample(page, sheet);
      rows.push({ sample: what, answers: made, keys, looks, "s in all": seconds.toFixed(1), "s without the looks": (seconds - looks * PAUSE.look).toFixed(1), [`under ${AIM} s`]: seconds < AIM ? "yes" : "no" });
    }
  });
  console.log(`A sample on the quick sheet at a desk, ${ANSWERS} answers, head filled in. ASSUMED, timed on nobody: a key ${PAUSE.key} s, a look ${PAUSE.look} s; no time for handling the garment.`);
  console.table(rows);

  for (const size of ["desk", "phone"]) {
    await visit({ size, path: "#/desk" }, async ({ page }) => {
      await slow(page, slowdown);
      await page.evaluate(() => {
        /** Milliseconds from the next event of that kind to the frame in which the band differs. */
        window.bandAfter = (kind) => {
          window.timed = undefined;
          const band = () => document.querySelector(".quick-tape").innerHTML;
          const before = band();
          let start;
          window.addEventListener(kind, (event) => (start ??= event.timeStamp), { capture: true, once: true });
          const observer = new window.MutationObserver(() => {
            if (start === undefined || band() === before) return;
            observer.disconnect();
            window.requestAnimationFrame(() => {
              const channel = new window.MessageChannel();
              channel.port1.onmessage = () => (window.timed = performance.now() - start);
              channel.port2.postMessage("");
            });
          });
          observer.observe(document.querySelector("#app"), { subtree: true, childList: true, attributes: true, characterData: true });
        };
      });
      const times = [];
      const levels = page.locator(".quick-row");
      await levels.first().getByRole("radio").first().focus();
      for (let turn = 0; turn < 24; turn += 1) {
        await page.evaluate((kind) => window.bandAfter(kind), size === "desk" ? "keydown" : "pointerup");
        if (size === "desk") await page.keyboard.press(String(1 + (turn % 2)));
        else await levels.nth(turn % 10).getByRole("radio").nth(turn < 10 ? 0 : 1).tap();
        const time = await until(() => page.evaluate(() => window.timed), Boolean, "the band", 3000).catch(() => undefined);
        if (time) times.push(time);
      }
      console.log(`${size === "desk" ? "A digit" : "A tap"} to the repainted band, ${size}, processor ${slowdown} times slower: median ${median(times).toFixed(0)} ms, worst of ${times.length} ${Math.max(...times).toFixed(0)} ms`);
    });
  }
} finally {
  await closeAll();
}
