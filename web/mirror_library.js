// What the canvas shows, as real HTML for who reads the page with a screen reader, and for the tests: a heading and a
// line for each line of the screen, in the order in which they are seen. Linked in as an Emscripten library.
addToLibrary({
    $slopewiseMirror: {
        // A line that says the same stays the same element, so that a reader speaks only of what has changed.
        put: (place, lines, tagOf) => {
            lines.forEach((line, index) => {
                let element = place.children[index];
                const tag = tagOf(index);
                if (element?.localName !== tag) {
                    const fresh = document.createElement(tag);
                    if (element) element.replaceWith(fresh);
                    else place.append(fresh);
                    element = fresh;
                }
                const text = index + 1 < lines.length ? `${line}\n` : line;
                if (element.textContent !== text) element.textContent = text;
            });
            while (place.children.length > lines.length) place.lastElementChild.remove();
        },
    },

    slopewise_show_mirror__deps: ["$UTF8ToString", "$slopewiseMirror"],
    slopewise_show_mirror: (screen, instruments) => {
        const lines = UTF8ToString(screen).split("\n");
        slopewiseMirror.put(document.getElementById("mirror"), lines, (index) => (index === 0 ? "h2" : "p"));
        slopewiseMirror.put(document.getElementById("instruments"), UTF8ToString(instruments).split("\n"), () => "p");
        const name = lines[0].split(".")[0].trim();
        document.title = name && name !== "Slopewise" ? `${name}: Slopewise` : "Slopewise: the stable visual approach";
    },
});
