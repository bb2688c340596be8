// Weighs what a first visit loads: every file that the built page and its style sheet name, and says how far it is from the aim;
// then what is loaded later.

import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";

// Code and style after brotli, in bytes; the typeface and the icon are not counted.
const AIM = 200_000;
const dist = process.argv[2] ?? "dist";

const page = await readFile(join(dist, "index.html"), "utf8");
const names = new Set(["index.html"]);
// What is named for an installed app is fetched when somebody installs it.
const visited = page.replaceAll(/<link rel="apple-touch-icon"[^>]*>/g, "");
for (const [, name] of visited.matchAll(/(?:href|src|data-js|data-wasm)="\.\/([^"]+)"/g)) names.add(name);
for (const name of [...names].filter((name) => name.endsWith(".css"))) {
  const sheet = await readFile(join(dist, name), "utf8");
  for (const [, named] of sheet.matchAll(/url\(["']?(?:\.\/)?([^"':)]+)["']?\)/g)) names.add(named);
}
// What a script names in its first lines comes with it; the typeface is asked for by one.
for (const name of [...names].filter((name) => name.endsWith(".js"))) {
  const script = await readFile(join(dist, name), "utf8");
  for (const [, named] of script.matchAll(/new URL\("\.\/([^"]+\.woff2)"/g)) names.add(named);
  for (const [, named] of script.matchAll(/^import [^;\n]* from "\.\/([^"]+)"/gm)) names.add(named);
}

async function weigh(names) {
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
  return rows;
}

const rows = await weigh(names);
const sum = (chosen, column) => chosen.reduce((total, row) => total + row[column], 0);
const total = { name: "first visit", raw: sum(rows, "raw"), gzip: sum(rows, "gzip"), brotli: sum(rows, "brotli") };

const number = (value) => String(value).padStart(10);
console.log("bytes".padEnd(46) + "       raw      gzip    brotli");
for (const row of [...rows, total]) console.log(row.name.padEnd(46) + number(row.raw) + number(row.gzip) + number(row.brotli));

const later = { "the copy without a network": /^(flight|sw)\.js$/, wings: /^(wing-|wings\.css)/, "second program": /^(garment-assay-pictures|pictures\.css)/, "second thread": /^(photo-worker|worker\.js)/ };
for (const [name, files] of Object.entries(later)) {
  const parts = await weigh((await readdir(dist)).filter((file) => files.test(file)));
  for (const row of [...parts, { name: `${name}, later`, raw: sum(parts, "raw"), gzip: sum(parts, "gzip"), brotli: sum(parts, "brotli") }]) {
    console.log(row.name.padEnd(46) + number(row.raw) + number(row.gzip) + number(row.brotli));
  }
}

// Fetched a family at a time, when a lesson of it is first read; and what another language than English brings.
for (const folder of ["learn", "language"]) {
  const files = (await readdir(join(dist, folder), { withFileTypes: true, recursive: true })).filter((entry) => entry.isFile());
  const parts = await weigh(files.map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(dist.length).replace(/^\//, "")));
  for (const row of parts) console.log(row.name.padEnd(46) + number(row.raw) + number(row.gzip) + number(row.brotli));
}

const counted = sum(rows.filter((row) => /\.(wasm|js|css|html)$/.test(row.name)), "brotli");
const far = counted > AIM ? `${counted - AIM} over the aim` : `${AIM - counted} under the aim`;
console.log(`code and style after brotli: ${counted} bytes, ${far} of ${AIM}`);
