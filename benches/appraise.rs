//! How long it takes to go from a garment's record to what the screen shows, and to store and read pages. Run with
//! `cargo bench --bench appraise --no-default-features`. The shipped wasm is built for size and runs slower.

use std::hint::black_box;

use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use garment_assay::catalog::jeans::JEANS;
use garment_assay::check::Check;
use garment_assay::cost::{Market, Rates};
use garment_assay::fit::{BAND, BodyReading, HIP, INSIDE_LEG, Person, PersonId, THIGH, Went};
use garment_assay::garment::{Act, Answer, Appraiser, FitAct, Garment, Given, Id, Readings, Taped, fit, price};
use garment_assay::grading::Care;
use garment_assay::measure::STITCH_DENSITY;
use garment_assay::notebook::{MemoryShelf, Mode, Notebook, export, import, read, write};
use garment_assay::quantity::{Amount, Unit};
use garment_assay::trade::Day;

/// A pair with that many answers about quality, one of them a counted seam, none of a check that does not apply.
fn pair(name: &str, answers: usize) -> Option<Garment> {
    let garment = Garment::new(Id::new(name)?, &JEANS, Day::new(2026, 11, 25)?);
    let given = |input, amount, unit| Given { input, amount, unit };
    let judged = |n: usize, check: &'static Check| {
        let level = check.levels[(n * 7) % check.levels.len()].key;
        Act::Answer(check, Answer::Judged { level, care: Care::Usual })
    };
    let checks = JEANS.checks.iter().copied().filter(|check| check.speaks.curve().is_some() && check.asked_when.is_none());
    let answered = checks.take(answers).enumerate().fold(garment, |garment, (n, check)| {
        let act = if check.instruments.contains(&&STITCH_DENSITY) {
            let given = vec![given("count", 24.0, Unit::Count), given("length", 3.0, Unit::Inch)];
            Act::Answer(check, Answer::Measured(Readings { instrument: &STITCH_DENSITY, given }))
        } else {
            judged(n, check)
        };
        garment.after(act)
    });
    // Where ungated checks about quality do not suffice, those about cost fill up the page.
    let more = JEANS.checks.iter().copied().filter(|check| check.asked_when.is_none());
    Some(more.enumerate().fold(answered, |garment, (n, check)| {
        if garment.answered() < answers && garment.answer(check).is_none() { garment.after(judged(n, check)) } else { garment }
    }))
}

fn appraising(c: &mut Criterion) {
    let (Some(full), Some(half)) = (pair("full", 30), pair("half", 12)) else { return };
    let appraiser = Appraiser::default();
    let (appraisal, halfway) = (appraiser.appraise(&full), appraiser.appraise(&half));
    println!(
        "{} answers, {} of them about quality; the page has {} bytes",
        full.answered(),
        appraisal.evidence(),
        write(&full, 1).len()
    );
    c.bench_function("appraise 30 answers", |b| b.iter(|| appraiser.appraise(black_box(&full))));
    c.bench_function("next after 12 answers", |b| b.iter(|| appraiser.next(black_box(&half), &halfway, None)));
    c.bench_function("next after 30 answers", |b| b.iter(|| appraiser.next(black_box(&full), &appraisal, None)));
    c.bench_function("settling after 12 answers", |b| b.iter(|| appraiser.settling(black_box(&half), &halfway)));
    c.bench_function("moved by 30 answers", |b| b.iter(|| appraiser.moved(black_box(&appraisal))));
    let rates = Rates::of(Market::UnitedStates);
    c.bench_function("build up after 30 answers", |b| b.iter(|| price(black_box(&full), &rates, None)));
    if let Some(entry) = full.entries().last() {
        let act = Act::Answer(entry.check, entry.answer.clone());
        c.bench_function("one act on 30 answers", |b| b.iter(|| full.after(black_box(act.clone()))));
    }
}

/// A pair that was taped at every line, looked over in the mirror, raw, on a person whose measures are known.
fn fitting(c: &mut Criterion) {
    let (Some(table), Some(garment), Some(id)) = (JEANS.fit, pair("fit", 1), PersonId::new("me")) else { return };
    let centimetres = |number| Amount { number, unit: Unit::Centimetre };
    let taped =
        [("waist", 43.0), ("hip", 50.0), ("thigh", 30.5), ("inseam", 79.0)].into_iter().fold(garment, |garment, (key, flat)| {
            let Some(point) = JEANS.points.iter().find(|point| point.key == key) else { return garment };
            garment.after(Act::Measure(point, Taped::new(vec![centimetres(flat)], false)))
        });
    let moved = table.moves.iter().fold(taped, |garment, one| garment.after(Act::Fit(FitAct::Move(one, Some(Went::Freely)))));
    let full = moved.after(Act::Fit(FitAct::Cloth(table.cloths.last().copied())));
    let person = [(&BAND, 86.0), (&HIP, 99.0), (&THIGH, 57.0), (&INSIDE_LEG, 80.0)]
        .into_iter()
        .fold(Person::new(id, ""), |person, (measure, value)| {
            person.with(measure, BodyReading::new(measure, centimetres(value)))
        });
    println!(
        "the fitting room: {:?}",
        fit(&full, Some(&person)).map(|found| (found.verdict.map(|found| found.fate), found.size))
    );
    c.bench_function("fit of four places, washed, and the sizes beside it", |b| b.iter(|| fit(black_box(&full), Some(&person))));
}

fn storing(c: &mut Criterion) {
    let Some(full) = pair("full", 30) else { return };
    let page = write(&full, 1);
    c.bench_function("write a page of 30 answers", |b| b.iter(|| write(black_box(&full), 1)));
    c.bench_function("read a page of 30 answers", |b| b.iter(|| read(black_box(&page))));
    // A page cut at its end is refused by its checksum, before anything of it is read: the checksum's own time.
    let cut = &page[..page.len() - 1];
    c.bench_function("checksum of a page of 30 answers", |b| b.iter(|| read(black_box(cut))));
    let garments: Vec<Garment> = (0..500).filter_map(|n| pair(&format!("g{n}"), 30)).collect();
    let shelf = MemoryShelf::default();
    let (mut notebook, _) = Notebook::open(shelf.clone());
    for garment in &garments {
        if notebook.keep(garment).is_err() {
            return;
        }
    }
    c.bench_function("keep a garment of 30 answers", |b| b.iter(|| notebook.keep(black_box(&full))));
    let mut group = c.benchmark_group("500 pages");
    group.sample_size(20);
    group.bench_function("open", |b| b.iter_batched(|| shelf.clone(), Notebook::open, BatchSize::LargeInput));
    let all: Vec<&Garment> = garments.iter().collect();
    let day = full.noted();
    group.bench_function("export", |b| b.iter(|| export(black_box(&all), day)));
    let file = export(&all, day);
    group.bench_function("import", |b| b.iter(|| import(black_box(&file), &all, Mode::Merge)));
    group.finish();
}

criterion_group!(benches, appraising, fitting, storing);
criterion_main!(benches);
