// Files that the user chooses: one to be taken into the logbook, several or a folder to be looked at. Linked in as an
// Emscripten library; what comes of them waits among the logbook's events (see store_web.cpp).
addToLibrary({
    $slopewiseFiles__deps: ["$slopewiseLogbook"],
    $slopewiseFiles: {
        resume: null, // reads the next line of an import
        resumeFiles: null, // reads the next lines of files to be looked at
        batchLength: 8388608, // characters
        lineTooLong: "has a line of more than 32 MB: this is no file of Slopewise",
        longestLine: 33554432,

        // The lines of a file, handed on in batches; false when one is too long to be ours.
        readLines: async (file, hand) => {
            const clean = (line) => line.replace(/[\u0000\u001f]/g, "\ufffd").replace(/\r$/, "");
            let rest = "";
            const reader = file.stream().pipeThrough(new TextDecoderStream()).getReader();
            for (;;) {
                const { value, done } = await reader.read();
                if (done) break;
                const lines = value.split("\n");
                lines[0] = rest + lines[0];
                rest = lines.pop();
                if (lines.length > 0) await hand(lines.map(clean));
                if (rest.length > slopewiseFiles.longestLine) {
                    await reader.cancel();
                    return false;
                }
            }
            if (rest !== "") await hand([clean(rest)]);
            return true;
        },

        // Each line is handed on when the one before was taken in.
        importFile: async (file) => {
            const book = slopewiseLogbook;
            book.tell("import_began", { words: file.name });
            const whole = await slopewiseFiles.readLines(file, async (lines) => {
                for (const line of lines)
                    await new Promise((resolve) => {
                        slopewiseFiles.resume = resolve;
                        book.tell("import_line", { texts: [line] });
                    });
            });
            if (whole) book.tell("import_ended");
            else book.tell("import_failed", { words: slopewiseFiles.lineTooLong });
        },

        // Files to be looked at, one after the other. They are taken in by frames, so some megabytes of lines are handed on
        // for each, whether of one file or of many.
        readFiles: async (files) => {
            const book = slopewiseLogbook;
            let handed = 0; // since the last were taken in
            for (const file of files) {
                book.tell("file_began", { words: file.webkitRelativePath || file.name });
                let batch = [], length = 0;
                const hand = async () => {
                    book.tell("file_lines", { texts: batch });
                    handed += length;
                    [batch, length] = [[], 0];
                    if (handed < slopewiseFiles.batchLength) return;
                    await new Promise((resolve) => { slopewiseFiles.resumeFiles = resolve; });
                    handed = 0;
                };
                try {
                    const whole = await slopewiseFiles.readLines(file, async (lines) => {
                        for (const line of lines) {
                            batch.push(line);
                            length += line.length;
                            if (length >= slopewiseFiles.batchLength) await hand();
                        }
                    });
                    if (batch.length > 0) await hand();
                    if (whole) book.tell("file_ended");
                    else book.tell("file_failed", { words: slopewiseFiles.lineTooLong });
                } catch (error) {
                    book.tell("file_failed", { words: `cannot be read (${error?.name ?? error})` });
                }
            }
            book.tell("files_ended", { words: files.length === 0 ? "That folder holds no file whose name ends in .jsonl." : "" });
        },
    },

    slopewise_store_choose_import__deps: ["$slopewiseFiles"],
    slopewise_store_choose_import: () => {
        const chooser = document.createElement("input");
        chooser.type = "file";
        chooser.addEventListener("change", () => {
            const file = chooser.files[0];
            if (!file) return;
            slopewiseFiles
                .importFile(file)
                .catch((error) => slopewiseLogbook.tell("import_failed", { words: `cannot be read (${error?.name ?? error})` }));
        });
        chooser.click();
    },

    slopewise_store_next_import_line__deps: ["$slopewiseFiles"],
    slopewise_store_next_import_line: () => {
        const resume = slopewiseFiles.resume;
        slopewiseFiles.resume = null;
        resume?.();
    },

    slopewise_store_choose_files__deps: ["$slopewiseFiles"],
    slopewise_store_choose_files: (folder) => {
        const chooser = document.createElement("input");
        chooser.type = "file";
        chooser.multiple = true;
        chooser.webkitdirectory = folder !== 0;
        chooser.addEventListener("change", () => {
            const name = (file) => file.webkitRelativePath || file.name;
            const files = [...chooser.files].filter((file) => !folder || file.name.endsWith(".jsonl"));
            files.sort((a, b) => (name(a) < name(b) ? -1 : 1));
            if (folder || files.length > 0) slopewiseFiles.readFiles(files);
        });
        chooser.click();
    },

    slopewise_store_next_file_lines__deps: ["$slopewiseFiles"],
    slopewise_store_next_file_lines: () => {
        const resume = slopewiseFiles.resumeFiles;
        slopewiseFiles.resumeFiles = null;
        resume?.();
    },
});
