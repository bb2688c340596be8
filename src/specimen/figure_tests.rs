//! What must hold of the drawings of a fitting: tapes lie where a measure is taken, and lines point to what is tight.

use super::drawing::Drawing;
use super::figure_piece::{How, Piece, Sides, View};
use super::tests::{check_marks, near, pieces};
use super::*;

type Line = Vec<(f64, f64)>;

fn all() -> Vec<Picture> {
    let mut all = OnBody::ALL.map(Picture::OnBody).to_vec();
    all.extend(Drag::ALL.map(Picture::Drag));
    all.extend(Pose::ALL.map(Picture::Pose));
    all.extend(LeftInside::ALL.map(Picture::LeftInside));
    all
}

/// An enum's name as a key: `SeatToKnee` is `seat-to-knee`.
fn as_key(name: &str) -> String {
    let mut key = String::new();
    for sign in name.chars() {
        if sign.is_uppercase() && !key.is_empty() {
            key.push('-');
        }
        key.extend(sign.to_lowercase());
    }
    key
}

#[test]
fn each_lies_in_its_frame_is_light_and_is_the_same_each_time() {
    for picture in all() {
        let drawn = drawing(&picture, 1);
        check_marks(&picture, &drawn);
        assert_eq!(drawn, drawing(&picture, 2), "chance has no say in {picture:?}");
        let text: usize = drawn.marks.iter().map(|mark| mark.path.len()).sum();
        assert!(drawn.marks.len() <= 40 && text <= 4500, "{picture:?}: {} marks, {text} bytes", drawn.marks.len());
    }
}

#[test]
fn no_two_are_alike_in_drawing_or_in_words() {
    let all = all();
    for (place, one) in all.iter().enumerate() {
        assert!(!one.words().is_empty());
        for other in &all[..place] {
            assert_ne!(drawing(one, 1).marks, drawing(other, 1).marks, "{one:?} and {other:?}");
            assert_ne!(one.words(), other.words(), "{one:?} and {other:?}");
        }
    }
}

#[test]
fn each_has_the_key_of_its_name() {
    for one in Drag::ALL {
        assert_eq!(one.key(), as_key(&format!("{one:?}")));
    }
    for one in Pose::ALL {
        assert_eq!(one.key(), as_key(&format!("{one:?}")));
    }
    for one in LeftInside::ALL {
        assert_eq!(one.key(), as_key(&format!("{one:?}")));
    }
}

/// The same lines, in the units of the table: across from the middle, and down.
fn in_table(piece: &Piece, view: View) -> Vec<Line> {
    let back = |(x, y): (f64, f64)| ((x - Drawing::WIDTH / 2.0) / view.scale, (y - view.top) / view.scale);
    piece.lines(view).into_iter().map(|line| line.into_iter().map(back).collect()).collect()
}

/// The tape on a figure in cm.
fn tape(on: OnBody) -> Line {
    let piece = on.laid().iter().find(|piece| piece.0 == How::Tape).expect("a tape");
    in_table(piece, on.view()).swap_remove(0)
}

/// How wide half the trunk of the drawn figure is at a height, in cm: where its outline crosses that height nearest the middle.
fn half_at(y: f64) -> f64 {
    let view = View { scale: 0.45, top: 1.8 };
    let outline = in_table(&figure::BODY, view).swap_remove(0);
    let crossings = outline.windows(2).filter(|pair| (pair[0].1 - y) * (pair[1].1 - y) <= 0.0 && pair[0].1 != pair[1].1);
    let places = crossings.map(|pair| pair[0].0 + (pair[1].0 - pair[0].0) * (y - pair[0].1) / (pair[1].1 - pair[0].1));
    places.filter(|&x| x > 0.0).fold(f64::MAX, f64::min)
}

#[test]
fn girths_are_taken_round_the_trunk_where_they_are_defined() {
    // ISO 8559-1:2017 and EN 13402-1 as told in the handbook, from memory: each is level, and runs from edge to edge of the trunk.
    for on in [OnBody::Neck, OnBody::Chest, OnBody::Bust, OnBody::Waist, OnBody::Band, OnBody::Hip] {
        let tape = tape(on);
        let (from, to) = (tape[0], tape[tape.len() - 1]);
        near(from.1, to.1, 0.01);
        near(from.0, -to.0, 0.01);
        near(to.0, half_at(to.1), 1.3);
    }
    let level = |on: OnBody| tape(on)[0].1;
    // Armpits lie at 42 cm: the chest close under them, the bust below it.
    assert!(level(OnBody::Chest) > 42.0 && level(OnBody::Bust) > level(OnBody::Chest));
    // Waist: midway between the lowest rib and the top of the hip bone, both drawn.
    let bones: Vec<f64> = (OnBody::Waist.laid().iter().filter(|piece| piece.1 == Sides::Both))
        .map(|piece| piece.2[piece.2.len() - 1].1.into())
        .collect();
    near(level(OnBody::Waist), (bones[0] + bones[1]) / 2.0, 0.5);
    // Hip: nowhere between waist and crotch is the trunk wider.
    let widest = (66..92).map(|y| half_at(y.into())).fold(0.0, f64::max);
    near(half_at(level(OnBody::Hip)), widest, 0.4);
    assert!(level(OnBody::Waist) < level(OnBody::Band) && level(OnBody::Band) < level(OnBody::Hip));
}

#[test]
fn lengths_are_taken_from_end_to_end() {
    let view = View { scale: 0.45, top: 1.8 };
    let outline = in_table(&figure::BODY, view).swap_remove(0);
    let (crown, floor) = outline.iter().fold((f64::MAX, f64::MIN), |(top, foot), place| (top.min(place.1), foot.max(place.1)));
    let ends = |on: OnBody| (tape(on)[0], *tape(on).last().expect("an end"));
    let (from, to) = ends(OnBody::Height);
    near(from.1, crown, 0.6);
    near(to.1, floor, 0.6);
    // The crotch is the lowest place of the outline on the middle line.
    let crotch = outline.iter().filter(|place| place.0.abs() < 0.2).map(|place| place.1).fold(f64::MIN, f64::max);
    let (from, to) = ends(OnBody::InsideLeg);
    assert!(from.0 == 0.0 && to.0 == 0.0);
    near(from.1, crotch, 1.5);
    near(to.1, floor, 0.6);
    // Nape to the level of the waist, on the spine.
    let (from, to) = ends(OnBody::BackLength);
    assert!(from.0 == 0.0 && to.0 == 0.0 && from.1 < to.1);
    near(to.1, tape(OnBody::Waist)[0].1, 0.5);
    // Across the back from shoulder point to shoulder point; the arm begins in the same point, and bends.
    let (left, right) = ends(OnBody::Shoulders);
    near(left.0, -right.0, 0.01);
    let (shoulder, wrist) = ends(OnBody::Arm);
    near(shoulder.0, right.0, 0.5);
    near(shoulder.1, right.1, 0.5);
    let straight = (wrist.0 - shoulder.0).hypot(wrist.1 - shoulder.1);
    let run: f64 = tape(OnBody::Arm).windows(2).map(|pair| (pair[1].0 - pair[0].0).hypot(pair[1].1 - pair[0].1)).sum();
    assert!(run > straight * 1.1, "bent: {run} over {straight}");
}

/// Where the lines of a fault must point or how they must run: the rule is of the handbook, section 9 (fit practice, partly from memory).
enum Runs {
    /// To this place, or to its mirror, and end near it: it is tight there.
    To((f64, f64)),
    /// Level: too narrow across, or too long.
    Level,
    /// Upright: too wide.
    Upright,
    /// Slanting, outwards and down.
    Slanting,
    /// Not lines but edges and hollows.
    Otherwise,
}

fn runs(drag: Drag) -> Runs {
    match drag {
        Drag::SmileAtCrotch | Drag::CutsIn => Runs::To((0.0, 44.0)),
        Drag::XAtChest => Runs::To((0.0, 36.0)),
        Drag::XAtWaist => Runs::To((0.0, 48.0)),
        Drag::ShoulderToNeck => Runs::To((24.0, 12.0)),
        Drag::BustToWaist => Runs::To((10.0, 26.0)),
        Drag::LinesAtHip | Drag::FoldUnderBand | Drag::FoldsUnderSeat => Runs::Level,
        Drag::InnerLegSurplus | Drag::FrontFolds | Drag::BackFolds => Runs::Upright,
        Drag::SeatToKnee | Drag::SleeveTurns => Runs::Slanting,
        Drag::SeatSeamRopes
        | Drag::LapFullness
        | Drag::WaistGaps
        | Drag::PocketsGape
        | Drag::LegTurns
        | Drag::BandRolls
        | Drag::CollarStandsOff
        | Drag::ShoulderHollow
        | Drag::ShoulderSlides => Runs::Otherwise,
    }
}

fn marks(drag: Drag) -> Vec<Line> {
    let marks = drag.lines().iter().filter(|piece| piece.0 == How::Mark);
    marks.flat_map(|piece| in_table(piece, drag.view())).collect()
}

/// How far a place lies beside the straight line that goes on from the first step of a line.
fn beside(line: &Line, place: (f64, f64)) -> f64 {
    let (a, b) = (line[0], line[1]);
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    ((place.0 - a.0) * dy - (place.1 - a.1) * dx).abs() / dx.hypot(dy)
}

#[test]
fn lines_point_to_what_is_tight_and_lie_as_the_rule_has_it() {
    for drag in Drag::ALL {
        for mut line in marks(drag) {
            let (a, b) = (line[0], line[line.len() - 1]);
            let slope = ((b.1 - a.1).abs()).atan2((b.0 - a.0).abs()).to_degrees();
            match runs(drag) {
                Runs::To(spot) => {
                    let side = if b.0 < 0.0 { -1.0 } else { 1.0 };
                    let spot = (spot.0 * side, spot.1);
                    let far = |place: (f64, f64)| (place.0 - spot.0).hypot(place.1 - spot.1);
                    if far(b) < far(a) {
                        line.reverse();
                    }
                    assert!(far(line[0]) < 6.0, "{drag:?} ends {} away", far(line[0]));
                    assert!(beside(&line, spot) < 4.0, "{drag:?} misses by {}", beside(&line, spot));
                }
                Runs::Level => assert!(slope < 10.0, "{drag:?}: {slope}"),
                Runs::Upright => assert!(slope > 75.0, "{drag:?}: {slope}"),
                Runs::Slanting => {
                    assert!((35.0..75.0).contains(&slope), "{drag:?}: {slope}");
                    assert!((b.1 > a.1) == (b.0.abs() > a.0.abs()), "{drag:?} runs outwards and down");
                }
                Runs::Otherwise => {}
            }
        }
        assert!(drag.lines().iter().any(|piece| matches!(piece.0, How::Mark | How::Span)), "{drag:?}");
    }
    // The seat seam draws cloth to itself: lines end at it on both sides.
    assert!(marks(Drag::SeatSeamRopes).iter().all(|line| line[0].0.abs() <= 2.0));
}

#[test]
fn nothing_is_held_at_the_edge_of_the_frame_that_was_meant_beyond_it() {
    for drag in Drag::ALL {
        for piece in drag.lines() {
            for (x, y) in piece.lines(drag.view()).into_iter().flatten() {
                assert!((0.0..=Drawing::WIDTH).contains(&x) && (0.0..=Drawing::HEIGHT).contains(&y), "{drag:?}: {x} {y}");
            }
        }
    }
    for on in OnBody::ALL {
        for (x, y) in on.laid().iter().flat_map(|piece| piece.lines(on.view())).flatten() {
            assert!((-pen::BLEED..=Drawing::WIDTH + pen::BLEED).contains(&x) && y >= 0.0, "{on:?}: {x} {y}");
        }
    }
}

#[test]
fn the_high_step_is_45_cm_for_a_figure_of_170() {
    let height = |filled: bool, pieces: &[Piece]| -> (f64, f64) {
        let wanted =
            pieces.iter().filter(|piece| matches!(piece.0, How::Filled(_)) == filled && !matches!(piece.0, How::Line(..)));
        wanted.flat_map(|piece| piece.2).fold((f64::MAX, f64::MIN), |(top, low), &(_, y)| (top.min(y.into()), low.max(y.into())))
    };
    let step = height(true, Pose::HighStep.pieces());
    let figure = height(false, Pose::ReachForward.pieces());
    // The head is a disc of radius 5.2 about its place.
    let tall = step.1 - (figure.0 - 5.2);
    near((step.1 - step.0) / tall * 170.0, 45.0, 1.5);
}

#[test]
fn a_ruler_begins_at_the_stitching_or_the_fold_and_ends_where_the_allowance_told_does() {
    for inside in LeftInside::ALL {
        let drawn = drawing(&Picture::LeftInside(inside), 1);
        let ticks = drawn.marks.iter().rfind(|mark| mark.ink == Ink::Edge).map_or(Vec::new(), pieces);
        let at = |place: (f64, f64)| if inside == LeftInside::HemDepth { -place.1 } else { place.0 };
        let (zero, five) = (at(ticks[0].points[0]), at(ticks[1].points[0]));
        let edges: Vec<f64> = (drawn.marks.iter().filter(|mark| mark.ink == Ink::Edge && matches!(mark.paint, Paint::Stroke(_))))
            .flat_map(pieces)
            .filter(|piece| piece.points.len() == 2)
            .map(|piece| at(piece.points[0]))
            .collect();
        let cut = zero + inside.depth_mm() * (five - zero) / 5.0;
        assert!(edges.iter().any(|edge| (edge - zero).abs() < 0.11), "{inside:?}: zero at {zero}, not in {edges:?}");
        assert!(edges.iter().any(|edge| (edge - cut).abs() < 0.3), "{inside:?}: cut edge at {cut}, not in {edges:?}");
    }
}
