//! The pictures recommended for the answers of each check of jeans: what tests look at and the sheet shows.
//! How much of a fault stands for which answer is judgement; where a check has a number, the value lies inside that answer's span.

use super::*;

/// Answers of a check and the pictures recommended for them, worst first; a last one may stand beside the scale.
pub fn answers() -> Vec<(&'static str, Vec<Picture>)> {
    use Picture as P;
    let clean = Topstitch::CLEAN;
    let topstitch = |change: fn(&mut Topstitch)| {
        let mut one = clean;
        change(&mut one);
        P::Topstitch(one)
    };
    let weave = |ends_per_cm, picks_per_cm, cover, unevenness| P::Weave(Weave { ends_per_cm, picks_per_cm, cover, unevenness });
    let face = |flaw, count| P::ClothFace(ClothFace { flaw, count });
    let seam = |join| P::JoinedSeam(JoinedSeam { join });
    let yoke = |join, miss_mm| P::SeatYoke(SeatYoke { join, miss_mm });
    let edge = |edge, whole_leg| P::OutseamEdge(OutseamEdge { edge, whole_leg });
    let wash = |loss, high_low, mottle, creased| P::Wash(Wash { loss, high_low, mottle, creased });
    let whiskers = |work, lines| P::Whiskers(Whiskers { work, lines });
    let hole = |stitches_per_cm, ragged, keyhole, bar| P::Buttonhole(Buttonhole { stitches_per_cm, ragged, keyhole, bar });
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
        (
            "cloth-hand, as a fold",
            [(5.0, 0.0), (8.5, 0.2), (12.5, 0.5), (16.0, 0.9)].map(|(ounces, spring)| P::Fold(Fold { ounces, spring })).to_vec(),
        ),
        (
            "cloth-even",
            vec![
                face(ClothFlaw::Hole, 3),
                face(ClothFlaw::Streak, 5),
                face(ClothFlaw::Patch, 5),
                face(ClothFlaw::None, 0),
                face(ClothFlaw::Slub, 12),
            ],
        ),
        ("growth", [8.5, 6.0, 4.0, 2.0].map(|percent| P::Growth(Growth { percent })).to_vec()),
        ("rub-off", [0.95, 0.6, 0.2, 0.0].map(|strength| P::RubOff(RubOff { strength })).to_vec()),
        ("leg-twist", [32.0, 20.0, 11.0, 3.0].map(|twist_mm| P::LegTwist(LegTwist { twist_mm })).to_vec()),
        (
            "pair-match",
            [(9.0, 7.0, 8.0), (4.5, 3.0, 4.5), (2.0, 1.0, 2.0), (0.0, 0.0, 0.0)]
                .map(|(level_off_mm, centre_off_mm, yoke_off_mm)| {
                    P::BackPockets(BackPockets { level_off_mm, centre_off_mm, yoke_off_mm })
                })
                .to_vec(),
        ),
        (
            "sit-test",
            [(32.0, 40.0), (18.0, 18.0), (7.0, 5.0), (0.0, 0.0)]
                .map(|(bag_mm, gape_mm)| P::Bagging(Bagging { bag_mm, gape_mm }))
                .to_vec(),
        ),
        (
            "inseam",
            vec![
                seam(Join::Overlock),
                seam(Join::OverlockAndRow),
                seam(Join::MockFelled),
                seam(Join::FelledRunOff),
                seam(Join::Felled),
                seam(Join::Bound),
            ],
        ),
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
                edge(Edge::SelfEdge, true),
            ],
        ),
        (
            "selvedge",
            vec![
                edge(Edge::DenseOverlock, true),
                edge(Edge::SelfEdge, false),
                edge(Edge::SewnTape, true),
                edge(Edge::SelfEdge, true),
            ],
        ),
        (
            "bag-seam",
            [BagClosing::Overlock, BagClosing::SafetyRow, BagClosing::Turned, BagClosing::Bound]
                .map(|closing| P::BagSeam(BagSeam { closing }))
                .to_vec(),
        ),
        (
            "hem",
            [(HemStitch::Lock, 0.0), (HemStitch::Chain, 0.0), (HemStitch::Chain, 1.0)]
                .map(|(stitch, roping)| P::Hem(Hem { stitch, roping }))
                .to_vec(),
        ),
        (
            "spi",
            vec![
                topstitch(|t| (t.stitches_per_inch, t.inch) = (4.5, true)),
                topstitch(|t| (t.stitches_per_inch, t.inch) = (6.3, true)),
                topstitch(|t| (t.stitches_per_inch, t.inch) = (8.5, true)),
                topstitch(|t| (t.stitches_per_inch, t.inch) = (14.0, true)),
            ],
        ),
        (
            "stitch-even",
            vec![
                topstitch(|t| (t.skips, t.unevenness) = (3, 0.1)),
                topstitch(|t| t.unevenness = 0.5),
                topstitch(|_| ()),
                topstitch(|t| t.course = Course::CurveOverJoin),
            ],
        ),
        (
            "restarts",
            vec![
                topstitch(|t| (t.restarts, t.bunching, t.loose_ends, t.unevenness, t.wander_mm) = (4, 0.9, 4, 0.35, 0.8)),
                topstitch(|t| (t.restarts, t.bunching, t.loose_ends, t.unevenness) = (3, 0.35, 1, 0.15)),
                topstitch(|t| t.restarts = 1),
                topstitch(|_| ()),
            ],
        ),
        (
            "rows-true",
            vec![
                topstitch(|t| (t.course, t.wander_mm) = (Course::BluntCorner, 2.4)),
                topstitch(|t| (t.course, t.wander_mm) = (Course::BluntCorner, 1.0)),
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
        ("thread-ends", [12, 7, 3, 0].map(|ends| P::ThreadTails(ThreadTails { ends })).to_vec()),
        (
            "pucker",
            [(2.4, 7.0), (1.2, 8.0), (0.4, 8.0), (0.0, 8.0), (2.0, 18.0)]
                .map(|(height_mm, length_mm)| P::Pucker(Pucker { height_mm, length_mm }))
                .to_vec(),
        ),
        ("tacks", [2, 5, 8, 10].map(|secured| P::StressPoints(StressPoints { secured })).to_vec()),
        (
            "bar tack",
            [TackState::Absent, TackState::Loose, TackState::Dense, TackState::Riveted]
                .map(|state| P::BarTack(BarTack { state }))
                .to_vec(),
        ),
        (
            "crotch",
            [(6.0, true, false), (8.0, false, false), (3.0, false, false), (0.0, false, true)]
                .map(|(miss_mm, gap, tack)| P::Crotch(Crotch { miss_mm, gap, tack }))
                .to_vec(),
        ),
        (
            "belt loop",
            [(0, false, 12), (1, true, 8), (2, true, 0)]
                .map(|(tacks, caught, tilt)| P::BeltLoop(BeltLoop { tacks, caught, tilt }))
                .to_vec(),
        ),
        ("closure", [Fly::ZipCatches, Fly::ZipLight, Fly::ZipSound, Fly::ZipHeavy, Fly::Buttons].map(P::Fly).to_vec()),
        (
            "metal: button",
            [(0.7, false, true), (1.0, false, false), (2.4, false, false), (2.8, true, false)]
                .map(|(cap_mm, backed, loose)| P::Button(Button { cap_mm, backed, loose }))
                .to_vec(),
        ),
        (
            "metal: rivet",
            [(0.5, false, true), (0.8, false, false), (1.8, false, false), (2.0, true, false)]
                .map(|(head_mm, backed, loose)| P::Rivet(Rivet { head_mm, backed, loose }))
                .to_vec(),
        ),
        (
            "pocketing",
            [(1.0, false, 16.0), (0.5, false, 24.0), (0.0, true, 30.0), (0.0, true, 16.0)]
                .map(|(sheer, twill, yarns_per_cm)| P::PocketCloth(PocketCloth { sheer, twill, yarns_per_cm }))
                .to_vec(),
        ),
        (
            "buttonhole",
            vec![
                hole(7.0, 1.0, false, false),
                hole(8.0, 0.1, false, false),
                hole(15.0, 0.0, false, true),
                hole(17.0, 0.0, true, true),
            ],
        ),
        (
            "finish-craft",
            [FadeEdge::Hard, FadeEdge::Abrupt, FadeEdge::Graded, FadeEdge::Natural].map(|edge| P::Fade(Fade { edge })).to_vec(),
        ),
        (
            "finish-harm",
            [Harm::Hole, Harm::Thin, Harm::Edge, Harm::None, Harm::HoleOpen, Harm::HoleRepaired]
                .map(|harm| P::Wear(Wear { harm }))
                .to_vec(),
        ),
        ("cloth-weight", [8.0, 11.0, 13.0, 15.0, 18.0].map(|ounces| P::Fold(Fold { ounces, spring: 0.35 })).to_vec()),
        ("stretch", [0.4, 1.5, 2.5, 4.0].map(|give_cm| P::Give(Give { give_cm })).to_vec()),
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
                whiskers(WhiskerWork::Printed, 5),
                whiskers(WhiskerWork::Laser, 5),
                whiskers(WhiskerWork::Hand, 5),
                whiskers(WhiskerWork::Creased, 5),
                whiskers(WhiskerWork::Torn, 4),
            ],
        ),
        (
            "label",
            [(0, false, false), (3, true, false), (5, true, true)]
                .map(|(lines, symbols, woven)| P::Label(Label { lines, symbols, woven }))
                .to_vec(),
        ),
        (
            "matching",
            [(7.0, false), (2.0, false), (0.0, false), (3.0, true)]
                .map(|(miss_mm, pieced)| P::Matching(Matching { miss_mm, pieced }))
                .to_vec(),
        ),
        (
            "symmetry",
            [(25.0, 14.0), (10.0, 6.0), (0.0, 0.0)]
                .map(|(length_off_mm, width_off_mm)| P::Symmetry(Symmetry { length_off_mm, width_off_mm }))
                .to_vec(),
        ),
    ]
}
