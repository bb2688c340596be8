// Whether memory stays flat while checks are answered: 1,000 answers by a scripted hand in the page, garment after garment, and every 100 of
// them, after the browser has thrown away what nothing holds, what is left. Not a test: `make bench`.
//   node tests/browser/measure_memory.mjs [ANSWERS]
//
// What is noted grows with the answers, and should: each garment is a page in storage and a record in memory. The size of the program's own
// memory (WebAssembly) only ever grows; it says what was needed at most.

import { closeAll, visit } from "./harness.mjs";
import { begin, until } from "./steps.mjs";

const answers = Number(process.argv[2] ?? 1000);
const EACH = 100;

/** Runs in the page: answers so many checks, goes on after each, and begins another garment where one is at its end. */
async function walk(count) {
  const main = () => document.querySelector("main");
  const button = (words) => [...main().querySelectorAll("button, a")].find((one) => words.test(one.textContent.trim()));
  async function wait(what, look) {
    for (const from = performance.now(); performance.now() - from < 20_000; ) {
      const found = look();
      if (found) return found;
      await new Promise((done) => window.requestAnimationFrame(done));
    }
    throw new Error(`waited in vain for ${what} at ${location.hash}`);
  }
  // The address changes a moment before the screen.
  const put = () => [main().querySelector("h2")?.textContent, location.hash];
  const made = { answers: 0, garments: 0 };
  while (made.answers < count) {
    if (!/\/check\//.test(location.hash)) {
      location.hash = "#/new";
      (await wait("the start", () => location.hash === "#/new" && button(/^Start checking$/))).click();
      await wait("a check", () => /\/check\//.test(location.hash) && main().querySelector("label:has(input[type=radio])"));
      made.garments += 1;
    }
    const labels = main().querySelectorAll("label:has(input[type=radio])");
    labels[(made.answers * 7) % labels.length].click();
    await wait("the answer", () => button(/^Take answer back$/));
    made.answers += 1;
    const before = put();
    (await wait("the way on", () => button(/^(Next check|Skip for now|See the result)$/))).click();
    await wait("the next screen", () => put().every((part, place) => part !== before[place]) && (main().querySelector("label:has(input[type=radio])") || !/\/check\//.test(location.hash)));
  }
  return made;
}

/** The size of the program's own memory: what starts it gives back the program that runs already. */
async function program() {
  const { default: start } = await import(new URL(document.querySelector("script[data-wasm]").dataset.js, document.baseURI).href);
  return (await start()).memory.buffer.byteLength;
}

const rows = [];
try {
  await visit({ size: "phone" }, async ({ page }) => {
    page.setDefaultTimeout(600_000);
    await begin(page, { label: "First" });
    await until(() => page.evaluate(() => document.documentElement.dataset.whole), (whole) => whole === "yes", "all wings", 60_000);
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable");
    await session.send("HeapProfiler.enable");
    const look = async (done, garments) => {
      await page.evaluate(() => new Promise((done) => window.setTimeout(done, 500)));
      for (let turn = 0; turn < 3; turn += 1) await session.send("HeapProfiler.collectGarbage");
      const { usedSize } = await session.send("Runtime.getHeapUsage");
      const { metrics } = await session.send("Performance.getMetrics");
      const metric = (name) => metrics.find((one) => one.name === name).value;
      rows.push({ answers: done, garments, "heap MB": usedSize / 2 ** 20, "program MB": (await page.evaluate(program)) / 2 ** 20, nodes: metric("Nodes"), listeners: metric("JSEventListeners"), documents: metric("Documents") });
    };
    /** Answers that are noted, of all garments. */
    const noted = () => page.evaluate(() => Object.entries(window.localStorage).filter(([key]) => key.startsWith("garment-assay/page/")).reduce((sum, [, text]) => sum + JSON.parse(text.split("\n")[1]).answers.length, 0));
    await look(0, 1);
    let garments = 1;
    for (let done = EACH; done <= answers; done += EACH) {
      garments += (await page.evaluate(walk, EACH)).garments;
      await look(done, garments);
      if ((await noted()) !== done) throw new Error(`${done} answers were given, and ${await noted()} are noted`);
    }
  });
} finally {
  await closeAll();
}
console.table(rows.map((row) => ({ ...row, "heap MB": row["heap MB"].toFixed(2), "program MB": row["program MB"].toFixed(2) })));
const [from, to] = [rows.find(({ answers }) => answers === 2 * EACH), rows.at(-1)];
if (from && to !== from) {
  const grown = (name) => `${name} ${(to[name] - from[name]).toFixed(2).replace(/\.00$/, "")} (${(((to[name] - from[name]) / from[name]) * 100).toFixed(1)} %)`;
  console.log(`grown from ${from.answers} answers to ${to.answers}: ${["heap MB", "program MB", "nodes", "listeners"].map(grown).join(", ")}`);
}
