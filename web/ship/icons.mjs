// The icon as PNG (W3C PNG, third edition), for those who cannot draw icon.svg: drawn from that file's own shapes, each
// of which has a plain distance to its edge, so that half a pixel either side of it is blended.
import { deflateSync } from "node:zlib";

const attribute = (tag, name) => tag.match(new RegExp(`\\s${name}="([^"]*)"`))?.[1];
const number = (tag, name) => Number(attribute(tag, name) ?? 0);
const colour = (words) => {
    if (!/^#[0-9a-f]{6}$/i.test(words ?? "")) throw new Error(`icon.svg: no colour of six digits: ${words}`);
    return [1, 3, 5].map((at) => parseInt(words.slice(at, at + 2), 16));
};

// Of each shape in its order: its colour, and how far a point is outside it, negative inside.
function shapesOf(svg) {
    const shapes = [];
    let group = "";
    for (const [tag, name] of svg.matchAll(/<(\/?\w+)[^>]*>/g)) {
        if (name === "g") group = tag;
        else if (name === "/g") group = "";
        else if (name === "rect") {
            const half = number(tag, "width") / 2, radius = number(tag, "rx");
            shapes.push({ ground: true, fill: colour(attribute(tag, "fill")), outside: (x, y) => {
                const far = [x, y].map((at) => Math.abs(at - half) - half + radius);
                return Math.hypot(Math.max(far[0], 0), Math.max(far[1], 0)) + Math.min(Math.max(...far), 0) - radius;
            } });
        } else if (name === "circle") {
            const [cx, cy, r] = ["cx", "cy", "r"].map((one) => number(tag, one)), edge = number(group, "stroke-width") / 2;
            const fromCentre = (x, y) => Math.hypot(x - cx, y - cy);
            shapes.push({ fill: colour(attribute(tag, "fill")), outside: (x, y) => fromCentre(x, y) - r });
            if (edge > 0) shapes.push({ fill: colour(attribute(group, "stroke")), outside: (x, y) => Math.abs(fromCentre(x, y) - r) - edge });
        } else if (name === "path") {
            const [, x0, y0, along] = attribute(tag, "d").match(/^M(\d+) (\d+)h(\d+)$/).map(Number), edge = number(tag, "stroke-width") / 2;
            shapes.push({ fill: colour(attribute(tag, "stroke")), outside: (x, y) => Math.hypot(x - Math.min(Math.max(x, x0), x0 + along), y - y0) - edge });
        } else if (!["svg", "/svg", "title", "/title"].includes(name)) throw new Error(`icon.svg: <${name}> cannot be drawn as PNG`);
    }
    return shapes;
}

// Rows of red, green, blue and opacity, `size` pixels a side. Where the system cuts its own outline (maskable, W3C Web
// Application Manifest), the ground fills the picture and the rest keeps within the inner 80 % that is always shown.
export function drawIcon(svg, size, { maskable = false } = {}) {
    const units = Number(svg.match(/viewBox="0 0 (\d+) \1"/)[1]), pixel = units / size;
    const shapes = shapesOf(svg), inner = maskable ? 0.75 : 1;
    const rows = new Uint8Array(4 * size * size);
    for (let row = 0; row < size; ++row) {
        for (let column = 0; column < size; ++column) {
            const [x, y] = [column, row].map((at) => ((at + 0.5) * pixel - units / 2) / inner + units / 2);
            let seen = [0, 0, 0], opaque = 0;
            for (const { ground, fill, outside } of shapes) {
                const covers = maskable && ground ? 1 : Math.min(Math.max(0.5 - (outside(x, y) * inner) / pixel, 0), 1);
                if (covers === 0) continue;
                const whole = covers + opaque * (1 - covers);
                seen = seen.map((part, i) => (fill[i] * covers + part * opaque * (1 - covers)) / whole);
                opaque = whole;
            }
            rows.set([...seen, 255 * opaque].map(Math.round), 4 * (row * size + column));
        }
    }
    return rows;
}

const crcTable = Uint32Array.from({ length: 256 }, (_, n) => {
    for (let bit = 0; bit < 8; ++bit) n = n & 1 ? 0xedb88320 ^ (n >>> 1) : n >>> 1;
    return n;
});
const crc = (bytes) => ~bytes.reduce((sum, byte) => crcTable[(sum ^ byte) & 255] ^ (sum >>> 8), ~0) >>> 0;

function chunk(type, content) {
    const named = Buffer.concat([Buffer.from(type, "latin1"), content]), bytes = Buffer.alloc(8 + named.length);
    bytes.writeUInt32BE(content.length, 0);
    named.copy(bytes, 4);
    bytes.writeUInt32BE(crc(named), 4 + named.length);
    return bytes;
}

// Eight bits a channel with opacity, rows as they are (filter 0), not interlaced.
export function pngOf(rows, size) {
    const header = Buffer.alloc(13);
    header.writeUInt32BE(size, 0);
    header.writeUInt32BE(size, 4);
    header.set([8, 6, 0, 0, 0], 8);
    const lines = Buffer.alloc(size * (4 * size + 1));
    for (let row = 0; row < size; ++row) lines.set(rows.subarray(4 * size * row, 4 * size * (row + 1)), row * (4 * size + 1) + 1);
    const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    return Buffer.concat([signature, chunk("IHDR", header), chunk("IDAT", deflateSync(lines, { level: 9 })), chunk("IEND", Buffer.alloc(0))]);
}

// Those that manifest.webmanifest names.
export function iconFiles(svg) {
    const draw = (size, options) => pngOf(drawIcon(svg, size, options), size);
    return { "icon-192.png": draw(192), "icon-512.png": draw(512), "icon-maskable.png": draw(512, { maskable: true }) };
}
