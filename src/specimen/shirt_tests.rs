//! What must hold of the drawings of shirts, and that the truth told of a picture is what was drawn.

use super::tests::{check_marks, mark, near, pieces};
use super::*;

#[test]
fn no_knob_value_breaks_a_drawing_of_a_shirt() {
    use Picture as P;
    for wild in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 0.0, 1.0, 1e300, f64::MIN_POSITIVE] {
        for many in [0, 1, 3, 255] {
            let mut pictures = vec![
                P::Collar(Collar { bubbles: many, off_mm: wild, roll: wild }),
                P::Cuffs(Cuffs { bubbles: many, twisted: true, off_mm: wild, crisp: many > 1 }),
                P::FineStitches(FineStitches { per_inch: wild, or_per_inch: wild }),
                P::ShirtFront(ShirtFront { wave_mm: wild, ends_off_mm: wild, tails: many }),
                P::ShirtPattern(ShirtPattern { front_off_mm: wild, pocket_off_mm: wild, yoke_off_mm: wild }),
                P::LightHand(LightHand { sheer: wild, creases: Some(many), knit: false }),
                P::LightHand(LightHand { sheer: wild, creases: None, knit: false }),
                P::NeckRib(NeckRib { wave_mm: wild, wider_mm: wild, even: many > 1 }),
                P::BodyTwist(BodyTwist { percent: wild, seam: true }),
                P::KnitHem(KnitHem { state: HemState::Cracks, tails: many }),
                P::KnitHem(KnitHem { state: HemState::Tunnels, tails: many }),
                P::Layers(Layers { grams: wild }),
                P::ShirtDetails(ShirtDetails { count: many }),
            ];
            for join in [Join::Overlock, Join::OverlockAndRow, Join::MockFelled, Join::Felled, Join::FelledRunOff, Join::Bound] {
                pictures.push(P::SeamWidth(SeamWidth { join, width_mm: wild, bend: wild }));
            }
            for picture in pictures {
                check_marks(&picture, &drawing(&picture, u64::MAX));
                assert!(!picture.words().is_empty());
                truth(&picture);
            }
        }
    }
}

#[test]
fn fine_stitches_drawn_over_the_length_drawn_are_those_told() {
    for told in [7.0, 10.5, 14.0, 20.0, 26.0] {
        let picture = Picture::FineStitches(FineStitches { per_inch: told, or_per_inch: 0.0 });
        assert_eq!(truth(&picture), [Known::StitchesPerInch(told)]);
        let row = mark(picture, Ink::Thread, false);
        let (first, last) = (&row[0], &row[row.len() - 1]);
        let mm = (last.points[0].0 - first.points[0].0) / FineStitches::MM;
        near((row.len() - 1) as f64 / mm * 25.4, told, 0.1);
    }
}

#[test]
fn thread_ends_drawn_are_those_told() {
    for tails in [0, 1, 6, 14] {
        let picture = Picture::ShirtFront(ShirtFront { tails, ..ShirtFront::CLEAN });
        assert_eq!(truth(&picture)[0], Known::LooseEnds(tails));
        let drawn = drawing(&picture, 3);
        let last = drawn.marks.last().map(pieces).unwrap_or_default();
        let hanging = last.iter().filter(|tail| tail.points.len() == 5).count();
        assert_eq!(hanging, usize::from(tails));
    }
}

#[test]
fn points_of_a_collar_differ_by_as_much_as_told() {
    for off in [0.0, 2.0, 6.0] {
        let drawn = drawing(&Picture::Collar(Collar { bubbles: 0, off_mm: off, roll: 1.0 }), 3);
        let leaves: Vec<f64> = (drawn.marks.iter())
            .filter(|mark| mark.ink == Ink::ClothPale && mark.paint == Paint::Fill)
            .map(|mark| pieces(mark)[0].points[4].1)
            .collect();
        near((leaves[1] - leaves[0]) / 1.3, off, 0.1);
    }
}

#[test]
fn a_seam_that_walked_is_drawn_as_far_as_told() {
    for percent in [0.0, 3.5, 6.0, 9.0] {
        let drawn = drawing(&Picture::BodyTwist(BodyTwist { percent, seam: true }), 3);
        let seam = drawn.marks.iter().find(|mark| mark.ink == Ink::ThreadLight).map(pieces).unwrap_or_default();
        let points = &seam[0].points;
        // Drawn twice as far as it is, for 66 units of fold.
        near((points[0].0 - points[points.len() - 1].0) / 0.66 / 2.0, percent, 0.1);
    }
}

#[test]
fn thread_ends_of_a_knitted_hem_are_those_told() {
    for tails in [1, 6, 14] {
        let picture = Picture::KnitHem(KnitHem { state: HemState::Flat, tails });
        assert_eq!(truth(&picture), [Known::LooseEnds(tails)]);
        let drawn = drawing(&picture, 3);
        assert_eq!(drawn.marks.last().map(pieces).unwrap_or_default().len(), usize::from(tails));
    }
}
