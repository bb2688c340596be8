// Reading a picture: from the file to the answer of a check, by finger and by keyboard, and that nothing of it leaves or stays.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { camera, FILM, noteTracks, tracks } from "./fake_camera.mjs";
import { isTooWide, smallTargets, violations, visit } from "./harness.mjs";
import { board, FILE, finger, imageBox, placeOnScreen, RUB, setMarks, TRUTH } from "./picture.mjs";
import { RACK } from "./rack.mjs";
import { hash, kept, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const PAGE = "#/bench/stitch-photo/picture";
const HEADING = "Stitches from a photograph";
const count = (page) => main(page).getByRole("button", { name: "Count the stitches" });
const figure = (page) => main(page).locator("output.marks-figure b");
const choose = (page, file = FILE) => main(page).getByLabel("Choose a picture").setInputFiles(file);

async function opened(page, file) {
  await choose(page, file);
  await board(page).waitFor();
}

async function counted(page) {
  await opened(page);
  await setMarks(page);
  await count(page).click();
  await figure(page).waitFor();
  return Number(await figure(page).innerText());
}

/** Keeps a note of every request from now on. */
function requests(context) {
  const seen = [];
  context.on("request", (request) => seen.push(request.url()));
  return seen;
}

test("nothing that reads pictures is loaded before there is one", async () => {
  await visit({ path: PAGE }, async ({ page, context }) => {
    const seen = requests(context);
    await main(page).getByRole("heading", { name: HEADING }).waitFor();
    const before = await page.evaluate(() => performance.getEntriesByType("resource").map((entry) => entry.name));
    assert.deepEqual(before.filter((name) => /worker/.test(name)), []);
    assert.ok(before.some((name) => /garment-assay-pictures_bg\.wasm$/.test(name)), "the page itself is");
    await opened(page);
    await until(async () => seen.filter((url) => /photo-worker_bg\.wasm$/.test(url)).length, (count) => count === 1, "the second thread");
  });
});

test("a seam is counted from a file, and the reading answers the check", async () => {
  await visitWith([RACK[3]], { path: `#/garment/${RACK[3].id}/check/spi/picture/stitch-photo` }, async ({ page, context }) => {
    const seen = requests(context);
    const reading = await counted(page);
    assert.ok(Math.abs(reading - TRUTH.perInch) < 0.3, `${reading} against ${TRUTH.perInch}`);
    await main(page).getByText(/^2[123] stitches found over/).waitFor();
    assert.ok((await main(page).locator(".seen-hole").getAttribute("d")).length > 100, "the stitches are drawn");
    await main(page).getByRole("button", { name: /^Use / }).click();
    await until(() => hash(page), (now) => now === `#/garment/${RACK[3].id}/check/spi`, "the check");
    await kept(page);
    await main(page).locator(".answer em").first().waitFor();
    // Code of the app's own, and the picture by an address that exists in this page alone.
    const own = (url) => url.startsWith("blob:") || /\/(icon\.svg|wing-[^/]*|pictures\.css|garment-assay-pictures[^/]*|worker\.js|photo-worker[^/]*)$/.test(new URL(url).pathname);
    assert.deepEqual(seen.filter((url) => !own(url)), []);
  });
});

test("a picture is taken with the camera here, in its full size, and read", async () => {
  const options = { path: PAGE, size: "desk", args: camera(), before: noteTracks() };
  await visit(options, async ({ page }) => {
    const button = (name) => main(page).getByRole("button", { name });
    await button("Use the camera here").click();
    await main(page).getByText("Lay the seam along the line").waitFor();
    await button("Cancel").click();
    await until(() => tracks(page), (all) => all.join() === "ended", "the camera to be let go");
    await button("Use the camera here").click();
    await until(() => button("Take the picture").isEnabled(), (enabled) => enabled, "the shutter");
    assert.deepEqual(await violations(page), []);
    await button("Take the picture").click();
    await board(page).waitFor();
    await until(() => tracks(page), (all) => all.join() === "ended,ended", "the camera to be let go again");
    const { perMm, ruler, seam, stitchMm, width } = FILM;
    assert.equal(Number(await board(page).locator(":scope > img").getAttribute("width")), width);
    const hole = (place) => [seam.left + place * stitchMm * perMm, seam.at];
    await setMarks(page, [[ruler.left + 20 * perMm, ruler.top + 20], [ruler.left + 70 * perMm, ruler.top + 20], hole(3), hole(23)]);
    await count(page).click();
    await figure(page).waitFor();
    const reading = Number(await figure(page).innerText());
    assert.ok(Math.abs(reading - 25.4 / stitchMm) < 0.3, `${reading} against ${25.4 / stitchMm}`);
  });
});

test("without a camera that pages are lent, none is offered", async () => {
  const before = (context) => context.addInitScript(() => Object.defineProperty(window.navigator, "mediaDevices", { value: undefined }));
  await visit({ path: PAGE, before }, async ({ page }) => {
    await main(page).getByLabel("Choose a picture").waitFor({ state: "attached" });
    assert.equal(await main(page).getByRole("button", { name: "Use the camera here" }).count(), 0);
  });
});

test("a stain is compared with the white on both sides of it, without anything of known size", async () => {
  await visit({ path: "#/bench/rub-off-photo/picture" }, async ({ page }) => {
    await opened(page, RUB.file);
    assert.equal(await main(page).getByLabel("Beside it lies").count(), 0);
    await setMarks(page, RUB.marks);
    await main(page).getByRole("button", { name: "Compare with white" }).click();
    await figure(page).waitFor();
    const grade = Number(await figure(page).innerText());
    assert.ok(Math.abs(grade - RUB.grade) <= 0.5, `${grade} against ${RUB.grade}`);
    assert.ok(!(await isTooWide(page)));
    assert.deepEqual(await violations(page), []);
  });
});

test("nothing is stored of a picture, nor of its reading before it is kept", async () => {
  await visit({ path: PAGE }, async ({ page }) => {
    const all = () =>
      page.evaluate(async () => {
        const kept = Object.entries({ ...window.localStorage });
        const databases = (await window.indexedDB.databases()).map((base) => base.name);
        return JSON.stringify([kept, databases, await window.caches.keys()]);
      });
    const before = await all();
    await counted(page);
    assert.equal(await all(), before);
    await main(page).getByRole("button", { name: "Keep this reading" }).click();
    await main(page).getByRole("button", { name: "Kept" }).waitFor();
    const after = await all();
    assert.notEqual(after, before);
    assert.ok(!after.includes("blob:") && !after.includes("image") && after.length < before.length + 1000);
  });
});

test("a file that is no picture gets a sentence, and another can be chosen", async () => {
  await visit({ path: PAGE }, async ({ page }) => {
    await choose(page, { name: "seam.jpg", mimeType: "image/jpeg", buffer: Buffer.from("this is no picture at all") });
    await main(page).getByRole("alert").filter({ hasText: "finds no picture" }).waitFor();
    await opened(page);
  });
});

test("a picture that is broken off further down gets a sentence", async () => {
  await visit({ path: PAGE }, async ({ page }) => {
    // Its head tells a size, so that it is shown; where the engine still decodes it, the rest is grey and nothing is found there.
    const whole = await readFile(FILE);
    await opened(page, { name: "seam.jpg", mimeType: "image/jpeg", buffer: whole.subarray(0, 9000) });
    await setMarks(page);
    await count(page).click();
    await main(page).getByRole("alert").waitFor();
    assert.ok(!(await figure(page).isVisible()));
  });
});

test("reading that takes long says so and can be stopped, and the next question begins anew", async () => {
  await visit({ path: PAGE }, async ({ page, context }) => {
    // A slow network to the second thread stands for a slow device.
    let hold = true;
    await context.route(/photo-worker_bg\.wasm$/, async (route) => {
      while (hold) await new Promise((done) => setTimeout(done, 50));
      await route.continue().catch(() => {});
    });
    await opened(page);
    await setMarks(page);
    await count(page).click();
    await main(page).getByText("Reading the picture").waitFor();
    await main(page).getByRole("button", { name: "Stop" }).click();
    await main(page).getByText("Stopped. Your marks are kept.").waitFor();
    hold = false;
    await count(page).click();
    await figure(page).waitFor();
  });
});

test("all of it can be done from the keyboard", async () => {
  await visit({ path: PAGE, size: "desk" }, async ({ page }) => {
    await main(page).getByLabel("Choose a picture").focus();
    await choose(page);
    await board(page).waitFor();
    for (let presses = 0; !(await board(page).evaluate((element) => element === document.activeElement)); presses += 1) {
      assert.ok(presses < 12, "the picture is reached by the tab key");
      await page.keyboard.press("Tab");
    }
    for (const place of TRUTH.marks) await walkTo(page, place);
    for (let presses = 0; !(await count(page).evaluate((element) => element === document.activeElement)); presses += 1) {
      assert.ok(presses < 20, "the button is reached by the tab key");
      await page.keyboard.press("Tab");
    }
    await page.keyboard.press("Enter");
    await figure(page).waitFor();
    const reading = Number(await figure(page).innerText());
    assert.ok(Math.abs(reading - TRUTH.perInch) < 0.3, `${reading}`);
  });
});

/** Walks the chosen mark to a place of the picture by arrow keys, as the screen reader's line tells where it is, and goes on to the next. */
async function walkTo(page, [x, y]) {
  const said = main(page).locator(".picture [role=status]");
  await page.keyboard.press("ArrowRight");
  const now = await until(() => said.innerText(), (text) => /across/.test(text), "the mark");
  const [, atX, atY] = now.match(/: (\d+) across, (\d+) down/).map(Number);
  const steps = async (by, back, onward) => {
    const [key, away] = [by < 0 ? back : onward, Math.abs(Math.round(by))];
    for (let step = 0; step < Math.floor(away / 10); step += 1) await page.keyboard.press(`Shift+${key}`);
    for (let step = 0; step < away % 10; step += 1) await page.keyboard.press(key);
  };
  await steps(x - atX, "ArrowLeft", "ArrowRight");
  await steps(y - atY, "ArrowUp", "ArrowDown");
  await until(() => said.innerText(), (text) => text.includes(`${Math.round(x)} across, ${Math.round(y)} down`), `the mark at ${x}, ${y}`);
  await page.keyboard.press("Enter");
}

test("two fingers bring the picture nearer and set no mark", async () => {
  await visit({ path: PAGE }, async ({ page }) => {
    await opened(page);
    const before = await imageBox(page);
    const box = await board(page).boundingBox();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const touch = await finger(page);
    await touch("touchStart", [[x - 20, y]]);
    await touch("touchStart", [[x - 20, y], [x + 20, y]]);
    for (let step = 1; step <= 5; step += 1) await touch("touchMove", [[x - 20 - 12 * step, y], [x + 20 + 12 * step, y]]);
    await touch("touchEnd", []);
    const after = await until(() => imageBox(page), (now) => now.width > before.width * 2, "a nearer picture");
    assert.ok(after.width < before.width * 6);
    assert.equal(await main(page).locator(".set-mark").count(), 0);
    assert.equal(await page.evaluate(() => window.visualViewport.scale), 1, "the page itself is not magnified");
  });
});

test("a finger that stays down has the magnifier above it, and lets go where it is lifted", async () => {
  await visit({ path: PAGE }, async ({ page }) => {
    await opened(page);
    const [x, y] = await placeOnScreen(page, [640, 480]);
    const touch = await finger(page);
    await touch("touchStart", [[x, y]]);
    const lens = await main(page).locator(".lens").boundingBox();
    assert.ok(lens.y + lens.height < y - 20, `the magnifier lies above: ${lens.y + lens.height} against ${y}`);
    await touch("touchMove", [[x + 30, y]]);
    await touch("touchEnd", []);
    await main(page).locator(".lens").waitFor({ state: "hidden" });
    assert.equal(await main(page).locator(".set-mark").count(), 1);
    const mark = await main(page).locator(".set-mark .mark-ring").boundingBox();
    assert.ok(Math.abs(mark.x + mark.width / 2 - (x + 30)) < 2 && Math.abs(mark.y + mark.height / 2 - y) < 2);
    await main(page).getByRole("button", { name: "Undo the last mark" }).click();
    await until(() => main(page).locator(".set-mark").count(), (marks) => marks === 0, "no mark");
  });
});

test("the end of the seam is dragged, and the stitches are counted anew", async () => {
  await visit({ path: PAGE }, async ({ page }) => {
    await counted(page);
    const before = await main(page).getByText(/stitches found over/).innerText();
    const [, , from, to] = TRUTH.marks;
    const half = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const [a, b] = [await placeOnScreen(page, to), await placeOnScreen(page, half)];
    await page.mouse.move(...a);
    await page.mouse.down();
    await page.mouse.move(...b, { steps: 4 });
    await page.mouse.up();
    const after = await until(() => main(page).getByText(/stitches found over/).innerText(), (now) => now !== before, "another count");
    const number = Number(after.split(" ")[0]);
    assert.ok(number >= 9 && number <= 13, after);
  });
});

test("a picture turned on its side by its camera is shown and read upright", async () => {
  await visit({ path: PAGE }, async ({ page }) => {
    const file = await readFile(FILE);
    // Orientation 6: the camera's rows run down the right side. EXIF 2.32, tag 0x0112, in a segment of its own after the start.
    const exif = Buffer.from("ffe1002245786966000049492a000800000001001201030001000000060000000000000000", "hex");
    exif.writeUInt16BE(exif.length - 2, 2);
    await opened(page, { name: "seam.jpg", mimeType: "image/jpeg", buffer: Buffer.concat([file.subarray(0, 2), exif, file.subarray(2)]) });
    const box = await imageBox(page);
    assert.ok(box.height > box.width, "upright");
    await setMarks(page, TRUTH.marks.map(([x, y]) => [TRUTH.size[1] - 1 - y, x]));
    await count(page).click();
    await figure(page).waitFor();
    const reading = Number(await figure(page).innerText());
    assert.ok(Math.abs(reading - TRUTH.perInch) < 0.3, `${reading}`);
  });
});

test("the page fits a small phone, its targets a finger, and axe finds nothing, before and after the count", async () => {
  for (const scheme of ["light", "dark"]) {
    await visit({ path: PAGE, size: "small", scheme }, async ({ page }) => {
      const judge = async (where) => {
        assert.ok(!(await isTooWide(page)), `${where}: too wide`);
        assert.deepEqual(await smallTargets(page), [], where);
        assert.deepEqual(await violations(page), [], where);
      };
      await judge("taking");
      await opened(page);
      await judge("marking");
      await setMarks(page);
      await count(page).click();
      await figure(page).waitFor();
      await judge("counted");
    });
  }
});
