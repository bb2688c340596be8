// A newer version is offered and never forced: on the rack and not in the middle of a check; and a second tab goes on with its own files.

import assert from "node:assert/strict";
import { rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { copies, copyIs, gets, hosted, keeping, lookForNewer } from "./copies.mjs";
import { started } from "./harness.mjs";
import { board, FILE, setMarks, TRUTH } from "./picture.mjs";
import { answers, begin, go, hash, until } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const OFFER = "A newer version is ready.";
const offers = (page) => page.getByText(OFFER).count();
const NEWER = /of the newer version/;

/** Changes the second program and its thread so that whoever gets the new ones cannot read a picture with the old rest. */
async function publish(host) {
  await host.change("pictures.css", (text) => text + "\n/* of the newer version */");
  await host.change("photo-worker.js", () => "throw new Error('of the newer version');\nexport default function start() {}\n");
  await host.change("learn/jeans.txt", (text) => text + "\n");
  await host.release();
}

test("it is offered on the rack, the result and in the settings, not during a check, and is taken only when it is accepted", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page }) => {
      await copyIs(page, "whole");
      const before = await copies(page);
      await begin(page, { label: "In hand" });
      const check = hash(page);
      await publish(host);
      assert.equal(await lookForNewer(page), true);
      await page.evaluate(() => (window.untouched = true));
      // Time enough for anything that would happen by itself.
      await new Promise((done) => setTimeout(done, 500));
      assert.equal(await offers(page), 0);
      assert.equal(hash(page), check);
      await answers(page).first().waitFor();

      for (const [to, heading] of [["#/settings", "Settings"], [check.replace(/\/check\/.*/, "/result"), "What this does not say"], ["#/", "Rack"]]) {
        await go(page, to, heading);
        await page.getByText(OFFER).waitFor();
      }
      await page.getByRole("button", { name: "Later" }).click();
      await until(() => offers(page), (count) => count === 0, "no offer on the rack");
      await go(page, check, /./);
      await go(page, "#/", "Rack");
      assert.equal(await offers(page), 0);
      await go(page, "#/settings", "Settings");
      await page.getByText(OFFER).waitFor();
      assert.equal(await page.evaluate(() => window.untouched), true);
      assert.doesNotMatch(await gets(page, "pictures.css"), NEWER);

      let loads = 0;
      page.on("load", () => (loads += 1));
      await page.getByRole("button", { name: "Use it now" }).click();
      await until(() => page.evaluate(() => window.untouched).catch(() => true), (mark) => mark === undefined, "the page loaded anew");
      await started(page);
      assert.match(await gets(page, "pictures.css"), NEWER);
      await copyIs(page, "whole");
      assert.equal(await offers(page), 0);
      await go(page, "#/", "Rack");
      await page.getByText("In hand").waitFor();
      await new Promise((done) => setTimeout(done, 500));
      // Once, or once more where the browser had to be reminded.
      assert.ok(loads <= 2, `${loads} loads`);
      await page.reload();
      await started(page);
      const after = await until(() => copies(page), (all) => all.length === before.length, "the old copy to be gone");
      assert.notDeepEqual(after, before);
    });
  });
});

test("a second tab is not touched, goes on with its own files, and says that it may be loaded again", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page, context, reopen }) => {
      await copyIs(page, "whole");
      const second = await reopen();
      await copyIs(second, "whole");
      await begin(second, { label: "Under the hands" });
      const check = hash(second);
      await second.evaluate(() => (window.untouched = true));
      await publish(host);
      assert.equal(await lookForNewer(page), true);
      await page.bringToFront();
      await page.getByRole("button", { name: "Use it now" }).click();
      await until(() => gets(page, "pictures.css").catch(() => ""), (text) => NEWER.test(text), "the newer version in the first tab");
      await started(page);
      // Navigations are when old copies are cleared away.
      await page.reload();
      await started(page);

      await second.bringToFront();
      assert.equal(hash(second), check);
      assert.equal(await second.evaluate(() => window.untouched), true);
      assert.equal(await second.getByText("Another window uses a newer version").count(), 0, "not in the middle of a check");
      await go(second, "#/bench/stitch-photo/picture", "Stitches from a photograph");
      assert.doesNotMatch(await gets(second, "pictures.css"), NEWER);
      await main(second).getByLabel("Choose a picture").setInputFiles(FILE);
      await board(second).waitFor();
      await setMarks(second);
      await main(second).getByRole("button", { name: "Count the stitches" }).click();
      const figure = main(second).locator("output.marks-figure b");
      await figure.waitFor();
      assert.ok(Math.abs(Number(await figure.innerText()) - TRUTH.perInch) < 0.3);

      await go(second, "#/", "Rack");
      await second.getByText("Another window uses a newer version").waitFor();
      await second.getByRole("button", { name: "Load it again" }).click();
      await until(() => second.evaluate(() => window.untouched).catch(() => true), (mark) => mark === undefined, "the second tab loaded anew");
      await started(second);
      assert.match(await gets(second, "pictures.css"), NEWER);
      // A third tab, opened now: the copy that nobody needs any more goes.
      const third = await context.newPage();
      await third.goto(host.home);
      await started(third);
      await until(() => copies(third), (all) => all.length === 2, "one copy and its list of pages");
    });
  });
});

test("a newer version that the browser does not let in is said to be coming, the page is loaded once more, and it is offered again", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page }) => {
      await copyIs(page, "whole");
      await begin(page, { label: "In hand" });
      await publish(host);
      await host.change("sw.js", (text) => text.replace("await self.skipWaiting();", ""));
      assert.equal(await lookForNewer(page), true);
      await go(page, "#/", "Rack");
      await page.evaluate(() => (window.untouched = true));
      let loads = 0;
      page.on("load", () => (loads += 1));
      await page.getByRole("button", { name: "Use it now" }).click();
      await page.getByText("The newer version is coming").waitFor();
      await until(() => page.evaluate(() => window.untouched).catch(() => true), (mark) => mark === undefined, "the page loaded anew");
      await page.getByRole("button", { name: "Use it now" }).waitFor();
      await page.getByText("In hand").waitFor();
      // Longer than it took the first time.
      await new Promise((done) => setTimeout(done, 3000));
      assert.equal(loads, 1, "once");
      assert.doesNotMatch(await gets(page, "pictures.css"), NEWER);
    });
  });
});

test("when the last tab is closed, the next opening takes the newer version by itself", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page, context }) => {
      await copyIs(page, "whole");
      await publish(host);
      assert.equal(await lookForNewer(page), true);
      await page.close();
      const fresh = await context.newPage();
      // The browser may take a moment to see that the page is gone.
      await until(
        async () => {
          await fresh.goto("about:blank");
          await fresh.goto(host.home);
          await started(fresh);
          return gets(fresh, "pictures.css");
        },
        (text) => NEWER.test(text),
        "the newer version",
      );
    });
  });
});

test("a page goes on with a file of its own version whose name no newer version has", async () => {
  await hosted(async (host) => {
    const own = "only-of-old.txt";
    await writeFile(join(host.folder, own), "of the version before");
    await host.release();
    await keeping(host, {}, async ({ page: first, reopen }) => {
      await copyIs(first, "whole");
      const second = await reopen();
      await rm(join(host.folder, own));
      await publish(host);
      assert.equal(await lookForNewer(second), true);
      await go(second, "#/settings", "Settings");
      await second.getByRole("button", { name: "Use it now" }).click();
      await until(() => gets(second, "pictures.css").catch(() => ""), (text) => NEWER.test(text), "the newer version in the second tab");
      assert.equal(await gets(first, own), "of the version before");
    });
  });
});
