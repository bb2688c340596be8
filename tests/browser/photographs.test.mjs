// Photographs of evidence: turned, shrunk and kept; captioned, removed and brought back; out in a zip and in again with every byte.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { isTooWide, settled, smallTargets, visit, violations } from "./harness.mjs";
import { caption, choose, file, jpeg, kept, SECRET } from "./photographs.mjs";
import { RACK } from "./rack.mjs";
import { go, plan, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const dialog = (page) => page.getByRole("dialog");
const tiles = (page) => main(page).locator(".photograph");
const run = promisify(execFile);
const READER = fileURLToPath(new URL("../zips_elsewhere.py", import.meta.url));
const python = await run("python3", ["--version"]).then(
  () => true,
  () => false,
);
const of = (place, screen) => `#/garment/${RACK[place].id}/${screen}`;
const noted = async (page, place = 0) => JSON.parse((await storage(page))[`garment-assay/page/${RACK[place].id}`].split("\n")[1]).photographs ?? [];

async function sound(page) {
  assert.deepEqual(await violations(page), []);
  assert.ok(!(await isTooWide(page)));
  assert.deepEqual(await smallTargets(page), []);
}

/** Bytes of the picture that is shown at that place, and colours at its top and bottom. */
const shown = (page, place) =>
  tiles(page)
    .nth(place)
    .locator("img")
    .evaluate(async (image) => {
      await image.decode();
      const bytes = new Uint8Array(await (await fetchBlob(image.src)).arrayBuffer());
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
      const context = canvas.getContext("2d", { willReadFrequently: true });
      context.drawImage(image, 0, 0);
      const at = (x, y) => Array.from(context.getImageData(x, y, 1, 1).data.slice(0, 3));
      const [width, height] = [canvas.width, canvas.height];
      return { width, height, top: at(20, height * 0.25), bottom: at(20, height * 0.75), begins: Array.from(bytes.slice(0, 3)) };

      // The page's policy lets no script fetch a blob, so its bytes are taken from where it is kept.
      async function fetchBlob() {
        return new Promise((done) => {
          const request = window.indexedDB.open("garment-assay-photographs");
          request.onsuccess = () => {
            const all = request.result.transaction("pictures").objectStore("pictures").getAll();
            all.onsuccess = () => {
              request.result.close();
              done(all.result[0]);
            };
          };
        });
      }
    });

/** What is saved by a button. */
async function saved(page, button) {
  const [download] = await Promise.all([page.waitForEvent("download"), main(page).getByRole("button", { name: button }).click()]);
  const parts = [];
  for await (const part of await download.createReadStream()) parts.push(part);
  return { name: download.suggestedFilename(), bytes: Buffer.concat(parts) };
}

async function importZip(page, bytes) {
  await go(page, "#/settings", "Settings");
  await page.getByLabel("Choose a file to import").setInputFiles({ name: "rack.zip", mimeType: "application/zip", buffer: bytes });
}

test("a photograph is turned, shrunk, stripped and kept, and is evidence for the check from which it was added", async () => {
  await visitWith(RACK, { path: of(0, "check/inseam") }, async ({ page }) => {
    await main(page).getByRole("link", { name: "Add a photograph" }).click();
    await page.getByRole("heading", { name: "Photographs", exact: true }).waitFor();
    await sound(page);
    const picture = await jpeg(page);
    assert.ok(picture.includes(SECRET));
    await choose(page, file(picture), 1);
    await main(page).getByText("1 photograph added.").waitFor();
    const seen = await shown(page, 0);
    assert.deepEqual([seen.width, seen.height], [800, 1600], "as it was held, and no longer than 1600");
    const near = (colour, wanted) => colour.every((part, place) => Math.abs(part - wanted[place]) < 24);
    assert.ok(near(seen.top, [0xc0, 0x30, 0x20]) && near(seen.bottom, [0x20, 0x40, 0xa0]), JSON.stringify(seen));
    assert.deepEqual(seen.begins, [0xff, 0xd8, 0xff]);

    const [[id, { sha256, size }]] = Object.entries(await kept(page));
    assert.ok(sha256.startsWith(id), "named by its bytes");
    assert.ok(size < picture.length || size < 200_000);
    const [one] = await noted(page);
    assert.deepEqual([one.id, one.size, one.check], [id, [800, 1600], "inseam"]);
    assert.ok(!JSON.stringify(await storage(page)).includes("base64"), "the page holds no picture");

    await caption(page, 0, "Felled, one place open");
    await page.getByAltText("Felled, one place open").waitFor();
    await sound(page);
    await reload(page);
    await page.getByAltText("Felled, one place open").waitFor();
    await main(page).getByRole("link", { name: "Back to the check" }).click();
    await main(page).getByRole("link", { name: "1 photograph" }).waitFor();
    await go(page, of(0, "result"), /./);
    await main(page).getByRole("link", { name: "1 photograph" }).waitFor();
  });
});

test("nothing that a camera writes beside the pixels is in what is kept", async () => {
  await visitWith(RACK, { path: of(0, "photographs") }, async ({ page }) => {
    await choose(page, [file(await jpeg(page, { orientation: 1, width: 300, height: 200 })), file(await jpeg(page, { stripes: 5 }), "b.jpg")], 2);
    const { bytes } = await (async () => {
      await go(page, "#/settings", "Settings");
      await main(page).getByText(/^2 photographs, .* KB\.$/).waitFor();
      return saved(page, "Export with photographs (zip)");
    })();
    assert.ok(!bytes.includes("Exif") && !bytes.includes(SECRET));
    // A small one stays as small as it is.
    assert.deepEqual((await noted(page))[0].size, [300, 200]);
  });
});

test("one that is removed comes back with undo, and its bytes go only when no window can want them any more", async () => {
  await visitWith(RACK, { path: of(0, "photographs") }, async ({ page }) => {
    await choose(page, [file(await jpeg(page)), file(await jpeg(page, { stripes: 6 }))], 2);
    await caption(page, 0, "Worst place");
    const open = tiles(page).first().getByRole("button");
    await open.click();
    await dialog(page).getByRole("img").waitFor();
    await sound(page);
    await dialog(page).getByRole("button", { name: "Remove" }).click();
    await until(() => tiles(page).count(), (count) => count === 1, "one to be gone");
    await page.getByRole("button", { name: "Undo" }).last().click();
    await page.getByAltText("Worst place").waitFor();
    assert.equal(await tiles(page).count(), 2);

    // By the keyboard: open, leave with Escape, and the focus is where it was.
    await open.focus();
    await page.keyboard.press("Enter");
    await dialog(page).getByLabel("What it shows").waitFor();
    await page.keyboard.press("Escape");
    await until(() => dialog(page).count(), (count) => count === 0, "the dialog to close");

    await open.click();
    await dialog(page).getByRole("button", { name: "Remove" }).click();
    await until(() => tiles(page).count(), (count) => count === 1, "one to be gone");
    await reload(page);
    await until(() => tiles(page).count(), (count) => count === 1, "one to be there");
    assert.equal(Object.keys(await kept(page)).length, 2, "kept a day longer");
    // Two days later.
    await page.clock.setFixedTime(Date.now() + 48 * 3600 * 1000);
    await reload(page);
    await until(async () => Object.keys(await kept(page)).length, (count) => count === 1, "the other to be let go");
    await page.getByRole("img").first().waitFor();
  });
});

test("out in a zip, everything erased, and in again: every byte is the same, for Python’s reader too", async () => {
  await visitWith(RACK, { path: of(0, "photographs") }, async ({ page }) => {
    await choose(page, [file(await jpeg(page)), file(await jpeg(page, { stripes: 6 }))], 2);
    await caption(page, 1, "The label, readable");
    await go(page, of(1, "photographs"), "Photographs");
    await choose(page, [file(await jpeg(page, { stripes: 9 })), file(await jpeg(page))], 2);
    const before = await kept(page);
    assert.equal(Object.keys(before).length, 3, "the same picture is kept once");
    const facts = [await noted(page, 0), await noted(page, 1)];
    await go(page, "#/settings", "Settings");
    await sound(page);
    const { name, bytes } = await saved(page, "Export with photographs (zip)");
    assert.match(name, /^garment-assay-\d{4}-\d\d-\d\d\.zip$/);

    if (python) {
      const folder = await mkdtemp(join(tmpdir(), "zips-"));
      await writeFile(join(folder, "a.zip"), bytes);
      const { stdout } = await run("python3", [READER, "read", join(folder, "a.zip")], { maxBuffer: 1 << 24 });
      await rm(folder, { recursive: true });
      const files = JSON.parse(stdout);
      assert.equal(files.length, 4);
      for (const { name, sha256 } of files.slice(1)) assert.equal(before[/^photos\/(.*)\.jpg$/.exec(name)[1]].sha256, sha256);
    }

    await main(page).getByRole("button", { name: "Erase everything" }).click();
    await dialog(page).getByRole("button", { name: "Erase", exact: true }).click();
    await dialog(page).getByRole("button", { name: "Yes, erase all" }).click();
    await until(async () => Object.keys(await kept(page)).length, (count) => count === 0, "the pictures to go");

    await importZip(page, bytes);
    await plan(page).getByText("3 photographs come with it, 3 of them not here yet.").waitFor();
    await sound(page);
    await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
    await page.getByText(/^Imported: /).waitFor();
    assert.deepEqual(await kept(page), before);
    assert.deepEqual([await noted(page, 0), await noted(page, 1)], facts);
    await go(page, of(0, "photographs"), "Photographs");
    await page.getByAltText("The label, readable").waitFor();

    // Once more it changes nothing; one byte of a picture altered, and that picture alone is refused.
    await importZip(page, bytes);
    await plan(page).getByText("It would change nothing.").waitFor();
    const altered = Buffer.from(bytes);
    altered[altered.indexOf("photos/") + 600] ^= 1;
    await importZip(page, altered);
    await plan(page).getByText("1 photograph in it was damaged or exchanged, and is not taken.").waitFor();
    await importZip(page, bytes.subarray(0, bytes.length - 30));
    await page.getByRole("alert").filter({ hasText: "This zip cannot be read" }).waitFor();
  });
});

test("notes that came without their pictures say so, and get them from the zip", async () => {
  await visitWith(RACK, { path: of(0, "photographs") }, async ({ page, context }) => {
    await choose(page, file(await jpeg(page)), 1);
    await go(page, `#/hand-on/${RACK[0].id}`, "Hand on");
    const zip = await saved(page, "Save with photographs (zip)");
    const json = await saved(page, "Save the file");
    assert.equal(context.pages().length, 1);
    await visit({ path: "#/settings" }, async ({ page }) => {
      await page.getByLabel("Choose a file to import").setInputFiles({ name: "a.json", mimeType: "application/json", buffer: json.bytes });
      await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
      await page.getByText(/^Imported: /).waitFor();
      await main(page).getByText("1 photograph, not on this device.").waitFor();
      await go(page, of(0, "photographs"), "Photographs");
      await main(page).getByText("Not on this device").waitFor();
      await tiles(page).first().getByRole("button").click();
      await dialog(page).getByText(/^The picture is not on this device/).waitFor();
      await sound(page);
      await dialog(page).getByRole("button", { name: "Close" }).click();
      await importZip(page, zip.bytes);
      await plan(page).getByText("1 photograph comes with it, 1 of them not here yet.").waitFor();
      await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
      await page.getByText(/^Imported: /).waitFor();
      await go(page, of(0, "photographs"), "Photographs");
      await tiles(page).first().getByRole("img").waitFor();
    });
  });
});

test("a file that is no picture, and a browser that keeps none, are said, and nothing is noted", async () => {
  await visitWith(RACK, { path: of(0, "photographs") }, async ({ page }) => {
    await main(page).getByLabel("Choose photographs").setInputFiles({ name: "notes.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no picture") });
    await page.getByRole("alert").filter({ hasText: "notes.jpg: this browser cannot read it as a picture" }).waitFor();
    assert.deepEqual(await noted(page), []);
  });
  const refuse = (context) =>
    context.addInitScript(() => {
      window.IDBFactory.prototype.open = () => {
        throw new window.DOMException("refused", "SecurityError");
      };
    });
  await visitWith(RACK, { path: of(0, "photographs"), before: refuse }, async ({ page }) => {
    await main(page).getByLabel("Choose photographs").setInputFiles(file(await jpeg(page)));
    await page.getByRole("alert").filter({ hasText: "The photograph is not kept, and nothing was noted of it. This browser keeps no pictures" }).waitFor();
    assert.deepEqual(await noted(page), []);
    assert.equal(await tiles(page).count(), 0);
    await sound(page);
  });
  const full = (context) =>
    context.addInitScript(() => {
      const put = window.IDBObjectStore.prototype.put;
      window.IDBObjectStore.prototype.put = function (value, ...rest) {
        if (this.name === "pictures") throw new window.DOMException("full", "QuotaExceededError");
        return put.call(this, value, ...rest);
      };
    });
  await visitWith(RACK, { path: of(0, "photographs"), before: full }, async ({ page }) => {
    await main(page).getByLabel("Choose photographs").setInputFiles(file(await jpeg(page)));
    await page.getByRole("alert").filter({ hasText: "There is no room left for it" }).waitFor();
    assert.deepEqual(await noted(page), []);
  });
});

test("what one window adds is seen in the other", async () => {
  await visitWith(RACK, { path: of(0, "photographs") }, async ({ page, reopen }) => {
    const other = await reopen();
    await choose(page, file(await jpeg(page)), 1);
    await tiles(other).first().getByRole("img").waitFor();
    await settled(other);
    await caption(other, 0, "From the other window");
    await page.getByAltText("From the other window").waitFor();
  });
});

/** Pages of a PDF: its page objects, which Chromium writes uncompressed. */
const pages = (pdf) => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

test("the sheet shows three photographs where there is room, and stays one page of A4 and of Letter", async () => {
  await visitWith(RACK, { path: of(0, "photographs") }, async ({ page }) => {
    const some = await Promise.all([1, 2, 4, 5].map(async (stripes) => file(await jpeg(page, { stripes }), `${stripes}.jpg`)));
    for (const place of RACK.keys()) {
      await go(page, of(place, "photographs"), "Photographs");
      await choose(page, some, 4);
      await caption(page, 3, "The worst place of all, which nobody would look at twice, seen once more and told at such length that it is cut");
      await go(page, of(place, "sheet"), "Sheet");
      await until(() => main(page).locator(".sheet-photographs img").count(), (count) => [0, 3].includes(count), "the photographs");
      for (const image of await main(page).locator(".sheet-photographs img").all()) await image.evaluate((image) => image.decode());
      for (const format of ["A4", "Letter"]) {
        assert.equal(pages(await page.pdf({ format, preferCSSPageSize: true })), 1, `${RACK[place].id} on ${format}`);
      }
    }
    await go(page, of(1, "sheet"), "Sheet");
    await until(() => main(page).locator(".sheet-photographs img").count(), (count) => count === 3, "three photographs");
  });
});
