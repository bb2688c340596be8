//! How the yarns of a cloth cross: plain, twill to the right or the left, broken twill, satin.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{FRAME, Pen, clamp};
use crate::language::said;
use crate::{say, to_say};

/// Cloth so close that one sees which yarn lies on top. The frame is 9.6 mm wide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeaveFace {
    /// How the yarns cross.
    pub kind: WeaveKind,
    /// Warp yarns per cm, 8 to 40.
    pub ends_per_cm: f64,
    /// Weft yarns per cm, 8 to 40.
    pub picks_per_cm: f64,
}

/// How the yarns of a cloth cross.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WeaveKind {
    /// Over one, under one.
    Plain,
    /// Over two or three, under one, a step up to the right on each next yarn.
    TwillRight,
    /// The same, up to the left.
    TwillLeft,
    /// A twill that turns back before its line has run.
    BrokenTwill,
    /// Over four, under one, the crossings scattered.
    Satin,
}

/// Drawing units per cm of cloth.
const UNITS_PER_CM: f64 = 125.0;

impl WeaveKind {
    /// All of them.
    pub const ALL: [WeaveKind; 5] =
        [WeaveKind::Plain, WeaveKind::TwillRight, WeaveKind::TwillLeft, WeaveKind::BrokenTwill, WeaveKind::Satin];

    /// The trade's name.
    pub fn name(self) -> &'static str {
        said(self.kept_name())
    }

    /// The same, not said yet: for lists of choices.
    pub(crate) const fn kept_name(self) -> &'static str {
        match self {
            WeaveKind::Plain => to_say!("plain weave"),
            WeaveKind::TwillRight => to_say!("right-hand twill"),
            WeaveKind::TwillLeft => to_say!("left-hand twill"),
            WeaveKind::BrokenTwill => to_say!("broken twill"),
            WeaveKind::Satin => to_say!("satin"),
        }
    }

    /// Whether the weft lies on top where that end and that pick cross; ends count to the right, picks downwards.
    ///
    /// # Source
    /// Definitions of the weaves, common practice; 3/1 twills, broken twill 3/1 with steps 1, 2, 4, 3, satin of five with step 2.
    fn weft_on_top(self, end: i32, pick: i32) -> bool {
        match self {
            WeaveKind::Plain => (end + pick).rem_euclid(2) == 0,
            // Down the cloth the crossing moves left, so the line rises to the right.
            WeaveKind::TwillRight => (end + pick).rem_euclid(4) == 0,
            WeaveKind::TwillLeft => (pick - end).rem_euclid(4) == 0,
            WeaveKind::BrokenTwill => pick.rem_euclid(4) == [0, 1, 3, 2][end.rem_euclid(4) as usize],
            WeaveKind::Satin => (2 * end + pick).rem_euclid(5) == 0,
        }
    }
}

impl WeaveFace {
    /// Angle of a twill line from the weft, in degrees, 90 being upright; none for what is no twill.
    ///
    /// # Formula
    /// `atan(ends per cm / picks per cm)`: on each next end the line rises by one pick.
    ///
    /// # Source
    /// Handbook, section 4.6.
    pub fn angle(&self) -> Option<f64> {
        matches!(self.kind, WeaveKind::TwillRight | WeaveKind::TwillLeft).then(|| self.ends().atan2(self.picks()).to_degrees())
    }

    fn ends(&self) -> f64 {
        clamp(self.ends_per_cm, 8.0, 40.0)
    }

    fn picks(&self) -> f64 {
        clamp(self.picks_per_cm, 8.0, 40.0)
    }

    pub(super) fn words(&self) -> String {
        say!("yarns of a {weave} from close by", weave = self.kind.name())
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let across = UNITS_PER_CM / self.ends();
        let down = UNITS_PER_CM / self.picks();
        sheet.area(Ink::Shade, FRAME);
        let (ends, picks) = ((Drawing::WIDTH / across) as i32 + 2, (Drawing::HEIGHT / down) as i32 + 2);
        let mut warp = Pen::new();
        for end in -1..ends {
            let x = across * (f64::from(end) + 0.5) + chance.about(across * 0.04);
            warp.line(x, -5.0, x, 85.0);
        }
        sheet.stroke(Ink::Edge, across * 0.94, warp.clone());
        sheet.stroke(Ink::Cloth, across * 0.94 - 0.9, warp);
        let mut weft = Pen::new();
        for pick in -1..picks {
            let y = down * (f64::from(pick) + 0.5) + chance.about(down * 0.04);
            for end in -1..ends {
                if self.kind.weft_on_top(end, pick) {
                    let x = across * (f64::from(end) + 0.5);
                    weft.line(x - across * 0.42, y, x + across * 0.42, y);
                }
            }
        }
        let thick = down.min(across) * 0.62;
        sheet.stroke(Ink::Edge, thick + 0.9, weft.clone());
        sheet.stroke(Ink::Weft, thick, weft);
    }
}
