//! How long grading takes: tables, a belief, the worth of all open checks, contributions, settling. Run with
//! `cargo bench --bench grading --no-default-features`. The shipped wasm is built for size and runs slower: set CARGO_PROFILE_BENCH_OPT_LEVEL=z to come nearer.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use garment_assay::grading::{
    Belief, Candidate, Care, Curve, Evidence, Group, Tables, Weights, contributions, prospect, ranking, settling,
};
use garment_assay::trade::Stage;

/// Thirty checks of four answers over all groups, with slopes of all five powers.
fn curves() -> Vec<Curve> {
    let slopes = [0.3, 0.6, 0.9, 1.2, 1.6];
    // Leaked once each, as a curve's table is known by the address of its thresholds.
    let curve = |n: usize| {
        let thresholds = Vec::leak(vec![-1.9 + 0.02 * n as f64, -0.2, 1.8]);
        Curve { group: Group::ALL[n % 7], slope: slopes[n % 5], thresholds }
    };
    (0..30).map(curve).collect()
}

fn answers(curves: &[Curve]) -> Vec<Evidence<'_>> {
    let piece = |(n, curve)| Evidence::new(curve, Weights::certain(1 + n % 3, 4).ok()?, Care::Usual).ok();
    curves.iter().enumerate().filter_map(piece).collect()
}

fn grading(c: &mut Criterion) {
    let (curves, tables) = (curves(), Tables::new());
    let sheet = answers(&curves);
    let candidates: Vec<_> =
        curves[..25].iter().enumerate().map(|(n, curve)| Candidate { curve, seconds: 10.0, stage: Stage::ALL[n % 3] }).collect();
    let start = Belief::new(&tables, &[]);
    let half = Belief::new(&tables, &sheet[..12]);
    let ranked = ranking(&tables, &start, &candidates, Stage::seconds_to_reach);
    contributions(&tables, &sheet);

    c.bench_function("tables of 30 curves", |b| {
        b.iter(|| Belief::new(&Tables::new(), black_box(&sheet)).mean());
    });
    c.bench_function("belief from 12 answers", |b| b.iter(|| Belief::new(&tables, black_box(&sheet[..12])).mean()));
    c.bench_function("belief from 30 answers", |b| b.iter(|| Belief::new(&tables, black_box(&sheet)).mean()));
    c.bench_function("belief after one more", |b| b.iter(|| half.after(&tables, black_box(&sheet[20])).mean()));
    c.bench_function("worth of one check", |b| b.iter(|| prospect(&tables, &half, black_box(&curves[20])).bits));
    c.bench_function("ranking of 25, no answer yet", |b| {
        b.iter(|| ranking(&tables, &start, black_box(&candidates), Stage::seconds_to_reach));
    });
    c.bench_function("ranking of 25 after 12 answers", |b| {
        b.iter(|| ranking(&tables, &half, black_box(&candidates), Stage::seconds_to_reach));
    });
    c.bench_function("settling from the start", |b| {
        b.iter(|| settling(&tables, &start, black_box(&candidates), &ranked, Stage::seconds_to_reach));
    });
    c.bench_function("contributions of 25 answers", |b| b.iter(|| contributions(&tables, black_box(&sheet[..25]))));
    c.bench_function("hill of 121 points", |b| b.iter(|| half.hill(black_box(121))));
}

criterion_group!(benches, grading);
criterion_main!(benches);
