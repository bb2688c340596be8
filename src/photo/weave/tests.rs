//! Drawn cloth with a known truth, and what must be refused.

use super::drawn::{Chance, SIDE, cloth, flat};
use super::*;
use crate::{Point, Raster};

fn measured(seeds: std::ops::Range<u64>, px: (f64, f64)) -> (usize, usize, usize, usize, usize, usize) {
    let (mut asked, mut answered, mut near4, mut near2, mut twills, mut twills2) = (0, 0, 0, 0, 0, 0);
    for seed in seeds {
        asked += 1;
        let drawn = cloth(seed, px);
        let raster = Raster::new(SIDE, SIDE, &drawn.rgba).expect("a picture");
        match yarns(&raster, drawn.marks.0, drawn.marks.1, &drawn.scale) {
            Ok(read) => {
                answered += 1;
                let off = (read.along_marked / drawn.ends_cm - 1.0).abs().max((read.across_marked / drawn.picks_cm - 1.0).abs());
                near4 += usize::from(off <= 0.04);
                near2 += usize::from(off <= 0.02);
                if off > 0.02 {
                    eprintln!(
                        "{seed}: off {off:.3} {} {} {} {}",
                        read.along_marked, read.across_marked, drawn.ends_cm, drawn.picks_cm
                    );
                }
                if let (Some(found), Some(truth)) = (read.twill_degrees, drawn.twill) {
                    twills += 1;
                    twills2 += usize::from((found - truth).abs() <= 2.0);
                }
                if read.twill_degrees.is_some() != drawn.twill.is_some() {
                    eprintln!("{seed}: twill {:?} {:?}", read.twill_degrees, drawn.twill);
                }
            }
            Err(refusal) => eprintln!("{seed}: {refusal:?}"),
        }
    }
    eprintln!(
        "asked {asked} answered {answered} within 4 % {near4} within 2 % {near2}; twills {twills} within 2 degrees {twills2}"
    );
    (asked, answered, near4, near2, twills, twills2)
}

#[test]
#[ignore = "for setting constants: seeds of its own"]
fn tuning() {
    measured(0..100, (9.0, 24.0));
    measured(200..300, (5.0, 9.0));
}

/// Seeds that no constant was set on.
#[test]
fn drawn_cloth_is_counted_within_two_per_cent_or_refused() {
    let (asked, answered, near4, near2, twills, twills2) = measured(70_000..70_060, (9.0, 24.0));
    assert!(answered * 100 >= asked * 85, "{answered} of {asked} answered");
    assert!(near4 * 100 >= answered * 96 && near2 * 100 >= answered * 95, "{near4} and {near2} of {answered}");
    assert!(twills2 * 100 >= twills * 95 && twills * 100 >= answered * 60, "{twills2} of {twills}");
}

/// Six to nine pixels a yarn, where counts of a half begin to fit: few wrong answers, many refusals.
#[test]
fn fine_yarns_are_mostly_refused_rather_than_miscounted() {
    let (_, answered, near4, ..) = measured(80_000..80_040, (6.0, 9.0));
    assert!(answered >= 10 && (answered - near4) * 100 <= answered * 8, "{near4} of {answered}");
}

/// Ten yarns of the truth lie between neighbouring lines of a system, along the ends that were marked and across them.
#[test]
fn lines_to_be_shown_lie_ten_yarns_apart() {
    let mut seen = 0;
    for seed in 70_000..70_012 {
        let drawn = cloth(seed, (9.0, 24.0));
        let raster = Raster::new(SIDE, SIDE, &drawn.rgba).expect("a picture");
        let Ok(read) = yarns(&raster, drawn.marks.0, drawn.marks.1, &drawn.scale) else { continue };
        let mark_way = (drawn.marks.1.x - drawn.marks.0.x, drawn.marks.1.y - drawn.marks.0.y);
        for pair in read.lines.windows(2) {
            let ends = pair[0].map(|end| drawn.scale.plane.on_cloth(end));
            let (dx, dy) = (ends[1].x - ends[0].x, ends[1].y - ends[0].y);
            let next = drawn.scale.plane.on_cloth(pair[1][0]);
            let apart = ((next.x - ends[0].x) * dy - (next.y - ends[0].y) * dx).abs() / dx.hypot(dy);
            let (px, py) = (pair[0][1].x - pair[0][0].x, pair[0][1].y - pair[0][0].y);
            let along = (px * mark_way.0 + py * mark_way.1).abs() > (px * mark_way.1 - py * mark_way.0).abs();
            let other = (pair[1][1].x - pair[1][0].x, pair[1][1].y - pair[1][0].y);
            if (other.0 * px + other.1 * py).abs() < (other.0 * py - other.1 * px).abs() {
                continue; // the last line of one system and the first of the other
            }
            let yarns = apart / 10.0 * if along { drawn.ends_cm } else { drawn.picks_cm };
            assert!((yarns - 10.0).abs() < 0.3, "{seed}: {yarns}");
            seen += 1;
        }
    }
    assert!(seen > 20, "{seen} gaps");
}

/// Marks along no yarn, as along the slanting line of a twill: refused, or for once right, never a wrong count without a warning.
#[test]
fn marks_that_follow_no_yarn_are_refused() {
    let (mut refused, mut wrong) = (0, Vec::new());
    for seed in 90_000..90_030 {
        let drawn = cloth(seed, (9.0, 24.0));
        let raster = Raster::new(SIDE, SIDE, &drawn.rgba).expect("a picture");
        let middle = SIDE as f64 / 2.0;
        let (dx, dy) = (drawn.marks.1.x - drawn.marks.0.x, drawn.marks.1.y - drawn.marks.0.y);
        let (sine, cosine) = [30.0_f64, 45.0, 58.0][seed as usize % 3].to_radians().sin_cos();
        let half = (0.3 * (cosine * dx - sine * dy), 0.3 * (sine * dx + cosine * dy));
        let mark = |sign: f64| Point { x: middle + sign * half.0, y: middle + sign * half.1 };
        match yarns(&raster, mark(-1.0), mark(1.0), &drawn.scale) {
            Err(_) => refused += 1,
            Ok(read) => wrong.push((seed, read.along_marked / drawn.ends_cm, read.across_marked / drawn.picks_cm)),
        }
    }
    assert!(refused >= 29, "{refused} of 30 refused, read {wrong:?}");
}

#[test]
fn what_is_no_cloth_is_refused_with_what_to_do() {
    let mut chance = Chance(7);
    let grain: Vec<u8> = (0..SIDE * SIDE * 4).map(|_| (128.0 + 30.0 * chance.normal()).clamp(0.0, 255.0) as u8).collect();
    let stripes: Vec<u8> = (0..SIDE * SIDE).flat_map(|at| [if (at % SIDE) % 14 < 7 { 90 } else { 180 }; 4]).collect();
    let plain = vec![128; SIDE * SIDE * 4];
    let marks = (Point { x: 280.0, y: 80.0 }, Point { x: 280.0, y: 480.0 });
    for bytes in [&grain, &stripes, &plain] {
        let raster = Raster::new(SIDE, SIDE, bytes).expect("a picture");
        let read = yarns(&raster, marks.0, marks.1, &flat(30.0));
        assert!(matches!(read, Err(WeaveRefusal::NoYarns | WeaveRefusal::NoWeave | WeaveRefusal::Doubtful)), "{read:?}");
    }
}

#[test]
fn marks_that_make_no_sense_and_objects_in_the_way_are_refused() {
    let drawn = cloth(90_001, (10.0, 14.0));
    let raster = Raster::new(SIDE, SIDE, &drawn.rgba).expect("a picture");
    let (a, b) = drawn.marks;
    for odd in [f64::NAN, f64::INFINITY, -1.0, 1e300, b.x] {
        let far = Point { x: odd, y: b.y };
        assert_eq!(yarns(&raster, far, b, &drawn.scale), Err(WeaveRefusal::Marks));
    }
    assert_eq!(yarns(&raster, a, Point { x: a.x + 3.0, y: a.y }, &drawn.scale), Err(WeaveRefusal::Marks));
    let mut covered = drawn.scale.clone();
    covered.object = [(250.0, 250.0), (310.0, 250.0), (310.0, 310.0), (250.0, 310.0)].map(|(x, y)| Point { x, y }).to_vec();
    assert_eq!(yarns(&raster, a, b, &covered), Err(WeaveRefusal::Covered));
}

/// numpy's transform of the same arrays: tests/vectors/photo_cloth.py.
#[test]
fn the_spectrum_is_the_one_of_a_general_library() {
    for (seed, rows) in numpy_rows() {
        let grid: Vec<f64> = (0..32 * 32_usize)
            .map(|at| {
                let (x, y) = (at % 32, at / 32);
                ((x * 37 + y * 101 + x * y * 7 + seed * x * x) % 61) as f64
            })
            .collect();
        let spectrum = super::spectrum2d::Spectrum::of(&grid, 32, 32).expect("a spectrum");
        assert_eq!(rows.len(), 8);
        for (x, y, power) in &rows {
            let found = spectrum.at(*x, *y);
            assert!((found - power).abs() <= 1e-9 * rows[0].2.max(*power), "{x} {y}: {found} is not {power}");
        }
        let strongest = (0..=16)
            .flat_map(|x| (0..32).map(move |y| (x, y)))
            .filter(|at| *at != (0, 0))
            .max_by(|a, b| spectrum.at(a.0, a.1).total_cmp(&spectrum.at(b.0, b.1)));
        let (x, y) = strongest.expect("a peak");
        assert!((spectrum.at(x, y) / rows[0].2 - 1.0).abs() < 1e-9);
    }
}

/// Column, row, power.
type Row = (isize, isize, f64);

/// Rows of the file, read by hand: the package has no reader of JSON.
fn numpy_rows() -> Vec<(usize, Vec<Row>)> {
    let text: String = include_str!("../../../tests/vectors/photo_cloth.json").split_whitespace().collect();
    let spectra = text.split_once("\"spectra\":[").expect("spectra").1;
    spectra
        .split("{\"seed\":")
        .skip(1)
        .map(|part| {
            let (seed, rest) = part.split_once(",\"power\":[[").expect("a row");
            let rows = rest.split("]]").next().expect("rows").split("],[").map(|row| {
                let mut numbers = row.split(',');
                let mut whole = || numbers.next().and_then(|number| number.parse().ok()).expect("a number");
                let (x, y) = (whole() as isize, whole() as isize);
                let power: f64 = whole();
                (x, y, power)
            });
            (seed.parse().expect("a seed"), rows.collect())
        })
        .collect()
}
