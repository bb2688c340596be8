//! What two programs say to each other comes out as it went in, and nothing else comes out of other words.

use garment_assay::garment::{Errand, Given, Readings};
use garment_assay::measure::INSTRUMENTS;
use garment_assay::quantity::{System, Unit};
use proptest::prelude::*;

fn every_unit() -> Vec<Unit> {
    let mut units: Vec<Unit> = Vec::new();
    for input in INSTRUMENTS.iter().flat_map(|instrument| instrument.inputs) {
        for unit in [input.unit, input.metric, input.imperial] {
            if !units.contains(&unit) {
                units.push(unit);
            }
        }
    }
    units
}

fn readings() -> impl Strategy<Value = Readings> {
    let finite = any::<f64>().prop_filter("a number", |amount| amount.is_finite());
    let units = every_unit().len();
    (0..INSTRUMENTS.len(), prop::collection::vec((any::<prop::sample::Index>(), finite, 0..units), 0..9)).prop_map(
        |(instrument, given)| {
            let instrument = INSTRUMENTS[instrument];
            let given = given.into_iter().map(|(input, amount, unit)| Given {
                input: input.get(instrument.inputs).key,
                amount,
                unit: every_unit()[unit],
            });
            Readings { instrument, given: given.collect() }
        },
    )
}

proptest! {
    #[test]
    fn readings_come_out_as_they_went_in(readings in readings()) {
        prop_assert_eq!(Readings::heard(&readings.spoken()), Some(readings));
    }

    #[test]
    fn an_errand_comes_out_as_it_went_in(readings in readings(), keeps: bool, imperial: bool, back in "#[a-z0-9/~-]{0,60}", check in proptest::option::of("[^\n]{1,40}")) {
        let errand = Errand {
            instrument: readings.instrument,
            system: if imperial { System::Imperial } else { System::Metric },
            back,
            check,
            kept: Some(readings).filter(|_| keeps),
        };
        prop_assert_eq!(Errand::heard(&errand.spoken()), Some(errand));
    }

    /// Whatever is heard is either refused or says the same when it is said again.
    #[test]
    fn any_other_words_are_refused(words in "\\PC{0,80}", cut in 0_usize..200, readings in readings()) {
        let spoken = readings.spoken();
        let broken: String = spoken.chars().take(cut).chain(words.chars()).collect();
        for words in [words.as_str(), broken.as_str()] {
            if let Some(heard) = Readings::heard(words) {
                prop_assert_eq!(Readings::heard(&heard.spoken()), Some(heard));
            }
            prop_assert_eq!(Errand::heard(words), None, "an errand has five fields");
        }
    }
}

#[test]
fn what_is_not_known_or_no_number_is_refused_whole() {
    let input = INSTRUMENTS[0].inputs[0].key;
    let key = INSTRUMENTS[0].key;
    assert!(Readings::heard(&format!("{key};{input} 1 mm")).is_some());
    for words in [
        String::new(),
        "nothing-known".to_owned(),
        format!("{key};"),
        format!("{key};{input}"),
        format!("{key};{input} 1"),
        format!("{key};{input} 1 mm "),
        format!("{key};{input} 1  mm"),
        format!("{key};{input} one mm"),
        format!("{key};{input} NaN mm"),
        format!("{key};{input} inf mm"),
        format!("{key};{input} 1 ell"),
        format!("{key};no-such-input 1 mm"),
        format!("{key}\n"),
    ] {
        assert_eq!(Readings::heard(&words), None, "{words:?}");
    }
    let other = INSTRUMENTS[1].key;
    assert!(Errand::heard(&format!("{key}\nmetric\n#/\n\n")).is_some());
    for words in [
        format!("{key}\nmetric\n#/\n"),
        format!("{key}\nmetric\n#/\n\n\n"),
        format!("{key}\ncubits\n#/\n\n"),
        "no\nmetric\n#/\n\n".to_owned(),
        format!("{key}\nmetric\n#/\n\n{other}"),
        format!("{key}\nmetric\n#/\n\nno"),
    ] {
        assert_eq!(Errand::heard(&words), None, "{words:?}");
    }
}
