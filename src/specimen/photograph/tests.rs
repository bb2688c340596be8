//! Laws of drawn photographs: the same from the same seed, and a truth that agrees with what is seen.

use super::card::{CARD_LONG, CARD_WIDE};
use super::colour::apart;
use super::ruler::Graduation;
use super::scene::Scene;
use super::thread::Sewn;
use super::truth::{Level, Pixel, Scale};
use super::{HIGH, WIDE};

fn far(a: Pixel, b: Pixel) -> f64 {
    (b[0] - a[0]).hypot(b[1] - a[1])
}

fn scenes(count: u64) -> impl Iterator<Item = Scene> {
    (0..count).map(|seed| Scene::drawn(7_000 + seed))
}

#[test]
fn the_same_seed_gives_the_same_bytes_and_another_seed_others() {
    let part = |seed: u64| Scene::drawn(seed).part(470..490);
    assert_eq!(part(3), part(3));
    assert_ne!(part(3), part(4));
    assert_eq!(part(3).len(), 20 * WIDE * 4);
    assert_eq!(Scene::drawn(3).truth, Scene::drawn(3).truth);
}

#[test]
fn stitches_in_the_picture_are_as_far_apart_as_the_truth_says() {
    for scene in scenes(60) {
        let truth = &scene.truth;
        let pitches = truth.stitches_between + truth.skipped;
        assert_eq!(truth.holes.len(), pitches + 1);
        // From end to end, straight rows: the chord is the run.
        if !truth.curved {
            let chord = far(truth.holes[0], truth.holes[pitches]) / pitches as f64;
            assert!((chord / truth.px_per_stitch - 1.0).abs() < 0.005, "{chord} {}", truth.px_per_stitch);
        }
        // The marks lie less than a few stitches from the outermost holes, and on the row.
        for (mark, hole) in truth.seam.iter().zip([truth.holes[0], truth.holes[pitches]]) {
            assert!(far(*mark, hole) < 2.2 * truth.px_per_stitch + 20.0);
        }
    }
}

#[test]
fn seen_flat_ruler_and_stitches_have_one_scale() {
    let mut seen = 0;
    for scene in scenes(160) {
        let truth = &scene.truth;
        if truth.tilt_deg > 1.0 {
            continue;
        }
        let by_stitch = truth.px_per_stitch * truth.stitches_per_inch / 25.4;
        // A ruler up to 2.5 mm nearer looks up to 3 % larger; tilt and marks of 2 px (or 0.22 mm) do the rest.
        let by_object = match &truth.scale {
            Scale::Ruler { marks, known_mm, .. } => far(marks[0], marks[1]) / known_mm,
            Scale::Card { corners } => {
                let sides = far(corners[0], corners[1]) + far(corners[2], corners[3]);
                assert!(
                    (far(corners[0], corners[2]) / CARD_LONG.hypot(CARD_WIDE) / (sides / 2.0 / CARD_LONG) - 1.0).abs() < 0.04
                );
                sides / 2.0 / CARD_LONG
            }
        };
        assert!((0.955..1.075).contains(&(by_object / by_stitch)), "{by_object} {by_stitch}");
        seen += 1;
    }
    assert!(seen >= 12, "{seen}");
}

#[test]
fn thread_is_seen_between_the_holes_and_cloth_beside_them() {
    let (mut shown, mut all) = (0, 0);
    for scene in scenes(40) {
        let truth = &scene.truth;
        // A chain leaves its middle open, a skipped stitch a hole under the thread, a hand a shadow.
        if truth.tonal || truth.sewn != Sewn::Lock || truth.rows > 1 || scene.light.hand.is_some() {
            continue;
        }
        let clear = |one: [f32; 3], other: [f32; 3]| apart(one, other) > 0.10;
        for pair in truth.holes.windows(2) {
            let [a, b] = [pair[0], pair[1]];
            let middle = [(a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0];
            let long = far(a, b);
            // A good way off across the seam, on the side away from the ruler.
            let way = [-(b[1] - a[1]) / long, (b[0] - a[0]) / long];
            let off = 1.1 * truth.px_per_stitch * truth.stitches_per_inch / 25.4;
            let beside = [middle[0] - off * way[0], middle[1] - off * way[1]];
            let [thread, cloth] = [middle, beside].map(|at| scene.light_at(at[0], at[1]));
            shown += usize::from(clear(thread, cloth));
            all += 1;
        }
    }
    assert!(all > 200 && shown * 100 >= all * 85, "{shown} of {all}");
}

#[test]
fn what_varies_stays_in_its_range_and_comes_in_its_share() {
    let (mut hard, mut inches, mut cards, mut count) = (0, 0, 0, 0);
    for scene in scenes(240) {
        let truth = &scene.truth;
        assert!((3.5..17.5).contains(&truth.stitches_per_inch), "{}", truth.stitches_per_inch);
        assert!((6.5..110.0).contains(&truth.px_per_stitch), "{}", truth.px_per_stitch);
        assert!((0.0..0.19).contains(&truth.pitch_cv), "{}", truth.pitch_cv);
        assert!((0.0..=25.0).contains(&truth.tilt_deg) && (1..=3).contains(&truth.rows));
        assert!(truth.skipped <= 1 && truth.stitches_between >= 6 && truth.gap_mm > 0.0);
        assert!((38..=93).contains(&scene.quality));
        for [x, y] in truth.seam {
            assert!((0.0..WIDE as f64).contains(&x) && (0.0..HIGH as f64).contains(&y));
        }
        hard += usize::from(truth.level == Level::Hard);
        match truth.scale {
            Scale::Ruler { divided: Graduation::Sixteenth, .. } => inches += 1,
            Scale::Card { .. } => cards += 1,
            Scale::Ruler { .. } => {}
        }
        count += 1;
    }
    // Shares of 28, 25 and 10 in 100, give or take three standard deviations.
    assert!(
        (45..90).contains(&hard) && (40..81).contains(&inches) && (10..39).contains(&cards),
        "{hard} {inches} {cards} of {count}"
    );
}
