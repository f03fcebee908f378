// A second copy of what is kept, in the browser's database: what is written there is soon on the disk, while the simple storage
// may hold a write back for a minute and lose it with a browser that is killed, as phones do that run out of memory.

const DATABASE = "bowstring.1";
const STORE = "kept";
const PAUSE = 300; // milliseconds without a change before it's written: not at every key

export function secondCopy() {
  const waiting = new Map(); // texts by their keys; null: to be removed
  let timer = 0;
  const opening = openDatabase();

  async function flush() {
    clearTimeout(timer);
    const changes = [...waiting];
    waiting.clear();
    const database = changes.length ? await opening : null;
    if (!database) return;
    try {
      const store = database.transaction(STORE, "readwrite", { durability: "strict" }).objectStore(STORE);
      for (const [key, text] of changes) {
        if (text === null) store.delete(key);
        else store.put(text, key);
      }
    } catch {
      // the first copy stands, and says itself where it can't
    }
  }

  addEventListener("pagehide", flush);
  document.addEventListener("visibilitychange", flush);

  return {
    change(key, text) {
      waiting.set(key, text);
      clearTimeout(timer);
      timer = setTimeout(flush, PAUSE);
    },

    // Every text by its key; empty where there is no database.
    async all() {
      const database = await opening;
      if (!database) return new Map();
      const store = database.transaction(STORE).objectStore(STORE);
      const [keys, texts] = await Promise.all([done(store.getAllKeys()), done(store.getAll())]);
      return new Map(keys.map((key, place) => [key, texts[place]]));
    },
  };
}

function done(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

// The database, or null where there is none.
async function openDatabase() {
  try {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    return await done(request);
  } catch {
    return null;
  }
}
