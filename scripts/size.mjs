// Weighs what a first visit loads: every file that the built page and its style sheet name. Fails when a limit is passed.

import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";

// Bytes. Judgement, for a phone on a weak shop network: at 1.6 Mbit/s the whole is there in a second.
const LIMITS = [
  { what: "program (wasm)", files: /\.wasm$/, raw: 400_000, gzip: 150_000 },
  { what: "glue (js)", files: /\.js$/, gzip: 10_000 },
  { what: "styles", files: /\.css$/, gzip: 15_000 },
  { what: "first visit", files: /./, gzip: 200_000 },
];
const dist = process.argv[2] ?? "dist";

const page = await readFile(join(dist, "index.html"), "utf8");
const names = new Set(["index.html"]);
for (const [, name] of page.matchAll(/(?:href|src|data-js|data-wasm)="\.\/([^"]+)"/g)) names.add(name);
for (const name of [...names].filter((name) => name.endsWith(".css"))) {
  const sheet = await readFile(join(dist, name), "utf8");
  for (const [, named] of sheet.matchAll(/url\(["']?(?:\.\/)?([^"':)]+)["']?\)/g)) names.add(named);
}

const rows = [];
for (const name of names) {
  const bytes = await readFile(join(dist, name));
  const packed = /\.(woff2|png)$/.test(name); // no host compresses these again
  rows.push({
    name,
    raw: bytes.length,
    gzip: packed ? bytes.length : gzipSync(bytes, { level: 9 }).length,
    brotli: packed ? bytes.length : brotliCompressSync(bytes).length,
  });
}
const sum = (chosen, column) => chosen.reduce((total, row) => total + row[column], 0);
const total = { name: "first visit", raw: sum(rows, "raw"), gzip: sum(rows, "gzip"), brotli: sum(rows, "brotli") };

const number = (value) => String(value).padStart(10);
console.log("bytes".padEnd(46) + "       raw      gzip    brotli");
for (const row of [...rows, total]) console.log(row.name.padEnd(46) + number(row.raw) + number(row.gzip) + number(row.brotli));

let over = false;
for (const { what, files, ...limits } of LIMITS) {
  const chosen = rows.filter((row) => files.test(row.name));
  for (const [column, limit] of Object.entries(limits)) {
    const weight = sum(chosen, column);
    if (weight > limit) {
      console.error(`size: ${what} weighs ${weight} bytes ${column}; the limit is ${limit}`);
      over = true;
    }
  }
}
process.exitCode = over ? 1 : 0;
