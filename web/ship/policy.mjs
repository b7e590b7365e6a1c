// What the page may load and do (Content Security Policy Level 3): its own files and WebAssembly, nothing else.

// Of the site: each part is a file beside the page, so nothing inline is needed or allowed.
export const sitePolicy = policy({ script: "'self'", style: "'self'", connect: "'self'", own: " 'self'", worker: "'self'" });

// Of the one file: just the scripts and styles with these hashes, and no connection at all.
export function filePolicy(scriptHash, styleHash) {
    return policy({ script: `'${scriptHash}'`, style: `'${styleHash}'`, connect: "'none'", own: "", worker: "'none'" });
}

function policy({ script, style, connect, own, worker }) {
    return [
        "default-src 'none'",
        `script-src ${script} 'wasm-unsafe-eval'`,
        `style-src ${style}`,
        `connect-src ${connect}`,
        `img-src${own} data: blob:`,
        `media-src${own} blob:`,
        `manifest-src ${worker}`,
        `worker-src ${worker}`,
        "base-uri 'none'",
        "form-action 'none'",
    ].join("; ");
}

// What only a server can say, beside the same policy: no other page may frame this one, no address is told to anyone,
// and of the devices that a browser asks about the page wants controllers and the whole screen alone.
export const serverHeaders = {
    "Content-Security-Policy": `${sitePolicy}; frame-ancestors 'none'`,
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=(), payment=(), gamepad=(self), fullscreen=(self)",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
};
