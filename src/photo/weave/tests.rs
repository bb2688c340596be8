//! Drawn cloth with a known truth, and what must be refused.

use super::drawn::{Chance, SIDE, cloth, flat};
use super::*;
use crate::{Point, Raster};

fn measured(seeds: std::ops::Range<u64>) -> (usize, usize, usize, usize, usize, usize) {
    let (mut asked, mut answered, mut near4, mut near2, mut twills, mut twills2) = (0, 0, 0, 0, 0, 0);
    for seed in seeds {
        asked += 1;
        let drawn = cloth(seed);
        let raster = Raster::new(SIDE, SIDE, &drawn.rgba).expect("a picture");
        match yarns(&raster, drawn.marks.0, drawn.marks.1, &drawn.scale) {
            Ok(read) => {
                answered += 1;
                let off = (read.along_marked / drawn.ends_cm - 1.0).abs().max((read.across_marked / drawn.picks_cm - 1.0).abs());
                near4 += usize::from(off <= 0.04);
                near2 += usize::from(off <= 0.02);
                if off > 0.02 {
                    eprintln!("{seed}: off {off:.3} {read:?} {} {}", drawn.ends_cm, drawn.picks_cm);
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
    measured(0..100);
}
