// Runs a WebAssembly program that may read the files of this folder: `node wasi.mjs PROGRAM WORD...`.
import { readFile } from "node:fs/promises";
import { WASI } from "node:wasi";

const args = process.argv.slice(2);
const wasi = new WASI({ version: "preview1", args, preopens: { ".": "." } });
const program = await WebAssembly.instantiate(await readFile(args[0]), wasi.getImportObject());
process.exitCode = wasi.start(program.instance);
