// That the server used by every other test answers as a good host does, so that what passes here passes there.

import assert from "node:assert/strict";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { get } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { brotliDecompressSync } from "node:zlib";
import { serve } from "../../scripts/serve.mjs";

let folder, server;
before(async () => {
  folder = await mkdtemp(join(tmpdir(), "garment-assay-serve-"));
  await mkdir(join(folder, "dist"));
  await writeFile(join(folder, "secret.txt"), "not to be served");
  await writeFile(join(folder, "dist/index.html"), "<!doctype html><p>calico ".repeat(50));
  await writeFile(join(folder, "dist/app-0123456789abcdef_bg.wasm"), new Uint8Array([0, 97, 115, 109]));
  server = await serve({ dir: join(folder, "dist") });
});
after(async () => {
  await server.close();
  await rm(folder, { recursive: true });
});

/** One request, its path sent as it stands: `fetch` would tidy it first. */
function ask(path, headers = {}) {
  const { hostname, port } = new URL(server.url);
  return new Promise((done, failed) => {
    get({ hostname, port, path, headers }, (response) => {
      const parts = [];
      response.on("data", (part) => parts.push(part));
      response.on("end", () => done({ status: response.statusCode, headers: response.headers, body: Buffer.concat(parts) }));
    }).on("error", failed);
  });
}

test("the page is compressed, and asked for again each time", async () => {
  const { status, headers, body } = await ask("/", { "accept-encoding": "gzip, br" });
  assert.equal(status, 200);
  assert.equal(headers["content-encoding"], "br");
  assert.equal(headers["cache-control"], "no-cache");
  assert.match(brotliDecompressSync(body).toString(), /calico/);
  assert.equal((await ask("/", { "accept-encoding": "br", "if-none-match": headers.etag })).status, 304);
});

test("a program with its hash in its name has its type and is kept", async () => {
  const { headers } = await ask("/app-0123456789abcdef_bg.wasm");
  assert.equal(headers["content-type"], "application/wasm");
  assert.match(headers["cache-control"], /immutable/);
});

test("nothing outside the folder is served", async () => {
  for (const path of ["/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt", "/%00", "/%", "/absent"]) {
    const { status, body } = await ask(path);
    assert.ok(status >= 400, path);
    assert.doesNotMatch(body.toString(), /not to be served/);
  }
});

test("a taken port gives way to the next free one", async () => {
  const taken = Number(new URL(server.url).port);
  const second = await serve({ dir: join(folder, "dist"), port: taken });
  try {
    assert.ok(Number(new URL(second.url).port) > taken);
  } finally {
    await second.close();
  }
});
