// After a crash: what is kept in this browser is read without the program that stopped, handed out as a file that the app takes in again, and
// set aside where every start stops at it. It knows where things lie and nothing of what is in them, so that no page can make it stop too.

const OURS = "garment-assay/";
/** Room that is given up when there is no other (`BALLAST` in src/notebook/kept.rs). */
const RESERVE = OURS + "ballast";
/** Where the app lists what it does not read (`ASIDE` in src/notebook/aside.rs). */
const ASIDE = OURS + "aside/";
/** Milliseconds that the second copy may take to come; what local storage holds is worth handing out without it. */
const PATIENCE = 3000;

const asideOf = (key) => ASIDE + key.slice(OURS.length);

/** Texts by key, as local storage has them; none where it cannot be read. */
function onShelf() {
  try {
    const keys = Object.keys(window.localStorage).filter((key) => key.startsWith(OURS) && key !== RESERVE);
    return new Map(keys.map((key) => [key, window.localStorage.getItem(key)]));
  } catch {
    return new Map();
  }
}

/** Texts by key, as the second copy in IndexedDB has them; none where there is none, or it does not come. */
function inMirror() {
  const read = new Promise((done) => {
    const opening = window.indexedDB.open("garment-assay");
    // It was not there, and is not to be made here.
    opening.onupgradeneeded = () => opening.transaction.abort();
    opening.onerror = () => done(new Map());
    opening.onsuccess = () => {
      const database = opening.result;
      const told = (found) => {
        database.close();
        done(found);
      };
      const transaction = database.transaction("pages");
      const store = transaction.objectStore("pages");
      const [keys, texts] = [store.getAllKeys(), store.getAll()];
      transaction.oncomplete = () => told(new Map(keys.result.map((key, place) => [key, texts.result[place]])));
      transaction.onabort = () => told(new Map());
    };
  });
  const late = new Promise((done) => window.setTimeout(() => done(new Map()), PATIENCE));
  return Promise.race([read, late]).catch(() => new Map());
}

/** All that is kept: what lies on the shelf, and from the second copy what the shelf lacks or has otherwise. */
async function gathered() {
  const shelf = onShelf();
  const found = [...shelf];
  for (const [key, text] of await inMirror()) {
    if (text && shelf.get(key) !== text && shelf.get(asideOf(key)) !== text) found.push([key, text]);
  }
  return found;
}

/**
 * Hands out all that is kept as one file (src/notebook/rescue.rs reads it).
 * @returns {Promise<number>} how many texts are in it
 */
export async function save() {
  const pages = await gathered();
  const two = (number) => String(number).padStart(2, "0");
  const now = new Date();
  const made = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const file = JSON.stringify({ kind: "garment-assay-rescue", form: 1, made, pages }, null, 1);
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new window.Blob([file], { type: "application/json" }));
  link.download = `garment-assay-rescue-${made}.json`;
  link.click();
  // The browser needs the address until it has read the file.
  window.setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return pages.length;
}

/**
 * Sets aside what lies under one key, or under all: the next start lists it and does not read it. Nothing is taken away before it was
 * found again in its new place, and the second copy stays as it is.
 * @param {string | null} only the key; null for all
 */
export async function setAside(only) {
  window.localStorage.removeItem(RESERVE);
  for (const [key, text] of await gathered()) {
    if (key.startsWith(ASIDE) || (only && key !== only)) continue;
    // The second copy's text too, where it is another: once the page is dropped that is gone, and it may be the newer.
    const there = window.localStorage.getItem(asideOf(key));
    const place = there === null || there === text ? asideOf(key) : `${asideOf(key)}~${Date.now()}`;
    window.localStorage.setItem(place, text);
    if (window.localStorage.getItem(place) !== text) throw new Error("Not set aside: " + key);
    window.localStorage.removeItem(key);
  }
}
