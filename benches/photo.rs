//! How long it takes to find the scale and count the stitches on a picture as a phone takes it. Run with
//! `cargo bench --bench photo --no-default-features`. The shipped wasm runs slower; decoding is the browser's and not in it.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use garment_assay::specimen::{Photograph, Scale as Drawn, photograph};
use image::{RgbaImage, imageops};
use photo::{Object, Point, Raster, Said, count, scale};

/// The marks on the seam and what gives the scale, so many times as large.
fn marks(drawn: &Photograph, times: f64) -> (Point, Point, Object) {
    let at = |[x, y]: [f64; 2]| Point { x: (x + 0.5) * times - 0.5, y: (y + 0.5) * times - 0.5 };
    let object = match &drawn.truth.scale {
        Drawn::Ruler { marks: [a, b], known_mm, .. } => Object::Ruler(at(*a), at(*b), *known_mm),
        Drawn::Card { corners } => Object::Card(corners.map(at)),
    };
    let [from, to] = drawn.truth.seam;
    (at(from), at(to), object)
}

fn reading(c: &mut Criterion) {
    // A drawn photograph as it is, and enlarged to the 12 megapixels of a phone.
    let drawn = photograph(100_001);
    for (times, name) in [(1, "1.2 megapixels"), (3, "11 megapixels")] {
        let Some(plain) = RgbaImage::from_raw(drawn.width as u32, drawn.height as u32, drawn.rgba.clone()) else { return };
        let large = imageops::resize(&plain, plain.width() * times, plain.height() * times, imageops::FilterType::CatmullRom);
        let Some(picture) = Raster::new(large.width() as usize, large.height() as usize, large.as_raw()) else { return };
        let (from, to, object) = marks(&drawn, f64::from(times));
        let Ok(found) = scale(&picture, &object) else { return };
        println!("{name}: {:?}", count(&picture, from, to, &found, Said::Nothing).map(|seam| 25.4 / seam.stitch_mm));
        c.bench_function(&format!("scale of {name}"), |b| b.iter(|| scale(black_box(&picture), &object)));
        c.bench_function(&format!("stitches of {name}"), |b| {
            b.iter(|| count(black_box(&picture), from, to, &found, Said::Nothing));
        });
    }
}

criterion_group!(benches, reading);
criterion_main!(benches);
