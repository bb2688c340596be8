//! How long the likely ticket of one garment takes, from references that have to be learnt from first and from what was learnt already. Run with
//! `cargo bench --bench rack --no-default-features`. The shipped wasm is built for size and runs slower.

#[path = "../tests/rack/market.rs"]
mod market;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use garment_assay::rack::{Reference, Spreads, Traits, learn, likely};

fn rack(garments: usize) -> (Vec<Reference>, Traits) {
    let mut all = market::market(&mut market::Draw(1), garments + 1);
    let stranger = all.split_off(garments).remove(0).0;
    (all.into_iter().filter_map(|(traits, log)| Reference::new(traits, log)).collect(), Traits { name: None, ..stranger })
}

fn tickets(c: &mut Criterion) {
    for garments in [10, 50, 200] {
        let (references, stranger) = rack(garments);
        c.bench_function(&format!("learn_from_{garments}_and_say_a_likely_ticket"), |b| {
            b.iter(|| likely(&learn(Spreads::USUAL, black_box(references.clone()), true), &stranger));
        });
        let learned = learn(Spreads::USUAL, references, true);
        c.bench_function(&format!("a_likely_ticket_from_{garments}_already_learnt"), |b| {
            b.iter(|| likely(black_box(&learned), &stranger));
        });
    }
}

criterion_group!(benches, tickets);
criterion_main!(benches);
