// Serves dist/ on this machine only, the way a good host would: right types, compressed, hashed names kept, the rest asked for again, and
// with the headers that the folder's own file `_headers` asks for.
//   node scripts/serve.mjs [--port 8080] [--dir dist] [--base /some/where/]
// If the port is taken, the next free one is used. Tests start it as a function.

import { createHash } from "node:crypto";
import { readFile, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs, promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};
const PACKED_ALREADY = new Set([".png", ".woff2"]);
const HASHED = /-[0-9a-f]{16}(_bg)?\.[a-z]+$/;

/** How hard to compress, of 11: beyond this it takes ten times as long for a tenth less (judgement). */
const QUALITY = 9;
const brotli = (bytes, quality) => promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: quality } });
const CODINGS = [
  ["br", brotli],
  ["gzip", (bytes) => promisify(gzip)(bytes)],
];

/** The file in which a folder says what headers it wants; itself it is not handed out. */
const HEADERS = "_headers";

/**
 * Reads such a file. Of its form this takes what is used here: lines of `#`, then the line for every path, then a header on each indented line.
 * @param {string} text
 * @returns {[string, string][]} names and values
 */
export function headersOf(text) {
  const [every, ...lines] = text.split("\n").filter((line) => line.trim() !== "" && !line.startsWith("#"));
  const headers = lines.map((line) => /^\s+([A-Za-z-]+): (\S.*)$/.exec(line)?.slice(1));
  if (every !== "/*" || headers.some((header) => !header)) throw new Error(`${HEADERS} holds more than one list of headers for every path`);
  return headers;
}

/**
 * Starts serving a folder.
 * @param {{dir?: string, port?: number, base?: string, heard?: (request: import("node:http").IncomingMessage) => void,
 *   answered?: (path: string, status: number, bytes: number) => void, quality?: number}} [options]
 * `port` 0 takes any free one; `base` is the path that the folder is seen under, beginning and ending in a slash; `heard` is told of every
 * request, `answered` of path, status and bytes of each answer; `quality` is how hard brotli compresses, 11 as a host does that has compressed
 * before it is asked.
 * @returns {Promise<{url: string, close: () => Promise<void>}>}
 */
export async function serve({ dir = "dist", port = 0, base = "/", heard = () => {}, answered = () => {}, quality = QUALITY } = {}) {
  const root = resolve(dir);
  const wanted = headersOf(await readFile(join(root, HEADERS), "utf8").catch(() => "/*"));
  const packed = new Map(); // path, time and coding -> bytes

  async function answer(request, response) {
    heard(request);
    for (const [name, value] of wanted) response.setHeader(name, value);
    if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, 405);
    let path;
    try {
      path = decodeURIComponent(new URL(request.url, "http://localhost").pathname);
    } catch {
      return refuse(response, 400);
    }
    if (!path.startsWith(base) || path.includes("\0")) return refuse(response, 404);
    path = path.slice(base.length);
    const file = join(root, path === "" || path.endsWith("/") ? path + "index.html" : path);
    if (!file.startsWith(root + sep) || file === join(root, HEADERS)) return refuse(response, 404);
    const about = await stat(file).catch(() => null);
    if (!about?.isFile()) return refuse(response, 404);

    const extension = extname(file);
    const accepted = request.headers["accept-encoding"] ?? "";
    const coding = PACKED_ALREADY.has(extension) ? undefined : CODINGS.find(([name]) => accepted.includes(name));
    const key = `${file} ${about.mtimeMs} ${about.size} ${coding?.[0]}`;
    if (!packed.has(key)) {
      const bytes = await readFile(file);
      packed.set(key, {
        body: coding ? await coding[1](bytes, quality) : bytes,
        tag: `"${createHash("sha256").update(bytes).digest("hex").slice(0, 20)}-${coding?.[0] ?? "plain"}"`,
      });
    }
    const { body, tag } = packed.get(key);
    response.setHeader("Content-Type", TYPES[extension] ?? "application/octet-stream");
    response.setHeader("Cache-Control", HASHED.test(path) ? "public, max-age=31536000, immutable" : "no-cache");
    response.setHeader("Vary", "Accept-Encoding");
    response.setHeader("ETag", tag);
    if (request.headers["if-none-match"] === tag) {
      answered(path, 304, 0);
      return response.writeHead(304).end();
    }
    answered(path, 200, body.length);
    if (coding) response.setHeader("Content-Encoding", coding[0]);
    response.setHeader("Content-Length", body.length);
    response.writeHead(200).end(request.method === "HEAD" ? undefined : body);
  }

  const server = createServer((request, response) => {
    answer(request, response).catch(() => refuse(response, 500));
  });
  await listen(server, port);
  return {
    url: `http://127.0.0.1:${server.address().port}${base}`,
    close: () =>
      new Promise((done) => {
        server.close(done);
        server.closeAllConnections();
      }),
  };
}

function refuse(response, status) {
  if (response.headersSent) return response.destroy();
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" }).end(`${status}\n`);
}

/** Listens on the port, or on the first free one of the next nineteen. */
async function listen(server, port) {
  for (let tried = port; ; tried += 1) {
    try {
      return await new Promise((done, failed) => {
        server.once("error", failed);
        server.listen(tried, "127.0.0.1", () => {
          server.off("error", failed);
          done();
        });
      });
    } catch (error) {
      if (error.code !== "EADDRINUSE" || tried >= port + 19) throw error;
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const option = (value) => ({ type: "string", default: value });
  const { values } = parseArgs({ options: { port: option("8080"), dir: option("dist"), base: option("/") } });
  const { url } = await serve({ dir: values.dir, port: Number(values.port), base: values.base });
  console.log(`Garment Assay is at ${url} (Ctrl+C stops it)`);
  for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(0));
}
