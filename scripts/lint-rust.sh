#!/bin/sh
# `fmt` or `clippy`, with the cargo that is first on PATH; Debian packs the two apart from cargo.
set -eu
cd "$(dirname "$0")/.."
case $1 in fmt) packages="rustfmt-web rustfmt" ;; clippy) packages="rust-web-clippy rust-clippy" ;; esac

if ! cargo "$1" --version >/dev/null 2>&1; then
  if [ "$(command -v cargo)" = /usr/bin/cargo ] && [ "$(id -u)" = 0 ]; then
    for package in $packages; do
      echo "lint: installing from Debian: $package" >&2
      if DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$package" >/dev/null 2>&1; then break; fi
    done
  fi
  cargo "$1" --version >/dev/null 2>&1 || { echo "lint: 'cargo $1' is missing; 'rustup component add' brings it" >&2; exit 1; }
fi

case $1 in
  fmt) cargo fmt --all --check ;;
  clippy)
    cargo check --quiet --lib --no-default-features
    cargo clippy --quiet --workspace --all-targets --no-default-features -- -D warnings
    cargo clippy --quiet --all-targets --features web -- -D warnings
    ;;
esac
