#!/bin/sh
# Looks at what the project leans on: crates by cargo-deny (deny.toml says what is held to), npm packages by npm. Known faults are asked for
# at two places on the network; one that does not answer is told of and makes this fail too: nobody asked is not nothing found.
set -u
cd "$(dirname "$0")/.."
bad=0
log=$(mktemp)
trap 'rm -f "$log"' EXIT

# `ask WHAT UNANSWERED COMMAND...`: UNANSWERED are words by which the command says that it could not ask.
ask() {
  what=$1 unanswered=$2
  shift 2
  if "$@" >"$log" 2>&1; then echo "audit: $what: nothing found"; return; fi
  bad=1
  if grep -q "$unanswered" "$log"; then
    echo "audit: $what: NOT ASKED, the place that knows did not answer: $(grep -m 1 "$unanswered" "$log" | cut -c 1-160)"
  else
    cat "$log"
    echo "audit: $what: see above"
  fi
}

ask "licences, versions twice and sources of crates" "no such words" cargo deny --locked check licenses bans sources
ask "known faults of crates" "failed to fetch advisory database" cargo deny --locked check advisories
ask "known faults of npm packages" "audit endpoint returned an error" npm audit
ask "known faults of npm packages for Lighthouse" "audit endpoint returned an error" npm audit --prefix tests/browser/lighthouse
exit $bad
