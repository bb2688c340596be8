// How long a first visit and a later one take, on slow lines and a slow processor: until the first words are painted, and until the app answers.
// The line is slowed for real, not reckoned as Lighthouse does. Not a test: `make bench`.
//   node tests/browser/measure_start.mjs [FOLDER]...      builds to compare, visited in turn; dist unless told

import { serve } from "../../scripts/serve.mjs";
import { DIST, closeAll, slow, visit } from "./harness.mjs";
import { copyIs } from "./copies.mjs";

const TIMES = 5;
const SLOWER = 4;
/** Round trip in ms, bits a second: the first is Lighthouse's phone; the others judgement. */
const LINES = [[150, 1.6e6], [300, 0.7e6], [40, 10e6]];

const folders = process.argv.slice(2);
const seen = new Map();

/** Runs in the page, before all else: notes when the app answers. */
function note() {
  const look = () => (document.documentElement?.dataset.ready === "yes" ? (window.answersAt = window.performance.now()) : window.setTimeout(look, 5));
  look();
}

async function times(page) {
  await page.waitForFunction(() => window.answersAt);
  return page.evaluate(() => [window.performance.getEntriesByName("first-contentful-paint")[0].startTime, window.answersAt]);
}

const put = (name, pair) => seen.set(name, [...(seen.get(name) ?? []), pair]);

async function first(home, name, [latency, bits]) {
  await visit({ home, throttle: SLOWER, ready: false, path: "licences.txt" }, async ({ page }) => {
    const session = await page.context().newCDPSession(page);
    await session.send("Network.enable");
    await session.send("Network.emulateNetworkConditions", { offline: false, latency, downloadThroughput: bits / 8, uploadThroughput: bits / 16 });
    await page.addInitScript(note);
    await page.goto(home);
    put(`${name}, first visit at ${latency} ms, ${bits / 1e6} Mbit/s`, await times(page));
  });
}

async function later(home, name) {
  await visit({ home, copies: true }, async ({ page }) => {
    await copyIs(page, "whole");
    await slow(page, SLOWER);
    await page.addInitScript(note);
    for (let time = 0; time < TIMES; time += 1) {
      await page.reload();
      put(`${name}, later visit, from its copy`, await times(page));
    }
  });
}

try {
  for (let time = 0; time < TIMES; time += 1) {
    for (const dir of folders.length ? folders : [DIST]) {
      const server = await serve({ dir });
      // What the server has to compress first is no matter of the line.
      await visit({ home: server.url }, ({ page }) => page.locator("html[data-whole=yes]").waitFor({ state: "attached" }));
      for (const line of LINES) await first(server.url, dir, line);
      if (time === 0) await later(server.url, dir);
      await server.close();
    }
  }
} finally {
  await closeAll();
}
const middle = (numbers) => numbers.toSorted((one, other) => one - other)[numbers.length >> 1];
for (const [name, pairs] of seen) {
  const [words, answers] = [0, 1].map((at) => pairs.map((pair) => Math.round(pair[at])));
  console.log(`${name}: first words ${middle(words)} ms (${words.join(", ")}), answers ${middle(answers)} ms (${answers.join(", ")})`);
}
