#!/bin/sh
# Fuzzes one door, or all of them one after the other: fuzz/run.sh [DOOR|all] [libFuzzer's own options...]
# Stable Rust is enough: the marks that libFuzzer steers by come from a pass of LLVM that rustc lends.
set -eu
cd "$(dirname "$0")"
door=${1:-all}
[ $# -eq 0 ] || shift
target=$(rustc -vV | sed -n 's/^host: //p')
marks="-Cpasses=sancov-module -Cllvm-args=-sanitizer-coverage-level=4 -Cllvm-args=-sanitizer-coverage-inline-8bit-counters"
marks="$marks -Cllvm-args=-sanitizer-coverage-pc-table -Cllvm-args=-sanitizer-coverage-trace-compares --cfg fuzzing"
RUSTFLAGS=$marks cargo build --quiet --release --target "$target" --target-dir ../target/fuzz
[ "$door" = all ] && door="import page shelf record words"
for one in $door; do
  # What is found on the way is not committed; what fails is left beside it, and belongs into corpus/ once it is mended.
  mkdir -p "../target/fuzz/found/$one" "../target/fuzz/failed"
  echo "fuzz: $one"
  "../target/fuzz/$target/release/$one" -dict=words.dict -max_len=4096 -timeout=10 -rss_limit_mb=1024 \
    -artifact_prefix="../target/fuzz/failed/$one-" -print_final_stats=1 "$@" "../target/fuzz/found/$one" "corpus/$one"
done
