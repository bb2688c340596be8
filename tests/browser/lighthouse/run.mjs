// Has Lighthouse judge the first visit on a slow phone, prints its scores, and fails below the limits.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, readFile } from "node:fs/promises";
import { serve } from "../../../scripts/serve.mjs";

// Judgement: what a page of this kind can keep to. Performance varies by a few points from run to run.
const LEAST = { performance: 90, accessibility: 100, "best-practices": 100, seo: 90 };

const server = await serve({ dir: "dist" });
await mkdir("target", { recursive: true });
const report = "target/lighthouse.json";
const flags =
  "--headless=new --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync --disable-dev-shm-usage";
const child = spawn(
  process.execPath,
  [
    "tests/browser/lighthouse/node_modules/lighthouse/cli/index.js",
    server.url,
    "--quiet",
    "--output=json",
    `--output-path=${report}`,
    `--only-categories=${Object.keys(LEAST)}`,
    `--chrome-flags=${flags}`,
    "--no-enable-error-reporting",
  ],
  { stdio: "inherit", env: { ...process.env, CHROME_PATH: process.env.CHROMIUM } },
);
const [status] = await once(child, "exit");
await server.close();
if (status !== 0) process.exit(1);

const { categories, audits } = JSON.parse(await readFile(report, "utf8"));
for (const [name, least] of Object.entries(LEAST)) {
  const score = Math.round(categories[name].score * 100);
  console.log(`${name.padEnd(16)}${score}${score < least ? `   below ${least}` : ""}`);
  if (score < least) process.exitCode = 1;
}
for (const name of ["first-contentful-paint", "largest-contentful-paint", "total-blocking-time", "cumulative-layout-shift"]) {
  console.log(`${name.padEnd(28)}${audits[name].displayValue}`);
}
for (const { title, score, scoreDisplayMode } of Object.values(audits)) {
  if (scoreDisplayMode === "binary" && score === 0) console.log(`not met: ${title}`);
}
