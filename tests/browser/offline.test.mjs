// In flight mode: one visit, then neither network nor server, and everything opens and works; from a folder of any host; and a host whose
// files do not fit together harms nothing.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { copies, copyIs, gets, hosted, keeping, lookForNewer, withoutNetwork } from "./copies.mjs";
import { DIST, started } from "./harness.mjs";
import { board, FILE, setMarks, TRUTH } from "./picture.mjs";
import { answer, answers, begin, garmentId, go, headline, next, openResult, until } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const INVENTED = JSON.parse(await readFile(new URL("../../web/invented-rack.json", import.meta.url), "utf8"));

async function countStitches(page) {
  await go(page, "#/bench/stitch-photo/picture", "Stitches from a photograph");
  await main(page).getByLabel("Choose a picture").setInputFiles(FILE);
  await board(page).waitFor();
  await setMarks(page);
  await main(page).getByRole("button", { name: "Count the stitches" }).click();
  const figure = main(page).locator("output.marks-figure b");
  await figure.waitFor();
  return Number(await figure.innerText());
}

test("a page that comes from the copy has its typeface on the way before its first script", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page }) => {
      await copyIs(page, "whole");
      await page.reload();
      await started(page);
      const asked = await page.evaluate(() => performance.getEntriesByType("resource").map(({ name, initiatorType, startTime }) => ({ name: name.split("/").pop(), initiatorType, startTime })));
      const [face, script] = ["instrument-sans.woff2", "boot.js"].map((name) => asked.filter((one) => one.name === name));
      assert.deepEqual(face.map((one) => one.initiatorType), ["link"], "once, by the head of the page");
      assert.ok(face[0].startTime < script[0].startTime, JSON.stringify(asked));
    });
  });
});

test("after one visit, with network and server gone, everything opens and works, in a folder of a host", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page: first, context, problems }) => {
      await copyIs(first, "whole");
      await go(first, "#/settings", "Settings");
      await main(first).getByText("Ready for use without a network.").waitFor();
      await first.close();
      await host.close();
      await context.setOffline(true);

      const page = await context.newPage();
      await page.goto(host.home);
      await started(page);
      // A check.
      await begin(page, { label: "Above the clouds" });
      const id = garmentId(page);
      await answer(page, 0);
      await next(page);
      await answers(page).first().waitFor();
      await openResult(page);
      assert.ok(await headline(page));
      // A picture, by the second program and the second thread.
      const reading = await countStitches(page);
      assert.ok(Math.abs(reading - TRUTH.perInch) < 0.3, `${reading} against ${TRUTH.perInch}`);
      // A lesson, with its longer text.
      await go(page, "#/learn/jeans/inseam", "Inner leg seam");
      await main(page).getByRole("heading", { name: "What becomes of it", level: 3 }).waitFor();
      // Practice.
      await go(page, "#/practice", "Practise");
      await main(page).getByRole("button", { name: "Start", exact: true }).click();
      await main(page).locator(".practice-question").waitFor();
      // The sheet.
      await go(page, `#/garment/${id}/sheet`, "Sheet");
      // The invented rack.
      await go(page, "#/settings", "Settings");
      await main(page).getByRole("button", { name: "Look round in an invented rack" }).click();
      await main(page).getByText(`${INVENTED.count} garments here are invented.`).waitFor();
      // The app by its other addresses; what follows "?" is nobody's business.
      for (const address of [host.home + "?1", host.home + "index.html?from=somewhere#/bench", host.home + "index.html"]) {
        await page.goto(address);
        await page.reload();
        await started(page);
      }
      assert.deepEqual(withoutNetwork(problems), []);
    });
  });
});

test("the copy asks no other place, and what the visit has loaded is not sent again", async () => {
  const answers = [];
  const answered = (path, status, bytes) => answers.push({ path, status, bytes });
  await hosted(
    async (host) => {
      const asked = [];
      const before = async (context) => context.on("request", (request) => asked.push(request.url()));
      await keeping(host, { before }, async ({ page }) => {
        await copyIs(page, "whole");
        assert.ok(asked.some((url) => url.endsWith("photo-worker_bg.wasm")), "the copy's requests are seen");
        assert.deepEqual(asked.filter((url) => !url.startsWith(host.home)), []);
        const sent = answers.filter(({ status }) => status === 200).map(({ path }) => path);
        assert.deepEqual(sent.filter((path, place) => sent.indexOf(path) !== place), []);
        // Opening the page again sends only the list anew, if that.
        answers.length = 0;
        await page.reload();
        await started(page);
        await copyIs(page, "whole");
        assert.deepEqual(answers.filter(({ path, status }) => status === 200 && path !== "sw.js"), []);
      });
    },
    { answered },
  );
});

test("the copies of other apps on the host stay, and what is not the app’s own goes to the host", async () => {
  await hosted(async (host) => {
    const others = ["somebody else", `garment-assay ${host.home}beside/ 0123`, "garment-assay"];
    await keeping(host, {}, async ({ page, problems }) => {
      await page.evaluate((names) => Promise.all(names.map((name) => window.caches.open(name))), others);
      await copyIs(page, "whole");
      await host.change("learn/jeans.txt", (text) => text + "\n");
      await host.release();
      assert.equal(await lookForNewer(page), true);
      await page.getByRole("button", { name: "Use it now" }).click();
      await until(() => gets(page, "learn/jeans.txt").then((text) => text.endsWith("\n\n")).catch(() => false), Boolean, "the new version", 40_000);
      await page.reload();
      await started(page);
      const ours = await until(() => copies(page), (all) => all.filter((name) => name.startsWith(`garment-assay ${host.home} `)).length === 2, "one copy and its list of pages");
      assert.deepEqual(ours.filter((name) => others.includes(name)), [...others].sort());
      // A file that nobody has listed is the host's to answer for.
      assert.equal(await page.evaluate(async () => (await fetch("unheard-of.txt")).status), 404);
      problems.length = 0;
    });
  });
});

test("a host whose files do not fit together gives no copy at first, says so, and a second try may do", async () => {
  await hosted(async (host) => {
    const right = await readFile(join(DIST, "pictures.css"), "utf8");
    await host.change("pictures.css", (text) => text + "\n/* of another version */");
    await keeping(host, { path: "#/settings" }, async ({ page, problems }) => {
      await copyIs(page, "failed");
      await main(page).getByText("This browser keeps no copy yet, because not all files arrived").waitFor();
      await begin(page, {});
      await answer(page, 0);
      assert.ok(problems.every((line) => /integrity|pictures\.css/.test(line)), problems.join("\n"));
      problems.length = 0;
      await host.change("pictures.css", () => right);
      await go(page, "#/settings", "Settings");
      await main(page).getByRole("button", { name: "Try again" }).click();
      await main(page).getByText("Ready for use without a network.").waitFor();
    });
  });
});

test("while a host is only half changed the old version stays, and works without it", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page, context, problems }) => {
      await copyIs(page, "whole");
      const [before] = (await copies(page)).filter((name) => !name.endsWith("pages"));
      // The new list is there, and one of the files that it names; the other still is as it was.
      await host.change("pictures.css", (text) => text + "\n/* newer */");
      await host.change("worker.js", (text) => text + "\n// newer");
      await host.release();
      const newer = await readFile(join(host.folder, "worker.js"), "utf8");
      await host.change("worker.js", (text) => text.replace("\n// newer", ""));
      assert.equal(await lookForNewer(page), false);
      assert.ok(problems.every((line) => /integrity|worker\.js/.test(line)), problems.join("\n"));
      problems.length = 0;
      assert.doesNotMatch(await gets(page, "pictures.css"), /newer/);
      await page.reload();
      await started(page);
      assert.equal(await page.getByText("A newer version is ready").count(), 0);
      problems.length = 0;
      // The rest of the files comes.
      await host.change("worker.js", () => newer);
      assert.equal(await lookForNewer(page), true);
      await page.getByText("A newer version is ready").waitFor();
      assert.ok((await copies(page)).includes(before), "the version in use is still there");
      await context.setOffline(true);
      await host.close();
      await page.reload();
      await started(page);
      assert.doesNotMatch(await gets(page, "pictures.css"), /newer/);
      assert.deepEqual(withoutNetwork(problems), []);
    });
  });
});

test("where the browser asks to save data, the rest comes as it is opened, or when it is asked for", async () => {
  await hosted(async (host) => {
    // The browser's own word cannot be set for its second thread: the copy of the host is made to hear it always.
    const sparing = "self.navigator.connection?.saveData === true";
    await host.change("sw.js", (text) => {
      assert.ok(text.includes(sparing));
      return text.replace(sparing, "true");
    });
    await keeping(host, {}, async ({ page }) => {
      await copyIs(page, "part");
      await go(page, "#/settings", "Settings");
      const before = await main(page).getByText(/^Partly ready for use without a network/).innerText();
      assert.match(before, /at most \d\.\d MB/);
      await go(page, "#/learn/jeans/inseam", "Inner leg seam");
      await main(page).getByRole("heading", { name: "What becomes of it", level: 3 }).waitFor();
      const has = (name) => page.evaluate(async (name) => (await window.caches.match(new URL(name, document.baseURI).href)) !== undefined, name);
      assert.equal(await has("learn/jeans.txt"), true);
      assert.equal(await has("learn/sweater.txt"), false);
      await go(page, "#/settings", "Settings");
      await main(page).getByRole("button", { name: "Load the rest now" }).click();
      await main(page).getByText("Ready for use without a network.").waitFor();
      assert.equal(await has("learn/sweater.txt"), true);
    });
  });
});

test("a browser that keeps no copies says why", async () => {
  await hosted(async (host) => {
    const before = (context) => context.addInitScript(() => Reflect.deleteProperty(window.Navigator.prototype, "serviceWorker"));
    await keeping(host, { before, path: "#/settings" }, async ({ page }) => {
      await main(page).getByText(/^This browser keeps no copy, because it has no way to/).waitFor();
    });
  });
});

test("a browser finds nothing that keeps it from installing the app, from a folder of a host", async () => {
  await hosted(async (host) => {
    await keeping(host, {}, async ({ page, context }) => {
      await copyIs(page, "whole");
      const session = await context.newCDPSession(page);
      const { url, errors, manifest } = await session.send("Page.getAppManifest");
      assert.deepEqual([url, errors], [host.home + "app.webmanifest", []]);
      assert.deepEqual([manifest.startUrl, manifest.scope, manifest.id], [host.home, host.home, host.home]);
      const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
      // The visit's context is a private one, from which nothing is installed.
      assert.deepEqual(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== "in-incognito"), []);
      // Each icon is as large as the manifest says: width and height of a PNG stand at its bytes 16 and 20.
      for (const { src, sizes } of JSON.parse(await readFile(join(DIST, "app.webmanifest"), "utf8")).icons) {
        const bytes = await readFile(join(DIST, src));
        if (sizes !== "any") assert.equal(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`, sizes, src);
      }
    });
  });
});
