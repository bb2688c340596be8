#!/bin/sh
# Writes sw.js into the folder that was built: the list of all files in it with their hashes, a version, then web/sw.js itself. Trunk runs it
# after each build (Trunk.toml); by hand: sh scripts/precache.sh dist
set -eu
here=$(cd "$(dirname "$0")/.." && pwd)
cd "${1:-${TRUNK_STAGING_DIR:?say which folder}}"

if command -v sha256sum >/dev/null 2>&1; then sha() { sha256sum "$@"; }; else sha() { shasum -a 256 "$@"; }; fi

odd=$(find . -type f | LC_ALL=C grep '[^A-Za-z0-9_./-]' || true)
if [ -n "$odd" ]; then
  echo "precache: a name may hold letters, digits, dashes, dots and underscores only: $odd" >&2
  exit 1
fi
# The icons in pixels are for the system, which fetches them when the app is installed; `_headers` is for the host, which keeps it to itself.
names=$(find . -type f ! -name sw.js ! -name 'icon-*.png' ! -name _headers | sed 's|^\./||' | LC_ALL=C sort)
list=$(for name in $names; do
  hash=$(sha <"$name" | cut -d ' ' -f 1)
  echo "  \"$name\": [\"$hash\", $(($(wc -c <"$name")))],"
done)
# What the page itself names, and what its scripts name in turn, is what a first visit loads.
first=$(for name in $names; do
  if [ "$name" = index.html ] || grep -qF "\"./$name\"" index.html boot.js garment-assay-app-*.js; then echo "  \"$name\","; fi
done)
# A change of sw.js alone makes a version too: two of them must not share one copy.
version=$({ echo "$list"; cat "$here/web/sw.js"; } | sha | cut -c 1-16)
{
  printf 'const VERSION = "%s";\nconst FILES = {\n%s\n};\nconst FIRST = [\n%s\n];\n\n' "$version" "$list" "$first"
  cat "$here/web/sw.js"
} >sw.js
