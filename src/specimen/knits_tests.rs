//! What must hold of the drawings of sweaters and dresses: no knob breaks one, and the truth told of a picture is what was drawn.

use super::tests::check_marks;
use super::*;

const WILD: [f64; 8] = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 0.0, 1.0, 1e300, f64::MIN_POSITIVE];

fn holds(picture: Picture) {
    check_marks(&picture, &drawing(&picture, u64::MAX));
    assert!(!picture.words().is_empty());
    truth(&picture);
}

#[test]
fn no_knob_value_breaks_a_drawing_of_a_sweater() {
    for wild in WILD {
        holds(Picture::Sweater(Sweater::Gauge(Gauge { per_inch: wild })));
        holds(Picture::Sweater(Sweater::RibCuff(RibCuff { wider_percent: wild })));
    }
}

/// A cuff that stays wider is drawn wider, step by step.
#[test]
fn a_wider_cuff_is_drawn_wider() {
    let width = |wider_percent: f64| {
        let picture = Picture::Sweater(Sweater::RibCuff(RibCuff { wider_percent }));
        let marks = drawing(&picture, 1).marks;
        let cuff = marks.iter().find(|mark| mark.ink == Ink::ClothLight).expect("a cuff");
        let across: Vec<f64> = tests::pieces(cuff).into_iter().flat_map(|piece| piece.points).map(|point| point.0).collect();
        across.iter().copied().fold(f64::MIN, f64::max) - across.iter().copied().fold(f64::MAX, f64::min)
    };
    let widths = [0.0, 3.5, 8.0, 22.0].map(width);
    assert!(widths.windows(2).all(|pair| pair[0] < pair[1]), "{widths:?}");
}

#[test]
fn no_knob_value_breaks_a_drawing_of_a_dress() {
    for wild in WILD {
        holds(Picture::Dress(Dress::HemRound(HemRound { metres: wild })));
    }
    for ends in [0, 1, 255] {
        holds(Picture::Dress(Dress::Tails(TailsInside { ends })));
    }
}

#[test]
fn thread_ends_inside_a_dress_are_those_told() {
    for ends in [1, 6, 14] {
        let picture = Picture::Dress(Dress::Tails(TailsInside { ends }));
        assert_eq!(truth(&picture), [Known::LooseEnds(ends)]);
        let drawn = drawing(&picture, 3);
        assert_eq!(drawn.marks.last().map(tests::pieces).unwrap_or_default().len(), usize::from(ends));
    }
}
