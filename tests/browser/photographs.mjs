// Photographs for tests and pictures: drawn in the page, with what a camera writes beside the pixels. Nothing on them is real.

import { until } from "./steps.mjs";

const main = (page) => page.getByRole("main");

/** What a camera could write about place and time; no kept picture may hold it. */
export const SECRET = "52.0000 N 4.0000 E 2026:11:26 08:00:00";

/** An EXIF block in big-endian order: the turn, and the secret as a description (TIFF 6.0 tags 0x0112 and 0x010E). */
function exif(orientation) {
  const text = Buffer.from(`${SECRET}\0`, "latin1");
  const entry = (tag, type, count, value) => {
    const bytes = Buffer.alloc(12);
    bytes.writeUInt16BE(tag, 0);
    bytes.writeUInt16BE(type, 2);
    bytes.writeUInt32BE(count, 4);
    if (type === 3) bytes.writeUInt16BE(value, 8);
    else bytes.writeUInt32BE(value, 8);
    return bytes;
  };
  const tiff = Buffer.concat([
    Buffer.from([0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 2]),
    entry(0x010e, 2, text.length, 8 + 2 + 24 + 4),
    entry(0x0112, 3, 1, orientation),
    Buffer.alloc(4),
    text,
  ]);
  const body = Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

/**
 * A JPEG of so many pixels: its left half of one colour, its right half of another, with stripes so that no two are alike; as a camera held
 * upright writes it where `orientation` is 6, so that left is up.
 */
export async function jpeg(page, { width = 2000, height = 1000, orientation = 6, left = "#c03020", right = "#2040a0", stripes = 3 } = {}) {
  const plain = await page.evaluate(
    async ({ width, height, left, right, stripes }) => {
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [width, height];
      const context = canvas.getContext("2d");
      context.fillStyle = left;
      context.fillRect(0, 0, width / 2, height);
      context.fillStyle = right;
      context.fillRect(width / 2, 0, width / 2, height);
      context.fillStyle = "#f0e6d0";
      for (let place = 1; place <= stripes; place += 1) context.fillRect(0, (place * height) / (stripes + 1), width, height / 60);
      const blob = await new Promise((made) => canvas.toBlob(made, "image/jpeg", 0.9));
      const bytes = new Uint8Array(await blob.arrayBuffer());
      let text = "";
      for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
      return window.btoa(text);
    },
    { width, height, left, right, stripes },
  );
  const bytes = Buffer.from(plain, "base64");
  return Buffer.concat([bytes.subarray(0, 2), exif(orientation), bytes.subarray(2)]);
}

/** As a file that is chosen. */
export const file = (buffer, name = "IMG_0001.jpg") => ({ name, mimeType: "image/jpeg", buffer });

/** Chooses files on the page of photographs, and waits until so many are on it. */
export async function choose(page, files, count) {
  await main(page).getByLabel("Choose photographs").setInputFiles(files);
  await main(page).locator(".photograph").nth(count - 1).waitFor();
  await until(() => main(page).getByText(/^Shrinking/).count(), (left) => left === 0, "the last to be shrunk");
}

/** Says what the photograph at that place shows. */
export async function caption(page, place, words) {
  await main(page).locator(".photograph button").nth(place).click();
  await page.getByRole("dialog").getByLabel("What it shows").fill(words);
  await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();
  await main(page).locator(".photograph").filter({ hasText: words }).first().waitFor();
}

/** The pictures kept in this browser: id, then size and SHA-256. */
export const kept = (page) =>
  page.evaluate(
    () =>
      new Promise((done, failed) => {
        const request = window.indexedDB.open("garment-assay-photographs");
        request.onerror = () => failed(request.error);
        request.onsuccess = () => {
          const database = request.result;
          if (!database.objectStoreNames.contains("pictures")) {
            database.close();
            return done({});
          }
          const store = database.transaction("pictures").objectStore("pictures");
          const [keys, blobs] = [store.getAllKeys(), store.getAll()];
          blobs.onsuccess = async () => {
            const all = {};
            for (const [place, key] of keys.result.entries()) {
              const bytes = await blobs.result[place].arrayBuffer();
              const digest = new Uint8Array(await window.crypto.subtle.digest("SHA-256", bytes));
              all[key] = { size: bytes.byteLength, sha256: Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("") };
            }
            database.close();
            done(all);
          };
        };
      }),
  );
