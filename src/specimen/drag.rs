//! Lines that show on a garment while it is worn, and say where it is tight or loose.

use super::chance::Chance;
use super::drag_cloth as on;
use super::drag_cloth::Cloth;
use super::drag_tops as tops;
use super::drawing::{Ink, Sheet};
use super::figure_piece::How::{Bare, Filled, Line, Mark, Span};
use super::figure_piece::Piece;
use super::figure_piece::Sides::{Both, One};
use crate::language::said;
use crate::to_say;

/// A garment with the lines that one fault of fit shows. A line points to the tight spot; level lines say too narrow across, upright ones
/// too wide, slanting ones run from tight to loose. Handbook, section 9: a tailoring manual of 1949 and the practice of fitting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Drag {
    /// Trousers: lines curve up and out from the crotch.
    SmileAtCrotch,
    /// Trousers: lines slant from the seat to the back of the knee.
    SeatToKnee,
    /// Trousers: folds hang under the seat.
    FoldsUnderSeat,
    /// Trousers: the seat seam is pulled into a rope.
    SeatSeamRopes,
    /// Trousers: cloth stands up in the lap of one who sits.
    LapFullness,
    /// Trousers: upright folds at the top of the inner leg seam.
    InnerLegSurplus,
    /// Trousers: the waistband stands off the back.
    WaistGaps,
    /// Trousers: pockets stand open.
    PocketsGape,
    /// Trousers: level lines from the side at the hip.
    LinesAtHip,
    /// Trousers: upright folds beside the fly.
    FrontFolds,
    /// Trousers: the front seam cuts in.
    CutsIn,
    /// Trousers: the leg turns about itself.
    LegTurns,
    /// Trousers: the band rolls over or dips.
    BandRolls,
    /// A shirt: an X at the chest button.
    XAtChest,
    /// A shirt: pulls from the tip of the shoulder to the neck.
    ShoulderToNeck,
    /// A shirt: upright folds at the armholes behind.
    BackFolds,
    /// A jacket: an X at the waist button.
    XAtWaist,
    /// A jacket: the collar stands off the neck.
    CollarStandsOff,
    /// A jacket: a hollow below the top of the sleeve.
    ShoulderHollow,
    /// A jacket: lines wind round the sleeve.
    SleeveTurns,
    /// A dress: lines slant from the bust to the waist.
    BustToWaist,
    /// A skirt: a level fold under the waistband behind.
    FoldUnderBand,
    /// A sweater: the shoulder seam lies on the upper arm.
    ShoulderSlides,
}

/// What one fault shows: the garment, the lines, and words for both.
struct Row {
    key: &'static str,
    words: &'static str,
    on: &'static Cloth,
    lines: &'static [Piece],
}

impl Drag {
    /// All of them, garment by garment.
    pub const ALL: [Drag; 23] = [
        Drag::SmileAtCrotch,
        Drag::SeatToKnee,
        Drag::FoldsUnderSeat,
        Drag::SeatSeamRopes,
        Drag::LapFullness,
        Drag::InnerLegSurplus,
        Drag::WaistGaps,
        Drag::PocketsGape,
        Drag::LinesAtHip,
        Drag::FrontFolds,
        Drag::CutsIn,
        Drag::LegTurns,
        Drag::BandRolls,
        Drag::XAtChest,
        Drag::ShoulderToNeck,
        Drag::BackFolds,
        Drag::XAtWaist,
        Drag::CollarStandsOff,
        Drag::ShoulderHollow,
        Drag::SleeveTurns,
        Drag::BustToWaist,
        Drag::FoldUnderBand,
        Drag::ShoulderSlides,
    ];

    fn row(self) -> &'static Row {
        // In the order of the enum; a test holds each to its name.
        &ROWS[self as usize]
    }

    /// Its name in kebab case, as signs of a fitting are keyed.
    pub const fn key(self) -> &'static str {
        ROWS[self as usize].key
    }

    /// The lines alone.
    #[cfg(test)]
    pub(super) fn lines(self) -> &'static [Piece] {
        self.row().lines
    }

    /// How its table lies in the frame.
    #[cfg(test)]
    pub(super) fn view(self) -> super::figure_piece::View {
        self.row().on.view
    }

    pub(super) fn words(self) -> String {
        String::from(said(self.row().words))
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        let row = self.row();
        sheet.pieces(row.on.view, row.on.pieces.iter().chain(row.lines));
    }
}

static ROWS: [Row; 23] = [
    Row {
        key: "smile-at-crotch",
        words: to_say!("trousers from the front, lines that curve from the crotch out and up to the hips"),
        on: &on::TROUSERS_FRONT,
        lines: &[
            Piece(Mark, Both, &[(2, 42), (11, 39), (18, 31)]),
            Piece(Mark, Both, &[(2, 43), (12, 44), (24, 36)]),
            Piece(Mark, Both, &[(3, 47), (14, 52), (25, 46)]),
        ],
    },
    Row {
        key: "seat-to-knee",
        words: to_say!("trousers from the back, lines that slant from the seat down and out to the backs of the knees"),
        on: &on::TROUSERS_BACK,
        lines: &[
            Piece(Mark, Both, &[(3, 40), (9, 56), (17, 76)]),
            Piece(Mark, Both, &[(8, 38), (15, 54), (22, 70)]),
            Piece(Mark, Both, &[(14, 38), (20, 50), (25, 62)]),
        ],
    },
    Row {
        key: "folds-under-seat",
        words: to_say!("trousers from the back, folds that hang across each leg under the seat"),
        on: &on::TROUSERS_BACK,
        lines: &[
            Piece(Mark, Both, &[(4, 44), (14, 54), (26, 41)]),
            Piece(Mark, Both, &[(6, 52), (15, 61), (25, 50)]),
            Piece(Mark, Both, &[(7, 60), (16, 68), (24, 59)]),
        ],
    },
    Row {
        key: "seat-seam-ropes",
        words: to_say!("trousers from the back, the seat seam pulled into a rope, lines that point to it from both sides"),
        on: &on::TROUSERS_BACK,
        lines: &[
            Piece(Mark, Both, &[(2, 34), (9, 32), (16, 27)]),
            Piece(Mark, Both, &[(2, 40), (10, 40), (20, 36)]),
            Piece(Mark, Both, &[(2, 44), (10, 47), (19, 54)]),
            Piece(Line(Ink::Thread, 34), One, &[(0, 14), (0, 45)]),
        ],
    },
    Row {
        key: "lap-fullness",
        words: to_say!("trousers from the side, sitting, folds that stand up in the lap and lines that press to the fly"),
        on: &on::TROUSERS_SEATED,
        lines: &[
            Piece(Filled(Ink::ClothPale), One, &[(-7, 38), (-7, 38), (-11, 24), (-4, 18), (4, 20), (10, 28), (19, 36), (19, 36)]),
            Piece(Mark, One, &[(-6, 36), (-7, 20), (4, 27)]),
            Piece(Mark, One, &[(0, 37), (3, 27), (12, 34)]),
            Piece(Mark, One, &[(-9, 37), (-14, 41), (-23, 43)]),
            Piece(Mark, One, &[(-8, 39), (-11, 45), (-18, 51)]),
        ],
    },
    Row {
        key: "inner-leg-surplus",
        words: to_say!("trousers from the front, upright folds at the top of the inner leg seams"),
        on: &on::TROUSERS_FRONT,
        lines: &[
            Piece(Mark, Both, &[(4, 49), (6, 58), (8, 70)]),
            Piece(Mark, Both, &[(8, 48), (10, 58), (11, 68)]),
            Piece(Mark, Both, &[(13, 50), (14, 58), (15, 65)]),
        ],
    },
    Row {
        key: "waist-gaps",
        words: to_say!("trousers from the side, the waistband standing off the back"),
        on: &on::TROUSERS_SIDE,
        lines: &[Piece(Span, One, &[(-23, 15), (-11, 15)])],
    },
    Row {
        key: "pockets-gape",
        words: to_say!("trousers from the front, slanted pockets standing open at the hips"),
        on: &on::TROUSERS_OPEN_POCKETS,
        lines: &[
            Piece(Filled(Ink::ClothDark), Both, &[(12, 11), (12, 11), (11, 22), (24, 25), (26, 22), (26, 22), (24, 16)]),
            Piece(Mark, Both, &[(12, 11), (12, 11), (11, 22), (22, 25), (26, 22)]),
            Piece(Mark, Both, &[(12, 23), (8, 24), (3, 24)]),
            Piece(Mark, Both, &[(14, 28), (9, 29), (4, 29)]),
        ],
    },
    Row {
        key: "lines-at-hip",
        words: to_say!("trousers from the front, level lines from both sides at the hip towards the fly"),
        on: &on::TROUSERS_FRONT,
        lines: &[
            Piece(Mark, Both, &[(26, 24), (17, 26), (8, 25)]),
            Piece(Mark, Both, &[(27, 30), (18, 31), (8, 31)]),
            Piece(Mark, Both, &[(27, 36), (18, 37), (9, 38)]),
        ],
    },
    Row {
        key: "front-folds",
        words: to_say!("trousers from the front, upright folds on both sides of the fly"),
        on: &on::TROUSERS_FRONT,
        lines: &[
            Piece(Mark, Both, &[(4, 16), (4, 28), (3, 41)]),
            Piece(Mark, Both, &[(9, 17), (9, 30), (7, 45)]),
            Piece(Mark, Both, &[(14, 24), (14, 34), (12, 46)]),
        ],
    },
    Row {
        key: "cuts-in",
        words: to_say!("trousers from the front, the front seam drawn up into the crotch, steep lines that point to it"),
        on: &on::TROUSERS_FRONT,
        lines: &[
            Piece(Mark, Both, &[(3, 40), (6, 32), (7, 18)]),
            Piece(Mark, Both, &[(4, 42), (10, 36), (15, 26)]),
            Piece(Line(Ink::Thread, 34), One, &[(0, 30), (0, 45)]),
        ],
    },
    Row {
        key: "leg-turns",
        words: to_say!("trousers from the front, on one leg the side seam winds round to the front"),
        on: &on::TROUSERS_WHOLE,
        lines: &[
            Piece(Mark, One, &[(28, 46), (26, 74), (20, 98), (13, 121)]),
            Piece(Mark, One, &[(9, 84), (16, 76), (21, 62)]),
            Piece(Mark, One, &[(10, 102), (15, 94), (18, 86)]),
        ],
    },
    Row {
        key: "band-rolls",
        words: to_say!("trousers from the front, the waistband dipping in the middle and rolled over"),
        on: &on::TROUSERS_TOP,
        lines: &[
            Piece(Bare(Ink::Weft), One, &[(-15, 6), (-15, 6), (15, 6), (15, 6), (7, 16), (-7, 16)]),
            Piece(
                Filled(Ink::Cloth),
                One,
                &[
                    (-18, 4),
                    (-18, 4),
                    (-8, 13),
                    (8, 13),
                    (18, 4),
                    (18, 4),
                    (19, 9),
                    (19, 9),
                    (8, 20),
                    (-8, 20),
                    (-19, 9),
                    (-19, 9),
                ],
            ),
            Piece(Mark, One, &[(-19, 10), (-8, 21), (8, 21), (19, 10)]),
        ],
    },
    Row {
        key: "x-at-chest",
        words: to_say!("a shirt from the front, lines that cross like an X at the chest button"),
        on: &tops::SHIRT_FRONT,
        lines: &[
            Piece(Mark, Both, &[(3, 35), (10, 31), (19, 24)]),
            Piece(Mark, Both, &[(3, 37), (10, 41), (19, 48)]),
            Piece(Mark, Both, &[(4, 36), (19, 36)]),
        ],
    },
    Row {
        key: "shoulder-to-neck",
        words: to_say!("a shirt from the front, lines from the tips of the shoulders to the neck"),
        on: &tops::SHIRT_FRONT,
        lines: &[
            Piece(Mark, Both, &[(23, 12), (18, 11), (13, 12)]),
            Piece(Mark, Both, &[(23, 14), (16, 16), (9, 18)]),
            Piece(Mark, Both, &[(23, 16), (17, 20), (11, 23)]),
        ],
    },
    Row {
        key: "back-folds",
        words: to_say!("a shirt from the back, upright folds beside both armholes"),
        on: &tops::SHIRT_BACK,
        lines: &[
            Piece(Mark, Both, &[(21, 22), (20, 34), (19, 48)]),
            Piece(Mark, Both, &[(17, 21), (16, 32), (15, 44)]),
            Piece(Mark, Both, &[(13, 22), (12, 30), (12, 39)]),
        ],
    },
    Row {
        key: "x-at-waist",
        words: to_say!("a jacket from the front, lines that cross like an X at the waist button"),
        on: &tops::JACKET_FRONT,
        lines: &[
            Piece(Mark, Both, &[(3, 47), (11, 42), (19, 36)]),
            Piece(Mark, Both, &[(3, 49), (11, 54), (20, 62)]),
            Piece(Mark, Both, &[(4, 48), (19, 48)]),
        ],
    },
    Row {
        key: "collar-stands-off",
        words: to_say!("neck and shoulders from the side, the jacket collar standing off the back of the neck"),
        on: &tops::JACKET_NECK,
        lines: &[Piece(Span, One, &[(-24, 17), (-13, 17)])],
    },
    Row {
        key: "shoulder-hollow",
        words: to_say!("a jacket from the front, a hollow in each sleeve just below the shoulder"),
        on: &tops::JACKET_SHOULDERS,
        lines: &[
            Piece(Bare(Ink::Cloth), Both, &[(28, 14), (28, 14), (34, 17), (34, 26), (29, 28), (29, 28), (31, 21)]),
            Piece(Mark, Both, &[(28, 13), (33, 21), (29, 29)]),
        ],
    },
    Row {
        key: "sleeve-turns",
        words: to_say!("a jacket from the front, lines that wind down and round both sleeves"),
        on: &tops::JACKET_FRONT,
        lines: &[
            Piece(Mark, Both, &[(26, 22), (31, 27), (36, 36)]),
            Piece(Mark, Both, &[(26, 34), (32, 40), (37, 50)]),
            Piece(Mark, Both, &[(29, 48), (33, 54), (38, 64)]),
        ],
    },
    Row {
        key: "bust-to-waist",
        words: to_say!("a dress from the front, lines that slant from the bust down to the waist"),
        on: &tops::DRESS_FRONT,
        lines: &[
            Piece(Mark, Both, &[(8, 30), (6, 37), (2, 44)]),
            Piece(Mark, Both, &[(10, 30), (11, 37), (13, 44)]),
            Piece(Mark, Both, &[(12, 29), (15, 34), (17, 37)]),
        ],
    },
    Row {
        key: "fold-under-band",
        words: to_say!("a skirt from the back, a level fold under the waistband"),
        on: &tops::SKIRT_BACK,
        lines: &[
            Piece(Mark, One, &[(-16, 20), (-8, 23), (8, 23), (16, 20)]),
            Piece(Mark, One, &[(-14, 26), (-7, 28), (7, 28), (14, 26)]),
        ],
    },
    Row {
        key: "shoulder-slides",
        words: to_say!("a sweater from the front, its shoulder seams lying on the upper arms, below the tips of the shoulders"),
        on: &tops::SWEATER_FRONT,
        lines: &[Piece(Mark, Both, &[(33, 17), (30, 24), (29, 34), (28, 44)]), Piece(Span, Both, &[(23, 4), (34, 12)])],
    },
];
