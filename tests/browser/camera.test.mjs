// The camera, and the comb on its picture. Chromium shows a film of a drawn seam beside a drawn ruler in place of a lens.

import assert from "node:assert/strict";
import { test } from "node:test";
import { camera, FILM, filmPicture, NONE, noteTracks, REFUSED, tracks } from "./fake_camera.mjs";
import { violations, visit } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { answers, go, kept, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const LIVE = "#/bench/stitch-comb-live/live";
const HEADING = "Stitches on the live picture";
const GARMENT = RACK[3];
/** What the film shows: stitches of 3 mm are 8.47 to the inch. */
const TRUTH = 25.4 / FILM.stitchMm;

const button = (page, name) => main(page).getByRole("button", { name });
const first = (page) => button(page, /^First bar/);
const openCamera = async (page) => {
  await button(page, "Open the camera").click();
  await first(page).waitFor();
};
const reading = async (page) => {
  const text = (await main(page).locator("output.live-reading").innerText()).replace(/\s+/g, " ");
  const [, value, spread, perCm, bars] =
    text.match(/^([\d.]+) stitches per inch ± ([\d.]+) · ([\d.]+) per cm · (\d+) bars$/) ?? assert.fail(`no density: ${text}`);
  return { value: Number(value), spread: Number(spread), perCm: Number(perCm), bars: Number(bars), text };
};
const isRead = (page) => main(page).locator("output.live-reading b").waitFor();

/** Where a pixel of the film is in the window, whichever of video and still picture shows it; `size` is the shown picture's. */
async function spot(page, x, y) {
  return page.evaluate(
    ([x, y, width]) => {
      const canvas = document.querySelector(".live-picture canvas");
      const shown = canvas.hidden ? document.querySelector(".live-picture video") : canvas;
      const box = shown.getBoundingClientRect();
      const times = box.width / width;
      return { x: box.left + x * times, y: box.top + y * times };
    },
    [x, y, FILM.width],
  );
}

/** Where the middle of something drawn over the picture is. */
const middle = async (locator) => {
  const box = await locator.boundingBox();
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

/** Drags from one place to another, as a finger would. */
async function drag(page, from, to) {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 3 });
  await page.mouse.move(to.x, to.y, { steps: 3 });
  await page.mouse.up();
}

const KNOB = 34;

/** Puts marks and comb where the film has its ruler and its seam, by dragging; marks 40 mm apart. */
async function layComb(page) {
  const { perMm, ruler, seam, stitchMm } = FILM;
  // The whole breadth of the film, so that 40 mm are on the screen.
  for (let tries = 0; tries < 4; tries += 1) await button(page, "Picture smaller").click();
  await main(page).getByLabel("Between the marks", { exact: true }).fill("40");
  const from = await spot(page, ruler.left + 20 * perMm, ruler.top + 40);
  const to = await spot(page, ruler.left + 60 * perMm, ruler.top + 40);
  await drag(page, await middle(button(page, /^Second mark/).locator("circle.knob")), { x: to.x + KNOB, y: to.y });
  // Marks on a slant until both lie on the ruler: the knob of the first stands along the line to the second.
  await drag(page, await middle(button(page, /^First mark/).locator("circle.knob")), { x: from.x - KNOB, y: from.y });
  const knobs = async () => [await middle(button(page, /^First mark/).locator("circle.knob")), await middle(button(page, /^Second mark/).locator("circle.knob"))];
  for (let tries = 0; tries < 2; tries += 1) {
    const [one, other] = await knobs();
    await drag(page, one, { x: from.x - KNOB, y: from.y });
    await drag(page, other, { x: to.x + KNOB, y: to.y });
  }
  const hole = await spot(page, seam.left + 7 * stitchMm * perMm, seam.at);
  await drag(page, await middle(first(page).locator("circle.knob")), { x: hole.x - KNOB, y: hole.y });
  // The tenth bar to the tenth hole after it, by its own bar.
  const bars = await main(page).locator(".live-marks path.bars").getAttribute("d");
  const frame = await main(page).locator(".live-marks").boundingBox();
  const tenth = [...bars.matchAll(/M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)/g)][9].slice(1).map(Number);
  const at = { x: frame.x + (tenth[0] + tenth[2]) / 2, y: frame.y + (tenth[1] + tenth[3]) / 2 };
  const tenthHole = await spot(page, seam.left + 17 * stitchMm * perMm, seam.at);
  await drag(page, at, { x: tenthHole.x, y: at.y });
  await isRead(page);
}

/** The film is as broad as a phone held upright cannot show at once; a desk's frame can. */
const DESK = { size: "desk", args: camera(), before: noteTracks() };

test("a comb laid over the live picture reads the density that was drawn, from a check and back to it", async () => {
  await visitWith(RACK, { ...DESK, path: `#/garment/${GARMENT.id}/check/spi` }, async ({ page }) => {
    await answers(page).first().waitFor();
    await button(page, /Measure it/).click();
    await main(page).locator("label").filter({ hasText: HEADING }).click();
    await main(page).getByRole("link", { name: "Use the camera" }).click();
    await openCamera(page);
    assert.ok(await button(page, "Use this reading").isDisabled(), "where the comb happens to begin is no reading");
    await layComb(page);
    const shaky = await reading(page);
    console.log(`  drawn ${TRUTH.toFixed(3)}, read ${shaky.text}`);
    assert.ok(Math.abs(shaky.value - TRUTH) < 2 * shaky.spread, shaky.text);
    assert.ok(Math.abs(shaky.value / TRUTH - 1) < 0.03, shaky.text);
    assert.ok(Math.abs(shaky.perCm * 2.54 - shaky.value) < 0.2, shaky.text);
    // Forty millimetres hold 13 stitches of three.
    assert.ok(shaky.bars >= 13 && shaky.bars <= 15, shaky.text);
    await button(page, /^Use 8\.\d/).click();
    await answers(page).first().waitFor();
    await button(page, "Take answer back").waitFor();
    await kept(page);
    assert.deepEqual(await tracks(page), ["ended"]);
    const stored = async () => JSON.stringify((await storage(page))[`garment-assay/page/${GARMENT.id}`]);
    assert.match(await stored(), /stitch-comb-live/);
    await reload(page);
    assert.match((await main(page).locator("output.figure").innerText()).replace(/\s+/g, " "), /^8\.\d+ ± 0\.\d+ per inch/);
  });
});

test("a tap holds the frame, marks can be laid on it at rest, and a second tap lets it go", async () => {
  await visit({ ...DESK, path: LIVE }, async ({ page }) => {
    await openCamera(page);
    await layComb(page);
    const shaky = await reading(page);
    const still = main(page).locator(".live-picture canvas");
    assert.ok(!(await still.isVisible()));
    const clear = await spot(page, 700, 80);
    await page.mouse.click(clear.x, clear.y);
    await still.waitFor();
    // The canvas holds the film: thread is brighter than a hole.
    const [thread, hole] = await still.evaluate((canvas, { seam, stitchMm, perMm }) => {
      const { data } = canvas.getContext("2d").getImageData(0, seam.at, canvas.width, 1);
      const grey = (x) => data[4 * x] + data[4 * x + 1] + data[4 * x + 2];
      const stitch = stitchMm * perMm;
      return [grey(Math.round(seam.left + 5.5 * stitch)), grey(Math.round(seam.left + 5 * stitch))];
    }, FILM);
    assert.ok(thread > hole + 150, `thread ${thread}, hole ${hole}`);
    const steady = await until(() => reading(page), (now) => now.text !== shaky.text, "the spread to shrink");
    assert.ok(steady.spread < shaky.spread && steady.value === shaky.value, `${shaky.text} then ${steady.text}`);
    await button(page, "Go live").waitFor();
    await page.mouse.click(clear.x, clear.y);
    await until(() => still.isVisible(), (visible) => !visible, "the live picture");
    assert.deepEqual(await tracks(page), ["live"]);
  });
});

test("the camera is let go when the page is left, and when it is hidden, and comes back when it is seen", async () => {
  await visit({ ...DESK, path: LIVE }, async ({ page }) => {
    await openCamera(page);
    assert.deepEqual(await tracks(page), ["live"]);
    const hide = (state) =>
      page.evaluate((state) => {
        Object.defineProperty(document, "visibilityState", { value: state, configurable: true });
        document.dispatchEvent(new window.Event("visibilitychange"));
      }, state);
    await hide("hidden");
    assert.deepEqual(await tracks(page), ["ended"]);
    await hide("visible");
    await until(() => tracks(page), (all) => all.join() === "ended,live", "the camera to come back");
    await until(() => page.evaluate(() => document.querySelector("video").videoWidth), (width) => width === FILM.width, "its picture");
    await go(page, "#/bench", "Bench");
    assert.deepEqual(await tracks(page), ["ended", "ended"]);
  });
});

test("a camera that is lent after the page was left is let go at once", async () => {
  const before = async (context) => {
    await noteTracks()(context);
    await context.addInitScript(() => {
      const devices = window.navigator.mediaDevices;
      if (!devices) return; // not the app's page
      const ask = devices.getUserMedia.bind(devices);
      devices.getUserMedia = async (wish) => {
        await new Promise((done) => (window.lend = done));
        return ask(wish);
      };
    });
  };
  await visit({ ...DESK, before, path: LIVE }, async ({ page }) => {
    await button(page, "Open the camera").click();
    await main(page).getByText("The camera is starting.").first().waitFor();
    await until(() => page.evaluate(() => typeof window.lend), (kind) => kind === "function", "the question");
    await go(page, "#/bench", "Bench");
    await page.evaluate(() => window.lend());
    await until(() => tracks(page), (all) => all.join() === "ended", "the late camera to be let go");
  });
});

test("a picture is taken in the film's full size, and the comb is laid on it", async () => {
  await visit({ ...DESK, path: LIVE }, async ({ page }) => {
    await main(page).getByLabel("Choose a picture").setInputFiles(filmPicture());
    await first(page).waitFor();
    assert.deepEqual(await tracks(page), [], "a file needs no camera");
    await button(page, "New picture").click();
    const shutter = button(page, "Take the picture");
    await until(() => shutter.isEnabled(), (enabled) => enabled, "the shutter");
    assert.deepEqual(await violations(page), []);
    await shutter.click();
    await first(page).waitFor();
    const size = await main(page).locator(".live-picture canvas").evaluate((canvas) => [canvas.width, canvas.height]);
    assert.deepEqual(size, [FILM.width, FILM.height]);
    await until(() => tracks(page), (all) => all.join() === "ended", "the camera to be let go");
    await layComb(page);
    const read = await reading(page);
    assert.ok(Math.abs(read.value - TRUTH) < 2 * read.spread, read.text);
    await button(page, "New picture").click();
    await until(() => button(page, "Take the picture").isEnabled(), (enabled) => enabled, "the shutter");
    await button(page, "Cancel").click();
    await button(page, "Open the camera").waitFor();
    await until(() => tracks(page), (all) => all.join() === "ended,ended", "the camera to be let go again");
  });
});

test("a lamp is offered where the camera has one, and lit", async () => {
  await visit({ ...DESK, before: noteTracks(true), path: LIVE }, async ({ page }) => {
    await openCamera(page);
    const light = button(page, "Light");
    await light.click();
    await until(() => page.evaluate(() => window.noted.lamp), (lit) => lit.join() === "true", "the light");
    assert.equal(await light.getAttribute("aria-pressed"), "true");
    await light.click();
    await until(() => page.evaluate(() => window.noted.lamp), (lit) => lit.join() === "true,false", "the dark");
  });
  await visit({ ...DESK, path: LIVE }, async ({ page }) => {
    await openCamera(page);
    assert.equal(await button(page, "Light").count(), 0, "no lamp, no button");
  });
});

test("a level says how far off flat the phone is, and a flatter one makes the reading surer", async () => {
  await visit({ ...DESK, path: LIVE }, async ({ page }) => {
    await openCamera(page);
    assert.equal(await main(page).locator(".level").count(), 0, "no level, no word");
    const hold = (beta, gamma) =>
      page.evaluate(([beta, gamma]) => window.dispatchEvent(new window.DeviceOrientationEvent("deviceorientation", { beta, gamma })), [beta, gamma]);
    await hold(8, 0);
    await main(page).getByText("Hold the phone flat: 8 degrees off.").waitFor();
    await layComb(page);
    await button(page, "Hold still").click();
    await button(page, "Go live").waitFor();
    const tilted = await reading(page);
    await button(page, "Go live").click();
    await button(page, "Hold still").waitFor();
    await hold(1, -1);
    await main(page).getByText("The phone is flat.").waitFor();
    await button(page, "Hold still").click();
    await button(page, "Go live").waitFor();
    const flat = await until(() => reading(page), (now) => now.text !== tilted.text, "another spread");
    assert.ok(flat.spread < tilted.spread, `${tilted.text} then ${flat.text}`);
    await button(page, "Go live").click();
    await hold(85, 0);
    await main(page).getByText("Hold the phone square to the cloth.").waitFor();
  });
});

for (const { what, args, words, again } of [
  { what: "refused", args: REFUSED, words: /does not let this page use the camera/, again: true },
  { what: "missing", args: NONE, words: /No camera was found/, again: false },
]) {
  test(`a camera that is ${what} is said in words, and a file does instead`, async () => {
    await visit({ args, path: LIVE }, async ({ page }) => {
      await button(page, "Open the camera").click();
      await main(page).getByRole("alert").filter({ hasText: words }).waitFor();
      assert.equal(await button(page, "Try again").count(), again ? 1 : 0);
      assert.deepEqual(await violations(page), []);
      if (again) {
        await button(page, "Try again").click();
        await main(page).getByRole("alert").filter({ hasText: words }).waitFor();
      }
      await main(page).getByLabel("Choose a picture").setInputFiles(filmPicture());
      await first(page).waitFor();
      await first(page).press("ArrowRight");
      await button(page, /^Second mark/).press("ArrowRight");
      await isRead(page);
    });
  });
}

test("a file that is no picture is said in words", async () => {
  await visit({ path: LIVE }, async ({ page }) => {
    await main(page).getByLabel("Choose a picture").setInputFiles({ name: "words.png", mimeType: "image/png", buffer: Buffer.from("no picture") });
    await main(page).getByRole("alert").filter({ hasText: "no picture that this browser can read" }).waitFor();
    await main(page).getByLabel("Choose a picture").setInputFiles(filmPicture());
    await first(page).waitFor();
    assert.equal(await main(page).getByRole("alert").count(), 0);
  });
});

test("from opening the camera to the reading, the keyboard is enough", async () => {
  await visitWith(RACK, { ...DESK, path: `#/garment/${GARMENT.id}/check/spi/live/stitch-comb-live` }, async ({ page }) => {
    const focus = () => page.evaluate(() => document.activeElement.getAttribute("aria-label") ?? document.activeElement.textContent);
    const tabTo = async (name) => {
      for (let steps = 0; steps < 60; steps += 1) {
        if (name.test(await focus())) return;
        await page.keyboard.press("Tab");
      }
      assert.fail(`the Tab key does not come to ${name}`);
    };
    await page.getByRole("heading", { name: HEADING }).focus();
    await tabTo(/^Open the camera/);
    await page.keyboard.press("Enter");
    await first(page).waitFor();
    const at = () => main(page).locator(".live-marks path.first:not(.stem)").getAttribute("d");
    await tabTo(/^First mark/);
    await page.keyboard.press("Shift+ArrowLeft");
    await tabTo(/^First bar/);
    const before = await at();
    await page.keyboard.press("ArrowDown");
    await until(at, (now) => now !== before, "the bar to move");
    await tabTo(/^Bars a little wider/);
    await page.keyboard.press("Enter");
    await isRead(page);
    const one = await reading(page);
    const slider = main(page).getByRole("slider", { name: "Wider or closer" });
    await slider.focus();
    for (let step = 0; step < 40; step += 1) await page.keyboard.press("ArrowRight");
    await until(() => reading(page), (now) => now.value < one.value, "a wider comb");
    await tabTo(/^Hold still/);
    await page.keyboard.press("Enter");
    await button(page, "Go live").waitFor();
    await tabTo(/^Use \d/);
    await page.keyboard.press("Enter");
    await answers(page).first().waitFor();
    await button(page, "Take answer back").waitFor();
  });
});

test("two fingers make the picture larger and the marks stay on what they marked", async () => {
  await visit({ args: camera(), before: noteTracks(), path: LIVE }, async ({ page, context }) => {
    await openCamera(page);
    const cdp = await context.newCDPSession(page);
    const frame = await main(page).locator(".live-picture").boundingBox();
    const place = async () => (await middle(first(page).locator("circle.knob"))).y;
    const width = () => page.evaluate(() => document.querySelector(".live-picture video").getBoundingClientRect().width);
    const [wide, was] = [await width(), await place()];
    const centre = { x: frame.x + frame.width / 2, y: frame.y + 30 };
    const touch = (type, apart) =>
      cdp.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [-apart, apart].map((by, id) => ({ x: centre.x + by, y: centre.y, id })) });
    await touch("touchStart", 40);
    for (const apart of [50, 60, 70, 80]) await touch("touchMove", apart);
    await touch("touchEnd", 80);
    await until(width, (now) => Math.abs(now / wide - 2) < 0.05, "twice the size");
    // The comb lay under the fingers' middle, so it goes down as far again.
    assert.ok(Math.abs((await place()) - centre.y - 2 * (was - centre.y)) < 3);
    assert.equal(await main(page).locator(".live-picture canvas").isVisible(), false, "two fingers are no tap");
  });
});
