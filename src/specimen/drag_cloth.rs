//! What lines show on, as it is worn: trousers.

use super::drawing::Ink;
use super::figure_piece::How::{Filled, Line};
use super::figure_piece::Sides::{Both, Half, One};
use super::figure_piece::{How, Piece, View};

/// A garment, or the part of one, and how large it is drawn.
#[derive(Debug)]
pub(super) struct Cloth {
    pub view: View,
    pub pieces: &'static [Piece],
}

pub(super) const CLOTH: How = Filled(Ink::ClothPale);
pub(super) const SKIN: How = Filled(Ink::Weft);
pub(super) const SEAM: How = Line(Ink::ClothLight, 11);

const TROUSERS: Piece = Piece(
    CLOTH,
    Half,
    &[
        (0, 7),
        (0, 7),
        (9, 6),
        (18, 3),
        (18, 3),
        (23, 14),
        (27, 26),
        (28, 44),
        (26, 66),
        (24, 90),
        (22, 122),
        (22, 122),
        (9, 122),
        (9, 122),
        (7, 90),
        (4, 60),
        (1, 45),
        (1, 45),
        (0, 44),
        (0, 44),
    ],
);
const FRONT_SEAMS: [Piece; 4] = [
    Piece(SEAM, One, &[(-19, 8), (-9, 11), (9, 11), (19, 8)]),
    Piece(SEAM, One, &[(0, 7), (0, 44)]),
    Piece(SEAM, One, &[(5, 12), (5, 22), (4, 28), (0, 31)]),
    Piece(SEAM, Both, &[(12, 11), (15, 19), (25, 22)]),
];

pub(super) static TROUSERS_FRONT: Cloth = Cloth {
    view: View { scale: 1.0, top: 2.0 },
    pieces: &[TROUSERS, FRONT_SEAMS[0], FRONT_SEAMS[1], FRONT_SEAMS[2], FRONT_SEAMS[3]],
};

/// The same without its pockets, where the picture is about them.
pub(super) static TROUSERS_OPEN_POCKETS: Cloth =
    Cloth { view: View { scale: 1.3, top: 2.0 }, pieces: &[TROUSERS, FRONT_SEAMS[0], FRONT_SEAMS[1], FRONT_SEAMS[2]] };

pub(super) static TROUSERS_WHOLE: Cloth = Cloth {
    view: View { scale: 0.62, top: 2.0 },
    pieces: &[
        TROUSERS,
        FRONT_SEAMS[0],
        FRONT_SEAMS[1],
        FRONT_SEAMS[2],
        FRONT_SEAMS[3],
        Piece(SEAM, Both, &[(9, 118), (22, 118)]),
    ],
};

/// The upper part from the front, close.
pub(super) static TROUSERS_TOP: Cloth = Cloth {
    view: View { scale: 1.5, top: 12.0 },
    pieces: &[
        Piece(SKIN, Half, &[(0, 0), (0, 0), (17, 0), (17, 0), (18, 6), (20, 12), (20, 12), (0, 12), (0, 12)]),
        TROUSERS,
        FRONT_SEAMS[1],
        FRONT_SEAMS[2],
        FRONT_SEAMS[3],
    ],
};

pub(super) static TROUSERS_BACK: Cloth = Cloth {
    view: View { scale: 0.9, top: 3.0 },
    pieces: &[
        TROUSERS,
        Piece(SEAM, One, &[(-19, 8), (-9, 11), (9, 11), (19, 8)]),
        Piece(SEAM, Both, &[(0, 18), (22, 13)]),
        Piece(SEAM, One, &[(0, 7), (0, 44)]),
        Piece(
            SEAM,
            Both,
            &[(7, 20), (7, 20), (19, 18), (19, 18), (19, 29), (19, 29), (13, 33), (13, 33), (8, 30), (8, 30), (7, 20), (7, 20)],
        ),
    ],
};

/// Someone who sits, from the side.
pub(super) static TROUSERS_SEATED: Cloth = Cloth {
    view: View::PLAIN,
    pieces: &[
        Piece(Filled(Ink::Metal), One, &[(-42, 59), (-42, 59), (14, 59), (14, 59), (14, 63), (14, 63), (-42, 63), (-42, 63)]),
        Piece(SKIN, One, &[(-28, 0), (-28, 0), (-8, 0), (-8, 0), (-5, 12), (-7, 26), (-7, 26), (-32, 26), (-32, 26), (-27, 12)]),
        Piece(
            CLOTH,
            One,
            &[
                (-31, 20),
                (-31, 20),
                (-8, 24),
                (-8, 24),
                (-6, 32),
                (2, 35),
                (20, 34),
                (34, 36),
                (39, 44),
                (37, 60),
                (36, 84),
                (36, 84),
                (22, 84),
                (22, 84),
                (20, 66),
                (16, 59),
                (-20, 60),
                (-36, 60),
                (-41, 48),
                (-34, 32),
            ],
        ),
        Piece(SEAM, One, &[(-32, 25), (-8, 29)]),
        Piece(SEAM, One, &[(-20, 27), (-18, 42), (4, 48), (24, 48), (29, 62), (29, 84)]),
    ],
};

/// Waist and seat from the side, the back to the left.
pub(super) static TROUSERS_SIDE: Cloth = Cloth {
    view: View { scale: 1.3, top: -2.0 },
    pieces: &[
        Piece(
            SKIN,
            One,
            &[
                (-16, 0),
                (-16, 0),
                (12, 0),
                (12, 0),
                (17, 14),
                (17, 30),
                (14, 52),
                (14, 52),
                (-18, 52),
                (-18, 52),
                (-20, 40),
                (-10, 22),
                (-10, 12),
            ],
        ),
        Piece(
            CLOTH,
            One,
            &[
                (-24, 21),
                (-24, 21),
                (-10, 27),
                (4, 29),
                (18, 27),
                (18, 27),
                (20, 44),
                (20, 62),
                (18, 92),
                (18, 92),
                (-18, 92),
                (-18, 92),
                (-22, 74),
                (-32, 62),
                (-31, 42),
            ],
        ),
        Piece(SEAM, One, &[(-26, 28), (-10, 34), (4, 36), (19, 34)]),
        Piece(SEAM, One, &[(-1, 29), (-1, 92)]),
    ],
};
