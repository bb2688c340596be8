// Has Lighthouse judge the app on a slow phone: the first visit, so often, and pages of a kept notebook. Prints the scores, and fails below the
// limits.
//   node tests/browser/lighthouse/run.mjs [VISITS]      3 unless told

import { mkdir, readdir, writeFile } from "node:fs/promises";
import lighthouse from "lighthouse";
import puppeteer from "puppeteer-core";
import { serve } from "../../../scripts/serve.mjs";
import { page as pageOf, RACK } from "../rack.mjs";

/** Performance varies with what else the machine does, so its limit is lower (judgement); a visit at rest is to reach 100. */
const LEAST = { performance: 90, accessibility: 100, "best-practices": 100, seo: 100 };
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage"];
const visits = Number(process.argv[2] ?? 3);
const of = (screen) => `#/garment/${RACK[0].id}/${screen}`;
/** Pages of a notebook with eight garments. */
const KEPT = { "rack of eight": "#/", "a check": of("check/inseam"), "its result": of("result"), "behind its ticket": of("ticket"), settings: "#/settings", "a lesson": "#/learn/jeans/inseam" };

/** Whether all that is amiss for a thumb are lines that lie half under the bar at the foot as the page was opened; a thumb moves the page. */
function isUnderTheFoot(lhr, id) {
  const inFoot = (item) => (item.subItems?.items ?? []).some(({ relatedNode }) => relatedNode.selector.includes(".foot"));
  return id === "target-size" && lhr.audits[id].details.items.every((item) => inFoot(item));
}

// As a host that compressed the files as well as it can before anybody came, which is how `make size` weighs them.
const server = await serve({ dir: "dist", quality: 11 });
for (const name of (await readdir("dist")).filter((name) => name !== "_headers")) {
  await (await fetch(server.url + (name === "index.html" ? "" : name), { headers: { "Accept-Encoding": "br" } })).arrayBuffer();
}
const config = { extends: "lighthouse:default", settings: { onlyCategories: Object.keys(LEAST) } };

/** Has a page judged in a browser of its own, which nobody used before; with `kept`, garments are noted in it already. */
async function seenOnce(hash, kept) {
  const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM, headless: true, args: FLAGS });
  try {
    const page = await browser.newPage();
    if (kept) {
      // Who keeps garments has been here before, so the copy for use without a network stands.
      await page.goto(server.url);
      await page.waitForFunction(() => document.documentElement.dataset.flight === "whole");
      // Any page of the origin will do to lay the garments on the shelf; this one starts nothing.
      await page.goto(`${server.url}icon.svg`);
      await page.evaluate((pages) => pages.forEach(([key, text]) => window.localStorage.setItem(key, text)), RACK.map((garment) => pageOf(garment)));
      await page.goto("about:blank");
    }
    const { lhr } = await lighthouse(server.url + hash, { disableStorageReset: kept }, config, page);
    return lhr;
  } finally {
    await browser.close();
  }
}

/** The same, once more if the browser's recording lacks its beginning, as it does now and then; that says nothing of the page. */
async function judged(name, hash, kept) {
  let lhr = await seenOnce(hash, kept);
  if (lhr.runtimeError?.code === "NO_NAVSTART") {
    console.log(`${name}: the recording lacks its beginning; once more`);
    lhr = await seenOnce(hash, kept);
  }
  if (lhr.runtimeError) throw new Error(`${name}: ${lhr.runtimeError.message}`);
  return { name, lhr };
}

try {
  const steps = [];
  for (let visit = 1; visit <= visits; visit += 1) steps.push(await judged(`first visit, time ${visit}`, "", false));
  for (const [name, hash] of Object.entries(KEPT)) steps.push(await judged(name, hash, true));
  await mkdir("target", { recursive: true });
  await writeFile("target/lighthouse.json", JSON.stringify(steps.map(({ lhr }) => lhr)));
  for (const { name, lhr } of steps) {
    const scores = Object.fromEntries(Object.keys(LEAST).map((key) => [key, Math.round(lhr.categories[key].score * 100)]));
    // How fast a page of a kept notebook is there is told, not judged: nothing that can be spared is left out of it.
    const amiss = (key) => lhr.categories[key].auditRefs.filter(({ id, weight }) => weight > 0 && (lhr.audits[id].score ?? 1) < 0.9).map(({ id }) => id);
    const excused = amiss("accessibility").every((id) => isUnderTheFoot(lhr, id));
    const short = Object.entries(LEAST).filter(([key, least]) => scores[key] < least && !(key === "performance" && name in KEPT) && !(key === "accessibility" && excused));
    const seen = ["first-contentful-paint", "largest-contentful-paint", "total-blocking-time", "cumulative-layout-shift"].map((key) => lhr.audits[key].displayValue?.replace(/\s/g, " ") ?? "none");
    console.log(`${name}: ${Object.entries(scores).map(([key, score]) => `${key} ${score}`).join(", ")} (first paint ${seen[0]}, largest ${seen[1]}, blocked ${seen[2]}, shift ${seen[3]})`);
    for (const item of lhr.audits["layout-shifts"]?.details?.items ?? []) console.log(`  shifts by ${item.score.toFixed(3)}: ${item.node?.snippet ?? "?"}`);
    for (const [key, least] of short) {
      console.log(`  ${key} is below ${least}`);
      process.exitCode = 1;
    }
    for (const key of Object.keys(LEAST)) {
      for (const { id, weight } of lhr.categories[key].auditRefs) {
        const { title, score, scoreDisplayMode, details } = lhr.audits[id];
        if (weight === 0 || score === null || score >= 0.9 || key === "performance") continue;
        console.log(`  ${isUnderTheFoot(lhr, id) ? "half under the bar at the foot" : "not met"} (${key}, ${scoreDisplayMode}): ${title} ${(details?.items ?? []).slice(0, 3).map((item) => item.node?.snippet ?? item.description ?? item.url ?? "").join(" | ")}`);
      }
    }
  }
} finally {
  await server.close();
}
