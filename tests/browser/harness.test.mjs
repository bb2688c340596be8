// That the watch of harness.mjs sees what it is there to see: a test that cannot fail is no test.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { serve } from "../../scripts/serve.mjs";
import { isTooWide, smallTargets, violations, visit } from "./harness.mjs";

/** Serves one page with the given body, and visits it. */
async function visitPage(body, look) {
  const dir = await mkdtemp(join(tmpdir(), "garment-assay-page-"));
  const head = `<meta name="viewport" content="width=device-width"><title>A page</title><link rel="icon" href="data:,">`;
  await writeFile(join(dir, "index.html"), `<!doctype html><html lang="en">${head}<main><h1>A page</h1>${body}</main>`);
  const server = await serve({ dir });
  try {
    await visit({ home: server.url, ready: false }, look);
  } finally {
    await server.close();
    await rm(dir, { recursive: true });
  }
}

const WRONGS = {
  "an uncaught error": ["<script>throw new Error('lost')</script>", /lost/],
  "a refused promise": ["<script>Promise.reject(new Error('unkept'))</script>", /unkept/],
  "an error in the console": ["<script>console.error('told')</script>", /console error: told/],
  "a missing file": ["<script>fetch('absent.txt')</script>", /answer 404/],
  "a request to another place": ["<img alt='' src='http://127.0.0.2:9/pixel.png'>", /another place: http:\/\/127\.0\.0\.2/],
};

for (const [what, [body, note]] of Object.entries(WRONGS)) {
  test(`the watch fails a visit that has ${what}`, async () => {
    await assert.rejects(
      visitPage(body, async ({ page }) => page.waitForLoadState("networkidle")),
      (error) => error.code === "ERR_ASSERTION" && note.test(error.actual.join("\n")),
    );
  });
}

test("a page without fault passes", async () => {
  await visitPage("<p>Nothing else.</p>", async ({ page }) => {
    assert.deepEqual(await violations(page), []);
    assert.equal(await isTooWide(page), false);
    assert.deepEqual(await smallTargets(page), []);
  });
});

test("a picture without words, a page too wide and a button too small are found", async () => {
  const body = `<div style="width:900px"><img src="data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg'/%3E"></div>
    <button style="width:20px;height:20px;padding:0">x</button>`;
  await visitPage(body, async ({ page }) => {
    assert.match((await violations(page)).join("\n"), /image-alt/);
    assert.equal(await isTooWide(page), true);
    assert.deepEqual(await smallTargets(page), ['button "x": 20 by 20']);
  });
});
