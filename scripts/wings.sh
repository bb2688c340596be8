#!/bin/sh
# Puts the wings that were cut out of the app (scripts/in_path/wasm-bindgen) into the built folder, under the hash that Trunk gave the app:
# a browser that keeps a file of one build must not give it to another.
set -eu
built=$TRUNK_STAGING_DIR
app=garment-assay-app
wings=target/web/wasm-bindgen/$TRUNK_PROFILE/wings/$app

js=$(basename "$built/$app"-*.js)
hash=${js#"$app-"} hash=${hash%.js}
[ -f "$built/$js" ] || { echo "wings: no $app-….js in $built" >&2; exit 1; }
strip=target/web/without_names
"${RUSTC:-rustc}" --edition 2024 -C opt-level=1 -o "$strip" scripts/without_names.rs
for file in "$wings"/split_*.wasm "$wings"/chunk_*.wasm; do
  name=$(basename "$file" .wasm)
  "$strip" "$file" "$built/wing-${name#split_}-$hash.wasm"
done
# Under a hash of its own: the app's says nothing of it.
if command -v sha256sum >/dev/null 2>&1; then sha() { sha256sum; }; else sha() { shasum -a 256; }; fi
style=wing-style-$(sha <target/assets/wings.css | cut -c 1-16).css
cp target/assets/wings.css "$built/$style"
{
  sed -e "s|\"\./wings\.css\"|\"./$style\"|" web/brought.js
  sed -e "s|\"\./split_\([a-z0-9_]*\)\.wasm\"|\"./wing-\1-$hash.wasm\"|g" -e "s|\"\./\(chunk_[0-9]*\)\.wasm\"|\"./wing-\1-$hash.wasm\"|g" \
    -e "s|\"\./$app\.js\"|\"./$js\"|" -e "s|fetch(new URL(\(\"[^\"]*\"\), import\.meta\.url))|brought(\1)|" "$wings/__wasm_split.js"
} >"$built/wings-$hash.js"
if grep -q "fetch(new URL(\"" "$built/wings-$hash.js" || ! grep -q "brought(\"" "$built/wings-$hash.js" || ! grep -q "\"./$style\"" "$built/wings-$hash.js"; then
  echo "wings: the loaders of wasm-split-cli are written otherwise than this expects" >&2
  exit 1
fi
# In the first lines only: further down the same words are the name under which the program asks for them.
sed -i.before -e "/^import /s|\"\./__wasm_split\.js\"|\"./wings-$hash.js\"|" "$built/$js"
rm -f "$built/$js.before"
