//! A sweater, look by look: what a picture of it may show.

use super::chance::Chance;
use super::drawing::Sheet;
use super::sweater_knit::{Gauge, Loops, Poked, YarnEnds};
use super::sweater_seams::{JoinPulled, KnitJoin, Shaping};
use super::sweater_shape::{CardiganBand, HungSweater, RibCuff, SweaterNeck};

/// One look at a sweater.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Sweater {
    /// The face of plain knitting, close.
    Loops(Loops),
    /// Loops beside a rule.
    Gauge(Gauge),
    /// One layer before the light, a fingertip behind it.
    Poked(Poked),
    /// Where yarns end, from inside.
    YarnEnds(YarnEnds),
    /// How two panels are joined: in section, and from inside.
    KnitJoin(KnitJoin),
    /// A join that is pulled a little.
    JoinPulled(JoinPulled),
    /// Where body and sleeves were narrowed.
    Shaping(Shaping),
    /// A cuff after it was stretched.
    RibCuff(RibCuff),
    /// The neck after a stretch, and the inside of its back.
    Neck(SweaterNeck),
    /// A sweater hanging: side seams and sleeves.
    Hung(HungSweater),
    /// The edge of a cardigan that buttons.
    Band(CardiganBand),
}

impl Sweater {
    pub(super) fn words(&self) -> String {
        let said = match self {
            Sweater::Gauge(it) => return it.words(),
            Sweater::RibCuff(it) => return it.words(),
            Sweater::Loops(it) => it.words(),
            Sweater::Poked(it) => it.words(),
            Sweater::YarnEnds(it) => it.words(),
            Sweater::KnitJoin(it) => it.words(),
            Sweater::JoinPulled(it) => it.words(),
            Sweater::Shaping(it) => it.words(),
            Sweater::Neck(it) => it.words(),
            Sweater::Hung(it) => it.words(),
            Sweater::Band(it) => it.words(),
        };
        String::from(said)
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        match self {
            Sweater::Loops(it) => it.draw(sheet, chance),
            Sweater::Gauge(it) => it.draw(sheet),
            Sweater::Poked(it) => it.draw(sheet, chance),
            Sweater::YarnEnds(it) => it.draw(sheet),
            Sweater::KnitJoin(it) => it.draw(sheet, chance),
            Sweater::JoinPulled(it) => it.draw(sheet),
            Sweater::Shaping(it) => it.draw(sheet),
            Sweater::RibCuff(it) => it.draw(sheet),
            Sweater::Neck(it) => it.draw(sheet, chance),
            Sweater::Hung(it) => it.draw(sheet),
            Sweater::Band(it) => it.draw(sheet),
        }
    }
}
