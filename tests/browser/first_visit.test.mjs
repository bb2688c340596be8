// The app as somebody meets it: it starts, asks nothing of any other host, and can be read by everyone.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { serve } from "../../scripts/serve.mjs";
import { DIST, isTooWide, newProfile, settled, SIZES, violations, visit } from "./harness.mjs";
import { until } from "./steps.mjs";

for (const size of Object.keys(SIZES)) {
  for (const scheme of ["light", "dark"]) {
    test(`the first screen is whole and readable by everyone: ${size}, ${scheme}`, async () => {
      await visit({ size, scheme }, async ({ page }) => {
        assert.equal(await page.title(), "Rack · Garment Assay");
        assert.equal(await page.locator("h1").count(), 1);
        assert.ok(await page.locator("#crash").isHidden(), "the crash notice is out of sight");
        assert.equal(await isTooWide(page), false);
        assert.deepEqual(await violations(page), []);
      });
    });
  }
}

test("the app works in a folder of a host", async () => {
  const server = await serve({ dir: DIST, base: "/some/folder/" });
  try {
    await visit({ home: server.url }, async ({ page }) => {
      assert.equal(await page.locator("h1").count(), 1);
    });
  } finally {
    await server.close();
  }
});

const ownFace = (page) => page.evaluate(() => [...document.fonts].find((face) => face.family.replaceAll('"', "") === "Instrument Sans")?.status);

test("the typeface is the app's own", async () => {
  await visit({}, async ({ page }) => {
    await until(() => ownFace(page), (status) => status === "loaded", "the typeface");
  });
});

// What stands in for it is measured for Arial, Roboto and DejaVu; one of them is on any machine that has a Chromium from Debian.
for (const size of Object.keys(SIZES)) {
  test(`a typeface that is late is asked for after the first words, and moves nothing when it comes: ${size}`, async () => {
    let letGo;
    const held = new Promise((done) => (letGo = done));
    const asked = [];
    const before = async (context) => {
      await context.route("**/*.woff2", async (route) => {
        asked.push(Date.now());
        await held;
        await route.continue();
      });
      await context.addInitScript(() => {
        window.moved = [];
        new window.PerformanceObserver((seen) => window.moved.push(...seen.getEntries().map((entry) => [entry.value, ...entry.sources.map(({ node }) => node?.textContent)]))).observe({
          type: "layout-shift",
          buffered: true,
        });
      });
    };
    await visit({ size, before }, async ({ page }) => {
      await page.locator("html[data-whole=yes]").waitFor({ state: "attached" });
      await until(() => asked.length, (count) => count === 1, "the typeface asked for, once");
      const painted = await page.evaluate(() => performance.timeOrigin + performance.getEntriesByName("first-contentful-paint")[0].startTime);
      assert.ok(asked[0] >= Math.floor(painted), `asked for ${painted - asked[0]} ms before the first words`);
      assert.notEqual(await ownFace(page), "loaded");
      letGo();
      await until(() => ownFace(page), (status) => status === "loaded", "the typeface");
      await settled(page);
      const moved = await page.evaluate(() => window.moved);
      assert.ok(moved.reduce((sum, [value]) => sum + value, 0) < 0.01, JSON.stringify(moved));
    });
  });
}

test("the page's policy refuses inline script, made-up markup and unknown workers", async () => {
  await visit({}, async ({ page, problems }) => {
    const outcomes = await page.evaluate(async () => {
      const refused = (act) => {
        try {
          act();
          return false;
        } catch {
          return true;
        }
      };
      const inline = document.createElement("script");
      const unscripted = refused(() => (inline.textContent = "window.intruded = true"));
      document.head.append(inline);
      return {
        inline: unscripted && window.intruded === undefined,
        markup: refused(() => document.body.insertAdjacentHTML("beforeend", "<i>x</i>")),
        worker: refused(() => new window.Worker("evil.js")),
        fetch: await fetch("http://127.0.0.2:9/").then(
          () => false,
          () => true,
        ),
      };
    });
    assert.deepEqual(outcomes, { inline: true, markup: true, worker: true, fetch: true });
    problems.length = 0; // the refusals are in the console, as they should be
  });
});

test("an old browser is told so, and shows no blank page", async () => {
  const before = (context) => context.addInitScript(() => (WebAssembly.validate = () => false));
  await visit({ ready: false, before }, async ({ page }) => {
    await page.getByRole("alert").filter({ hasText: "too old" }).waitFor();
    assert.ok(await page.getByRole("heading", { level: 1 }).isVisible(), "the frame still says where one is");
  });
});

test("a program that does not arrive is told about", async () => {
  const before = (context) => context.route("**/*.wasm", (route) => route.abort());
  await visit({ ready: false, before }, async ({ page, problems }) => {
    await page.getByRole("alert").filter({ hasText: "could not start" }).waitFor();
    assert.notEqual(problems.length, 0);
    problems.length = 0;
  });
});

test("the typeface's licence travels with it", async () => {
  assert.match(await readFile(join(DIST, "instrument-sans-licence.txt"), "utf8"), /SIL OPEN FONT LICENSE Version 1\.1/i);
});

test("what IndexedDB has confirmed is still there after the browser was killed", async () => {
  const profile = await newProfile();
  try {
    const first = await profile.start();
    await first.page.evaluate(
      () =>
        new Promise((done, failed) => {
          const opening = window.indexedDB.open("kill-test");
          opening.onupgradeneeded = () => opening.result.createObjectStore("notes");
          opening.onerror = failed;
          opening.onsuccess = () => {
            const change = opening.result.transaction("notes", "readwrite");
            change.objectStore("notes").put("kept", "key");
            change.oncomplete = done;
            change.onerror = failed;
          };
        }),
    );
    await profile.kill();
    const second = await profile.start();
    const value = await second.page.evaluate(
      () =>
        new Promise((done, failed) => {
          const opening = window.indexedDB.open("kill-test");
          opening.onerror = failed;
          opening.onsuccess = () => {
            const asked = opening.result.transaction("notes").objectStore("notes").get("key");
            asked.onsuccess = () => done(asked.result);
            asked.onerror = failed;
          };
        }),
    );
    assert.equal(value, "kept");
    assert.deepEqual([...first.problems, ...second.problems], []);
  } finally {
    await profile.remove();
  }
});
