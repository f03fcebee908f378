// Squeeze files for the way to a visitor: node squeeze.mjs LIST, a JSON list of {from, to, format, quality}.

import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { promisify } from "node:util";
import zlib from "node:zlib";

const { BROTLI_PARAM_QUALITY: QUALITY, BROTLI_PARAM_LGWIN: WINDOW, BROTLI_PARAM_SIZE_HINT: SIZE } = zlib.constants;
const brotli = promisify(zlib.brotliCompress);
const gzip = promisify(zlib.gzip);

async function squeeze({ from, to, format, quality }) {
  const content = readFileSync(from);
  const squeezed =
    format === "br"
      ? await brotli(content, { params: { [QUALITY]: quality, [WINDOW]: 22, [SIZE]: content.length } })
      : await gzip(content, { level: Math.min(quality, 9) });
  writeFileSync(`${to}.new`, squeezed); // whole or not at all
  renameSync(`${to}.new`, to);
}

await Promise.all(JSON.parse(readFileSync(process.argv[2], "utf8")).map(squeeze));
