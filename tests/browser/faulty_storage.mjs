// Storage that does harm: put before the app, it lets one write of local storage, or one transaction of IndexedDB that writes, come to harm.

/** What can become of a write; `said` is whether the browser says so. */
export const HARMS = {
  full: { said: true },
  // From then on, until it is told to stop: the reserve does not help.
  "full from then on": { said: true },
  forbidden: { said: true },
  broken: { said: true },
  "torn and said": { said: true },
  // Kept, and said not to be.
  denied: { said: true },
  torn: { said: false },
  vanished: { said: false },
};

/** Lets storage do harm in every page of a context; `window.harm` steers it. */
export const harmful = (context) => context.addInitScript(install, HARMS);

function install() {
  if (!window.Storage || !window.IDBDatabase) return; // the blank page before
  const harm = {
    /** The kind that was ordered, and how many writes go well before it. */
    kind: null,
    after: 0,
    /** Writes since counting began, as `local` or `database`, and what came to harm. */
    writes: [],
    struck: [],
    /** What was to be kept under each key, in order. */
    texts: [],
    /** What the screen said of storage or of anything else. */
    words: [],
    order(kind, after) {
      [harm.kind, harm.after, harm.writes, harm.struck, harm.texts, harm.words] = [kind, after, [], [], [], []];
    },
    stop() {
      harm.kind = null;
    },
  };
  window.harm = harm;

  /** The harm that this write comes to; none for most. */
  function next(where, what) {
    const place = harm.writes.push(where) - 1;
    if (!harm.kind) return null;
    const on = harm.kind === "full from then on";
    if (on ? place < harm.after : place !== harm.after) return null;
    harm.struck.push(`${where} ${what}`);
    return harm.kind;
  }
  const refusal = (kind) =>
    new window.DOMException("ordered by the test", kind.startsWith("full") ? "QuotaExceededError" : kind === "forbidden" ? "SecurityError" : "InvalidStateError");
  const half = (text) => text.slice(0, text.length >> 1);

  const { setItem, removeItem } = window.Storage.prototype;
  const ours = (storage, key) => storage === window.localStorage && String(key).startsWith("garment-assay/");
  window.Storage.prototype.setItem = function (key, text) {
    if (ours(this, key)) harm.texts.push([key, String(text)]);
    const kind = ours(this, key) ? next("local", key) : null;
    switch (kind) {
      case null: return setItem.call(this, key, text);
      case "vanished": return undefined;
      case "torn": return setItem.call(this, key, half(String(text)));
      case "denied": setItem.call(this, key, text); throw refusal(kind);
      case "torn and said": setItem.call(this, key, half(String(text))); throw refusal(kind);
      default: throw refusal(kind);
    }
  };
  window.Storage.prototype.removeItem = function (key) {
    const kind = ours(this, key) ? next("local", key) : null;
    // What is taken away cannot be torn, and takes no room.
    if (kind === null || kind.startsWith("full")) return removeItem.call(this, key);
    if (kind === "vanished" || kind === "torn") return undefined;
    throw refusal(kind);
  };

  const { transaction } = window.IDBDatabase.prototype;
  const { put } = window.IDBObjectStore.prototype;
  const doomed = new WeakMap();
  window.IDBDatabase.prototype.transaction = function (stores, mode, options) {
    const kind = mode === "readwrite" ? next("database", this.name) : null;
    if (kind === "forbidden" || kind === "broken") throw refusal(kind);
    const begun = transaction.call(this, stores, mode, options);
    if (kind) doomed.set(begun, kind);
    return begun;
  };
  window.IDBObjectStore.prototype.put = function (value, ...key) {
    const kind = doomed.get(this.transaction);
    if (kind === undefined) return put.call(this, value, ...key);
    if (kind === "vanished") return this.get(key[0] ?? ""); // a request that succeeds, and keeps nothing
    if (kind === "torn") {
      const part = typeof value === "string" ? half(value) : value instanceof window.Blob ? value.slice(0, value.size >> 1, value.type) : value;
      return put.call(this, part, ...key);
    }
    // Full, denied, or torn and said: begun, and taken back as a whole, as transactions are.
    const asked = put.call(this, value, ...key);
    const { transaction: whole } = this;
    Object.defineProperty(whole, "error", { get: () => refusal(kind) });
    window.queueMicrotask(() => {
      try {
        whole.abort();
      } catch {
        // Aborted already: two puts in one transaction.
      }
    });
    return asked;
  };

  const note = () => {
    for (const part of document.querySelectorAll("[role=alert], .toast, [role=status]")) {
      const words = part.textContent.trim();
      if (words && harm.words.at(-1) !== words) harm.words.push(words);
    }
  };
  new window.MutationObserver(note).observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
}
