//! What of known size lies in the picture: which it is, where it is marked, and how large it is.

use garment_assay::measure::{COINS, Known};
use garment_assay::quantity::{Decimal, System, Unit, read};
use garment_assay::say;
use photo::{Object, Point};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use super::picture::Join;

/// A kind of thing whose size is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A ruler or tape, by two of its graduations.
    Ruler,
    /// A card of the format of bank cards.
    Card,
    /// A coin.
    Coin,
    /// Any two places whose distance is known.
    Distance,
}

impl Kind {
    const ALL: [Kind; 4] = [Kind::Ruler, Kind::Card, Kind::Coin, Kind::Distance];

    const fn key(self) -> &'static str {
        match self {
            Kind::Ruler => "ruler",
            Kind::Card => "card",
            Kind::Coin => "coin",
            Kind::Distance => "distance",
        }
    }

    fn name(self) -> &'static str {
        match self {
            Kind::Ruler => say!("Ruler or tape"),
            Kind::Card => say!("Bank card"),
            Kind::Coin => say!("Coin"),
            Kind::Distance => say!("Two places I measured"),
        }
    }

    /// How many marks it takes.
    pub const fn marks(self) -> usize {
        match self {
            Kind::Ruler | Kind::Distance => 2,
            Kind::Card => 4,
            Kind::Coin => 5,
        }
    }

    /// How its marks are joined.
    pub const fn join(self) -> Join {
        match self {
            Kind::Ruler | Kind::Distance => Join::Line,
            Kind::Card | Kind::Coin => Join::Ring,
        }
    }

    /// What a mark is called.
    pub fn mark(self, place: usize) -> String {
        let number = place + 1;
        match self {
            Kind::Ruler => say!("Graduation {number}", number),
            Kind::Card => say!("Corner {number} of the card", number),
            Kind::Coin => say!("Rim {number} of the coin", number),
            Kind::Distance => say!("Place {number}", number),
        }
    }

    /// What to do for a mark.
    pub fn how(self, place: usize) -> &'static str {
        match (self, place) {
            (Kind::Ruler, 0) => say!("Tap a graduation of the ruler, near one end of the seam."),
            (Kind::Ruler, _) => say!("Tap a second graduation, beside the other end of the seam."),
            (Kind::Card, 0) => say!("Tap a corner of the card. Where it is rounded, tap where the straight sides would meet."),
            (Kind::Card, _) => say!("Tap the next corner round the card."),
            (Kind::Coin, 0) => say!("Tap five places on the rim of the coin, spread all round."),
            (Kind::Coin, _) => say!("Tap the next place on the rim."),
            (Kind::Distance, 0) => say!("Tap one of the two places."),
            (Kind::Distance, _) => say!("Tap the other."),
        }
    }
}

/// What lies in the picture, as the person says.
#[derive(Clone, Debug, PartialEq)]
pub struct KnownSize {
    /// Which kind of thing.
    pub kind: Kind,
    coin: &'static Known,
    text: String,
}

impl KnownSize {
    /// A ruler, with two graduations that are easily found.
    pub fn usual(system: System) -> KnownSize {
        let text = match system {
            System::Metric => "50",
            System::Imperial => "2",
        };
        KnownSize { kind: Kind::Ruler, coin: &COINS[0], text: text.to_owned() }
    }

    /// It, by its marks.
    ///
    /// # Errors
    /// A sentence when the distance is no length.
    pub fn object(&self, marks: &[Point], system: System) -> Result<Object, String> {
        let missing = || say!("Set all marks first.").to_owned();
        match (self.kind, marks) {
            (Kind::Card, marks) => Ok(Object::Card(marks.try_into().map_err(|_| missing())?)),
            (Kind::Coin, marks) => Ok(Object::Coin(marks.to_vec(), self.coin.long_mm)),
            (Kind::Ruler, [one, other]) => Ok(Object::Ruler(*one, *other, self.mm(system)?)),
            (Kind::Distance, [one, other]) => Ok(Object::Marks(*one, *other, self.mm(system)?)),
            _ => Err(missing()),
        }
    }

    fn mm(&self, system: System) -> Result<f64, String> {
        let amount = read(&self.text, unit(system), Decimal::spoken()).map_err(|fault| fault.sentence())?;
        let mm = amount.unit.convert(amount.number, Unit::Millimetre).unwrap_or_default();
        // From a few stitches to the longest tape. Judgement.
        if (2.0..=2000.0).contains(&mm) {
            Ok(mm)
        } else {
            Err(say!("Type how far apart your two marks are: 2 mm to 2 m.").to_owned())
        }
    }
}

/// The unit in which a distance is typed.
fn unit(system: System) -> Unit {
    match system {
        System::Metric => Unit::Millimetre,
        System::Imperial => Unit::Inch,
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was said so far.
    pub known: KnownSize,
    /// Metric or imperial.
    pub system: System,
    /// Called when something else is said.
    pub on: Callback<KnownSize>,
}

fn chosen(event: &Event) -> Option<String> {
    event.target_dyn_into::<HtmlSelectElement>().map(|field| field.value())
}

/// Choosing it: the kind, and for some their size.
#[component]
pub fn KnownSizeForm(props: &Props) -> Html {
    let Props { known, system, on } = props;
    let onkind = {
        let (known, on) = (known.clone(), on.clone());
        Callback::from(move |event: Event| {
            if let Some(kind) = chosen(&event).and_then(|key| Kind::ALL.into_iter().find(|kind| kind.key() == key)) {
                on.emit(KnownSize { kind, ..known.clone() });
            }
        })
    };
    let oncoin = {
        let (known, on) = (known.clone(), on.clone());
        Callback::from(move |event: Event| {
            if let Some(coin) = chosen(&event).and_then(|key| COINS.iter().find(|coin| coin.key == key)) {
                on.emit(KnownSize { coin, ..known.clone() });
            }
        })
    };
    let ontext = {
        let (known, on) = (known.clone(), on.clone());
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                on.emit(KnownSize { text: field.value(), ..known.clone() });
            }
        })
    };
    let fault = known.mm(*system).err();
    html! {
        <div class="known-size">
            <div class="field">
                <label for="known-kind">{ say!("Beside it lies") }</label>
                <select id="known-kind" onchange={onkind}>
                    { for Kind::ALL.into_iter().map(|kind| html! { <option key={kind.key()} value={kind.key()} selected={kind == known.kind}>{ kind.name() }</option> }) }
                </select>
            </div>
            if known.kind == Kind::Coin {
                <div class="field">
                    <label for="known-coin">{ say!("Which coin") }</label>
                    <select id="known-coin" onchange={oncoin}>
                        { for COINS.iter().map(|coin| html! { <option key={coin.key} value={coin.key} selected={coin.key == known.coin.key}>{ coin.name() }</option> }) }
                    </select>
                </div>
            }
            if matches!(known.kind, Kind::Ruler | Kind::Distance) {
                <div class="field">
                    <label for="known-distance">{ say!("Between your two marks") }</label>
                    <div class="field-unit">
                        <input id="known-distance" inputmode="decimal" autocomplete="off" value={known.text.clone()} oninput={ontext}
                            aria-invalid={fault.is_some().to_string()} aria-describedby={fault.as_ref().map(|_| "known-fault")} />
                        <span class="unit">{ unit(*system).symbol() }</span>
                    </div>
                    if let Some(fault) = fault {
                        <p class="fault" id="known-fault" role="alert">{ fault }</p>
                    }
                </div>
            }
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn p(x: f64, y: f64) -> Point {
        Point { x, y }
    }

    #[test]
    fn a_distance_is_taken_in_the_units_of_the_person_and_handed_on_in_millimetres() {
        let marks = [p(0.0, 0.0), p(9.0, 9.0)];
        let known = KnownSize::usual(System::Imperial);
        assert_eq!(known.object(&marks, System::Imperial), Ok(Object::Ruler(marks[0], marks[1], 50.8)));
        let typed = KnownSize { text: "3 cm".to_owned(), ..known };
        assert_eq!(typed.object(&marks, System::Imperial), Ok(Object::Ruler(marks[0], marks[1], 30.0)));
        let word = KnownSize { text: "wide".to_owned(), ..typed };
        assert!(word.object(&marks, System::Metric).is_err());
    }

    #[test]
    fn every_kind_makes_an_object_of_its_marks_and_of_no_fewer() {
        for kind in Kind::ALL {
            let known = KnownSize { kind, ..KnownSize::usual(System::Metric) };
            let marks: Vec<Point> = (0..kind.marks()).map(|n| p(n as f64, 0.0)).collect();
            assert!(known.object(&marks, System::Metric).is_ok(), "{kind:?}");
            if kind != Kind::Coin {
                assert!(known.object(&marks[1..], System::Metric).is_err(), "{kind:?}");
            }
        }
    }
}
