"""embed_files.py OUTPUT.cpp FILE...: writes a C++ source that holds the files and answers as assets/embedded.h says.

A FILE is a path, which is also its name in the program, or name=path.
"""
import pathlib
import sys


def literal(data: bytes) -> str:
    """The bytes as a string literal, in lines; octal escapes of three digits cannot swallow what follows them."""
    lines = []
    for start in range(0, len(data), 32):
        chars = []
        for byte in data[start:start + 32]:
            plain = 32 <= byte < 127 and chr(byte) not in '"\\?'
            chars.append(chr(byte) if plain else f"\\{byte:03o}")
        lines.append('    "' + "".join(chars) + '"')
    return "\n".join(lines) or '    ""'


output, *arguments = sys.argv[1:]
files = {}
for argument in arguments:
    name, _, path = argument.rpartition("=")
    files[name or path] = pathlib.Path(path).read_bytes()

parts = ['// Made by .cmake/embed_files.py.\n#include "assets/embedded.h"\n\nnamespace slopewise {\n\nnamespace {\n']
for number, name in enumerate(sorted(files)):
    parts.append(f"constexpr char file_{number}[] =\n{literal(files[name])};\n")
parts.append("constexpr EmbeddedFile files[] = {")
for number, name in enumerate(sorted(files)):
    parts.append(f'    {{"{name}", {{file_{number}, {len(files[name])}}}}},')
parts.append("""};

}  // namespace

std::span<const EmbeddedFile> embedded_files() { return files; }

std::string_view embedded_file(std::string_view name) {
    for (const EmbeddedFile& file : files) {
        if (file.name == name) return file.bytes;
    }
    return {};
}

}  // namespace slopewise
""")
pathlib.Path(output).write_text("\n".join(parts), encoding="ascii")
