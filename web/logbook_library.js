// The logbook's store in the browser: IndexedDB, linked in as an Emscripten library (see store_web.cpp).
//
//   rows      id -> the row of the list
//   attempts  id -> the attempt, compressed where the browser can
//   journal   [id, number] -> a piece of a flight in progress
//
// Whatever is asked is done in the order it was asked in; what comes of it waits in `events` to be taken. A flight in
// progress holds a lock with its name, so that another tab does not take its journal for that of a closed one.
// Everything is an arrow function: Emscripten cannot print an asynchronous method.
addToLibrary({
    $slopewiseLogbook__deps: ["$UTF8ToString"],
    $slopewiseLogbook: {
        events: [],
        db: null,
        channel: null,
        chain: null, // of what was asked; made when it is opened, like the maps: Emscripten prints plain values only
        releases: null, // id -> lets the lock go
        pieces: null, // id -> number of the next piece

        tell: (kind, { id = "", words = "", texts = [] } = {}) => {
            slopewiseLogbook.events.push({ kind, id, words, texts });
        },

        // In turn; a failure is told by `failed` and never stops what is asked after it.
        queue: (work, failed) => {
            slopewiseLogbook.chain = slopewiseLogbook.chain.then(work).catch(failed);
        },

        reason: (error) => {
            if (error?.name === "QuotaExceededError") return "This device has no more room for this page.";
            return `The browser does not keep it (${error?.name ?? error}).`;
        },

        settled: (request) => {
            return new Promise((resolve, reject) => {
                request.onsuccess = () => resolve(request.result);
                request.onerror = () => reject(request.error);
            });
        },

        // All of `change(stores...)` is kept, or nothing of it.
        write: (names, durability, change) => {
            return new Promise((resolve, reject) => {
                if (!slopewiseLogbook.db) throw new DOMException("the database is closed", "InvalidStateError");
                const transaction = slopewiseLogbook.db.transaction(names, "readwrite", { durability });
                transaction.oncomplete = resolve;
                transaction.onabort = () => reject(transaction.error);
                change(...names.map((name) => transaction.objectStore(name)));
            });
        },

        read: (name, ask) => {
            if (!slopewiseLogbook.db) throw new DOMException("the database is closed", "InvalidStateError");
            return slopewiseLogbook.settled(ask(slopewiseLogbook.db.transaction(name).objectStore(name)));
        },

        journalOf: (id) => {
            return IDBKeyRange.bound([id], [id, []]);
        },

        pack: async (text) => {
            if (typeof CompressionStream !== "function") return text;
            const stream = new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"));
            return new Uint8Array(await new Response(stream).arrayBuffer());
        },

        unpack: async (kept) => {
            if (typeof kept === "string") return kept;
            const stream = new Blob([kept]).stream().pipeThrough(new DecompressionStream("gzip"));
            return new Response(stream).text();
        },

        release: (id) => {
            slopewiseLogbook.releases.get(id)?.();
            slopewiseLogbook.releases.delete(id);
            slopewiseLogbook.pieces.delete(id);
        },

        announce: (id) => {
            slopewiseLogbook.channel?.postMessage(id);
        },

        openDatabase: () => {
            return new Promise((resolve, reject) => {
                const request = indexedDB.open("slopewise", 1);
                request.onupgradeneeded = () => {
                    for (const name of ["rows", "attempts", "journal"])
                        if (!request.result.objectStoreNames.contains(name)) request.result.createObjectStore(name);
                };
                request.onsuccess = () => resolve(request.result);
                request.onerror = () => reject(request.error);
                request.onblocked = () => reject(new DOMException("another tab holds it", "BlockedError"));
            });
        },

        whyRefused: (error) => {
            if (error?.name === "VersionError")
                return "The logbook on this device was made by a newer version of this page. It is untouched; load the page again to get that version.";
            return `This browser does not let the page keep a logbook (${error?.name ?? error}).`;
        },

        open: async () => {
            const book = slopewiseLogbook;
            book.db = await book.openDatabase();
            book.db.onversionchange = ({ newVersion }) => {
                book.db.close();
                book.db = null;
                const words = newVersion === null ? "The logbook was erased." : "A newer version of this page was opened in another tab. Load this one again.";
                book.tell("refused", { words });
            };
            book.db.onclose = () => {
                book.db = null;
                book.tell("refused", { words: "The browser closed the logbook. Load the page again." });
            };
            if (typeof BroadcastChannel === "function") {
                book.channel = new BroadcastChannel("slopewise-logbook");
                book.channel.onmessage = ({ data: id }) =>
                    book.queue(
                        async () => {
                            const row = await book.read("rows", (rows) => rows.get(id));
                            book.tell("changed", { id, texts: row === undefined ? [] : [row] });
                        },
                        () => {},
                    );
            }
            const [ids, rows] = await Promise.all([book.read("rows", (s) => s.getAllKeys()), book.read("rows", (s) => s.getAll())]);
            book.tell("opened", { texts: rows.map((row, i) => `${ids[i]}\n${row}`) });
            await book.findJournals();
        },

        // The flights that were cut off: those with a journal that no tab writes now.
        findJournals: async () => {
            const book = slopewiseLogbook;
            const ids = new Set((await book.read("journal", (s) => s.getAllKeys())).map(([id]) => id));
            const held = navigator.locks ? (await navigator.locks.query()).held.map((lock) => lock.name) : [];
            for (const id of ids) {
                if (book.releases.has(id) || held.includes(`slopewise-flight-${id}`)) continue;
                book.tell("journal", { id, texts: await book.read("journal", (s) => s.getAll(book.journalOf(id))) });
            }
        },
    },

    slopewise_store_open__deps: ["$slopewiseLogbook"],
    slopewise_store_open: () => {
        const book = slopewiseLogbook;
        Object.assign(book, { chain: Promise.resolve(), releases: new Map(), pieces: new Map() });
        book.queue(() => book.open(), (error) => book.tell("refused", { words: book.whyRefused(error) }));
    },

    slopewise_store_keep__deps: ["$slopewiseLogbook"],
    slopewise_store_keep: (idAt, rowAt, attemptAt) => {
        const book = slopewiseLogbook;
        const [id, row, text] = [UTF8ToString(idAt), UTF8ToString(rowAt), UTF8ToString(attemptAt)];
        book.queue(
            async () => {
                const attempt = await book.pack(text);
                await book.write(["rows", "attempts", "journal"], "strict", (rows, attempts, journal) => {
                    rows.put(row, id);
                    attempts.put(attempt, id);
                    journal.delete(book.journalOf(id));
                });
                book.release(id);
                book.announce(id);
                book.tell("kept", { id });
            },
            (error) => book.tell("not_kept", { id, words: book.reason(error) }),
        );
    },

    slopewise_store_keep_row__deps: ["$slopewiseLogbook"],
    slopewise_store_keep_row: (idAt, rowAt) => {
        const book = slopewiseLogbook;
        const [id, row] = [UTF8ToString(idAt), UTF8ToString(rowAt)];
        book.queue(
            async () => {
                await book.write(["rows"], "strict", (rows) => rows.put(row, id));
                book.announce(id);
                book.tell("kept", { id });
            },
            (error) => book.tell("not_kept", { id, words: book.reason(error) }),
        );
    },

    slopewise_store_load__deps: ["$slopewiseLogbook"],
    slopewise_store_load: (idAt) => {
        const book = slopewiseLogbook;
        const id = UTF8ToString(idAt);
        book.queue(
            async () => {
                const kept = await book.read("attempts", (attempts) => attempts.get(id));
                if (kept === undefined) book.tell("not_loaded", { id, words: "It is no longer on this device." });
                else book.tell("loaded", { id, texts: [await book.unpack(kept)] });
            },
            (error) => book.tell("not_loaded", { id, words: `It cannot be read (${error?.name ?? error}).` }),
        );
    },

    slopewise_store_erase__deps: ["$slopewiseLogbook"],
    slopewise_store_erase: (idAt) => {
        const book = slopewiseLogbook;
        const id = UTF8ToString(idAt);
        book.queue(
            async () => {
                await book.write(["rows", "attempts"], "strict", (rows, attempts) => {
                    rows.delete(id);
                    attempts.delete(id);
                });
                book.announce(id);
            },
            (error) => book.tell("not_kept", { id, words: book.reason(error) }),
        );
    },

    slopewise_store_begin_journal__deps: ["$slopewiseLogbook"],
    slopewise_store_begin_journal: (idAt, headAt) => {
        const book = slopewiseLogbook;
        const [id, head] = [UTF8ToString(idAt), UTF8ToString(headAt)];
        book.pieces.set(id, 1);
        if (navigator.locks && !book.releases.has(id))
            navigator.locks.request(`slopewise-flight-${id}`, () => new Promise((resolve) => book.releases.set(id, resolve))).catch(() => {});
        book.queue(
            () =>
                book.write(["journal"], "relaxed", (journal) => {
                    journal.delete(book.journalOf(id));
                    journal.put(head, [id, 0]);
                }),
            (error) => book.tell("not_kept", { id, words: book.reason(error) }),
        );
    },

    slopewise_store_extend_journal__deps: ["$slopewiseLogbook"],
    slopewise_store_extend_journal: (idAt, pieceAt) => {
        const book = slopewiseLogbook;
        const [id, piece] = [UTF8ToString(idAt), UTF8ToString(pieceAt)];
        const number = book.pieces.get(id) ?? 1;
        book.pieces.set(id, number + 1);
        book.queue(
            () => book.write(["journal"], "relaxed", (journal) => journal.put(piece, [id, number])),
            (error) => book.tell("not_kept", { id, words: book.reason(error) }),
        );
    },

    slopewise_store_drop_journal__deps: ["$slopewiseLogbook"],
    slopewise_store_drop_journal: (idAt) => {
        const book = slopewiseLogbook;
        const id = UTF8ToString(idAt);
        book.queue(
            async () => {
                await book.write(["journal"], "relaxed", (journal) => journal.delete(book.journalOf(id)));
                book.release(id);
            },
            () => {},
        );
    },

    slopewise_store_export__deps: ["$slopewiseLogbook"],
    slopewise_store_export: (nameAt, headAt, idsAt) => {
        const book = slopewiseLogbook;
        const [name, head, ids] = [UTF8ToString(nameAt), UTF8ToString(headAt), UTF8ToString(idsAt)];
        book.queue(
            async () => {
                const parts = [head];
                for (const id of ids.split("\n").filter(Boolean)) {
                    const kept = await book.read("attempts", (attempts) => attempts.get(id));
                    if (kept !== undefined) parts.push(await book.unpack(kept), "\n");
                }
                const link = document.createElement("a");
                link.href = URL.createObjectURL(new Blob(parts, { type: "application/jsonl" }));
                link.download = name;
                link.click();
                setTimeout(() => URL.revokeObjectURL(link.href), 60000);
                book.tell("exported", { words: name });
            },
            (error) => book.tell("not_loaded", { words: `The file could not be made (${error?.name ?? error}).` }),
        );
    },

    // The next event as one text, its parts between unit separators; null when there is none.
    slopewise_store_take__deps: ["$slopewiseLogbook", "$stringToNewUTF8"],
    slopewise_store_take: () => {
        const event = slopewiseLogbook.events.shift();
        if (event === undefined) return 0;
        return stringToNewUTF8([event.kind, event.id, event.words, ...event.texts].join("\u001f"));
    },
});
