#!/bin/sh
# Lays out what index.html takes besides the program: one style sheet from styles/ for the entrance, one for the wings, one for the second program
# (one request instead of six each), and the typeface.
set -eu
cd "$(dirname "$0")/.."
out=target/assets
order="tokens base layout parts pages forced print"
# What pages of the wings look like comes with the first of them: the first words wait for the sheet above. Which sheet a rule is in changes
# nothing between layers; inside a layer these come after those above.
wings="bench tape fitting ticket rates beside people practice learn desk trade collections photographs"
# What the second program's pages look like comes with that program.
later="camera picture"
mkdir -p "$out"

for file in styles/*.css; do
  [ -f "$file" ] || continue
  name=$(basename "$file" .css)
  case " $order $wings $later " in
    *" $name "*) ;;
    *) echo "assets: $file has no place in '$order', '$wings' or '$later' of scripts/assets.sh" >&2; exit 1 ;;
  esac
done
joined() {
  for name in "$@"; do
    if [ -f "styles/$name.css" ]; then cat "styles/$name.css"; echo; fi
  done
}
# Names are words of a list.
# shellcheck disable=SC2086
joined $order >"$out/app.css"
# shellcheck disable=SC2086
joined $wings >"$out/wings.css"
# shellcheck disable=SC2086
joined $later >"$out/pictures.css"

# The longer texts of the lessons, a file for each course, fetched when one is first read. What is written once for all families stands in
# each of theirs; second-hand is no family.
rm -rf "$out/learn"
for file in learn/*.txt learn/*/*.txt; do
  [ -f "$file" ] || continue
  from=$(dirname "$file")
  mkdir -p "$out/$from"
  case "$file" in
    */every-family.txt) ;;
    */second-hand.txt) grep -v '^%' "$file" >"$out/$file" ;;
    # The first line says what the file is, and the second file has one too.
    *) { grep -v '^%' "$file"; tail -n +2 "$from/every-family.txt" | grep -v '^%'; } >"$out/$file" ;;
  esac
done

# Messages of other languages, without the notes for whoever writes them.
rm -rf "$out/language"
for file in language/*/*.po; do
  [ -f "$file" ] || continue
  mkdir -p "$out/$(dirname "$file")"
  grep -v '^#' "$file" >"$out/$file"
done

font=node_modules/@fontsource-variable/instrument-sans
if [ ! -f "$font/LICENSE" ]; then
  echo "assets: the typeface is missing; run 'npm ci', or 'make build', which does" >&2
  exit 1
fi
cp "$font/files/instrument-sans-latin-wght-normal.woff2" "$out/instrument-sans.woff2"
cp "$font/LICENSE" "$out/instrument-sans-licence.txt"
