// Writes what the page "Licences" shows: every package that is in what is shipped, with its version, its licence and the texts of it.
//   node scripts/licences.mjs CRATES RUSTC OUT
// CRATES is what `cargo metadata --filter-platform wasm32-unknown-unknown` says, RUSTC what `rustc --version` says. `make build` runs it.
//
// The rule: the crates that the programs depend on to run, and theirs, as cargo resolves them for the browser; the standard library; the
// typeface. Crates that work only while the app is built (macros, build scripts, tests) are not in it. Of some that are listed the linker
// may have left nothing. A package without a licence file whose licence may be Apache-2.0 is shown with that text: it is the same for all.

import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const FILES = /^(licen[cs]e|copying|unlicense|notice)/i;

/** What a licence text is called, by words that stand in it and in no other. */
const KINDS = [
  ["Apache License 2.0", /Apache License\s+Version 2\.0, January 2004/i],
  ["BSD Zero Clause License", /with or without fee is hereby granted\.\s/i],
  ["Boost Software License 1.0", /Boost Software License - Version 1\.0/i],
  ["MIT License", /Permission is hereby granted, free of charge, to any\s+person obtaining a copy\s+of this software and associated/i],
  ["SIL Open Font License 1.1", /SIL OPEN FONT LICENSE Version 1\.1/i],
  ["Unicode License 3.0", /UNICODE LICENSE V3/i],
  ["zlib License", /This software is provided ['‘]as-is['’], without any express or implied/i],
  ["Unlicense", /This is free and unencumbered software released into the public domain/i],
];
/** A file that only says again which licences there are. */
const NO_TEXT = /^\s*(This project is dual-licensed under|MIT OR Apache-2\.0\s*$)/i;
const APACHE = KINDS[0][0];

/**
 * The packages that run in the browser: ours first, then those it leans on, by name.
 * @param {object} metadata what `cargo metadata` says, as an object
 */
export function runs(metadata) {
  const packages = new Map(metadata.packages.map((one) => [one.id, one]));
  const nodes = new Map(metadata.resolve.nodes.map((node) => [node.id, node]));
  const macro = (id) => packages.get(id).targets.some((target) => target.kind.includes("proc-macro"));
  const seen = new Set();
  const visit = (id) => {
    if (seen.has(id) || macro(id)) return;
    seen.add(id);
    for (const { pkg, dep_kinds: kinds } of nodes.get(id).deps) if (kinds.some(({ kind }) => kind === null)) visit(pkg);
  };
  visit(metadata.resolve.root);
  const ours = (one) => one.source === null;
  const found = [...seen].map((id) => packages.get(id));
  return [...found.filter(ours), ...found.filter((one) => !ours(one)).sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0))];
}

/**
 * The list as the app reads it (src/app/pages/licences.rs): a line for each package with its name, version, licence and the places of its
 * texts, parted by tabs; a line for each text with what it is, and its own lines after that, each behind a tab.
 */
export function written({ packages, texts }) {
  const lines = packages.map(({ name, version, licence, texts }) => ["package", name, version, licence, texts.join(" ")].join("\t"));
  for (const { kind, text } of texts) lines.push(`text\t${kind}`, ...text.split("\n").map((line) => `\t${line}`));
  return `licences 1\n${lines.join("\n")}\n`;
}

/**
 * The list that the app shows.
 * @param {object} metadata what `cargo metadata` says
 * @param {string} rustc what `rustc --version` says
 * @param {string} root the folder of this project
 * @returns {{packages: {name: string, version: string, licence: string, texts: number[]}[], texts: {kind: string, text: string}[]}}
 */
export function licences(metadata, rustc, root) {
  const texts = [];
  const places = new Map(); // words of a text, whatever stands between them -> its place
  const placed = (text, whose) => {
    const words = text.replace(/\s+/g, " ").trim();
    if (!places.has(words)) {
      const kind = KINDS.find(([, sign]) => sign.test(text))?.[0];
      if (!kind) throw new Error(`a licence text of ${whose} is of no kind known to scripts/licences.mjs`);
      places.set(words, texts.push({ kind, text: text.replace(/\r\n/g, "\n").replace(/[ \t]+$/gm, "").replace(/^\n+|\s+$/g, "") }) - 1);
    }
    return places.get(words);
  };
  const packages = runs(metadata).map((one) => {
    const folder = one.source === null ? root : dirname(one.manifest_path);
    const files = readdirSync(folder).filter((name) => FILES.test(name)).sort();
    const contents = files.map((name) => readFileSync(join(folder, name), "utf8")).filter((text) => !NO_TEXT.test(text));
    const own = contents.map((text) => placed(text, one.name));
    // A slash is how "or" was written once.
    return { name: one.name, version: one.version, licence: one.license.replace(/ ?\/ ?/g, " OR "), texts: [...new Set(own)] };
  });

  const version = /^rustc (\S+)/.exec(rustc)?.[1];
  if (!version) throw new Error(`no version of Rust in: ${rustc}`);
  packages.push({ name: "Rust’s standard library", version, licence: "MIT OR Apache-2.0", texts: [] });
  const font = join(root, "node_modules/@fontsource-variable/instrument-sans");
  const { version: face } = JSON.parse(readFileSync(join(font, "package.json"), "utf8"));
  packages.push({ name: "Instrument Sans (typeface)", version: face, licence: "OFL-1.1", texts: [placed(readFileSync(join(font, "LICENSE"), "utf8"), "the typeface")] });

  const apache = texts.findIndex(({ kind }) => kind === APACHE);
  for (const one of packages.filter((one) => one.texts.length === 0)) {
    if (!/\bApache-2\.0\b/.test(one.licence) || apache < 0) throw new Error(`${one.name} ${one.version} comes without the text of its licence, ${one.licence}`);
    one.texts.push(apache);
  }
  return { packages, texts };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [crates, rustc, out] = process.argv.slice(2);
  const list = licences(JSON.parse(readFileSync(crates, "utf8")), readFileSync(rustc, "utf8"), fileURLToPath(new URL("..", import.meta.url)));
  writeFileSync(out, written(list));
}
