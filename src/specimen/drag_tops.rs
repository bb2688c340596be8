//! What lines show on, as it is worn: shirts, jackets, a dress, a skirt, a sweater.

use super::drag_cloth::{CLOTH, Cloth, SEAM, SKIN};
use super::drawing::Ink;
use super::figure_piece::How::{Bare, Disc, Filled, Line};
use super::figure_piece::Sides::{Both, Half, One};
use super::figure_piece::{Piece, View};

pub(super) static SHIRT_FRONT: Cloth = Cloth {
    view: View { scale: 1.1, top: 1.0 },
    pieces: &[
        SLEEVE,
        SHIRT,
        Piece(SEAM, Both, &[(3, 12), (3, 90)]),
        Piece(CLOTH, Both, &[(0, 12), (0, 12), (6, 2), (6, 2), (12, 9), (12, 9), (6, 17), (6, 17)]),
        Piece(Disc(Ink::Paper, 16), One, &[(0, 20), (0, 36), (0, 52), (0, 68)]),
    ],
};

pub(super) static SHIRT_BACK: Cloth = Cloth {
    view: View { scale: 1.1, top: 1.0 },
    pieces: &[
        SLEEVE,
        SHIRT,
        Piece(CLOTH, Half, &[(0, 2), (0, 2), (7, 2), (7, 2), (8, 8), (8, 8), (0, 9), (0, 9)]),
        Piece(SEAM, One, &[(-25, 18), (0, 18), (25, 18)]),
    ],
};

const SLEEVE: Piece = Piece(
    CLOTH,
    Both,
    &[(22, 9), (22, 9), (31, 13), (36, 34), (39, 60), (39, 92), (39, 92), (29, 92), (29, 92), (28, 60), (23, 32), (23, 32)],
);
const SHIRT: Piece = Piece(
    CLOTH,
    Half,
    &[
        (0, 7),
        (0, 7),
        (7, 5),
        (7, 5),
        (15, 6),
        (24, 10),
        (24, 10),
        (25, 22),
        (24, 32),
        (24, 32),
        (23, 56),
        (25, 92),
        (25, 92),
        (0, 92),
        (0, 92),
    ],
);

pub(super) static JACKET_FRONT: Cloth = Cloth { view: View { scale: 1.0, top: 2.0 }, pieces: JACKET };

/// The same, close.
pub(super) static JACKET_SHOULDERS: Cloth = Cloth { view: View { scale: 1.4, top: -2.0 }, pieces: JACKET };

const JACKET: &[Piece] = &[
    Piece(
        CLOTH,
        Both,
        &[(25, 10), (25, 10), (33, 12), (38, 34), (40, 60), (40, 92), (40, 92), (29, 92), (29, 92), (29, 60), (24, 32), (24, 32)],
    ),
    Piece(
        CLOTH,
        Half,
        &[
            (0, 3),
            (0, 3),
            (7, 3),
            (7, 3),
            (16, 6),
            (26, 10),
            (26, 10),
            (25, 22),
            (25, 32),
            (25, 32),
            (22, 50),
            (27, 92),
            (27, 92),
            (0, 92),
            (0, 92),
        ],
    ),
    Piece(Filled(Ink::Paper), Half, &[(0, 3), (0, 3), (7, 3), (7, 3), (0, 45), (0, 45)]),
    Piece(SEAM, Both, &[(7, 3), (7, 3), (14, 17), (14, 17), (17, 15), (17, 15), (17, 22), (1, 45)]),
    Piece(SEAM, One, &[(0, 45), (0, 92)]),
    Piece(Disc(Ink::Metal, 18), One, &[(0, 48), (0, 62)]),
];

/// Neck and shoulders from the side, the back to the left.
pub(super) static JACKET_NECK: Cloth = Cloth {
    view: View { scale: 1.2, top: 0.0 },
    pieces: &[
        Piece(
            SKIN,
            One,
            &[
                (-12, 0),
                (-12, 0),
                (-11, 16),
                (-14, 30),
                (-22, 44),
                (-22, 44),
                (18, 52),
                (18, 52),
                (12, 36),
                (9, 22),
                (10, 10),
                (16, 0),
                (16, 0),
            ],
        ),
        Piece(
            Filled(Ink::Paper),
            One,
            &[(-13, 20), (-13, 20), (0, 26), (12, 32), (12, 32), (14, 44), (14, 44), (0, 38), (-16, 30), (-16, 30)],
        ),
        Piece(
            CLOTH,
            One,
            &[
                (-25, 22),
                (-25, 22),
                (-12, 32),
                (8, 42),
                (20, 56),
                (26, 90),
                (26, 90),
                (-40, 90),
                (-40, 90),
                (-42, 66),
                (-36, 46),
                (-30, 34),
            ],
        ),
        Piece(SEAM, One, &[(-31, 35), (-18, 44), (-4, 52)]),
    ],
};

pub(super) static DRESS_FRONT: Cloth = Cloth {
    view: View { scale: 1.15, top: 0.0 },
    pieces: &[
        Piece(
            SKIN,
            Half,
            &[
                (0, 0),
                (0, 0),
                (6, 0),
                (6, 0),
                (7, 4),
                (14, 6),
                (23, 8),
                (29, 16),
                (31, 44),
                (36, 80),
                (36, 80),
                (30, 80),
                (30, 80),
                (26, 50),
                (20, 24),
                (20, 24),
                (0, 24),
                (0, 24),
            ],
        ),
        Piece(
            CLOTH,
            Half,
            &[
                (0, 15),
                (0, 15),
                (8, 13),
                (11, 5),
                (11, 5),
                (17, 6),
                (17, 6),
                (16, 16),
                (20, 24),
                (20, 24),
                (19, 34),
                (15, 46),
                (15, 46),
                (22, 60),
                (28, 90),
                (28, 90),
                (0, 90),
                (0, 90),
            ],
        ),
        Piece(SEAM, One, &[(-15, 46), (-8, 48), (8, 48), (15, 46)]),
    ],
};

pub(super) static SKIRT_BACK: Cloth = Cloth {
    view: View { scale: 1.0, top: 0.0 },
    pieces: &[
        Piece(SKIN, Half, &[(0, 0), (0, 0), (15, 0), (15, 0), (14, 6), (15, 14), (15, 14), (0, 14), (0, 14)]),
        Piece(
            CLOTH,
            Half,
            &[(0, 11), (0, 11), (8, 11), (15, 9), (15, 9), (20, 20), (26, 36), (27, 56), (28, 90), (28, 90), (0, 90), (0, 90)],
        ),
        Piece(SEAM, One, &[(-17, 14), (-8, 16), (8, 16), (17, 14)]),
        Piece(SEAM, One, &[(0, 16), (0, 90)]),
        Piece(Line(Ink::Edge, 14), One, &[(0, 16), (0, 34)]),
    ],
};

pub(super) static SWEATER_FRONT: Cloth = Cloth {
    view: View { scale: 1.05, top: 1.0 },
    pieces: &[
        Piece(SKIN, Half, &[(0, 0), (0, 0), (6, 0), (6, 0), (7, 8), (7, 8), (0, 16), (0, 16)]),
        Piece(
            CLOTH,
            Half,
            &[
                (0, 12),
                (0, 12),
                (9, 10),
                (10, 4),
                (10, 4),
                (20, 7),
                (30, 14),
                (37, 30),
                (41, 56),
                (42, 90),
                (42, 90),
                (32, 90),
                (32, 90),
                (30, 62),
                (28, 44),
                (28, 44),
                (28, 90),
                (28, 90),
                (0, 90),
                (0, 90),
            ],
        ),
        Piece(SEAM, One, &[(-13, 5), (-12, 14), (0, 17), (12, 14), (13, 5)]),
        Piece(Bare(Ink::ClothLight), Both, &[(22, 7), (24, 8), (23, 9), (21, 8)]),
    ],
};
