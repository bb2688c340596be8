// How long reading a picture takes, and how long the page stands still meanwhile. Not a test.
//   node tests/browser/measure_picture.mjs
//
// Our own drawn seam is brought to 12 and 48 million pixels by the browser itself; that adds no detail, but all of the work.

import { performance } from "node:perf_hooks";
import { mkdtemp, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { closeAll, visit } from "./harness.mjs";
import { board, FILE, setMarks, TRUTH } from "./picture.mjs";

const main = (page) => page.getByRole("main");
const PAGE = "#/bench/stitch-photo/picture";

const folder = await mkdtemp(join(tmpdir(), "garment-assay-pictures-"));

/** Our picture as a JPEG of so many times its size, in a file: bytes handed over by the driver would be copied by the page's own thread. */
async function enlarged(times) {
  let bytes;
  await visit({ path: PAGE, size: "desk" }, async ({ page }) => {
    const source = (await readFile(FILE)).toString("base64");
    const text = await page.evaluate(
      async ([source, times]) => {
        const bytes = Uint8Array.from(window.atob(source), (sign) => sign.charCodeAt(0));
        const bitmap = await window.createImageBitmap(new window.Blob([bytes], { type: "image/jpeg" }));
        const canvas = new window.OffscreenCanvas(Math.round(bitmap.width * times), Math.round(bitmap.height * times));
        canvas.getContext("2d").drawImage(bitmap, 0, 0, canvas.width, canvas.height);
        const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.9 });
        const whole = new Uint8Array(await blob.arrayBuffer());
        let text = "";
        for (let at = 0; at < whole.length; at += 8192) text += String.fromCharCode(...whole.subarray(at, at + 8192));
        return window.btoa(text);
      },
      [source, times],
    );
    bytes = Buffer.from(text, "base64");
  });
  const file = join(folder, `seam-${times}.jpg`);
  await writeFile(file, bytes);
  return file;
}

/** Notes from now on how long the page's own thread was kept from a task that was ready. */
const watchGaps = (page) =>
  page.evaluate(() => {
    const channel = new window.MessageChannel();
    let last = performance.now();
    window.longestGap = 0;
    channel.port1.onmessage = () => {
      const now = performance.now();
      window.longestGap = Math.max(window.longestGap, now - last);
      last = now;
      setTimeout(() => channel.port2.postMessage(0), 0);
    };
    channel.port2.postMessage(0);
  });
const gap = (page) =>
  page.evaluate(() => {
    const longest = window.longestGap;
    window.longestGap = 0;
    return Math.round(longest);
  });

async function once(name, file, times, size, throttle) {
  await visit({ path: PAGE, size, throttle }, async ({ page }) => {
    await watchGaps(page);
    const began = performance.now();
    await main(page).getByLabel("Choose a picture").setInputFiles(file);
    await board(page).waitFor();
    const shown = performance.now() - began;
    const gapShown = await gap(page);
    const read = Number(await board(page).locator(":scope > img").getAttribute("width")) / TRUTH.size[0];
    await setMarks(page, TRUTH.marks.map((mark) => mark.map((at) => (at + 0.5) * read - 0.5)));
    const gapMarks = await gap(page);
    const asked = performance.now();
    await main(page).getByRole("button", { name: "Count the stitches" }).click();
    const figure = main(page).locator("output.marks-figure b, [role=alert]").first();
    await figure.waitFor({ timeout: 60_000 });
    const first = performance.now() - asked;
    const gapFirst = await gap(page);
    // Again, with the picture decoded for certain: the analysis alone, and the way there and back.
    const turns = [];
    for (let turn = 0; turn < 5 && (await main(page).getByRole("button", { name: "Twice as many" }).isVisible()); turn += 1) {
      const from = performance.now();
      const before = await main(page).locator(".seen-hole").getAttribute("d");
      await board(page).focus();
      await page.keyboard.press(turn % 2 ? "Shift+ArrowLeft" : "Shift+ArrowRight");
      while ((await main(page).locator(".seen-hole").getAttribute("d")) === before && performance.now() - from < 5000);
      turns.push(performance.now() - from);
    }
    turns.sort((a, b) => a - b);
    const again = turns.length > 0 ? turns[Math.floor(turns.length / 2)].toFixed(0) : "none";
    console.log(
      `${name}: shown ${shown.toFixed(0)} ms, first reading ${first.toFixed(0)} ms (${await figure.innerText()}), again ${again} ms; ` +
        `longest standstill: opening ${gapShown}, marking ${gapMarks}, reading ${gapFirst}, again ${await gap(page)} ms`,
    );
  });
}

try {
  const twelve = await enlarged(3.6);
  const fortyEight = await enlarged(7.2);
  console.log(`pictures: ${((await stat(twelve)).size / 1e6).toFixed(1)} and ${((await stat(fortyEight)).size / 1e6).toFixed(1)} MB`);
  for (const [size, throttle] of [["phone", 1], ["phone", 4]]) {
    await once(`12 megapixels, processor ${throttle} times slower`, twelve, 3.6, size, throttle);
    await once(`48 megapixels, processor ${throttle} times slower`, fortyEight, 7.2, size, throttle);
  }
} finally {
  await closeAll();
  await rm(folder, { recursive: true });
}
