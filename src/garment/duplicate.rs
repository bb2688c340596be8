//! A garment as the starting point for its sister: the same style in another cloth, or the next of a row on one stand.

use super::record::{Act, Answer, Garment, Id};
use super::terms::TermsAct;
use crate::grading::Care;
use crate::trade::Day;

impl Garment {
    /// A new garment of that id and day which starts from what is noted of this one.
    ///
    /// Carried over is what two sisters of a stand share: family, label, whether it is second-hand, place, shop, name, collection, and of
    /// the offer supplier, sizes, currency, Incoterms rule, least order and days of delivery. Answers come too, each as
    /// [`Care::Unsure`]: nobody has looked at the new piece yet, so they count for less until they are given again. A reading comes as the
    /// level that it spoke for, since it was taken on the other piece; what could not be told is left open.
    ///
    /// Left behind is what is true of the one piece alone: ticket, guess, style number, colours, prices, shortlist, every note, photographs, readings
    /// of the tape, fitting, inspection, and what is meant to be done with it.
    pub fn duplicate(&self, id: Id, noted: Day) -> Garment {
        let terms = self.terms();
        let acts = [
            Act::Label(self.label().to_owned()),
            Act::Place(self.place().to_owned()),
            Act::Shop(self.shop()),
            Act::Name(self.name()),
            Act::Collection(self.collection().to_owned()),
            Act::SecondHand(self.is_second_hand()),
            Act::Terms(TermsAct::Supplier(terms.supplier().to_owned())),
            Act::Terms(TermsAct::Sizes(terms.sizes().to_owned())),
            Act::Terms(TermsAct::Currency(terms.currency())),
            Act::Terms(TermsAct::Incoterm(terms.incoterm())),
            Act::Terms(TermsAct::Minimum(terms.minimum())),
            Act::Terms(TermsAct::Delivery(terms.delivery())),
        ];
        let answers = self.entries().iter().filter_map(|entry| {
            let level = entry.check.levels.get(self.level_place(entry.check)?)?.key;
            Some(Act::Answer(entry.check, Answer::Judged { level, care: Care::Unsure }))
        });
        acts.into_iter().chain(answers).fold(Garment::new(id, self.family(), noted), |garment, act| garment.after(act))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::FAMILIES;
    use crate::garment::{Appraiser, Given, Photograph, PhotographAct, PhotographId, PriceBreak, Readings};
    use crate::measure::STITCH_DENSITY;
    use crate::quantity::Unit;
    use crate::trade::{Currency, PriceKind, Ticket};

    fn id(text: &str) -> Id {
        Id::new(text).expect("a plain name")
    }

    fn day(day: u8) -> Day {
        Day::new(2026, 11, day).expect("a day")
    }

    fn noted(acts: impl IntoIterator<Item = Act>) -> Garment {
        acts.into_iter().fold(Garment::new(id("a"), FAMILIES[0], day(1)), |garment, act| garment.after(act))
    }

    #[test]
    fn what_sisters_share_is_carried_over_and_what_is_of_one_piece_is_not() {
        let check = FAMILIES[0].checks[0];
        let ticket = Ticket { minor: 4200, currency: Currency::Eur, kind: PriceKind::Wholesale, face_down: false };
        let one = noted([
            Act::Label("Straight leg".to_owned()),
            Act::Place("Hall 2".to_owned()),
            Act::Collection("Spring".to_owned()),
            Act::Note("soft hand".to_owned()),
            Act::CheckNote(check, "at the knee".to_owned()),
            Act::Ticket(Some(ticket)),
            Act::Archived(true),
            Act::Photograph(PhotographAct::Add(Photograph::new(PhotographId::of(b"seam"), day(1), 1600, 1200).expect("pixels"))),
            Act::Terms(TermsAct::Supplier("Mill on the hill".to_owned())),
            Act::Terms(TermsAct::Currency(Some(Currency::Eur))),
            Act::Terms(TermsAct::Style("0042".to_owned())),
            Act::Terms(TermsAct::Prices(vec![PriceBreak { from: 100, minor: 3900 }])),
            Act::Terms(TermsAct::Shortlisted(true)),
        ]);
        let other = one.duplicate(id("b"), day(2));
        assert_eq!((other.id().as_str(), other.noted(), other.family().key), ("b", day(2), one.family().key));
        assert_eq!((other.label(), other.place(), other.collection()), ("Straight leg", "Hall 2", "Spring"));
        assert_eq!((other.terms().supplier(), other.terms().currency()), ("Mill on the hill", Some(Currency::Eur)));
        assert_eq!((other.note(), other.check_note(check), other.ticket(), other.archived()), ("", "", None, false));
        assert_eq!((one.photographs().count(), other.photographs().count()), (1, 0));
        assert_eq!((other.terms().style(), other.terms().prices(), other.terms().shortlisted()), ("", &[][..], false));
    }

    #[test]
    fn answers_come_as_unsure_and_a_reading_as_the_level_it_spoke_for() {
        let check = |wanted: &dyn Fn(&'static crate::check::Check) -> bool| {
            FAMILIES[0].checks.iter().copied().find(|check| wanted(check)).expect("jeans have one")
        };
        let counted = check(&|check| check.instruments.contains(&&STITCH_DENSITY) && check.asked_when.is_none());
        let judged = check(&|check| check.instruments.is_empty() && check.speaks.curve().is_some() && check.asked_when.is_none());
        let untold = check(&|check| *check != *judged && *check != *counted);
        // 24 stitches over 76.2 mm are 8 per inch: `measure::STITCH_DENSITY`.
        let given = vec![
            Given { input: "count", amount: 24.0, unit: Unit::Count },
            Given { input: "length", amount: 76.2, unit: Unit::Millimetre },
        ];
        let reading = Answer::Measured(Readings { instrument: &STITCH_DENSITY, given });
        let best = judged.levels[judged.levels.len() - 1].key;
        let one = noted([
            Act::Answer(counted, reading),
            Act::Answer(judged, Answer::Judged { level: best, care: Care::Usual }),
            Act::Answer(untold, Answer::CannotTell),
        ]);
        let other = one.duplicate(id("b"), day(2));
        assert_eq!(other.answer(judged), Some(&Answer::Judged { level: best, care: Care::Unsure }));
        assert!(matches!(other.answer(counted), Some(Answer::Judged { care: Care::Unsure, .. })));
        assert_eq!(other.level_place(counted), one.level_place(counted));
        assert_eq!(other.answer(untold), None);
        // What nobody has looked at again is believed less.
        let appraiser = Appraiser::default();
        let spread = |garment: &Garment| {
            let (low, _, high) = appraiser.appraise(garment).range();
            high - low
        };
        assert!(spread(&other) > spread(&one));
    }
}
