// That the app needs nobody: no other place is ever asked, and once it is loaded its own may be gone.

import assert from "node:assert/strict";
import { test } from "node:test";
import { serve } from "../../scripts/serve.mjs";
import { DIST, started, visit } from "./harness.mjs";
import { answer, answers, begin, exportAll, garmentId, go, hash, moved, next, openCheck, openResult, until } from "./steps.mjs";

test("after it is loaded everything works with the server closed", async () => {
  const server = await serve({ dir: DIST });
  let open = true;
  try {
    await visit({ home: server.url }, async ({ page, home, problems }) => {
      await page.locator("html[data-whole=yes]").waitFor({ state: "attached" });
      // The last file that comes, once nothing else is to be done.
      await page.locator("html[data-flight]").waitFor({ state: "attached" });
      await server.close();
      open = false;
      const gone = await fetch(home).then(
        () => false,
        () => true,
      );
      assert.ok(gone, "the server is really closed");

      await begin(page, { label: "Below ground", place: "Cellar" });
      const id = garmentId(page);
      for (let made = 0; made < 6; made += 1) {
        await answer(page, made % 3);
        await next(page);
      }
      await openCheck(page, /Leg twist/);
      await answers(page).first().waitFor();
      await go(page, `#/garment/${id}/checks`, "All checks");
      await openResult(page);
      assert.ok((await moved(page)).length > 0);
      await go(page, `#/garment/${id}/details`, "Details");
      await go(page, "#/settings", "Settings");
      await page.getByLabel("Light or dark").selectOption("dark");
      await page.getByLabel("Lengths and weights").selectOption("imperial");
      await go(page, "#/numbers", "Where the numbers come from");
      const { text } = await exportAll(page);
      assert.equal(JSON.parse(text).garments[0].answers.length, 6);
      await go(page, "#/", "Rack");
      await page.getByText("Below ground").waitFor();
      // Chromium itself asks for the tab's icon again with each change of the address; nothing on the screen depends on it.
      const icon = problems.filter((line) => line.endsWith("/icon.svg"));
      const told = problems.filter((line) => line === "console error: Failed to load resource: net::ERR_CONNECTION_REFUSED");
      assert.equal(told.length, icon.length);
      assert.deepEqual(problems.filter((line) => !icon.includes(line) && !told.includes(line)), []);
      problems.length = 0;
    });
  } finally {
    if (open) await server.close();
  }
});

test("the policy allows no inline script, and refuses one that comes with the page", async () => {
  const server = await serve({ dir: DIST });
  // What somebody between the server and the person might add; the policy in the page must hold by itself.
  const before = (context) =>
    context.route(server.url, async (route) => {
      const response = await route.fetch();
      const body = (await response.text()).replace("</body>", '<script>window.intruded = true</script><b id="came" onclick="window.intruded = true">x</b></body>');
      // Without the policy of the headers, which not every host sends.
      const headers = { ...response.headers(), "content-security-policy": "frame-ancestors 'none'" };
      await route.fulfill({ response, headers, body });
    });
  try {
    await visit({ home: server.url, before }, async ({ page, problems }) => {
      const policy = await page.locator("meta[http-equiv=Content-Security-Policy]").getAttribute("content");
      assert.doesNotMatch(policy, /unsafe-inline|'unsafe-eval'|\*|https?:/);
      assert.match(policy, /default-src 'none'/);
      assert.equal(await page.locator("#came").count(), 1, "the page did come with it");
      await page.locator("#came").dispatchEvent("click");
      assert.equal(await page.evaluate(() => window.intruded), undefined);
      assert.ok(problems.length > 0 && problems.every((line) => /Content Security Policy/.test(line)), problems.join("\n"));
      problems.length = 0; // the refusals, as they should be
    });
  } finally {
    await server.close();
  }
});

const LIVE = "#/bench/stitch-comb-live/live";
const PICTURE = "#/bench/stitch-photo/picture";
const STITCHES = "Stitches from a photograph";

test("nothing for camera and pictures is asked for before a page with them is opened", async () => {
  const asked = [];
  const before = async (context) => context.on("request", (request) => asked.push(new URL(request.url()).pathname));
  const later = () => asked.filter((path) => /pictures|worker/.test(path)).map((path) => path.split("/").at(-1));
  await visit({ before }, async ({ page }) => {
    const main = page.getByRole("main");
    await begin(page, {});
    await answer(page, 0);
    await openCheck(page, /Stitch/);
    await main.getByRole("button", { name: /Measure it/ }).click();
    await main.locator("label").filter({ hasText: STITCHES }).click();
    await main.getByRole("link", { name: "Take or choose a picture" }).waitFor();
    await go(page, "#/bench", "Bench");
    await go(page, "#/bench/ruler", "Ruler on the screen");
    await page.waitForLoadState("networkidle");
    assert.ok(asked.some((path) => path.endsWith(".wasm")), "requests are seen at all");
    assert.deepEqual(later(), []);
    await go(page, PICTURE, STITCHES);
    await main.getByText("How to take it").waitFor();
    assert.deepEqual(later().sort(), ["garment-assay-pictures.js", "garment-assay-pictures_bg.wasm", "pictures.css"]);
    await go(page, LIVE, "Stitches on the live picture");
    await main.getByRole("button", { name: "Open the camera" }).waitFor();
    assert.equal(later().length, 3, "once");
  });
});

for (const part of [/garment-assay-pictures\.js/, /garment-assay-pictures_bg\.wasm/, /pictures\.css/]) {
  test(`without a network that brings ${part.source} a sentence says so, and a second try may do`, async () => {
    let gone = true;
    const before = (context) => context.route(part, (route) => (gone ? route.abort() : route.continue()));
    await visit({ before, path: "#/bench" }, async ({ page, problems }) => {
      const main = page.getByRole("main");
      await go(page, PICTURE, STITCHES);
      await main.getByRole("alert").filter({ hasText: "did not load" }).waitFor();
      await main.getByRole("button", { name: "Try again" }).click();
      await until(() => main.getByRole("alert").count(), (count) => count === 1, "the same again");
      assert.ok(problems.length > 0 && problems.every((line) => /failed|fetch|load|import/i.test(line)), problems.join("\n"));
      gone = false;
      await main.getByRole("button", { name: "Try again" }).click();
      await main.getByText("How to take it").waitFor();
      assert.equal(await main.getByRole("alert").count(), 0);
      assert.equal(await page.evaluate(() => document.activeElement.textContent), STITCHES, "the keyboard is on the heading");
      problems.length = 0; // the parts that did not come, as they should not
    });
  });
}

test("pages of the second program come and go without touching the first", async () => {
  await visit({ path: PICTURE, size: "desk" }, async ({ page }) => {
    const main = page.getByRole("main");
    const headings = () => main.getByRole("heading", { level: 1 }).allInnerTexts();
    for (let turn = 0; turn < 3; turn += 1) {
      assert.deepEqual(await headings(), [STITCHES]);
      // A tap there is heard there alone: a renderer that took it for its own would do something else with it.
      await main.getByRole("button", { name: "Use the camera here" }).click();
      await main.getByRole("button", { name: "Cancel" }).click();
      await main.getByText("How to take it").waitFor();
      assert.equal(await hash(page), PICTURE);
      await go(page, LIVE, "Stitches on the live picture");
      assert.deepEqual(await headings(), ["Stitches on the live picture"]);
      // The heading is there a moment before the keyboard is on it.
      const onIt = () => page.evaluate(() => document.activeElement.textContent);
      await until(onIt, (text) => text === "Stitches on the live picture", "the keyboard on the heading");
      await main.getByRole("link", { name: "Back" }).click();
      await main.getByRole("heading", { name: "Bench" }).waitFor();
      assert.equal(await page.locator("#side-room").count(), 0);
      await go(page, PICTURE, STITCHES);
    }
    await page.reload();
    await started(page);
    assert.deepEqual(await headings(), [STITCHES]);
  });
});
