//! What must hold of every drawing, and that the truth told of a picture is what was drawn.

use super::stitching::MM;
use super::*;

/// A piece of path: its points, bends included, and how many bends it has.
pub(super) struct Piece {
    pub(super) points: Vec<(f64, f64)>,
    bends: usize,
}

/// Reads back what the pen writes: M, l, h, v, q, z. None when it is anything else.
fn read(path: &str) -> Option<Vec<Piece>> {
    let mut pieces: Vec<Piece> = Vec::new();
    let mut rest = path;
    while let Some(command) = rest.chars().next() {
        rest = &rest[1..];
        let end = rest.find(|c: char| c.is_ascii_alphabetic()).unwrap_or(rest.len());
        let numbers = numbers(&rest[..end])?;
        rest = &rest[end..];
        let here = pieces.last().and_then(|piece| piece.points.last().copied());
        match (command, here) {
            ('M', _) if numbers.len() == 2 => pieces.push(Piece { points: vec![(numbers[0], numbers[1])], bends: 0 }),
            ('z', Some(_)) if numbers.is_empty() => {}
            (_, Some(mut here)) => {
                let piece = pieces.last_mut()?;
                let size = match command {
                    'h' | 'v' => 1,
                    'l' => 2,
                    'q' => 4,
                    _ => return None,
                };
                if numbers.is_empty() || numbers.len() % size != 0 {
                    return None;
                }
                for step in numbers.chunks(size) {
                    let steps = match (command, step) {
                        ('h', &[dx]) => vec![(dx, 0.0)],
                        ('v', &[dy]) => vec![(0.0, dy)],
                        (_, step) => step.chunks(2).map(|pair| (pair[0], pair[1])).collect(),
                    };
                    piece.bends += usize::from(command == 'q');
                    for &(dx, dy) in &steps {
                        piece.points.push((here.0 + dx, here.1 + dy));
                    }
                    here = *piece.points.last()?;
                }
            }
            _ => return None,
        }
    }
    Some(pieces)
}

/// Splits "12.5.5-3 4" into its numbers, as SVG does.
fn numbers(text: &str) -> Option<Vec<f64>> {
    let mut all = Vec::new();
    let mut one = String::new();
    for c in text.chars().chain([' ']) {
        let ends = c == ' ' || c == '-' || (c == '.' && one.contains('.'));
        if ends && !one.is_empty() {
            all.push(one.parse().ok()?);
            one.clear();
        }
        if c != ' ' {
            one.push(c);
        }
    }
    Some(all)
}

pub(super) fn pieces(mark: &Mark) -> Vec<Piece> {
    read(&mark.path).unwrap_or_else(|| panic!("not a path: {}", mark.path))
}

/// The first mark of an ink that is drawn along (not dashed) or filled.
pub(super) fn mark(picture: Picture, ink: Ink, filled: bool) -> Vec<Piece> {
    let drawing = drawing(&picture, 3);
    let found = drawing
        .marks
        .iter()
        .find(|mark| mark.ink == ink && matches!(mark.paint, Paint::Fill) == filled && !matches!(mark.paint, Paint::Dashed(..)));
    found.map_or(Vec::new(), pieces)
}

pub(super) fn near(a: f64, b: f64, tolerance: f64) {
    assert!((a - b).abs() <= tolerance, "{a} is not {b}");
}

#[test]
fn the_same_picture_and_seed_give_the_same_drawing_and_another_seed_another() {
    let hand = Picture::Whiskers(Whiskers { work: WhiskerWork::Hand, lines: 5 });
    assert_eq!(drawing(&hand, 5), drawing(&hand, 5));
    assert_ne!(drawing(&hand, 5), drawing(&hand, 6));
}

#[test]
fn the_generator_is_the_published_one() {
    // pcg32, its demonstration with state 42 and stream 54 (from memory of the reference program's printed output).
    let mut state = 0_u64;
    let increment = (54_u64 << 1) | 1;
    let mut step = |add: u64| {
        let old = state.wrapping_add(add);
        state = old.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(increment);
        super::chance::permute(old)
    };
    step(0);
    step(42);
    assert_eq!([step(0), step(0), step(0)], [0xa15c_02b7, 0x7b47_f409, 0xba1d_3330]);
}

pub(super) fn check_marks(picture: &Picture, drawing: &Drawing) {
    assert!(!drawing.marks.is_empty());
    let (wide, high) = (Drawing::WIDTH + pen::BLEED + 0.01, Drawing::HEIGHT + pen::BLEED + 0.01);
    for mark in &drawing.marks {
        for (x, y) in pieces(mark).into_iter().flat_map(|piece| piece.points) {
            assert!(x >= -pen::BLEED - 0.01 && x <= wide && y >= -pen::BLEED - 0.01 && y <= high, "{picture:?}: {x} {y}");
        }
        let widths = match mark.paint {
            Paint::Fill => [1.0; 3],
            Paint::Stroke(width) => [width; 3],
            Paint::Dashed(width, dash, gap) => [width, dash, gap],
        };
        assert!(widths.iter().all(|width| width.is_finite() && *width > 0.0), "{picture:?}: {:?}", mark.paint);
    }
}

#[test]
fn no_knob_value_breaks_a_drawing() {
    use Picture as P;
    for wild in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 0.0, 1e300, f64::MIN_POSITIVE] {
        for many in [0, 1, 3, 255] {
            let mut pictures = vec![
                P::Pucker(Pucker { height_mm: wild, length_mm: wild }),
                P::ThreadTails(ThreadTails { ends: many }),
                P::SeatYoke(SeatYoke { join: Join::FelledRunOff, miss_mm: wild }),
                P::SeatYoke(SeatYoke { join: Join::Bound, miss_mm: wild }),
                P::Hem(Hem { stitch: HemStitch::Chain, roping: wild }),
                P::Crotch(Crotch { miss_mm: wild, gap: true, tack: true }),
                P::BeltLoop(BeltLoop { tacks: many, caught: false, tilt: if many > 3 { i8::MIN } else { i8::MAX } }),
                P::Weave(Weave { ends_per_cm: wild, picks_per_cm: wild, cover: wild, unevenness: wild }),
                P::Fold(Fold { ounces: wild, spring: wild }),
                P::PocketCloth(PocketCloth { sheer: wild, twill: true, yarns_per_cm: wild }),
                P::PocketCloth(PocketCloth { sheer: wild, twill: false, yarns_per_cm: wild }),
                P::Give(Give { give_cm: wild }),
                P::Growth(Growth { percent: wild }),
                P::RubOff(RubOff { strength: wild }),
                P::Wash(Wash { loss: wild, high_low: wild, mottle: wild, creased: true }),
                P::Whiskers(Whiskers { work: WhiskerWork::Torn, lines: many }),
                P::StressPoints(StressPoints { secured: many }),
                P::Button(Button { cap_mm: wild, backed: true, loose: true }),
                P::Rivet(Rivet { head_mm: wild, backed: false, loose: true }),
                P::Buttonhole(Buttonhole { stitches_per_cm: wild, ragged: wild, keyhole: true, bar: true }),
                P::Label(Label { lines: many, symbols: true, forbids: true, woven: true }),
                P::LegTwist(LegTwist { twist_mm: wild }),
                P::BackPockets(BackPockets { level_off_mm: wild, centre_off_mm: wild, yoke_off_mm: wild }),
                P::Bagging(Bagging { bag_mm: wild, gape_mm: wild }),
                P::Matching(Matching { miss_mm: wild, pattern: many > 1, pieced: true }),
                P::LightThrough(LightThrough { pinholes: many, cloud: wild }),
                P::SeamWaves(SeamWaves { height_mm: wild, share: wild }),
                P::Waistband(Waistband { step_mm: wild, width_off_mm: wild, twisted: true, caught: false, square: false }),
                P::Tear(Tear { sewn: wild, backed: many > 1 }),
                P::Details(Details { count: many }),
                P::Symmetry(Symmetry { length_off_mm: wild, width_off_mm: wild }),
                P::RulerOnSeam(RulerOnSeam { stitches_per_inch: wild }),
                P::HolesMarked(HolesMarked { comb: many > 1 }),
                P::Hung(Hung),
                P::Window(Window { ends: many, picks: many }),
                P::Fingertips(Fingertips { give_cm: wild }),
                P::WashMarks(WashMarks { shorter_percent: wild }),
                P::SideLight(SideLight { height_mm: wild }),
                P::Rubbing(Rubbing),
                P::Pilling(Pilling { grade: many }),
                P::ColourPair(ColourPair { grade: many }),
                P::NeedleLines(NeedleLines { lines: many }),
            ];
            pictures.push(P::Crushed(Crushed { creases: many, sharp: many > 1 }));
            pictures.push(P::SpareCloth(SpareCloth { width_mm: wild, finished: many > 1 }));
            pictures.extend(JacketPoint::ALL.map(|point| P::JacketMeasure(JacketMeasure { point })));
            pictures.extend(Point::ALL.map(|point| P::Measure(Measure { point })));
            for course in [Course::Straight, Course::CurveOverJoin, Course::CrispCorner, Course::BluntCorner] {
                let whole = Topstitch {
                    stitches_per_inch: wild,
                    other_rows_per_inch: wild,
                    rows: many,
                    gap_mm: wild,
                    unevenness: wild,
                    skips: many,
                    restarts: many,
                    bunching: wild,
                    loose_ends: many,
                    wander_mm: wild,
                    short_over_join: wild,
                    course,
                    inch: true,
                };
                pictures.push(P::Topstitch(whole));
            }
            for flaw in [ClothFlaw::None, ClothFlaw::Slub, ClothFlaw::Hole, ClothFlaw::Streak, ClothFlaw::Patch] {
                pictures.push(P::ClothFace(ClothFace { flaw, count: many }));
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
fn stitches_drawn_over_the_length_drawn_are_the_stitches_per_inch_told() {
    for stitches_per_inch in [4.0, 6.5, 8.0, 11.0, 14.0, 20.0] {
        let picture = Picture::Topstitch(Topstitch { stitches_per_inch, rows: 1, ..Topstitch::CLEAN });
        assert!(truth(&picture).contains(&Known::StitchesPerInch(stitches_per_inch)));
        let row = mark(picture, Ink::ThreadLight, false);
        // The first and the last stitch may be cut by the frame: measure between those that are whole.
        let from = row[1].points[0].0;
        let to = row[row.len() - 2].points[0].0;
        let inches = (to - from) / MM / 25.4;
        near((row.len() - 3) as f64 / inches, stitches_per_inch, 0.05);
        near(row.len() as f64, Drawing::MM_WIDE / 25.4 * stitches_per_inch, 1.5);
    }
}

#[test]
fn restarts_drawn_are_the_restarts_told() {
    for restarts in 0..=6 {
        let picture = Picture::Topstitch(Topstitch { rows: 1, restarts, ..Topstitch::CLEAN });
        let mut beside: Vec<f64> = mark(picture, Ink::ThreadLight, false)
            .iter()
            .map(|stitch| stitch.points[0])
            .filter(|point| (point.1 - 40.0).abs() > 1.0)
            .map(|point| point.0)
            .collect();
        beside.sort_by(f64::total_cmp);
        // Stitches beside the row that follow each other closely are one restart.
        let gaps = beside.windows(2).filter(|pair| pair[1] - pair[0] > 6.6).count();
        assert_eq!(gaps + usize::from(!beside.is_empty()), usize::from(restarts), "{beside:?}");
    }
}

#[test]
fn skips_and_loose_ends_drawn_are_those_told() {
    for rows in 1..=3 {
        for count in 0..=6 {
            let picture = Picture::Topstitch(Topstitch { rows, skips: count, ..Topstitch::CLEAN });
            let bends: usize = mark(picture, Ink::ThreadLight, false).iter().map(|stitch| stitch.bends).sum();
            assert!(truth(&picture).contains(&Known::Skips(bends as u8)), "{rows} {count} {bends}");
            let picture = Picture::Topstitch(Topstitch { rows, loose_ends: count, ..Topstitch::CLEAN });
            let drawing = drawing(&picture, 9);
            let tails =
                drawing.marks.iter().filter(|mark| mark.ink == Ink::ThreadLight).nth(1).map_or(0, |mark| pieces(mark).len());
            assert_eq!(tails, usize::from(count));
        }
    }
    for ends in 0..=14 {
        let drawing = drawing(&Picture::ThreadTails(ThreadTails { ends }), 9);
        let bent: usize = drawing
            .marks
            .iter()
            .filter(|mark| mark.ink == Ink::ThreadLight)
            .flat_map(pieces)
            .filter(|piece| piece.bends > 0)
            .count();
        assert_eq!(bent, usize::from(ends));
    }
}

#[test]
fn lengths_drawn_are_the_lengths_told() {
    for mm in [1.0, 4.0, 7.5, 10.0] {
        let growth = Picture::Growth(Growth { percent: mm });
        assert_eq!(truth(&growth), [Known::GrowthPercent(mm)]);
        // Against the tape's own ticks, 1 mm apart: 1 % of 10 cm is 1 mm.
        let ticks = mark(growth, Ink::Edge, false);
        let mm_units = ticks[1].points[0].0 - ticks[0].points[0].0;
        let end = mark(growth, Ink::Paper, false)[0].points[0].0;
        near((end - ticks[4].points[0].0) / mm_units, mm, 0.02);

        let give = Picture::Give(Give { give_cm: mm / 2.0 });
        assert_eq!(truth(&give), [Known::GiveCm(mm / 2.0)]);
        let ticks = mark(give, Ink::Edge, false);
        let cm_units = ticks[1].points[0].0 - ticks[0].points[0].0;
        let drawn = drawing(&give, 3);
        let spans: Vec<f64> = (drawn.marks.iter())
            .filter(|mark| mark.ink == Ink::Paper && matches!(mark.paint, Paint::Stroke(_)))
            .map(|mark| pieces(mark)[1].points[0].0 - pieces(mark)[0].points[0].0)
            .collect();
        near(spans[0] / cm_units, 10.0, 0.02);
        near((spans[1] - spans[0]) / cm_units, mm / 2.0, 0.02);

        let twist = Picture::LegTwist(LegTwist { twist_mm: mm * 4.0 });
        assert_eq!(truth(&twist), [Known::OffMm(mm * 4.0)]);
        let drawn = drawing(&twist, 3);
        let ticks = drawn.marks.iter().rfind(|mark| mark.ink == Ink::Edge).map_or(Vec::new(), pieces);
        let cm_units = ticks[0].points[0].0 - ticks[1].points[0].0;
        let bar = &mark(twist, Ink::Thread, false)[0].points;
        near((bar[1].0 - bar[0].0) / cm_units * 10.0, mm * 4.0, 0.5);

        let miss = Picture::Matching(Matching { miss_mm: mm, pattern: true, pieced: false });
        let stripes = mark(miss, Ink::Cloth, true);
        let (left, right) = stripes.split_at(stripes.len() / 2);
        // Drawn at 2 units per mm.
        near((right[2].points[0].1 - left[2].points[0].1) / 2.0, mm, 0.1);
    }
}

#[test]
fn yarns_drawn_are_the_yarns_told() {
    for (ends, picks) in [(10.0, 8.0), (24.0, 16.0), (36.0, 24.0)] {
        let picture = Picture::Weave(Weave { ends_per_cm: ends, picks_per_cm: picks, cover: 0.8, unevenness: 0.0 });
        assert_eq!(truth(&picture), [Known::YarnsPerCm(ends, picks)]);
        let spread = |mut places: Vec<f64>| {
            places.sort_by(f64::total_cmp);
            places.dedup();
            (places.len() - 1) as f64 / (places[places.len() - 1] - places[0]) * Weave::UNITS_PER_CM
        };
        let warp = mark(picture, Ink::Cloth, false).iter().map(|yarn| yarn.points[0].0).collect();
        near(spread(warp), ends, 0.2);
        let weft =
            mark(picture, Ink::Weft, false).iter().map(|yarn| yarn.points[0].1).filter(|y| (0.0..80.0).contains(y)).collect();
        near(spread(weft), picks, 0.2);
    }
}

#[test]
fn stress_points_drawn_as_held_are_those_told() {
    for secured in 0..=10 {
        let held = mark(Picture::StressPoints(StressPoints { secured }), Ink::ThreadLight, true);
        assert_eq!(held.len(), usize::from(secured));
    }
}

#[test]
fn a_laser_repeats_itself_in_the_mirror_and_a_hand_does_not() {
    for (work, ink, filled, same) in
        [(WhiskerWork::Laser, Ink::ClothPale, false, true), (WhiskerWork::Hand, Ink::ClothPale, true, false)]
    {
        let lines = mark(Picture::Whiskers(Whiskers { work, lines: 5 }), ink, filled);
        let (left, right) = lines.split_at(lines.len() / 2);
        let mirrored = left.iter().zip(right).all(|(a, b)| {
            a.points.iter().zip(&b.points).all(|(p, q)| (p.0 + q.0 - 120.0).abs() < 0.11 && (p.1 - q.1).abs() < 0.11)
        });
        assert_eq!(mirrored, same, "{work:?}");
    }
}

#[test]
fn stitches_drawn_along_a_ruler_are_those_told_and_its_zero_lies_on_a_needle_hole() {
    for stitches_per_inch in [4.0, 7.0, 8.5, 12.0] {
        let picture = Picture::RulerOnSeam(RulerOnSeam { stitches_per_inch });
        assert_eq!(truth(&picture), [Known::StitchesPerInch(stitches_per_inch)]);
        let row = mark(picture, Ink::ThreadLight, false);
        let ticks = mark(picture, Ink::Edge, false);
        let (zero, eight) = (ticks[0].points[0].0, ticks[8].points[0].0);
        // Each gap between two stitches is a needle hole.
        let holes: Vec<f64> = row.windows(2).map(|pair| (pair[0].points[1].0 + pair[1].points[0].0) / 2.0).collect();
        assert!(holes.iter().any(|hole| (hole - zero).abs() < 0.11), "{zero} {holes:?}");
        let counted = holes.iter().filter(|hole| (zero - 0.11..eight - 0.11).contains(*hole)).count();
        near(counted as f64, 80.0 / 25.4 * stitches_per_inch, 1.0);
        // The line of measure above spans zero to eight centimetres.
        let drawn = drawing(&picture, 3);
        let span = drawn.marks.iter().filter(|mark| mark.ink == Ink::ThreadLight).nth(1).map_or(Vec::new(), pieces);
        assert_eq!((span[0].points[0].0, span[0].points[1].0), (zero, eight));
    }
}

#[test]
fn yarns_in_the_window_are_the_yarns_told() {
    for (ends, picks) in [(8, 5), (14, 10), (20, 20)] {
        let picture = Picture::Window(Window { ends, picks });
        assert_eq!(truth(&picture), [Known::YarnsPerCm(f64::from(ends), f64::from(picks))]);
        assert_eq!(mark(picture, Ink::Cloth, false).len(), usize::from(ends));
        assert_eq!(mark(picture, Ink::Weft, false).len(), usize::from(picks));
    }
}

#[test]
fn what_fingertips_and_wash_marks_show_is_what_is_told() {
    for amount in [0.5, 1.5, 3.0] {
        let pulled = Picture::Fingertips(Fingertips { give_cm: amount });
        assert_eq!(truth(&pulled), [Known::GiveCm(amount)]);
        let drawn = drawing(&pulled, 3);
        // Ticks from the second Edge stroke on: the first is the cloth's edge.
        let ruler =
            drawn.marks.iter().filter(|mark| mark.ink == Ink::Edge && mark.paint == Paint::Stroke(1.1)).map(pieces).next();
        let ticks = ruler.unwrap_or_default();
        let cm = ticks[1].points[0].0 - ticks[0].points[0].0;
        let tips = mark(pulled, Ink::Thread, false);
        near(tips[0].points[0].0, ticks[0].points[0].0, 0.01);
        near((tips[1].points[0].0 - tips[0].points[0].0) / cm, 10.0 + amount, 0.02);

        let washed = Picture::WashMarks(WashMarks { shorter_percent: amount * 5.0 });
        assert_eq!(truth(&washed), [Known::ShorterPercent(amount * 5.0)]);
        let drawn = drawing(&washed, 3);
        let apart: Vec<f64> = (drawn.marks.iter())
            .filter(|mark| mark.ink == Ink::Paper && mark.paint == Paint::Stroke(2.2))
            .map(|mark| pieces(mark)[3].points[0].0 - pieces(mark)[1].points[0].0)
            .collect();
        near(100.0 * (1.0 - apart[1] / apart[0]), amount * 5.0, 0.15);
    }
}

#[test]
fn balls_and_needle_lines_drawn_are_those_told() {
    for grade in 1..=5 {
        let picture = Picture::Pilling(Pilling { grade });
        let drawn = drawing(&picture, 3);
        // Balls are dots of two sizes; fuzz is the thin stroke.
        let balls: usize = (drawn.marks.iter())
            .filter(|mark| mark.ink == Ink::ClothPale && mark.paint != Paint::Stroke(0.7))
            .map(|mark| pieces(mark).len())
            .sum();
        assert_eq!(truth(&picture), [Known::Balls(balls as u8)], "{grade}");
    }
    for lines in 0..=4 {
        let picture = Picture::NeedleLines(NeedleLines { lines });
        assert_eq!(truth(&picture), [Known::NeedleLines(lines)]);
        let mut levels: Vec<f64> = mark(picture, Ink::ThreadLight, false).iter().map(|stitch| stitch.points[0].1).collect();
        levels.dedup();
        assert_eq!(levels.len(), usize::from(lines));
    }
}

/// The line of measure of a point: its places, without the ticks.
fn line_of(point: Point) -> Vec<(f64, f64)> {
    let mut line = mark(Picture::Measure(Measure { point }), Ink::Thread, false);
    assert_eq!(line.len(), 3, "a line and two ticks");
    line.swap_remove(0).points
}

fn length(line: &[(f64, f64)]) -> f64 {
    line.windows(2).map(|pair| (pair[1].0 - pair[0].0).hypot(pair[1].1 - pair[0].1)).sum()
}

#[test]
fn points_of_measure_lie_where_the_trade_lays_them() {
    // How the trade lays each: the points of measure of jeans in the catalog, which name its sources; 2.5, 8 and 35 cm stand there.
    let cm = |point: Point| Measure { point }.units_per_cm();
    let crotch = |point: Point| {
        let outline = mark(Picture::Measure(Measure { point }), Ink::ClothPale, true).swap_remove(0).points;
        let middle = outline.into_iter().filter(|place| (place.0 - 60.0).abs() < 0.06);
        middle.fold((60.0, f64::MIN), |low, place| if place.1 > low.1 { place } else { low })
    };
    for point in [Point::Waist, Point::Hip] {
        let line = line_of(point);
        assert_eq!((line.len(), line[0].1, line[0].0 + line[1].0), (2, line[1].1, 120.0), "level and about the middle");
    }
    near((crotch(Point::Hip).1 - line_of(Point::Hip)[0].1) / cm(Point::Hip), 8.0, 0.1);
    assert!(length(&line_of(Point::Hip)) > length(&line_of(Point::Waist)));

    let inseam = line_of(Point::Inseam);
    let run = ((inseam[1].0 - inseam[0].0) / length(&inseam), (inseam[1].1 - inseam[0].1) / length(&inseam));
    near(inseam[0].1, crotch(Point::Inseam).1, 0.11);
    for (point, down) in [(Point::Thigh, 2.5), (Point::Knee, 35.0), (Point::Hem, length(&inseam) / cm(Point::Inseam))] {
        let line = line_of(point);
        let across = ((line[1].0 - line[0].0) / length(&line), (line[1].1 - line[0].1) / length(&line));
        near(across.0 * run.0 + across.1 * run.1, 0.0, 0.01);
        if point != Point::Hem {
            near(length(&[crotch(point), line[0]]) / cm(point), down, 0.15);
        }
    }
    for point in [Point::FrontRise, Point::BackRise] {
        let line = line_of(point);
        near(line[0].1, crotch(point).1, 0.11);
        assert!(line[1].1 < line[0].1 && line[1].0 == 60.0);
    }
    let (outseam, hem) = (line_of(Point::Outseam), line_of(Point::Hem));
    assert!(length(&outseam) > length(&inseam));
    // The outer seam ends where the hem does: hem width off the inner seam, square to it.
    let foot = (inseam[1].0 + run.1 * length(&hem) / cm(Point::Hem) * cm(Point::Inseam), outseam[outseam.len() - 1].0);
    near(foot.0, foot.1, 0.2);
}

#[test]
fn cloth_beside_a_seam_is_as_wide_as_is_told_and_as_the_tape_below_it() {
    for width_mm in [2.0, 7.0, 15.0, 24.0] {
        let picture = Picture::SpareCloth(SpareCloth { width_mm, finished: true });
        assert!(truth(&picture).contains(&Known::SpareMm(width_mm)));
        let flaps = mark(picture, Ink::Weft, true).swap_remove(0).points;
        let (left, right) = (flaps.iter().map(|p| p.0).fold(120.0, f64::min), flaps.iter().map(|p| p.0).fold(0.0, f64::max));
        // Ticks of the tape are the last mark, 5 mm apart.
        let drawing = drawing(&picture, 3);
        let ticks = pieces(drawing.marks.last().expect("ticks"));
        let five = ticks[1].points[0].0 - ticks[0].points[0].0;
        near((right - left) / 2.0 / five * 5.0, width_mm, 0.1);
    }
}

/// How the trade lays them: the points of measure of a jacket in the catalog; 2.5 cm stands there.
#[test]
fn points_of_a_jacket_lie_where_the_trade_lays_them() {
    let line = |point: JacketPoint| {
        let line = mark(Picture::JacketMeasure(JacketMeasure { point }), Ink::Thread, false);
        line[0].points.clone()
    };
    let cm = JacketMeasure::UNITS_PER_CM;
    let (chest, hem, biceps, sleeve) =
        (line(JacketPoint::Chest), line(JacketPoint::Hem), line(JacketPoint::Biceps), line(JacketPoint::Sleeve));
    // Level, and as wide on one side as on the other.
    for level in [&chest, &hem, &line(JacketPoint::Waist), &line(JacketPoint::Shoulders)] {
        near(level[0].1, level[1].1, 0.11);
        near(level[0].0 + level[1].0, 120.0, 0.11);
    }
    // The underarm is where body and sleeve part: 26 cm down. Chest and upper sleeve lie 2.5 cm below it.
    near((chest[0].1 - 3.0) / cm, 28.5, 0.1);
    let run = ((sleeve[1].0 - sleeve[0].0) / length(&sleeve), (sleeve[1].1 - sleeve[0].1) / length(&sleeve));
    let across = ((biceps[1].0 - biceps[0].0) / length(&biceps), (biceps[1].1 - biceps[0].1) / length(&biceps));
    near(run.0 * across.0 + run.1 * across.1, 0.0, 0.02);
    near(length(&sleeve) / cm, 63.0, 0.5);
    near(length(&line(JacketPoint::Cuff)) / cm, 14.0, 0.2);
    near(length(&line(JacketPoint::BackLength)) / cm, 72.5, 0.2);
}
