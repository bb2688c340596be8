// Every screen laid out from right to left, as a language that is written so would lay it out. No such language is in the app: `dir` is set
// by the test alone, and the words stay English.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { onEveryScreen, onEveryScreenAlone } from "./every_screen.mjs";
import { isTooWide } from "./harness.mjs";

const STYLES = fileURLToPath(new URL("../../styles/", import.meta.url));

/** What is cut off, lies on something else, or is scrambled, as the page stands. */
function look() {
  const found = [];
  const width = document.documentElement.clientWidth;
  const words = (text) => JSON.stringify(text.replace(/\s+/g, " ").trim().slice(0, 40));
  const boxes = [];
  const walker = document.createTreeWalker(document.body, window.NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || !parent.checkVisibility({ visibilityProperty: true, opacityProperty: true, contentVisibilityAuto: true }) || parent.closest(".unseen, .sbs-whose, script, style, option, svg, [inert]")) continue;
    range.selectNodeContents(node);
    const rects = [...range.getClientRects()].filter((rect) => rect.width > 1 && rect.height > 1);
    const rolls = parent.closest(".scroll-x, .foot-more, .beside, textarea");
    // What is pinned lies over what scrolls, and is meant to; a picture lies under its words.
    const pinned = parent.closest(".foot, .tape-pinned, .fit-pinned, .sbs-heads, .toast, .seam-said, .fitting-words, .live-stage, .camera-stage, .board, dialog, .quick-side, .marks-body");
    for (const rect of rects) {
      if (!rolls && (rect.left < -1 || rect.right > width + 1)) found.push(`out of the window: ${words(node.data)}`);
      if (!rolls && !pinned) boxes.push({ rect, node });
    }
    const box = parent.getBoundingClientRect();
    const style = window.getComputedStyle(parent);
    if (style.overflowX !== "visible" && style.overflowX !== "auto" && parent.scrollWidth > Math.ceil(box.width) + 1) found.push(`cut off: ${words(node.data)}`);
    if (["left", "right"].includes(style.textAlign) && style.direction === "rtl") found.push(`not set to where a line begins: ${words(node.data)}`);
    for (const match of node.data.matchAll(/([\d.]+) ± ([\d.]+)/g)) {
      const at = (text, from) => {
        range.setStart(node, from);
        range.setEnd(node, from + text.length);
        return range.getBoundingClientRect();
      };
      const [first, second] = [at(match[1], match.index), at(match[2], match.index + match[0].length - match[2].length)];
      if (Math.abs(first.top - second.top) < 4 && first.left > second.left && parent.closest(".figure, .figures dd, .also dd, output b")) found.push(`scrambled: ${words(node.data)}`);
    }
  }
  boxes.sort((a, b) => a.rect.top - b.rect.top);
  for (let one = 0; one < boxes.length; one += 1) {
    for (let other = one + 1; other < boxes.length && boxes[other].rect.top < boxes[one].rect.bottom - 3; other += 1) {
      const [a, b] = [boxes[one], boxes[other]];
      if (a.node === b.node) continue;
      const [wide, high] = [Math.min(a.rect.right, b.rect.right) - Math.max(a.rect.left, b.rect.left), Math.min(a.rect.bottom, b.rect.bottom) - Math.max(a.rect.top, b.rect.top)];
      if (wide > 3 && high > 3) found.push(`on each other: ${words(a.node.data)} and ${words(b.node.data)}`);
    }
  }
  for (const icon of document.querySelectorAll(".icon-way")) {
    if (icon.checkVisibility() && window.getComputedStyle(icon).transform !== (document.documentElement.dir === "rtl" ? "matrix(-1, 0, 0, 1, 0, 0)" : "none")) found.push(`points the wrong way: ${icon.parentElement.getAttribute("aria-label")}`);
  }
  // Scales of numbers run from left to right everywhere.
  for (const svg of document.querySelectorAll("svg:not(.icon)")) if (window.getComputedStyle(svg).direction !== "ltr") found.push(`a drawing was turned round: ${svg.getAttribute("class")}`);
  const search = document.querySelector(".search .icon");
  if (search?.checkVisibility()) {
    const [icon, field] = [search.getBoundingClientRect(), search.parentElement.getBoundingClientRect()];
    const begins = document.documentElement.dir === "rtl" ? field.right - icon.right : icon.left - field.left;
    if (begins > 20) found.push("the sign of a search is not where its field begins");
  }
  const back = document.querySelector(".bar > .icon-button");
  if (back?.checkVisibility() && document.documentElement.dir === "rtl") {
    const [box, bar] = [back.getBoundingClientRect(), back.parentElement.getBoundingClientRect()];
    if (bar.right - box.right > box.left - bar.left) found.push("the way back is not where a line begins");
  }
  return [...new Set(found)];
}

/** What is wrong from right to left and not from left to right. */
async function turned(page) {
  const before = new Set(await page.evaluate(look));
  await page.evaluate(() => (document.documentElement.dir = "rtl"));
  await page.evaluate(() => new Promise((done) => window.requestAnimationFrame(() => window.requestAnimationFrame(done))));
  const found = (await page.evaluate(look)).filter((line) => !before.has(line));
  if (await isTooWide(page)) found.push("can be moved sideways");
  await page.evaluate(() => document.documentElement.removeAttribute("dir"));
  return found;
}

for (const size of ["small", "desk"]) {
  test(`laid out from right to left, nothing is cut off, covered or turned the wrong way: ${size}`, async () => {
    assert.deepEqual(await onEveryScreen({ size, context: { reducedMotion: "reduce" } }, turned), []);
  });
}

test("nor on the screens that want a window of their own", async () => {
  assert.deepEqual(await onEveryScreenAlone({ size: "small", context: { reducedMotion: "reduce" } }, turned), []);
});

/** Places on a picture or on the glass are where they are, whatever the writing. */
const PHYSICAL = [/padding-right: 1[26]px/, /text-align: left/, /env\(safe-area-inset-(left|right)\)/, /inset: 0 auto auto 0/, /text-align: right/];

test("styles speak of start and end, not of left and right", async () => {
  const found = [];
  for (const file of (await readdir(STYLES)).filter((file) => file.endsWith(".css"))) {
    const text = await readFile(STYLES + file, "utf8");
    for (const [place, line] of text.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, " ")).split("\n").entries()) {
      if (PHYSICAL.some((known) => known.test(line))) continue;
      const four = line.match(/^\s*(?:padding|margin|inset):\s*(\S+) (\S+) (\S+) (\S+);/);
      if (/^\s*(?:(?:margin|padding|border|inset)-)?(?:left|right)(?:-\w+)?:/.test(line) || /(?:text-align|float|clear):\s*(?:left|right)/.test(line) || (four && four[2] !== four[4])) found.push(`${file}:${place + 1}: ${line.trim()}`);
    }
  }
  assert.deepEqual(found, []);
});
