# Every target brings what it needs: on a new machine the first run installs, later runs only look.

PORT ?= 8080
DOOR ?= all
FUZZ_SECONDS ?= 60
FUZZ_RUNS ?= -1
tools := sh scripts/tools.sh
browser_tests := $(wildcard tests/browser/*.test.mjs)
engine_tests := $(wildcard tests/engines/*.test.mjs)
sources := $(shell find $(wildcard src styles web learn language)) index.html Trunk.toml Cargo.toml Cargo.lock .cargo/config.toml \
  scripts/assets.sh scripts/wings.sh scripts/without_names.rs scripts/in_path/wasm-bindgen $(wildcard scripts/precache.sh) package-lock.json

.DEFAULT_GOAL := help
.PHONY: help run watch messages build test test-rust test-browser test-engines lint audit format size bench fuzz shots lighthouse clean

help: ## say what there is
	@sed -n 's/^\([a-z-]*\):.*## \(.*\)/  make \1\t\2/p' Makefile | expand -t 24

run: build ## build the app and serve it on this machine
	@$(tools) node node scripts/serve.mjs --port $(PORT)

watch: target/assets/licences.txt ## build without optimising and again after each change, and serve it
	@$(tools) node true
	@echo "watch: building and serving on http://127.0.0.1:$(PORT)/ (reload the page yourself: its policy refuses the script that would)"
	@$(tools) web trunk serve --no-autoreload --address 127.0.0.1 --port $(PORT) --dist target/watch

build: dist/index.html ## build the app into dist/

dist/index.html: $(sources) target/assets/licences.txt
	@$(tools) node true
	@echo "build: the app, for the browser (a minute or two the first time)"
	@$(tools) web env CARGO_TERM_QUIET=true RUST_BACKTRACE=0 trunk --log warn build --release
	@touch $@

target/assets/licences.txt: Cargo.toml Cargo.lock src/photo/Cargo.toml package-lock.json scripts/licences.mjs
	@mkdir -p target/assets
	@$(tools) web sh -c 'cargo metadata --quiet --locked --format-version 1 --features web --filter-platform wasm32-unknown-unknown >target/crates.json && "$${RUSTC:-rustc}" --version >target/rustc.txt'
	@$(tools) node node scripts/licences.mjs target/crates.json target/rustc.txt $@

test: test-rust test-browser test-engines ## run every test, in a browser and in two other engines too

test-rust: ## run the tests that need no browser
	@echo "test: the library, on this machine"
	@$(tools) native cargo test --quiet --workspace --no-default-features
	@echo "test: what of the app needs no browser, on this machine"
	@$(tools) native cargo test --quiet --features web --bins

test-browser: build ## run the tests in a browser
	@echo "test: the app, in Chromium"
	@$(tools) browser node --test --test-reporter=spec $(browser_tests)

test-engines: build ## make the journeys in Firefox and WebKitGTK
	@echo "test: the app, in Firefox and WebKitGTK"
	@$(tools) engines node --test --test-concurrency=1 --test-reporter=spec $(engine_tests)

lint: ## check form and find doubtful code, in Rust, styles and scripts
	@echo "lint: form"
	@$(tools) native sh scripts/lint-rust.sh fmt
	@echo "lint: the library by itself, then the app"
	@$(tools) native sh scripts/lint-rust.sh clippy
	@echo "lint: styles and scripts"
	@$(tools) node node node_modules/stylelint/bin/stylelint.mjs --allow-empty-input "styles/*.css"
	@$(tools) node node node_modules/eslint/bin/eslint.js .

audit: ## look at what the project leans on: licences, sources, versions twice, known faults
	@$(tools) node true
	@$(tools) audit sh scripts/audit.sh

format: ## put the Rust code into its form
	@$(tools) native cargo fmt --all

size: build ## weigh what a first visit loads
	@$(tools) node node scripts/size.mjs

bench: ## measure speed, of the library and in a browser
	@echo "bench: the library"
	@$(tools) native cargo bench --no-default-features
	@if [ -f tests/browser/measure.mjs ]; then $(MAKE) --no-print-directory build && \
	  echo "bench: the app, in Chromium" && $(tools) browser node tests/browser/measure.mjs && \
	  echo "bench: a first visit on slow lines" && $(tools) browser node tests/browser/measure_start.mjs && \
	  echo "bench: ways of counting stitches, by a scripted hand" && $(tools) browser node tests/browser/measure_bench.mjs && \
	  echo "bench: what stands behind a ticket" && $(tools) browser node tests/browser/measure_ticket.mjs && \
	  echo "bench: the quick sheet, by a scripted hand" && $(tools) browser node tests/browser/measure_desk.mjs && \
	  echo "bench: the fitting room, by a scripted hand" && $(tools) browser node tests/browser/measure_fit.mjs && \
	  echo "bench: reading a picture" && $(tools) browser node tests/browser/measure_picture.mjs && \
	  echo "bench: the longest tasks of every journey" && $(tools) browser node tests/browser/measure_tasks.mjs && \
	  echo "bench: memory over a thousand answers" && $(tools) browser node tests/browser/measure_memory.mjs; fi

messages: ## bring the message files of other languages up to the source, and say how many sentences are still to be written
	@$(tools) native cargo run --quiet --example messages --no-default-features

fuzz: ## fuzz what reads text: DOOR=import (or all), FUZZ_SECONDS=60 each, FUZZ_RUNS=1000000 each
	@echo "fuzz: building with libFuzzer (two minutes or so the first time; needs a C++ compiler)"
	@$(tools) native sh fuzz/run.sh $(DOOR) -max_total_time=$(FUZZ_SECONDS) -runs=$(FUZZ_RUNS)

shots: build ## picture every screen, in three sizes, light and dark, into shots/
	@$(tools) browser node tests/browser/shots.mjs

lighthouse: build ## have Lighthouse judge the first visit, three times, and pages of a kept notebook, on a phone
	@$(tools) lighthouse node tests/browser/lighthouse/run.mjs

clean: ## remove what was built here
	rm -rf target dist shots
