#!/bin/sh
# Puts the wings that were cut out of the app (scripts/in_path/wasm-bindgen) into the built folder, and names all that belongs together after one
# hash: a browser that keeps a file of one build must not give it to another. Trunk's own hash is of the first part of the program alone.
set -eu
built=$TRUNK_STAGING_DIR
app=garment-assay-app
wings=target/web/wasm-bindgen/$TRUNK_PROFILE/wings/$app

js=$(basename "$built/$app"-*.js)
hash=${js#"$app-"} hash=${hash%.js}
[ -f "$built/$js" ] || { echo "wings: no $app-….js in $built" >&2; exit 1; }
strip=target/web/without_names
"${RUSTC:-rustc}" --edition 2024 -C opt-level=1 -o "$strip" scripts/without_names.rs
if command -v sha256sum >/dev/null 2>&1; then sha() { sha256sum; }; else sha() { shasum -a 256; }; fi
mark=$(cat "$built/$js" "$built/$app-${hash}_bg.wasm" "$wings"/*.wasm "$wings/__wasm_split.js" web/brought.js "$0" | sha | cut -c 1-16)

for file in "$wings"/split_*.wasm "$wings"/chunk_*.wasm; do
  name=$(basename "$file" .wasm)
  "$strip" "$file" "$built/wing-${name#split_}-$mark.wasm"
done
{
  cat web/brought.js
  sed -e "s|\"\./split_\([a-z0-9_]*\)\.wasm\"|\"./wing-\1-$mark.wasm\"|g" -e "s|\"\./\(chunk_[0-9]*\)\.wasm\"|\"./wing-\1-$mark.wasm\"|g" \
    -e "s|\"\./$app\.js\"|\"./$app-$mark.js\"|" -e "s|fetch(new URL(\(\"[^\"]*\"\), import\.meta\.url))|brought(\1)|" "$wings/__wasm_split.js"
} >"$built/wings-$mark.js"
if grep -q "fetch(new URL(\"" "$built/wings-$mark.js" || ! grep -q "brought(\"" "$built/wings-$mark.js"; then
  echo "wings: the loaders of wasm-split-cli are written otherwise than this expects" >&2
  exit 1
fi
# In the first lines only: further down the same words are the name under which the program asks for them.
sed -e "/^import /s|\"\./__wasm_split\.js\"|\"./wings-$mark.js\"|" "$built/$js" >"$built/$app-$mark.js"
mv "$built/$app-${hash}_bg.wasm" "$built/$app-${mark}_bg.wasm"
rm "$built/$js"
sed -i.before "s|$app-$hash|$app-$mark|g" "$built/index.html"
rm "$built/index.html.before"
