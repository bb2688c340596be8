//! The invented rack: the file in `web/` is what the scene says, it shows every feature in each family, and nothing in it teaches about
//! real garments.

#[path = "../examples/invented_rack/scene.rs"]
mod scene;

use garment_assay::catalog::FAMILIES;
use garment_assay::cost::{Market, Rates};
use garment_assay::fit::{Person, PersonId};
use garment_assay::garment::{Act, Answer, Appraiser, Garment, Id, fit};
use garment_assay::notebook::{Change, Mode, import};
use garment_assay::rack::{Taught, leans_on, reveal};
use garment_assay::trade::{Currency, PriceKind, Ticket};

fn shipped() -> (Vec<Garment>, Vec<Person>) {
    let read = import(include_str!("../web/invented-rack.json"), &[], Mode::Merge).expect("the app reads its own file");
    let garments = read.changes.into_iter().map(|change| match change {
        Change::Add(garment) => garment,
        other => panic!("{other:?}"),
    });
    let people = read.people.expect("people").into_iter().map(|change| match change {
        Change::Add(person) => person,
        other => panic!("{other:?}"),
    });
    (garments.collect(), people.collect())
}

#[test]
fn the_file_is_what_the_scene_says() {
    let (garments, people) = shipped();
    // Compared as one truth value: a garment told in full would fill the screen.
    let same = garments == scene::garments() && people == scene::people();
    assert!(same, "web/invented-rack.json is out of date: cargo run --example invented_rack --no-default-features");
}

#[test]
fn every_name_says_that_it_is_invented() {
    let (garments, people) = shipped();
    assert!(garments.iter().all(|garment| garment.id().is_invented()));
    assert!(people.iter().all(|person| person.id().is_invented() && person.name().contains("invented")));
    assert!(!Id::new("a-invented-1").is_some_and(|id| id.is_invented()));
    assert!(!PersonId::new("robin").is_some_and(|id| id.is_invented()));
}

#[test]
fn each_family_shows_every_feature() {
    let (garments, people) = shipped();
    assert!(garments.iter().any(|garment| !garment.is_reference()), "one left out of predictions");
    for family in FAMILIES {
        let of: Vec<&Garment> = garments.iter().filter(|garment| garment.family() == family).collect();
        assert!(of.len() >= 2, "{}: {} garments", family.key, of.len());
        let some = |what: &str, is: fn(&Garment) -> bool| assert!(of.iter().any(|garment| is(garment)), "{}: {what}", family.key);
        let answered = |garment: &Garment, is: fn(&Answer) -> bool| garment.entries().iter().any(|entry| is(&entry.answer));
        assert!(of.iter().any(|garment| answered(garment, |answer| matches!(answer, Answer::Judged { .. }))), "{}", family.key);
        assert!(of.iter().any(|garment| answered(garment, |answer| matches!(answer, Answer::Measured(_)))), "{}", family.key);
        some("at least eight answers", |garment| garment.answered() >= 8);
        some("a ticket in view", |garment| garment.ticket_in_view().is_some());
        some("a guess", |garment| garment.guess().is_some());
        some("a note", |garment| !garment.note().is_empty() || garment.check_notes().next().is_some());
        some("a tape sheet", |garment| garment.measures().count() >= 3);
        some("how often it would be worn", |garment| garment.deal().wears_a_year().is_some());
        some("a ticket to guess", |garment| garment.ticket().is_some_and(|ticket| ticket.face_down) && garment.guess().is_none());
        some("what nobody can tell", |garment| garment.entries().iter().any(|entry| entry.answer == Answer::CannotTell));
        some("an offer", |garment| !garment.terms().prices().is_empty() && garment.terms().shortlisted());
        some("a lot", |garment| garment.lot().is_some_and(|log| !log.findings.is_empty()));
        some("a collection", |garment| !garment.collection().is_empty());
        some("what wear has left", |garment| Appraiser::default().left(garment).is_some_and(|left| left.evidence() >= 4));
        some("shop and name", |garment| garment.shop().is_some() && garment.name().is_some());
        let fitted = of.iter().find(|garment| garment.fitting().who() == Some(people[0].id())).expect("one tried on");
        assert!(fitted.fitting().label().is_some() && fitted.fitting().cut().is_some(), "{}", family.key);
        assert!(
            fit(fitted, Some(&people[0])).is_some_and(|report| report.verdict.is_some()),
            "{}: nothing comes of its fitting",
            family.key
        );
    }
}

#[test]
fn the_first_of_a_family_is_made_better_than_its_second() {
    let appraiser = Appraiser::default();
    let (garments, _) = shipped();
    for family in FAMILIES {
        let of: Vec<f64> = garments
            .iter()
            .filter(|garment| garment.family() == family)
            .map(|garment| appraiser.appraise(garment).mean())
            .collect();
        assert!(of[0] > of[1] + 0.5, "{}: {of:?}", family.key);
    }
}

#[test]
fn its_guesses_are_enough_to_show_a_habit() {
    let (garments, _) = shipped();
    let reveals: Vec<_> = garments.iter().filter_map(|garment| reveal(garment).ok()).collect();
    assert!(reveals.len() >= 5, "{}", reveals.len());
}

#[test]
fn it_teaches_itself_and_nobody_else() {
    let (garments, _) = shipped();
    let ticket = Ticket { minor: 5_000, currency: Currency::Usd, kind: PriceKind::Retail, face_down: false };
    let own = Garment::new(Id::new("mine").expect("a name"), FAMILIES[0], scene::day()).after(Act::Ticket(Some(ticket)));
    assert!(garments.iter().all(|garment| !leans_on(own.id(), garment)));
    assert!(garments.iter().all(|garment| !leans_on(garment.id(), &own)));
    let other = Id::new("other").expect("a name");
    assert!(leans_on(&other, &own) && !leans_on(own.id(), &own));
    let rates = Rates::of(Market::UnitedStates);
    let covered = garments.iter().find(|garment| garment.ticket().is_some_and(|ticket| ticket.face_down)).expect("one");
    let taught = Taught::by(garments.iter().filter(|garment| leans_on(covered.id(), garment)), &rates);
    assert!(taught.ids().len() >= 10, "{}", taught.ids().len());
    assert!(taught.behind(covered).is_some());
}
