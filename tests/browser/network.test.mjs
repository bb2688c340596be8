// That the app needs nobody: no other place is ever asked, and once it is loaded its own may be gone.

import assert from "node:assert/strict";
import { test } from "node:test";
import { serve } from "../../scripts/serve.mjs";
import { DIST, visit } from "./harness.mjs";
import { answer, answers, begin, exportAll, garmentId, go, moved, next, openCheck, openResult } from "./steps.mjs";

test("after it is loaded everything works with the server closed", async () => {
  const server = await serve({ dir: DIST });
  let open = true;
  try {
    await visit({ home: server.url }, async ({ page, home, problems }) => {
      await page.evaluate(() => document.fonts.ready);
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

test("from first to last the app asks only its own place, and only for files", async () => {
  const asked = [];
  const before = async (context) => context.on("request", (request) => asked.push(`${request.method()} ${request.url()}`));
  await visit({ before }, async ({ page, home }) => {
    await begin(page, {});
    await answer(page, 0);
    await next(page);
    await openResult(page);
    await exportAll(page);
    await page.waitForLoadState("networkidle");
    const elsewhere = asked.filter((line) => !line.startsWith(`GET ${home}`) && !line.startsWith(`GET blob:${new URL(home).origin}`));
    assert.deepEqual(elsewhere, []);
    assert.ok(asked.some((line) => line.includes(".wasm")), "requests are seen at all");
  });
});

test("the policy allows no inline script, and refuses one that comes with the page", async () => {
  const server = await serve({ dir: DIST });
  // What somebody between the server and the person might add; the policy in the page must hold by itself.
  const before = (context) =>
    context.route(server.url, async (route) => {
      const response = await route.fetch();
      const body = (await response.text()).replace("</body>", '<script>window.intruded = true</script><b id="came" onclick="window.intruded = true">x</b></body>');
      await route.fulfill({ response, body });
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
