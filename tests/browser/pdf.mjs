// What stands on paper: the text of a printed page as another program than the browser reads it (pdf.js), held against what the page shows.

import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { getDocument, VerbosityLevel } from "pdfjs-dist/legacy/build/pdf.mjs";

const FONTS = fileURLToPath(new URL("../../node_modules/pdfjs-dist/standard_fonts/", import.meta.url));

/**
 * Text as it can be compared: ligatures taken apart and narrow spaces made plain (Unicode NFKC), without white space, since a line may break
 * anywhere, and without hyphens, since a line may end in one that no word has. So white space and hyphens are not checked.
 */
const plain = (text) => text.normalize("NFKC").replace(/[\s\u00ad\u2010-]/gu, "");

/**
 * Pages of a PDF, each with its size in points and its pieces of text: where each starts, how wide it is, and what it says.
 * @returns {Promise<{width: number, height: number, pieces: {x: number, y: number, width: number, text: string}[]}[]>}
 */
export async function pages(pdf) {
  const loading = getDocument({ data: new Uint8Array(pdf), verbosity: VerbosityLevel.ERRORS, standardFontDataUrl: FONTS });
  const document = await loading.promise;
  const found = [];
  for (let place = 1; place <= document.numPages; place += 1) {
    const page = await document.getPage(place);
    const [, , width, height] = page.view;
    const { items } = await page.getTextContent({ disableNormalization: true });
    const pieces = items.map(({ str, transform, width }) => ({ x: transform[4], y: transform[5], width, text: str }));
    found.push({ width, height, pieces });
  }
  await loading.destroy();
  return found;
}

/** Every piece of text that the page shows in print and that is on no more than the screen otherwise, in the order of the page. */
async function shown(page) {
  await page.emulateMedia({ media: "print" });
  const texts = await page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, 4 /* text */);
    const texts = [];
    while (walker.nextNode()) {
      const { data, parentElement: parent } = walker.currentNode;
      // What is out of sight for screen readers only is clipped away in print as on the screen.
      const seen = parent.checkVisibility({ visibilityProperty: true }) && !parent.closest(".unseen, script, style");
      if (seen && data.trim() !== "") texts.push(data);
    }
    return texts;
  });
  // Not "screen", in which it would be printed then.
  await page.emulateMedia({ media: null });
  return texts;
}

/**
 * Prints the screen on A4 and on Letter and holds what another program reads there against what the page shows: one page, each text as often
 * as it is shown, nothing besides, and nothing beyond the edges.
 */
export async function printed(page, what) {
  const texts = (await shown(page)).map(plain).filter((text) => text !== "");
  assert.ok(texts.length > 10, `${what}: hardly any text`);
  for (const [format, width] of [["A4", 595], ["Letter", 612]]) {
    const found = await pages(await page.pdf({ format, preferCSSPageSize: true }));
    const where = `${what} on ${format}`;
    assert.equal(found.length, 1, `${where}: pages`);
    assert.ok(Math.abs(found[0].width - width) < 2, `${where}: ${found[0].width} points wide`);
    const read = plain(found[0].pieces.map(({ text }) => text).join(""));
    for (const text of new Set(texts)) {
      const often = texts.filter((other) => other === text).length;
      assert.ok(read.split(text).length - 1 >= often, `${where}: not on the paper, or not ${often} times: “${text}”`);
    }
    assert.equal(read.length, texts.join("").length, `${where}: the paper has other text than the page`);
    for (const { x, y, width, text } of found[0].pieces.filter(({ text }) => text.trim() !== "")) {
      const inside = x >= 0 && y >= 0 && x + width <= found[0].width && y <= found[0].height;
      assert.ok(inside, `${where}: beyond the edge of the paper: “${text}” at ${x}, ${y}`);
    }
  }
}
