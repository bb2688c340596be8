//! Where the tape goes on a body: a plain standing figure, with the tape where one measure is taken.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::figure_piece::How::{Filled, Line, Tape};
use super::figure_piece::Sides::{Both, Half, One};
use super::figure_piece::{At, How, Piece, View};
use crate::say;

/// A figure, and where the tape goes on it. What is measured is as ISO 8559-1:2017 and EN 13402-1 define it, from memory; the band and the
/// upper arm are ours.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum OnBody {
    /// The figure from the front, and no tape.
    Front,
    /// The figure from the back, and no tape.
    Back,
    /// Crown to floor.
    Height,
    /// Round the neck, just above the collarbone.
    Neck,
    /// From shoulder point to shoulder point across the back.
    Shoulders,
    /// Round the chest, under the armpits.
    Chest,
    /// Round the fullest bust.
    Bust,
    /// Round the waist, midway between lowest rib and top of the hip bone.
    Waist,
    /// Round the body where a waistband sits.
    Band,
    /// Round the fullest seat.
    Hip,
    /// Round the upper leg.
    Thigh,
    /// Crotch to floor.
    InsideLeg,
    /// Shoulder point over the bent elbow to the wrist bone.
    Arm,
    /// Nape to waist.
    BackLength,
    /// Round the upper arm.
    UpperArm,
}

/// The figure in cm, 170 high: across from its middle, and down from its crown. It is no one's: plain, and the same on both sides.
const HEAD: [At; 10] = [(0, 0), (4, 0), (8, 3), (9, 10), (7, 18), (5, 22), (6, 27), (14, 30), (21, 32), (23, 37)];
const ARM: [At; 15] = [
    (25, 50),
    (27, 64),
    (29, 76),
    (29, 85),
    (32, 92),
    (32, 102),
    (29, 103),
    (27, 98),
    (27, 86),
    (25, 76),
    (22, 64),
    (19, 52),
    (17, 44),
    (16, 42),
    (16, 42),
];
/// Hand near the hip: over this bend the tape runs from shoulder to wrist.
const ARM_BENT: [At; 14] = [
    (30, 46),
    (38, 57),
    (36, 63),
    (28, 72),
    (24, 79),
    (21, 85),
    (18, 85),
    (19, 79),
    (23, 70),
    (29, 60),
    (23, 52),
    (18, 45),
    (16, 42),
    (16, 42),
];
const SIDE: [At; 24] = [
    (16, 50),
    (15, 58),
    (14, 65),
    (15, 73),
    (17, 80),
    (18, 88),
    (18, 100),
    (16, 114),
    (15, 124),
    (16, 136),
    (14, 150),
    (12, 161),
    (14, 168),
    (12, 170),
    (6, 170),
    (5, 165),
    (6, 158),
    (5, 146),
    (4, 136),
    (5, 124),
    (3, 108),
    (1, 97),
    (0, 92),
    (0, 92),
];

const fn joined<const N: usize>(parts: [&[At]; 3]) -> [At; N] {
    let mut whole = [(0, 0); N];
    let (mut part, mut at) = (0, 0);
    while part < parts.len() {
        let mut index = 0;
        while index < parts[part].len() {
            whole[at] = parts[part][index];
            at += 1;
            index += 1;
        }
        part += 1;
    }
    whole
}

static STRAIGHT: [At; 49] = joined([&HEAD, &ARM, &SIDE]);
static BENT: [At; 48] = joined([&HEAD, &ARM_BENT, &SIDE]);

pub(super) static BODY: Piece = Piece(Filled(Ink::Weft), Half, &STRAIGHT);
static BODY_BENT: Piece = Piece(Filled(Ink::Weft), Half, &BENT);

const FAINT: How = Line(Ink::Metal, 10);
/// What shows a front as one: collarbones.
static FRONT: [Piece; 1] = [Piece(FAINT, Both, &[(2, 31), (8, 29), (15, 31)])];
/// What shows a back as one: spine, shoulder blades, seat.
static BACK: [Piece; 3] = [
    Piece(FAINT, One, &[(0, 34), (0, 62)]),
    Piece(FAINT, Both, &[(6, 38), (6, 46), (11, 50)]),
    Piece(FAINT, Both, &[(0, 80), (0, 92), (8, 94), (15, 91)]),
];

const BONE: How = Line(Ink::ClothLight, 14);

impl OnBody {
    /// All of them: the plain figures, then crown to floor.
    pub const ALL: [OnBody; 15] = [
        OnBody::Front,
        OnBody::Back,
        OnBody::Height,
        OnBody::Neck,
        OnBody::Shoulders,
        OnBody::Chest,
        OnBody::Bust,
        OnBody::Waist,
        OnBody::Band,
        OnBody::Hip,
        OnBody::Thigh,
        OnBody::InsideLeg,
        OnBody::Arm,
        OnBody::BackLength,
        OnBody::UpperArm,
    ];

    /// Whether the figure turns its back.
    fn turned(self) -> bool {
        matches!(self, OnBody::Back | OnBody::Shoulders | OnBody::Arm | OnBody::BackLength)
    }

    pub(super) fn view(self) -> View {
        let (scale, top) = match self {
            OnBody::Front | OnBody::Back | OnBody::Height => (0.45, 1.8),
            OnBody::Neck => (1.8, -4.0),
            OnBody::Shoulders => (1.5, -8.0),
            OnBody::Chest | OnBody::Bust => (1.3, -22.0),
            OnBody::Waist => (1.5, -58.0),
            OnBody::Band | OnBody::Hip => (1.3, -62.0),
            OnBody::Thigh => (1.2, -80.0),
            OnBody::InsideLeg => (0.84, -66.0),
            OnBody::Arm | OnBody::BackLength => (1.1, -16.0),
            OnBody::UpperArm => (1.5, -36.0),
        };
        View { scale, top }
    }

    /// What lies on the figure: the tape last.
    pub(super) fn laid(self) -> &'static [Piece] {
        match self {
            OnBody::Front | OnBody::Back => &[],
            OnBody::Height => &[
                Piece(Line(Ink::Metal, 10), One, &[(-50, 170), (60, 170)]),
                Piece(Line(Ink::Metal, 10), One, &[(-8, 0), (46, 0)]),
                Piece(Tape, One, &[(42, 0), (42, 170)]),
            ],
            OnBody::Neck => &[Piece(Tape, One, &[(-6, 24), (0, 27), (6, 24)])],
            OnBody::Shoulders => &[Piece(Tape, One, &[(-20, 32), (-10, 29), (0, 28), (10, 29), (20, 32)])],
            OnBody::Chest => &[Piece(Tape, One, &[(-16, 45), (-12, 48), (12, 48), (16, 45)])],
            OnBody::Bust => &[
                Piece(FAINT, Both, &[(3, 53), (7, 58), (13, 55)]),
                Piece(Tape, One, &[(-16, 51), (-12, 54), (12, 54), (16, 51)]),
            ],
            OnBody::Waist => &[
                Piece(BONE, Both, &[(3, 51), (5, 57), (12, 60)]),
                Piece(BONE, Both, &[(4, 80), (6, 71), (12, 70)]),
                Piece(Tape, One, &[(-14, 65), (-10, 67), (10, 67), (14, 65)]),
            ],
            OnBody::Band => &[
                Piece(
                    Filled(Ink::ClothPale),
                    Half,
                    &[
                        (0, 76),
                        (0, 76),
                        (10, 76),
                        (16, 74),
                        (16, 74),
                        (19, 88),
                        (18, 108),
                        (17, 120),
                        (17, 120),
                        (3, 120),
                        (3, 120),
                        (1, 94),
                        (0, 93),
                        (0, 93),
                    ],
                ),
                Piece(Line(Ink::ClothLight, 10), One, &[(-17, 79), (-10, 81), (10, 81), (17, 79)]),
                Piece(Line(Ink::ClothLight, 10), One, &[(0, 81), (0, 93)]),
                Piece(Tape, One, &[(-15, 74), (-10, 76), (10, 76), (15, 74)]),
            ],
            OnBody::Hip => &[Piece(Tape, One, &[(-18, 86), (-12, 89), (12, 89), (18, 86)])],
            OnBody::Thigh => &[Piece(Tape, One, &[(2, 99), (6, 101), (13, 101), (18, 99)])],
            OnBody::InsideLeg => {
                &[Piece(Line(Ink::Metal, 12), One, &[(-50, 170), (50, 170)]), Piece(Tape, One, &[(0, 93), (0, 170)])]
            }
            OnBody::Arm => &[Piece(Tape, One, &[(20, 32), (29, 46), (35, 56), (35, 61), (29, 68), (22, 78)])],
            OnBody::BackLength => &[
                Piece(Line(Ink::ClothLight, 14), One, &[(-14, 65), (-10, 66), (10, 66), (14, 65)]),
                Piece(Tape, One, &[(0, 27), (0, 65)]),
            ],
            OnBody::UpperArm => &[Piece(Tape, Both, &[(18, 48), (20, 50), (23, 49), (25, 47)])],
        }
    }

    pub(super) fn words(self) -> String {
        String::from(match self {
            OnBody::Front => say!("a standing figure from the front"),
            OnBody::Back => say!("a standing figure from the back"),
            OnBody::Height => say!("a standing figure, a tape beside it from the floor to the top of the head"),
            OnBody::Neck => say!("a tape round the neck, just above the collarbone"),
            OnBody::Shoulders => {
                say!("a figure from the back, a tape from one shoulder point to the other over the base of the neck")
            }
            OnBody::Chest => say!("a tape level round the chest, close under the armpits"),
            OnBody::Bust => say!("a tape level round the bust where it is fullest, a little below the armpits"),
            OnBody::Waist => say!("a tape round the waist, midway between the lowest rib and the top of the hip bone"),
            OnBody::Band => say!("a tape round the body along the top of a waistband"),
            OnBody::Hip => say!("a tape level round the hips where the seat is fullest"),
            OnBody::Thigh => say!("a tape level round one leg, just below the crotch"),
            OnBody::InsideLeg => say!("a tape from the crotch straight down to the floor"),
            OnBody::Arm => say!("a figure from the back, a tape from the shoulder point over the bent elbow to the wrist bone"),
            OnBody::BackLength => say!("a figure from the back, a tape from the bone at the base of the neck down to the waist"),
            OnBody::UpperArm => say!("a tape round the upper arm where it is fullest"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let body = if self == OnBody::Arm { &BODY_BENT } else { &BODY };
        let shows: &[Piece] = if self.turned() { &BACK } else { &FRONT };
        sheet.pieces(self.view(), [body].into_iter().chain(shows).chain(self.laid()));
    }
}
