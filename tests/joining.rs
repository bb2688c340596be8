//! Laws of joining what two people noted of one garment, and what a merge makes of each choice.

mod drawing;

use drawing::{act, bare, check, day, garment_named, judged};
use garment_assay::catalog::FAMILIES;
use garment_assay::garment::{Act, Answer, Entry, Fate, Garment, JoinFault, Part, PriceBreak, TermsAct, differences, joined};
use garment_assay::notebook::{Change, Choice, Mode, export, import, settled};
use garment_assay::trade::Currency;
use proptest::prelude::*;

/// Two copies that part from one beginning.
fn two() -> impl Strategy<Value = (Garment, Garment)> {
    let more = || prop::collection::vec(act(), 0..25);
    (more(), more(), more()).prop_map(|(begun, mine, theirs)| {
        let begun = begun.into_iter().fold(bare("g"), |garment, act| garment.after(act));
        let on = |acts: Vec<Act>| acts.into_iter().fold(begun.clone(), |garment, act| garment.after(act));
        (on(mine), on(theirs))
    })
}

fn order(garment: &Garment, of: impl Fn(&Entry) -> bool) -> Vec<&'static str> {
    garment.entries().iter().filter(|entry| of(entry)).map(|entry| entry.check.key).collect()
}

fn is_answer(entry: &Entry) -> bool {
    entry.answer != Answer::Skipped
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn joined_with_itself_a_garment_is_itself(garment in garment_named("g")) {
        prop_assert_eq!(differences(&garment, &garment), vec![]);
        prop_assert_eq!(joined(&garment, &garment), Ok(garment));
    }

    #[test]
    fn copies_that_do_not_differ_are_equal_and_the_other_way((mine, theirs) in two()) {
        let parts = differences(&mine, &theirs);
        prop_assert_eq!(parts.is_empty(), mine == theirs, "{:?}", parts);
    }

    #[test]
    fn nothing_that_was_noted_is_lost((mine, theirs) in two()) {
        let joined_both = joined(&mine, &theirs);
        prop_assume!(joined_both != Err(JoinFault::TooLong));
        let both = joined_both.expect("of one family, all of it known");
        for (key, note) in mine.check_notes().chain(theirs.check_notes()) {
            prop_assert!(both.check_note(check_or_worn(&both, key)).contains(note), "{note}");
        }
        prop_assert!(both.note().contains(mine.note()) && both.note().contains(theirs.note()));
        for (kept, words) in [(both.label(), theirs.label()), (both.place(), theirs.place()), (both.collection(), theirs.collection())] {
            prop_assert!(kept == words || both.note().contains(words), "{words}");
        }
        prop_assert!(mine.label().is_empty() || both.label() == mine.label());
        for entry in mine.entries().iter().filter(|entry| is_answer(entry)) {
            prop_assert_eq!(both.answer(entry.check), Some(&entry.answer));
        }
        for entry in theirs.entries().iter().filter(|entry| is_answer(entry)) {
            let open = !mine.entries().iter().any(|other| other.check == entry.check && is_answer(other));
            prop_assert!(!open || both.answer(entry.check) == Some(&entry.answer));
            let gave_way = both.answer(entry.check) != Some(&entry.answer);
            prop_assert!(!gave_way || both.check_note(entry.check).contains("Also answered: "));
        }
        for (point, taped) in theirs.measures() {
            prop_assert_eq!(both.taped(point), mine.taped(point).or(Some(taped)));
        }
        for one in mine.photographs().all().iter().chain(theirs.photographs().all()) {
            let kept = both.photographs().get(one.id());
            prop_assert!(kept.is_some_and(|kept| kept.caption().contains(one.caption())), "{:?} of {:?}", kept, one);
        }
        prop_assert_eq!((both.id(), both.noted()), (mine.id(), mine.noted()));
        prop_assert!(mine.ticket().is_none() || both.ticket() == mine.ticket());
    }

    #[test]
    fn answers_of_mine_come_first_and_each_keeps_its_order((mine, theirs) in two()) {
        let Ok(both) = joined(&mine, &theirs) else { return Ok(()) };
        let own = order(&mine, is_answer);
        let of_both = order(&both, is_answer);
        prop_assert_eq!(&of_both[..own.len()], &own[..]);
        let added = order(&theirs, |entry| is_answer(entry) && !own.contains(&entry.check.key));
        prop_assert_eq!(&of_both[own.len()..], &added[..]);
        let mut once = order(&both, |_| true);
        once.sort_unstable();
        once.dedup();
        prop_assert_eq!(once.len(), both.entries().len());
    }

    #[test]
    fn joined_once_more_nothing_changes((mine, theirs) in two()) {
        let Ok(both) = joined(&mine, &theirs) else { return Ok(()) };
        prop_assert_eq!(joined(&both, &theirs), Ok(both.clone()));
        prop_assert_eq!(joined(&both, &mine), Ok(both));
    }

    #[test]
    fn a_pair_becomes_what_was_chosen((mine, theirs) in two()) {
        let other = bare("h");
        let file = export(&[&theirs, &other], day());
        let here = [&mine, &other];
        let read = import(&file, &here, Mode::Merge).expect("our own file");
        prop_assert_eq!(read.conflicts.clone(), if mine == theirs { vec![] } else { vec![theirs.clone()] });
        let chosen = |choice| settled(&read.changes, &read.conflicts, &here, |_| choice);
        prop_assert_eq!(chosen(Choice::Both), read.changes.clone());
        if mine == theirs {
            return Ok(());
        }
        prop_assert_eq!(&chosen(Choice::Mine)[0], &Change::Same(mine.id().clone()));
        prop_assert_eq!(&chosen(Choice::Theirs)[0], &Change::Overwrite(theirs.clone()));
        let expected = match joined(&mine, &theirs) {
            Ok(both) if both == mine => Change::Same(mine.id().clone()),
            Ok(both) => Change::Join(both),
            Err(_) => read.changes[0].clone(),
        };
        prop_assert_eq!(&chosen(Choice::Join)[0], &expected);
    }
}

fn check_or_worn(garment: &Garment, key: &str) -> &'static garment_assay::check::Check {
    garment_assay::garment::check_of(garment.family(), key).expect("a check of the family")
}

#[test]
fn notes_that_differ_stand_one_after_the_other_and_once_only() {
    let one = bare("g").after(Act::Note("Firm cloth.".to_owned())).after(Act::Label("Blue".to_owned()));
    let other = bare("g").after(Act::Note("Zip runs.".to_owned())).after(Act::Label("Style 7".to_owned()));
    let both = joined(&one, &other).expect("they fit");
    assert_eq!(both.label(), "Blue");
    assert_eq!(both.note(), "Firm cloth.\n\nZip runs.\nAlso called: Style 7");
    assert_eq!(Part::Note.fate(&one, &other, &both), Fate::Both);
    // One who went on from the other's note has both already.
    let longer = one.after(Act::Note("Firm cloth.\nMore below.".to_owned()));
    assert_eq!(joined(&one, &longer).map(|both| both.note().to_owned()), Ok("Firm cloth.\nMore below.".to_owned()));
    // A word within another line is not the same note.
    let denied = one.after(Act::Note("Not: Firm cloth.".to_owned()));
    assert_eq!(joined(&denied, &one).map(|both| both.note().to_owned()), Ok("Not: Firm cloth.\n\nFirm cloth.".to_owned()));
}

#[test]
fn what_would_be_cut_or_cannot_be_read_is_not_joined() {
    let long = |letter: &str| bare("g").after(Act::Note(letter.repeat(1_200)));
    assert_eq!(joined(&long("a"), &long("b")), Err(JoinFault::TooLong));
    let noted = |letter: &str| bare("g").after(Act::CheckNote(check("hang"), letter.repeat(1_200)));
    assert_eq!(joined(&noted("a"), &noted("b")), Err(JoinFault::TooLong));
    let unknown = bare("g").with_aside("newer".to_owned(), "1".to_owned());
    assert_eq!(joined(&bare("g"), &unknown), Err(JoinFault::NotKnown));
    assert_eq!(joined(&unknown, &unknown), Ok(unknown.clone()));
    assert_eq!(differences(&bare("g"), &unknown), [Part::Aside]);
    let shirt = Garment::new(bare("g").id().clone(), FAMILIES[1], day());
    assert_eq!(joined(&bare("g"), &shirt), Err(JoinFault::OtherFamily));
}

#[test]
fn a_check_put_off_gives_way_to_an_answer_and_an_answer_never() {
    let off = bare("g").after(Act::Answer(check("hang"), Answer::Skipped));
    let answered = bare("g").after(judged("hang", "equal"));
    for (mine, theirs) in [(&off, &answered), (&answered, &off)] {
        let both = joined(mine, theirs).expect("they fit");
        assert_eq!(both.answer(check("hang")), answered.answer(check("hang")));
    }
    let otherwise = bare("g").after(judged("hang", "slightly"));
    let both = joined(&answered, &otherwise).expect("they fit");
    assert_eq!(Part::Answer(check("hang")).fate(&answered, &otherwise, &both), Fate::Mine);
    // What they saw is not lost: it stands in words in the note on the check, once.
    let name = |answer: Option<&Answer>| match answer {
        Some(Answer::Judged { level, .. }) => check("hang").levels.iter().find(|one| one.key == *level).map(|one| one.name()),
        _ => None,
    };
    let line = format!("Also answered: {}", name(otherwise.answer(check("hang"))).expect("judged"));
    assert_eq!(both.check_note(check("hang")), line);
    let noted = otherwise.after(Act::CheckNote(check("hang"), "The left leg.".to_owned()));
    let both = joined(&answered, &noted).expect("they fit");
    assert_eq!(both.check_note(check("hang")), format!("The left leg.\n{line}"));
    assert_eq!(joined(&both, &noted), Ok(both));
    assert_eq!(differences(&answered, &otherwise), [Part::Answer(check("hang"))]);
}

#[test]
fn a_price_is_not_put_under_another_currency() {
    let price = |minor| TermsAct::Prices(vec![PriceBreak { from: 100, minor }]);
    let mine = bare("g").after(Act::Terms(price(900)));
    let theirs = bare("g").after(Act::Terms(TermsAct::Currency(Some(Currency::Jpy)))).after(Act::Terms(price(120_000)));
    let both = joined(&mine, &theirs).expect("they fit");
    assert_eq!((both.terms().currency(), both.terms().prices()), (None, mine.terms().prices()));
    let both = joined(&bare("g"), &theirs).expect("they fit");
    assert_eq!(both.terms(), theirs.terms());
}
