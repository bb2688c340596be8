//! The pictures recommended for the answers of each check of jeans: what tests look at and the sheet shows.
//! How much of a fault stands for which answer is judgement; where a check has a number, the value lies inside that answer's span.

use super::*;

/// Answers of a check of jeans, by its key, and the pictures recommended for them, in the catalog's order.
/// Names with a full stop are further subjects that no check asks for yet.
pub fn answers() -> Vec<(&'static str, Vec<Picture>)> {
    use Picture as P;
    let topstitch = |change: fn(&mut Topstitch)| {
        let mut one = Topstitch::CLEAN;
        change(&mut one);
        P::Topstitch(one)
    };
    let weave = |ends_per_cm, picks_per_cm, cover, unevenness| P::Weave(Weave { ends_per_cm, picks_per_cm, cover, unevenness });
    let face = |flaw, count| P::ClothFace(ClothFace { flaw, count });
    let light = |pinholes, cloud| P::LightThrough(LightThrough { pinholes, cloud });
    let seam = |join| P::JoinedSeam(JoinedSeam { join });
    let yoke = |join, miss_mm| P::SeatYoke(SeatYoke { join, miss_mm });
    let edge = |edge, whole_leg| P::OutseamEdge(OutseamEdge { edge, whole_leg });
    let wash = |loss, high_low, mottle, creased| P::Wash(Wash { loss, high_low, mottle, creased });
    let whiskers = |work, lines| P::Whiskers(Whiskers { work, lines });
    let hole = |stitches_per_cm, ragged, keyhole, bar| P::Buttonhole(Buttonhole { stitches_per_cm, ragged, keyhole, bar });
    let pockets =
        |level_off_mm, centre_off_mm, yoke_off_mm| P::BackPockets(BackPockets { level_off_mm, centre_off_mm, yoke_off_mm });
    let band = |step_mm, width_off_mm, twisted, caught, square| {
        P::Waistband(Waistband { step_mm, width_off_mm, twisted, caught, square })
    };
    let matching = |miss_mm, pattern, pieced| P::Matching(Matching { miss_mm, pattern, pieced });
    let crotch = |miss_mm, gap, tack| P::Crotch(Crotch { miss_mm, gap, tack });
    let button = |cap_mm, backed, loose| P::Button(Button { cap_mm, backed, loose });
    let rivet = |head_mm, backed, loose| P::Rivet(Rivet { head_mm, backed, loose });
    let bag = |sheer, twill, yarns_per_cm| P::PocketCloth(PocketCloth { sheer, twill, yarns_per_cm });
    let label = |lines, symbols, forbids, woven| P::Label(Label { lines, symbols, forbids, woven });
    vec![
        (
            "cloth-hand",
            vec![
                weave(13.0, 9.0, 0.5, 0.3),
                weave(18.0, 12.0, 0.7, 0.15),
                weave(24.0, 16.0, 0.88, 0.08),
                weave(30.0, 20.0, 0.98, 0.05),
            ],
        ),
        ("cloth-even", vec![face(ClothFlaw::Hole, 3), face(ClothFlaw::Patch, 5), face(ClothFlaw::None, 0)]),
        ("light-through", vec![light(26, 0.0), light(0, 0.7), light(0, 0.0)]),
        (
            "cloth-weight",
            [8.0, 11.0, 13.0, 15.0, 18.0].map(|ounces| P::Fold(Fold { ounces, spring: (ounces - 6.0) / 16.0 })).to_vec(),
        ),
        ("stretch", [0.4, 1.5, 2.5, 4.0].map(|give_cm| P::Give(Give { give_cm })).to_vec()),
        ("growth", [8.5, 6.0, 4.0, 1.5].map(|percent| P::Growth(Growth { percent })).to_vec()),
        ("rub-off", [0.95, 0.6, 0.2, 0.0].map(|strength| P::RubOff(RubOff { strength })).to_vec()),
        ("selvedge", vec![edge(Edge::DenseOverlock, true), edge(Edge::SewnTape, true), edge(Edge::SelfEdge, true)]),
        (
            "wash-level",
            vec![
                wash(0.0, 0.0, 0.0, true),
                wash(0.2, 0.0, 0.0, false),
                wash(0.4, 0.15, 0.0, false),
                wash(0.6, 0.7, 0.3, false),
                wash(0.85, 1.0, 0.8, false),
            ],
        ),
        (
            "dry-work",
            vec![
                whiskers(WhiskerWork::None, 0),
                whiskers(WhiskerWork::Laser, 5),
                whiskers(WhiskerWork::Hand, 5),
                whiskers(WhiskerWork::Creased, 5),
                whiskers(WhiskerWork::Torn, 4),
            ],
        ),
        (
            "finish-craft",
            [FadeEdge::Hard, FadeEdge::Abrupt, FadeEdge::Graded, FadeEdge::Natural].map(|edge| P::Fade(Fade { edge })).to_vec(),
        ),
        ("wash-depth", vec![wash(0.6, 0.0, 0.0, false), wash(0.6, 0.45, 0.15, false), wash(0.6, 1.0, 0.9, false)]),
        ("finish-harm", [Harm::Hole, Harm::Thin, Harm::Edge, Harm::None].map(|harm| P::Wear(Wear { harm })).to_vec()),
        ("inseam", [Join::Overlock, Join::OverlockAndRow, Join::FelledRunOff, Join::Felled].map(seam).to_vec()),
        (
            "seat-yoke",
            vec![yoke(Join::Overlock, 5.0), yoke(Join::MockFelled, 5.0), yoke(Join::Felled, 5.0), yoke(Join::Felled, 0.0)],
        ),
        (
            "outseam-edge",
            vec![
                edge(Edge::Raw, true),
                edge(Edge::LooseOverlock, true),
                edge(Edge::DenseOverlock, true),
                edge(Edge::Bound, true),
            ],
        ),
        (
            "bag-seam",
            [BagClosing::Overlock, BagClosing::SafetyRow, BagClosing::Turned]
                .map(|closing| P::BagSeam(BagSeam { closing }))
                .to_vec(),
        ),
        (
            "waistband",
            vec![
                band(0.0, 0.0, true, false, false),
                band(5.0, 4.0, false, true, false),
                band(1.5, 0.0, false, true, false),
                band(0.0, 0.0, false, true, true),
            ],
        ),
        (
            "hem-stitch",
            [HemStitch::Wrapped, HemStitch::Lock, HemStitch::Chain].map(|stitch| P::Hem(Hem { stitch, roping: 0.0 })).to_vec(),
        ),
        (
            "cutting",
            vec![matching(0.0, false, true), matching(0.0, false, false), matching(6.0, true, false), matching(0.0, true, false)],
        ),
        ("hang", [14.0, 7.0, 0.0].map(|length_off_mm| P::Symmetry(Symmetry { length_off_mm, width_off_mm: 0.0 })).to_vec()),
        ("leg-twist", [32.0, 20.0, 11.0, 3.0].map(|twist_mm| P::LegTwist(LegTwist { twist_mm })).to_vec()),
        ("pair-match", vec![pockets(9.0, 7.0, 8.0), pockets(4.5, 3.0, 4.5), pockets(2.0, 1.0, 2.0), pockets(0.0, 0.0, 0.0)]),
        (
            "sit-test",
            [(32.0, 40.0), (18.0, 18.0), (7.0, 5.0), (0.0, 0.0)]
                .map(|(bag_mm, gape_mm)| P::Bagging(Bagging { bag_mm, gape_mm }))
                .to_vec(),
        ),
        (
            "spi",
            vec![
                topstitch(|t| (t.stitches_per_inch, t.other_rows_per_inch, t.inch) = (4.5, 15.0, true)),
                topstitch(|t| (t.stitches_per_inch, t.other_rows_per_inch, t.inch) = (6.4, 11.2, true)),
                topstitch(|t| (t.stitches_per_inch, t.inch) = (8.5, true)),
            ],
        ),
        (
            "stitch-even",
            vec![
                topstitch(|t| (t.course, t.skips, t.unevenness) = (Course::CurveOverJoin, 3, 0.1)),
                topstitch(|t| (t.course, t.unevenness) = (Course::CurveOverJoin, 0.5)),
                topstitch(|t| (t.course, t.short_over_join) = (Course::CurveOverJoin, 0.45)),
                topstitch(|t| t.course = Course::CurveOverJoin),
            ],
        ),
        (
            "rows-true",
            vec![
                topstitch(|t| (t.course, t.wander_mm) = (Course::BluntCorner, 2.8)),
                topstitch(|t| (t.course, t.wander_mm) = (Course::BluntCorner, 1.2)),
                topstitch(|t| t.course = Course::BluntCorner),
                topstitch(|t| t.course = Course::CrispCorner),
            ],
        ),
        (
            "starts-stops",
            [Ending::Loose, Ending::Untidy, Ending::BackTacked, Ending::Hidden]
                .map(|ending| P::RowEnd(RowEnd { ending }))
                .to_vec(),
        ),
        (
            "restarts",
            vec![
                topstitch(|t| (t.restarts, t.bunching, t.loose_ends) = (3, 1.0, 3)),
                topstitch(|t| (t.restarts, t.bunching) = (2, 0.4)),
                topstitch(|t| t.restarts = 1),
                topstitch(|_| ()),
            ],
        ),
        ("thread-ends", [12, 7, 3, 0].map(|ends| P::ThreadTails(ThreadTails { ends })).to_vec()),
        ("pucker", [2.4, 1.2, 0.4, 0.0].map(|height_mm| P::Pucker(Pucker { height_mm, length_mm: 7.5 })).to_vec()),
        (
            "seam-waves",
            [(2.6, 1.0), (2.4, 0.5), (0.7, 1.0), (0.0, 0.0)]
                .map(|(height_mm, share)| P::SeamWaves(SeamWaves { height_mm, share }))
                .to_vec(),
        ),
        ("tacks", [2, 5, 8, 10].map(|secured| P::StressPoints(StressPoints { secured })).to_vec()),
        (
            "crotch",
            vec![crotch(6.0, true, false), crotch(8.0, false, false), crotch(3.0, false, false), crotch(0.0, false, true)],
        ),
        (
            "repairs",
            [(0.0, false), (0.55, false), (0.55, true), (1.0, true)]
                .map(|(sewn, backed)| P::Tear(Tear { sewn, backed }))
                .to_vec(),
        ),
        ("closure", [Fly::ZipCatches, Fly::ZipLight, Fly::ZipSound, Fly::ZipHeavy].map(P::Fly).to_vec()),
        ("fly-type", [Fly::ZipSound, Fly::Buttons].map(P::Fly).to_vec()),
        ("metal", vec![button(0.7, false, true), button(1.0, false, false), button(2.4, false, false), button(2.8, true, false)]),
        ("pocketing", vec![bag(1.0, false, 16.0), bag(0.3, false, 24.0), bag(0.0, true, 30.0), bag(0.0, true, 16.0)]),
        (
            "buttonhole",
            vec![
                hole(7.0, 1.0, false, false),
                hole(8.0, 0.1, false, false),
                hole(15.0, 0.0, false, true),
                hole(17.0, 0.0, true, true),
            ],
        ),
        ("details", [0, 2, 4, 6].map(|count| P::Details(Details { count })).to_vec()),
        ("care-label", vec![label(0, false, false, false), label(3, true, true, false), label(5, true, false, true)]),
        (
            ".seams",
            vec![
                seam(Join::MockFelled),
                seam(Join::Bound),
                yoke(Join::OverlockAndRow, 2.0),
                edge(Edge::SelfEdge, false),
                P::BagSeam(BagSeam { closing: BagClosing::Bound }),
                P::Hem(Hem { stitch: HemStitch::Chain, roping: 1.0 }),
            ],
        ),
        (
            ".cloth",
            vec![
                face(ClothFlaw::Streak, 5),
                face(ClothFlaw::Slub, 12),
                whiskers(WhiskerWork::Printed, 5),
                matching(2.0, true, true),
            ],
        ),
        (
            ".tack",
            [TackState::Absent, TackState::Loose, TackState::Dense, TackState::Riveted]
                .map(|state| P::BarTack(BarTack { state }))
                .to_vec(),
        ),
        (
            ".loop",
            [(0, false, 12), (1, true, 8), (2, true, 0)]
                .map(|(tacks, caught, tilt)| P::BeltLoop(BeltLoop { tacks, caught, tilt }))
                .to_vec(),
        ),
        (".rivet", vec![rivet(0.5, false, true), rivet(0.8, false, false), rivet(1.8, false, false), rivet(2.0, true, false)]),
        (
            ".hand",
            [(5.0, 0.0), (8.5, 0.2), (12.5, 0.5), (16.0, 0.9)].map(|(ounces, spring)| P::Fold(Fold { ounces, spring })).to_vec(),
        ),
        (
            ".legs",
            [(18.0, 14.0), (8.0, 6.0)]
                .map(|(length_off_mm, width_off_mm)| P::Symmetry(Symmetry { length_off_mm, width_off_mm }))
                .to_vec(),
        ),
    ]
}
