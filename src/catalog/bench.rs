//! The bench: which instruments lie together, and what each looks like in use. Data only.

use super::drawer::{Drawer, DrawnLook, DrawnScale, Tool};
use crate::measure;
use crate::specimen::*;

/// Every instrument, by what is done with it.
pub static DRAWERS: &[Drawer] = &[
    Drawer {
        name: "Ruler and count",
        tools: &[
            Tool {
                instrument: &measure::STITCH_DENSITY,
                drawn: Some(Picture::RulerOnSeam(RulerOnSeam { stitches_per_inch: 7.0 })),
            },
            Tool { instrument: &measure::STITCH_TAPS, drawn: Some(Picture::HolesMarked(HolesMarked { comb: false })) },
            Tool { instrument: &measure::STITCH_COMB, drawn: Some(Picture::HolesMarked(HolesMarked { comb: true })) },
            Tool {
                instrument: &measure::STITCH_COMB_LIVE,
                drawn: Some(Picture::RulerOnSeam(RulerOnSeam { stitches_per_inch: 10.0 })),
            },
            Tool { instrument: &measure::LOOSE_ENDS, drawn: Some(Picture::ThreadTails(ThreadTails { ends: 5 })) },
            Tool { instrument: &measure::TACKS, drawn: Some(Picture::StressPoints(StressPoints { secured: 8 })) },
        ],
    },
    Drawer {
        name: "Seams",
        tools: &[
            Tool {
                instrument: &measure::SEAM_STRENGTH,
                drawn: Some(Picture::StitchRun(StitchRun { kind: StitchKind::Lockstitch })),
            },
            Tool {
                instrument: &measure::THREAD_USE,
                drawn: Some(Picture::StitchRun(StitchRun { kind: StitchKind::Chainstitch })),
            },
            Tool { instrument: &measure::SEWING_TIME, drawn: Some(Picture::Topstitch(Topstitch::CLEAN)) },
            Tool {
                instrument: &measure::SPARE_CLOTH,
                drawn: Some(Picture::SpareCloth(SpareCloth { width_mm: 15.0, finished: true })),
            },
        ],
    },
    Drawer {
        name: "Cloth",
        tools: &[
            Tool { instrument: &measure::CLOTH_MASS, drawn: None },
            Tool { instrument: &measure::CLOTH_MASS_WEIGHED, drawn: Some(Picture::Hung(Hung)) },
            Tool { instrument: &measure::CLOTH_MASS_BUILT, drawn: Some(Picture::Weave(CLOSE)) },
            Tool { instrument: &measure::CLOTH_MASS_COMPARED, drawn: Some(Picture::Fold(Fold { ounces: 12.0, spring: 0.6 })) },
            Tool { instrument: &measure::THREAD_COUNT, drawn: Some(Picture::Window(Window { ends: 14, picks: 10 })) },
            Tool { instrument: &measure::CLOTH_COVER, drawn: Some(Picture::Weave(Weave { cover: 0.6, ..CLOSE })) },
            Tool { instrument: &measure::YARN, drawn: None },
            Tool { instrument: &measure::KNIT_GAUGE, drawn: Some(Picture::Sweater(Sweater::Gauge(Gauge { per_inch: 7.0 }))) },
            Tool {
                instrument: &measure::CLOTH_POINTS,
                drawn: Some(Picture::ClothFace(ClothFace { flaw: ClothFlaw::Hole, count: 3 })),
            },
        ],
    },
    Drawer {
        name: "Stretch, shrinkage and twist",
        tools: &[
            Tool { instrument: &measure::GIVE, drawn: Some(Picture::Fingertips(Fingertips { give_cm: 2.0 })) },
            Tool { instrument: &measure::GROWTH, drawn: Some(Picture::Growth(Growth { percent: 3.0 })) },
            Tool { instrument: &measure::STRETCH_AND_RECOVERY, drawn: Some(Picture::Give(Give { give_cm: 2.5 })) },
            Tool {
                instrument: &measure::RIB_RETURN,
                drawn: Some(Picture::Sweater(Sweater::RibCuff(RibCuff { wider_percent: 8.0 }))),
            },
            Tool { instrument: &measure::SHRINKAGE, drawn: Some(Picture::WashMarks(WashMarks { shorter_percent: 8.0 })) },
            Tool {
                instrument: &measure::SHRINKAGE_TO_EXPECT,
                drawn: Some(Picture::Label(Label { lines: 4, symbols: true, forbids: false, woven: true })),
            },
            Tool { instrument: &measure::LEG_TWIST, drawn: Some(Picture::LegTwist(LegTwist { twist_mm: 25.0 })) },
            Tool { instrument: &measure::SEAM_TWIST, drawn: Some(Picture::LegTwist(LegTwist { twist_mm: 45.0 })) },
        ],
    },
    Drawer {
        name: "Tape",
        tools: &[
            Tool { instrument: &measure::GIRTH, drawn: Some(Picture::Measure(Measure { point: Point::Waist })) },
            Tool { instrument: &measure::HEM_ROUND, drawn: Some(Picture::Dress(Dress::HemRound(HemRound { metres: 2.0 }))) },
        ],
    },
    Drawer {
        name: "From a photograph",
        tools: &[
            Tool {
                instrument: &measure::STITCH_PHOTO,
                drawn: Some(Picture::RulerOnSeam(RulerOnSeam { stitches_per_inch: 8.5 })),
            },
            Tool { instrument: &measure::THREAD_COUNT_PHOTO, drawn: Some(Picture::Window(Window { ends: 18, picks: 12 })) },
            Tool { instrument: &measure::TWILL_PHOTO, drawn: Some(Picture::Weave(Weave { ends_per_cm: 30.0, ..CLOSE })) },
            Tool { instrument: &measure::RUB_OFF_PHOTO, drawn: Some(Picture::RubOff(RubOff { strength: 0.25 })) },
        ],
    },
    Drawer {
        name: "Grades by eye",
        tools: &[
            Tool { instrument: &measure::RUB_OFF, drawn: Some(Picture::Rubbing(Rubbing)) },
            Tool { instrument: &measure::COLOUR_CHANGE, drawn: Some(Picture::ColourPair(ColourPair { grade: 2 })) },
            Tool { instrument: &measure::SEAM_SMOOTHNESS, drawn: Some(Picture::SideLight(SideLight { height_mm: 1.2 })) },
            Tool { instrument: &measure::PILLING, drawn: Some(Picture::Pilling(Pilling { grade: 3 })) },
        ],
    },
    Drawer {
        name: "With a colour meter",
        tools: &[
            Tool { instrument: &measure::STAINING_BY_METER, drawn: Some(Picture::RubOff(RubOff { strength: 0.45 })) },
            Tool { instrument: &measure::COLOUR_CHANGE_BY_METER, drawn: Some(Picture::ColourPair(ColourPair { grade: 1 })) },
        ],
    },
];

/// Denim of middling weight.
const CLOSE: Weave = Weave { ends_per_cm: 26.0, picks_per_cm: 18.0, cover: 0.9, unevenness: 0.05 };

/// What a look at a seam may find, drawn.
pub static LOOKS: &[DrawnLook] = &[
    DrawnLook {
        look: &measure::BACK,
        choices: &[
            ("same-line", Picture::SeamBack(SeamBack { look: BackLook::SameLine })),
            ("rope", Picture::SeamBack(SeamBack { look: BackLook::Rope })),
            ("one-thread-loops", Picture::SeamBack(SeamBack { look: BackLook::ThinChain })),
            ("ladder", Picture::SeamBack(SeamBack { look: BackLook::Ladder })),
            ("wrapped", Picture::SeamBack(SeamBack { look: BackLook::Wrapped })),
            ("wrapped-and-line", Picture::SeamBack(SeamBack { look: BackLook::WrappedAndLine })),
            ("zigzag", Picture::SeamBack(SeamBack { look: BackLook::Zigzag })),
            ("zigzag-inside", Picture::SeamBack(SeamBack { look: BackLook::ZigzagInside })),
            ("ladder-both", Picture::SeamBack(SeamBack { look: BackLook::LadderBoth })),
        ],
    },
    DrawnLook {
        look: &measure::ROWS,
        choices: &[
            ("none", Picture::NeedleLines(NeedleLines { lines: 0 })),
            ("one", Picture::NeedleLines(NeedleLines { lines: 1 })),
            ("two", Picture::NeedleLines(NeedleLines { lines: 2 })),
            ("three", Picture::NeedleLines(NeedleLines { lines: 3 })),
            ("four", Picture::NeedleLines(NeedleLines { lines: 4 })),
        ],
    },
    DrawnLook {
        look: &measure::EDGE,
        choices: &[
            ("hidden-two-rows", Picture::JoinedSeam(JoinedSeam { join: Join::Felled })),
            ("hidden-one-row", Picture::RawEdge(RawEdge { fate: EdgeFate::Tube })),
            ("wrapped-rows-outside", Picture::JoinedSeam(JoinedSeam { join: Join::MockFelled })),
            ("wrapped", Picture::JoinedSeam(JoinedSeam { join: Join::Overlock })),
            ("tape-both", Picture::JoinedSeam(JoinedSeam { join: Join::Bound })),
            ("tape-each", Picture::RawEdge(RawEdge { fate: EdgeFate::TapeEach })),
            ("butted", Picture::RawEdge(RawEdge { fate: EdgeFate::Butted })),
            ("turned-once", Picture::RawEdge(RawEdge { fate: EdgeFate::TurnedOnce })),
            ("turned-twice", Picture::RawEdge(RawEdge { fate: EdgeFate::TurnedTwice })),
            ("one-ply", Picture::RawEdge(RawEdge { fate: EdgeFate::OnePly })),
            ("raw", Picture::RawEdge(RawEdge { fate: EdgeFate::Raw })),
        ],
    },
];

/// Stitches whose threads are drawn, by their number in [`measure::STITCH_TYPES`].
pub static STITCHES: &[(&str, Picture)] = &[
    ("301", Picture::StitchRun(StitchRun { kind: StitchKind::Lockstitch })),
    ("401", Picture::StitchRun(StitchRun { kind: StitchKind::Chainstitch })),
    ("504", Picture::StitchRun(StitchRun { kind: StitchKind::Overedge })),
    ("406", Picture::StitchRun(StitchRun { kind: StitchKind::Cover })),
];

/// Drawn references of our own for the grades by eye. Amounts of rub-off, ripple and pills: judgement.
pub static GRADES: &[DrawnScale] = &[
    DrawnScale {
        instrument: &measure::RUB_OFF,
        scale: &measure::RUB_OFF_SCALE,
        steps: [
            Picture::RubOff(RubOff { strength: 1.0 }),
            Picture::RubOff(RubOff { strength: 0.7 }),
            Picture::RubOff(RubOff { strength: 0.45 }),
            Picture::RubOff(RubOff { strength: 0.2 }),
            Picture::RubOff(RubOff { strength: 0.0 }),
        ],
    },
    DrawnScale {
        instrument: &measure::COLOUR_CHANGE,
        scale: &measure::COLOUR_CHANGE_SCALE,
        steps: [
            Picture::ColourPair(ColourPair { grade: 1 }),
            Picture::ColourPair(ColourPair { grade: 2 }),
            Picture::ColourPair(ColourPair { grade: 3 }),
            Picture::ColourPair(ColourPair { grade: 4 }),
            Picture::ColourPair(ColourPair { grade: 5 }),
        ],
    },
    DrawnScale {
        instrument: &measure::SEAM_SMOOTHNESS,
        scale: &measure::SEAM_SMOOTHNESS_SCALE,
        steps: [
            Picture::Pucker(Pucker { height_mm: 2.6, length_mm: 7.5 }),
            Picture::Pucker(Pucker { height_mm: 1.6, length_mm: 7.5 }),
            Picture::Pucker(Pucker { height_mm: 0.9, length_mm: 7.5 }),
            Picture::Pucker(Pucker { height_mm: 0.35, length_mm: 7.5 }),
            Picture::Pucker(Pucker { height_mm: 0.0, length_mm: 7.5 }),
        ],
    },
    DrawnScale {
        instrument: &measure::PILLING,
        scale: &measure::PILLING_SCALE,
        steps: [
            Picture::Pilling(Pilling { grade: 1 }),
            Picture::Pilling(Pilling { grade: 2 }),
            Picture::Pilling(Pilling { grade: 3 }),
            Picture::Pilling(Pilling { grade: 4 }),
            Picture::Pilling(Pilling { grade: 5 }),
        ],
    },
];
