//! What must hold for every instrument of hands, ruler, tape and eye, whatever is handed to it.

use garment_assay::measure::{
    COLOUR_CHANGE, COLOUR_CHANGE_BY_METER, Fault, GIRTH, GIVE, GROWTH, INSTRUMENTS, InputKind, Instrument, LEG_TWIST, Needed,
    PILLING, RUB_OFF, SEAM_SMOOTHNESS, SEAM_TWIST, SHRINKAGE, SHRINKAGE_TO_EXPECT, STAINING_BY_METER, STRETCH_AND_RECOVERY,
};
use garment_assay::quantity::{Decimal, System};
use proptest::prelude::*;

const BY_HAND: [&Instrument; 14] = [
    &GIVE,
    &GROWTH,
    &STRETCH_AND_RECOVERY,
    &SHRINKAGE,
    &SHRINKAGE_TO_EXPECT,
    &LEG_TWIST,
    &SEAM_TWIST,
    &GIRTH,
    &RUB_OFF,
    &COLOUR_CHANGE,
    &SEAM_SMOOTHNESS,
    &PILLING,
    &STAINING_BY_METER,
    &COLOUR_CHANGE_BY_METER,
];

/// Keys stand in stored pages: give, growth and leg-twist were released with two readings each, and no key here may change again.
#[test]
fn the_keys_are_the_released_ones_and_all_are_on_the_bench() {
    let keys: Vec<&str> = BY_HAND.iter().map(|instrument| instrument.key).collect();
    assert_eq!(
        keys,
        [
            "give",
            "growth",
            "stretch-recovery",
            "shrinkage",
            "shrinkage-expected",
            "leg-twist",
            "seam-twist",
            "girth",
            "rub-off",
            "colour-change",
            "seam-smoothness",
            "pilling",
            "staining-by-meter",
            "colour-change-by-meter"
        ]
    );
    assert!(BY_HAND.iter().all(|instrument| INSTRUMENTS.contains(instrument)));
    for instrument in [&GIVE, &GROWTH, &LEG_TWIST] {
        assert!(instrument.inputs.iter().map(|input| input.key).eq(["reading", "spread"]));
    }
}

#[test]
fn each_says_what_to_do_what_to_mind_and_what_it_leans_on() {
    for instrument in BY_HAND {
        assert!((2..=5).contains(&instrument.steps().len()), "{}", instrument.key);
        assert!(!instrument.cautions().is_empty() && !instrument.sources.is_empty(), "{}", instrument.key);
        let words = [instrument.says()].into_iter().chain(instrument.steps()).chain(instrument.cautions());
        for sentence in words.chain(instrument.inputs.iter().map(|input| input.ask())) {
            assert!(sentence.ends_with('.') && !sentence.contains('!') && !sentence.contains("  "), "{sentence}");
        }
        for input in instrument.inputs {
            for choice in input.choices() {
                assert!(choice.line().ends_with('.') && !choice.name().is_empty(), "{}", choice.key);
            }
        }
    }
}

/// Places within the limits of each input: a share of the way from least to most, whole where only whole numbers are taken.
fn amounts(instrument: &Instrument, shares: &[Option<f64>]) -> Vec<Option<f64>> {
    let one = |(input, share): (&garment_assay::measure::Input, &Option<f64>)| {
        let share = if input.needed == Needed::Always { share.or(Some(0.5)) } else { *share };
        let amount = share.map(|share| input.least + share * (input.most - input.least))?;
        Some(if input.kind == InputKind::Measured { amount } else { amount.round() })
    };
    instrument.inputs.iter().zip(shares).map(one).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]
    #[test]
    fn readings_within_limits_give_a_whole_outcome_or_a_fault_with_words(
        shares in proptest::collection::vec(proptest::option::of(0.0_f64..=1.0), 11)
    ) {
        for instrument in BY_HAND {
            match instrument.estimate(&amounts(instrument, &shares)) {
                Ok(outcome) => {
                    prop_assert!(outcome.value.is_finite() && outcome.uncertainty.is_finite() && outcome.uncertainty > 0.0);
                    let total: f64 = outcome.budget.iter().map(|(_, share)| share).sum();
                    prop_assert!((total - 1.0).abs() < 1e-9, "{}: {total}", instrument.key);
                    prop_assert!(outcome.budget.iter().all(|(key, _)| instrument.input(key).is_some()), "{}", instrument.key);
                    let mut keys: Vec<_> = outcome.also.iter().map(|also| also.key).collect();
                    keys.sort_unstable();
                    keys.dedup();
                    prop_assert_eq!(keys.len(), outcome.also.len());
                    prop_assert!(outcome.also.iter().all(|also| also.value.is_finite() && also.uncertainty.is_finite()));
                    prop_assert!(outcome.says().iter().all(|says| says.ends_with('.') && !says.contains('!')));
                }
                Err(fault) => {
                    prop_assert!(
                        matches!(fault, Fault::Implausible { .. } | Fault::NeededToo(_) | Fault::NoNumber(_)),
                        "{}: {fault:?}", instrument.key
                    );
                    prop_assert!(fault.sentence(System::Imperial, Decimal::Comma).ends_with('.'));
                }
            }
        }
    }

    #[test]
    fn any_numbers_at_all_do_no_harm(given in proptest::collection::vec(proptest::option::of(any::<f64>()), 11)) {
        for instrument in BY_HAND {
            let _ = instrument.estimate(&given[..instrument.inputs.len()]);
            let _ = instrument.estimate(&given);
        }
    }
}
