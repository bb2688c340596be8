import js from "@eslint/js";

const everywhere = { console: "readonly", fetch: "readonly", URL: "readonly", performance: "readonly" };
const page = { window: "readonly", document: "readonly", location: "readonly", localStorage: "readonly", WebAssembly: "readonly" };
const worker = { self: "readonly", caches: "readonly", crypto: "readonly", Headers: "readonly", Response: "readonly", btoa: "readonly", navigator: "readonly" };
const node = { process: "readonly", setTimeout: "readonly", clearTimeout: "readonly", setInterval: "readonly", clearInterval: "readonly", Buffer: "readonly" };

export default [
  { ignores: ["dist/", "target/", "node_modules/", "tests/browser/lighthouse/node_modules/"] },
  js.configs.recommended,
  { rules: { eqeqeq: "error", "no-var": "error", "prefer-const": "error" } },
  { files: ["web/**/*.js"], languageOptions: { globals: { ...everywhere, ...page, ...worker } } },
  // What a test hands to the page to run is written in the test's file.
  { files: ["**/*.mjs"], languageOptions: { globals: { ...everywhere, ...page, ...node } } },
];
