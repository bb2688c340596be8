//! The quick sheet without its looks: what a key does, what the next sample repeats, and which check a search finds.

use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::garment::Garment;
use garment_assay::to_say;
use garment_assay::trade::{Currency, PriceKind};

use super::parts::desk_head::Head;

/// What a key does on the rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stroke {
    /// Gives the answer at that place from 0 and goes on.
    Answer(usize),
    /// Gives the answer at which the keyboard is, and goes on.
    AnswerHere,
    /// Goes so many rows down.
    Row(isize),
    /// Goes to the first row, or the last.
    End(bool),
    /// Goes so many answers to the right.
    Level(isize),
    /// Answers that one cannot tell, and goes on.
    CannotTell,
    /// Takes the answer back.
    TakeBack,
    /// Goes to the search.
    Search,
    /// Goes to the reading that is typed.
    Measure,
    /// Begins the next sample.
    Next,
    /// Shows or hides the keys.
    Keys,
}

/// The keys as the sheet lists them.
pub const KEYS: [(&str, &str); 9] = [
    (to_say!("1 to 9"), to_say!("answer, and go to the next check; 1 is the worst answer, or the plainest")),
    (to_say!("Up, down"), to_say!("another check")),
    (to_say!("Left, right"), to_say!("look at another answer; Enter gives it")),
    (to_say!("0 or Backspace"), to_say!("take the answer back")),
    (to_say!("X or -"), to_say!("cannot tell")),
    ("M", to_say!("type a reading, where one answers the check")),
    ("/", to_say!("search for a check by its name")),
    ("N", to_say!("next sample; this one is kept")),
    ("?", to_say!("show or hide these keys")),
];

/// What that key does; none for a key that does nothing here.
pub fn stroke(key: &str) -> Option<Stroke> {
    Some(match key {
        "0" | "Backspace" => Stroke::TakeBack,
        "x" | "X" | "-" => Stroke::CannotTell,
        "ArrowUp" => Stroke::Row(-1),
        "ArrowDown" => Stroke::Row(1),
        "ArrowLeft" => Stroke::Level(-1),
        "ArrowRight" => Stroke::Level(1),
        "Home" => Stroke::End(false),
        "End" => Stroke::End(true),
        "Enter" => Stroke::AnswerHere,
        "/" => Stroke::Search,
        "m" | "M" => Stroke::Measure,
        "n" | "N" => Stroke::Next,
        "?" => Stroke::Keys,
        _ => {
            let place = key.parse::<usize>().ok().filter(|place| (1..=9).contains(place))?;
            Stroke::Answer(place - 1)
        }
    })
}

/// The head of a new sample: what it has in common with the last one that is not invented.
pub fn repeated(garments: &[Rc<Garment>], currency: Currency) -> Head {
    let own = || garments.iter().filter(|garment| !garment.id().is_invented());
    let newest = |garments: &mut dyn Iterator<Item = &Rc<Garment>>| {
        garments.max_by_key(|garment| (garment.noted(), garment.id().clone())).cloned()
    };
    let Some(last) = newest(&mut own()) else { return Head::empty(currency) };
    let priced = newest(&mut own().filter(|garment| garment.ticket().is_some()));
    let ticket = priced.as_ref().and_then(|garment| garment.ticket());
    let kind = ticket.map_or(PriceKind::Wholesale, |ticket| ticket.kind);
    Head::of(&last, ticket.map_or(currency, |ticket| ticket.currency), kind).repeated()
}

/// The first check whose name has all these words in it.
pub fn found(checks: &[&'static Check], search: &str) -> Option<usize> {
    let search = search.to_lowercase();
    let words: Vec<&str> = search.split_whitespace().collect();
    let has = |check: &Check| words.iter().all(|word| check.name().to_lowercase().contains(word));
    if words.is_empty() { None } else { checks.iter().position(|check| has(check)) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::catalog::FAMILIES;
    use garment_assay::garment::{Act, Id, TermsAct};
    use garment_assay::trade::{Day, Ticket};

    #[test]
    fn no_check_has_more_answers_than_there_are_digits_and_every_digit_is_a_place() {
        for family in FAMILIES {
            let every = family.checks.iter().copied().chain(family.second_hand.iter().map(|look| &look.condition.check));
            assert!(every.into_iter().all(|check| check.levels.len() <= 9));
        }
        assert_eq!(("1".parse::<u8>(), stroke("1"), stroke("9")), (Ok(1), Some(Stroke::Answer(0)), Some(Stroke::Answer(8))));
        assert_eq!(
            (stroke("0"), stroke("-"), stroke("10"), stroke("Tab"), stroke("a")),
            (Some(Stroke::TakeBack), Some(Stroke::CannotTell), None, None, None)
        );
    }

    #[test]
    fn a_check_is_found_by_words_of_its_name_in_any_order() {
        let checks = FAMILIES[0].checks;
        for (place, check) in checks.iter().enumerate() {
            let backwards: Vec<&str> = check.name.split_whitespace().rev().collect();
            assert!(found(checks, &backwards.join(" ").to_uppercase()).is_some_and(|found| found <= place), "{}", check.name);
        }
        assert_eq!((found(checks, " "), found(checks, "no such thing as this")), (None, None));
    }

    #[test]
    fn the_next_sample_repeats_the_last_that_is_not_invented() {
        let day = |day| Day::new(2026, 11, day).expect("a day");
        let named = |id: &str, noted: u8, family: usize, place: &str| {
            let id = Id::new(id).expect("a plain name");
            Garment::new(id, FAMILIES[family], day(noted)).after(Act::Place(place.to_owned()))
        };
        let ticket = Ticket { minor: 900, currency: Currency::Gbp, kind: PriceKind::Retail, face_down: false };
        let garments = [
            named("b", 3, 1, "Hall 2").after(Act::Terms(TermsAct::Supplier("Mill on the hill".to_owned()))),
            named("a", 2, 2, "Hall 1").after(Act::Ticket(Some(ticket))),
            named("invented-z", 9, 3, "Nowhere"),
        ];
        let garments: Vec<Rc<Garment>> = garments.into_iter().map(Rc::new).collect();
        let head = repeated(&garments, Currency::Usd);
        assert_eq!(
            (head.family.key, head.place.as_str(), head.supplier.as_str()),
            (FAMILIES[1].key, "Hall 2", "Mill on the hill")
        );
        // The last one has no price: kind and currency are those of the last that has.
        assert_eq!((head.ticket.kind, head.ticket.currency), (PriceKind::Retail, Currency::Gbp));
        assert_eq!(repeated(&garments[2..], Currency::Usd), Head::empty(Currency::Usd));
    }
}
