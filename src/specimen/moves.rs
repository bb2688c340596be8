//! What one does in a fitting room: small figures that sit, reach and step.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::figure_piece::How::{Disc, Filled, Limb, Line, Mark};
use super::figure_piece::Sides::{Both, Half, One};
use super::figure_piece::{How, Piece, View};
use crate::language::said;
use crate::to_say;

/// A move to make in the garment. Handbook, section 9.7: common practice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pose {
    /// Sit down.
    Sit,
    /// Squat.
    Squat,
    /// Reach both arms forward.
    ReachForward,
    /// Raise both arms.
    ReachUp,
    /// Step up high: 45 cm.
    HighStep,
    /// Hands in the pockets.
    HandsInPockets,
    /// Bend down to the shoe.
    Bend,
    /// Stand for a minute, then look from the side.
    StandAMinute,
    /// Arms crossed, a hand on either shoulder.
    Hug,
    /// Pull it over the head.
    OverTheHead,
    /// Turn the head.
    TurnHead,
}

const TRUNK: How = Limb(Ink::Weft, 100);
const ARM: How = Limb(Ink::Weft, 44);
const THIGH: How = Limb(Ink::ClothPale, 74);
const FAR: How = Limb(Ink::ClothLight, 62);
const FOOT: How = Limb(Ink::Metal, 32);
const HEAD: How = Disc(Ink::Weft, 52);
const FLOOR: How = Line(Ink::Metal, 12);
const BLOCK: How = Filled(Ink::Metal);
const NECK: How = Limb(Ink::Weft, 34);

const GROUND: Piece = Piece(FLOOR, One, &[(-44, 77), (44, 77)]);
/// Someone who stands, from the side.
const STANDS: [Piece; 5] = [
    Piece(FOOT, One, &[(0, 74), (7, 75)]),
    Piece(THIGH, One, &[(0, 40), (1, 57), (0, 72)]),
    Piece(NECK, One, &[(0, 24), (1, 13)]),
    Piece(TRUNK, One, &[(0, 24), (0, 37)]),
    Piece(HEAD, One, &[(1, 11)]),
];
/// Someone who stands, from the front.
const FACES: [Piece; 4] = [
    Piece(FOOT, Both, &[(5, 74), (8, 75)]),
    Piece(
        Filled(Ink::Weft),
        Half,
        &[(0, 12), (0, 12), (2, 12), (2, 18), (8, 19), (11, 23), (9, 32), (8, 41), (8, 41), (0, 41), (0, 41)],
    ),
    Piece(
        Filled(Ink::ClothPale),
        Half,
        &[
            (0, 39),
            (0, 39),
            (8, 39),
            (8, 39),
            (10, 48),
            (9, 60),
            (9, 73),
            (9, 73),
            (2, 73),
            (2, 73),
            (2, 60),
            (1, 49),
            (1, 49),
            (0, 48),
            (0, 48),
        ],
    ),
    Piece(HEAD, One, &[(0, 9)]),
];

struct Row {
    key: &'static str,
    words: &'static str,
    view: View,
    pieces: &'static [Piece],
}

impl Pose {
    /// All of them.
    pub const ALL: [Pose; 11] = [
        Pose::Sit,
        Pose::Squat,
        Pose::ReachForward,
        Pose::ReachUp,
        Pose::HighStep,
        Pose::HandsInPockets,
        Pose::Bend,
        Pose::StandAMinute,
        Pose::Hug,
        Pose::OverTheHead,
        Pose::TurnHead,
    ];

    fn row(self) -> &'static Row {
        // In the order of the enum; a test holds each to its name.
        &ROWS[self as usize]
    }

    /// Its name in kebab case, as moves of a fitting are keyed.
    pub const fn key(self) -> &'static str {
        ROWS[self as usize].key
    }

    /// What it is drawn of.
    #[cfg(test)]
    pub(super) fn pieces(self) -> &'static [Piece] {
        self.row().pieces
    }

    pub(super) fn words(self) -> String {
        String::from(said(self.row().words))
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let row = self.row();
        sheet.pieces(row.view, row.pieces);
    }
}

/// Room above the head for arms.
const LOWER: View = View { scale: 0.86, top: 11.0 };

static ROWS: [Row; 11] = [
    Row {
        key: "sit",
        words: to_say!("a figure from the side, sitting upright on a bench"),
        view: View::PLAIN,
        pieces: &[
            GROUND,
            Piece(BLOCK, One, &[(-20, 54), (-20, 54), (4, 54), (4, 54), (4, 77), (4, 77), (-20, 77), (-20, 77)]),
            Piece(FOOT, One, &[(14, 74), (21, 75)]),
            Piece(THIGH, One, &[(-7, 48), (13, 49), (13, 72)]),
            Piece(NECK, One, &[(-7, 32), (-6, 20)]),
            Piece(TRUNK, One, &[(-7, 32), (-8, 45)]),
            Piece(HEAD, One, &[(-6, 18)]),
            Piece(ARM, One, &[(-7, 31), (-5, 42), (6, 45)]),
        ],
    },
    Row {
        key: "squat",
        words: to_say!("a figure from the side, squatting, arms forward"),
        view: View::PLAIN,
        pieces: &[
            GROUND,
            Piece(FOOT, One, &[(0, 74), (8, 75)]),
            Piece(THIGH, One, &[(-10, 62), (9, 55), (0, 72)]),
            Piece(NECK, One, &[(-2, 45), (3, 33)]),
            Piece(TRUNK, One, &[(-2, 45), (-10, 59)]),
            Piece(HEAD, One, &[(3, 31)]),
            Piece(ARM, One, &[(-1, 44), (10, 46), (21, 44)]),
        ],
    },
    Row {
        key: "reach-forward",
        words: to_say!("a figure from the side, both arms reaching forward"),
        view: View::PLAIN,
        pieces: &[GROUND, STANDS[0], STANDS[1], STANDS[2], STANDS[3], STANDS[4], Piece(ARM, One, &[(1, 23), (14, 23), (27, 22)])],
    },
    Row {
        key: "reach-up",
        words: to_say!("a figure from the front, both arms raised"),
        view: LOWER,
        pieces: &[GROUND, FACES[0], FACES[1], FACES[2], Piece(ARM, Both, &[(7, 23), (13, 10), (12, 0)]), FACES[3]],
    },
    Row {
        key: "high-step",
        words: to_say!("a figure from the side, one foot up on a step as high as the knee"),
        view: View::PLAIN,
        pieces: &[
            GROUND,
            Piece(BLOCK, One, &[(11, 58), (11, 58), (36, 58), (36, 58), (36, 77), (36, 77), (11, 77), (11, 77)]),
            Piece(FOOT, One, &[(-4, 74), (3, 75)]),
            Piece(FAR, One, &[(0, 40), (-2, 57), (-4, 72)]),
            Piece(FOOT, One, &[(17, 55), (24, 56)]),
            Piece(THIGH, One, &[(0, 39), (16, 36), (16, 53)]),
            Piece(NECK, One, &[(2, 24), (4, 13)]),
            Piece(TRUNK, One, &[(2, 24), (0, 37)]),
            Piece(HEAD, One, &[(4, 10)]),
            Piece(ARM, One, &[(2, 24), (-3, 34), (0, 44)]),
        ],
    },
    Row {
        key: "hands-in-pockets",
        words: to_say!("a figure from the front, both hands in the trouser pockets"),
        view: View::PLAIN,
        pieces: &[
            GROUND,
            FACES[0],
            FACES[1],
            FACES[2],
            FACES[3],
            Piece(ARM, Both, &[(8, 23), (15, 33), (8, 42)]),
            Piece(Mark, Both, &[(4, 40), (10, 45)]),
        ],
    },
    Row {
        key: "bend",
        words: to_say!("a figure from the side, bent down, both hands at one shoe"),
        view: View::PLAIN,
        pieces: &[
            GROUND,
            Piece(FOOT, One, &[(-3, 74), (6, 75)]),
            Piece(THIGH, One, &[(-9, 42), (-2, 57), (-4, 72)]),
            Piece(NECK, One, &[(6, 44), (17, 47)]),
            Piece(TRUNK, One, &[(6, 44), (-7, 40)]),
            Piece(HEAD, One, &[(19, 48)]),
            Piece(ARM, One, &[(7, 46), (9, 59), (4, 71)]),
        ],
    },
    Row {
        key: "stand-a-minute",
        words: to_say!("a figure from the side before a mirror, a clock beside it"),
        view: View::PLAIN,
        pieces: &[
            GROUND,
            Piece(Filled(Ink::ClothPale), One, &[(26, 8), (26, 8), (32, 4), (32, 4), (32, 77), (32, 77), (26, 77), (26, 77)]),
            STANDS[0],
            STANDS[1],
            STANDS[2],
            STANDS[3],
            STANDS[4],
            Piece(ARM, One, &[(0, 24), (-2, 34), (0, 45)]),
            Piece(Disc(Ink::Paper, 90), One, &[(-32, 20)]),
            Piece(Mark, One, &[(-32, 14), (-32, 14), (-32, 20), (-32, 20), (-28, 22), (-28, 22)]),
        ],
    },
    Row {
        key: "hug",
        words: to_say!("a figure from the front, arms crossed, a hand on either shoulder"),
        view: View::PLAIN,
        pieces: &[
            GROUND,
            FACES[0],
            FACES[1],
            FACES[2],
            FACES[3],
            Piece(ARM, One, &[(8, 23), (9, 34), (-6, 25)]),
            Piece(ARM, One, &[(-8, 23), (-9, 34), (6, 25)]),
        ],
    },
    Row {
        key: "over-the-head",
        words: to_say!("a figure from the front, arms up, pulling a top over the head"),
        view: LOWER,
        pieces: &[
            GROUND,
            FACES[0],
            FACES[1],
            FACES[2],
            FACES[3],
            Piece(
                Filled(Ink::ClothPale),
                One,
                &[(-9, 0), (-9, 0), (9, 0), (9, 0), (9, 12), (9, 12), (0, 14), (-9, 12), (-9, 12)],
            ),
            Piece(ARM, Both, &[(8, 24), (17, 15), (9, 6)]),
        ],
    },
    Row {
        key: "turn-head",
        words: to_say!("a figure from the front, turning the head to one side and the other"),
        view: LOWER,
        pieces: &[
            GROUND,
            FACES[0],
            FACES[1],
            FACES[2],
            FACES[3],
            Piece(ARM, Both, &[(9, 24), (11, 34), (10, 44)]),
            Piece(Mark, One, &[(-11, 8), (-8, 0), (8, 0), (11, 8)]),
            Piece(Mark, Both, &[(7, 6), (7, 6), (11, 8), (11, 8), (14, 4), (14, 4)]),
        ],
    },
];
