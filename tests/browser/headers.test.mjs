// The policy that the app lives under: the same in the page and in the headers of the host, sent with every file, and nothing in the built
// folder that would need a looser one.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { headersOf } from "../../scripts/serve.mjs";
import { address, DIST, visit } from "./harness.mjs";

const headers = Object.fromEntries(headersOf(await readFile(join(DIST, "_headers"), "utf8")));
const html = await readFile(join(DIST, "index.html"), "utf8");
/** A policy as its parts, in an order of their own. */
const parts = (policy) => policy.split(";").map((part) => part.trim()).sort();

test("the headers carry the policy of the page, and what counts only there", () => {
  const meta = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)[1];
  assert.deepEqual(parts(headers["Content-Security-Policy"]), [...parts(meta), "frame-ancestors 'none'"].sort());
  assert.equal(headers["Referrer-Policy"], /name="referrer" content="([^"]+)"/.exec(html)[1]);
  assert.equal(headers["X-Content-Type-Options"], "nosniff");
  assert.equal(headers["Cross-Origin-Opener-Policy"], "same-origin");
  assert.equal(headers["Cross-Origin-Resource-Policy"], "same-origin");
});

test("they are sent with every file, and their own file is not", async () => {
  const home = await address();
  for (const name of (await readdir(DIST)).filter((name) => name.includes(".")).concat("")) {
    const response = await fetch(home + name);
    assert.equal(response.status, 200, name);
    for (const [header, value] of Object.entries(headers)) assert.equal(response.headers.get(header), value, `${header} of ${name}`);
  }
  assert.equal((await fetch(`${home}_headers`)).status, 404);
});

test("the browser lets the page have the camera, the tilt and the clipboard, and no other of its powers that can be refused", async () => {
  await visit({}, async ({ page }) => {
    const powers = ["camera", "accelerometer", "gyroscope", "clipboard-write"];
    const refused = headers["Permissions-Policy"].split(", ").filter((part) => part.endsWith("=()")).map((part) => part.slice(0, -3));
    for (const name of ["microphone", "geolocation", "usb", "payment", "display-capture"]) assert.ok(refused.includes(name), name);
    const has = await page.evaluate((names) => names.filter((name) => document.featurePolicy.allowsFeature(name)), [...powers, ...refused]);
    assert.deepEqual(has, powers);
  });
});

test("no other page can frame the app", async () => {
  const home = await address();
  await visit({}, async ({ page, problems }) => {
    // A page of the same place, so that only this one part of the policy is in the way.
    await page.route("**/framing", (route) => route.fulfill({ contentType: "text/html", body: `<link rel="icon" href="data:,"><iframe src="${home}"></iframe>` }));
    await page.goto(`${home}framing`);
    await page.waitForTimeout(500);
    assert.equal(await page.frames()[1].locator("#app").count(), 0);
    assert.ok(problems.some((line) => line.includes("frame-ancestors")), problems.join("\n"));
    problems.length = 0; // the refusal, as it should be
  });
});

/** Everything in the built folder of those kinds, with its text. */
async function built(...kinds) {
  const names = (await readdir(DIST, { recursive: true })).filter((name) => kinds.some((kind) => name.endsWith(kind)));
  return Promise.all(names.map(async (name) => [name, await readFile(join(DIST, name), "utf8")]));
}

test("no page holds script or style of its own", async () => {
  const pages = await built(".html");
  assert.ok(pages.length > 0);
  for (const [name, text] of pages) {
    for (const [, attributes, inside] of text.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/g)) {
      assert.match(attributes, /\ssrc="\.\//, name);
      assert.equal(inside.trim(), "", name);
    }
    assert.doesNotMatch(text, /<style\b|\sstyle\s*=|\son[a-z]+\s*=|javascript:|srcdoc/i, name);
  }
  for (const [name, text] of await built(".svg")) assert.doesNotMatch(text, /<script|\son[a-z]+\s*=|javascript:|<foreignObject/i, name);
});

/** Ways from text to code or to markup. */
const WAYS = /\beval\s*\(|\bnew Function\b|\bFunction\s*\((?!\$\{)|document\.write|\b(?:inner|outer)HTML\b|insertAdjacentHTML|createContextualFragment|DOMParser|setHTMLUnsafe|importScripts|\bset(?:Timeout|Interval)\s*\(\s*["'`]|javascript:/g;

test("no script of the built folder goes from text to code, and only the renderer's own names markup", async () => {
  const scripts = await built(".js");
  assert.ok(scripts.length > 3);
  const found = {};
  for (const [name, text] of scripts) {
    const ways = [...text.matchAll(WAYS)].map(([way]) => way);
    if (ways.length > 0) found[name.replace(/-[0-9a-f]{16}/, "")] = ways;
  }
  // The renderer can show markup that it is given as such; the policy refuses it, and nobody here gives it any (the next test).
  assert.deepEqual(found, { "garment-assay-app.js": ["innerHTML"], "garment-assay-pictures.js": ["innerHTML"] });
});

test("no code of ours hands markup to the renderer or to the browser", async () => {
  const source = fileURLToPath(new URL("../../src", import.meta.url));
  const names = (await readdir(source, { recursive: true })).filter((name) => name.endsWith(".rs"));
  assert.ok(names.length > 100);
  for (const name of names) {
    const text = await readFile(join(source, name), "utf8");
    assert.doesNotMatch(text, /from_html_unchecked|inner_html|outer_html|insert_adjacent_html|create_contextual_fragment|VRaw|js_sys::eval|new_no_args|new_with_args/, name);
  }
});
