//! Faults of the shelf at every step of every journey: what was acknowledged is there, or it is said what is not.

mod drawing;
mod faulty;

use std::collections::BTreeMap;
use std::panic::catch_unwind;

use drawing::{act, bare, check, day, id, judged, point};
use faulty::desk::Desk;
use faulty::{Harm, HarmfulShelf};
use garment_assay::cost::Incoterm;
use garment_assay::fit::{BodyReading, Person, PersonId, WAIST};
use garment_assay::garment::{Act, Garment, Readings, Taped, TermsAct, joined};
use garment_assay::learn::Marks;
use garment_assay::lot::{Log, LotSize};
use garment_assay::measure::{STITCH_DENSITY, ScreenScale};
use garment_assay::notebook::{Healed, KeepFault, Keeping, MemoryShelf, Mode, Notebook, Settings, Shelf, export, import, write};
use garment_assay::practice::{Topic, Trial};
use garment_assay::quantity::{Amount, Unit};
use garment_assay::trade::{Currency, PriceKind, Ticket};
use proptest::prelude::*;
use proptest::sample::select;

type Acts = Vec<Act>;

/// One act of every kind that a garment's page can hold.
fn every_kind() -> Acts {
    let ticket = Ticket { minor: 8_995, currency: Currency::Eur, kind: PriceKind::Retail, face_down: false };
    let taped = Taped::new(vec![Amount { number: 42.5, unit: Unit::Centimetre }], false);
    vec![
        judged("hang", "equal"),
        Act::CheckNote(check("hang"), "left leg".to_owned()),
        Act::Measure(point("waist"), taped),
        Act::Note("Größe 32".to_owned()),
        Act::Ticket(Some(ticket)),
        Act::Terms(TermsAct::Incoterm(Some(Incoterm::CostInsuranceFreight))),
        Act::Lot(Some(Log::new(LotSize::new(400).expect("a lot")))),
        Act::Collection("Spring".to_owned()),
        Act::Archived(true),
    ]
}

fn jo(name: &str, centimetres: f64) -> Person {
    let reading = BodyReading::new(&WAIST, Amount { number: centimetres, unit: Unit::Centimetre });
    Person::new(PersonId::new(name).expect("a name"), "Jo").with(&WAIST, reading)
}

/// What a small thing is written as, on a shelf that works.
fn written(key: &str, act: impl FnOnce(&mut Notebook<HarmfulShelf>) -> Result<(), KeepFault>) -> String {
    let shelf = HarmfulShelf::default();
    let (mut notebook, _) = Notebook::open(shelf.clone());
    act(&mut notebook).expect("a shelf that works");
    shelf.memory.get(&format!("garment-assay/{key}")).expect("memory").expect("a text")
}

fn small(desk: &mut Desk, key: &str, act: impl Fn(&mut Notebook<HarmfulShelf>) -> Result<(), KeepFault>) {
    let text = written(key, &act);
    desk.small(key, &text, &act);
}

fn edit(desk: &mut Desk, name: &str, act: Act) {
    if let Some(garment) = desk.garments.get(&id(name)).cloned() {
        desk.keep(garment.after(act));
    }
}

/// A journey with every kind of writing that there is, on a shelf that comes to harm as planned.
fn journey(plan: BTreeMap<u64, Harm>) -> Desk {
    let mut desk = Desk::new(plan);
    desk.keep(bare("a"));
    for act in every_kind() {
        edit(&mut desk, "a", act);
    }
    // Undo.
    if let Some(garment) = desk.garments.get(&id("a")).cloned() {
        desk.keep(garment.after(garment.undoing(&Act::Archived(false))));
        desk.keep(garment.duplicate(id("b"), day()));
    }
    desk.keep_person(jo("p", 80.0));
    desk.keep_person(jo("p", 81.0));
    small(&mut desk, "settings", |notebook| notebook.keep_settings(&Settings::default().write()));
    let trial = Trial { topic: Topic::ALL[0], difficulty: 0.5, blind: 0.25, right: true };
    small(&mut desk, "practice", |notebook| notebook.keep_trials(&[trial]));
    small(&mut desk, "lessons", |notebook| notebook.keep_lessons_read(&Marks::of(["jeans/hang".to_owned()])));
    small(&mut desk, "keeping", |notebook| notebook.keep_keeping(&Keeping::default().after_asking()).map(|_| ()));
    let scale = ScreenScale { px_per_mm: 6.0, relative: 0.01 };
    small(&mut desk, "scale/s", |notebook| notebook.keep_scale("s", Some(&scale)));
    let readings = Readings { instrument: &STITCH_DENSITY, given: Vec::new() };
    small(&mut desk, &format!("bench/{}", STITCH_DENSITY.key), |notebook| notebook.keep_on_the_bench(&readings));
    desk.reopen();
    // Deleted, and that undone.
    if let Some(garment) = desk.garments.get(&id("b")).cloned() {
        desk.discard(&id("b"));
        desk.keep(garment);
    }
    // Two windows.
    if let Some(garment) = desk.garments.get(&id("b")).cloned() {
        desk.elsewhere(&garment.after(Act::Label("theirs".to_owned())));
        desk.keep(garment.after(Act::Label("mine".to_owned())));
    }
    // A file merged, joined and put in place of everything.
    let theirs = bare("a").after(Act::Label("from a file".to_owned()));
    let file = export(&[&theirs, &bare("c")], day());
    for mode in [Mode::Merge, Mode::Replace] {
        let here: Vec<Garment> = desk.garments.values().cloned().collect();
        let brought = import(&file, &here.iter().collect::<Vec<_>>(), mode).expect("a whole file");
        desk.bring(brought.changes);
        if mode == Mode::Merge
            && let Some(mine) = desk.garments.get(&id("a")).cloned()
            && let Ok(joined) = joined(&mine, &theirs)
        {
            desk.keep(joined);
        }
    }
    desk.discard_person(&jo("p", 81.0));
    desk.reopen();
    edit(&mut desk, "c", Act::Note("the end".to_owned()));
    desk
}

#[test]
fn a_journey_on_a_shelf_that_works_is_kept_and_nothing_is_said() {
    let desk = journey(BTreeMap::new());
    assert_eq!(desk.said, 0);
    let names: Vec<&str> = desk.garments.keys().map(|id| id.as_str()).collect();
    assert_eq!(names, ["a", "c"]);
    desk.assert_holds();
}

#[test]
fn whichever_operation_comes_to_whichever_harm_what_was_acknowledged_is_there_or_it_is_said() {
    let operations = journey(BTreeMap::new()).operations();
    let (mut journeys, mut said, mut failed) = (0, 0, Vec::new());
    for (place, operation) in operations.iter().enumerate() {
        for harm in Harm::ALL.into_iter().filter(|harm| operation.can_suffer(*harm)) {
            let met = catch_unwind(|| {
                let desk = journey(BTreeMap::from([(place as u64, harm)]));
                let said = desk.said;
                desk.assert_holds();
                said
            });
            journeys += 1;
            match met {
                Ok(faults) => said += faults,
                Err(_) => failed.push((place, harm)),
            }
        }
    }
    assert!(failed.is_empty(), "{failed:?}");
    println!("{} operations, {journeys} journeys, {said} faults said", operations.len());
    assert!(operations.len() > 100 && journeys > 800 && said > 400, "{journeys} journeys, {said} faults");
}

#[derive(Clone, Debug)]
enum Step {
    Begin,
    Edit(usize, Act),
    Duplicate(usize),
    Delete(usize),
    Undo,
    Person(u8, u8),
    DropPerson(u8),
    Settings(bool),
    File(Mode, Act),
    Join(usize, Act),
    Elsewhere(usize, Act),
    DropAside(usize),
    Erase,
    Reopen,
}

fn step() -> impl Strategy<Value = Step> {
    let which = 0_usize..6;
    prop_oneof![
        3 => Just(Step::Begin),
        12 => (which.clone(), act()).prop_map(|(which, act)| Step::Edit(which, act)),
        1 => which.clone().prop_map(Step::Duplicate),
        2 => which.clone().prop_map(Step::Delete),
        2 => Just(Step::Undo),
        2 => (0_u8..3, 70_u8..120).prop_map(|(which, waist)| Step::Person(which, waist)),
        1 => (0_u8..3).prop_map(Step::DropPerson),
        1 => any::<bool>().prop_map(Step::Settings),
        1 => (select(vec![Mode::Merge, Mode::Replace]), act()).prop_map(|(mode, act)| Step::File(mode, act)),
        1 => (which.clone(), act()).prop_map(|(which, act)| Step::Join(which, act)),
        1 => (which.clone(), act()).prop_map(|(which, act)| Step::Elsewhere(which, act)),
        1 => which.prop_map(Step::DropAside),
        1 => Just(Step::Erase),
        3 => Just(Step::Reopen),
    ]
}

/// The garment at that place of the rack, counted round.
fn nth(desk: &Desk, which: usize) -> Option<Garment> {
    desk.garments.values().nth(which % desk.garments.len().max(1)).cloned()
}

fn take(desk: &mut Desk, number: usize, step: Step, undo: &mut Option<Garment>) {
    match step {
        Step::Begin => desk.keep(bare(&format!("g{number}"))),
        Step::Edit(which, act) => {
            if let Some(garment) = nth(desk, which) {
                *undo = Some(garment.clone());
                desk.keep(garment.after(act));
            }
        }
        Step::Duplicate(which) => {
            if let Some(garment) = nth(desk, which) {
                desk.keep(garment.duplicate(id(&format!("g{number}")), day()));
            }
        }
        Step::Delete(which) => {
            if let Some(garment) = nth(desk, which) {
                desk.discard(garment.id());
                *undo = Some(garment);
            }
        }
        Step::Undo => {
            if let Some(garment) = undo.take() {
                desk.keep(garment);
            }
        }
        Step::Person(which, waist) => desk.keep_person(jo(&format!("p{which}"), f64::from(waist))),
        Step::DropPerson(which) => {
            if let Some(person) = desk.people.values().nth(which.into()).cloned() {
                desk.discard_person(&person);
            }
        }
        Step::Settings(yen) => {
            let settings = Settings { currency: if yen { Currency::Jpy } else { Currency::Eur }, ..Settings::default() };
            small(desk, "settings", |notebook| notebook.keep_settings(&settings.write()));
        }
        Step::File(mode, act) => {
            let here: Vec<Garment> = desk.garments.values().cloned().collect();
            let mut theirs: Vec<Garment> = here.iter().take(2).map(|garment| garment.after(act.clone())).collect();
            theirs.push(bare(&format!("g{number}")));
            let file = export(&theirs.iter().collect::<Vec<_>>(), day());
            desk.bring(import(&file, &here.iter().collect::<Vec<_>>(), mode).expect("a whole file").changes);
        }
        Step::Join(which, act) => {
            if let Some(garment) = nth(desk, which)
                && let Ok(joined) = joined(&garment, &garment.after(act))
            {
                desk.keep(joined);
            }
        }
        Step::Elsewhere(which, act) => {
            if let Some(garment) = nth(desk, which) {
                desk.elsewhere(&garment.after(act));
            }
        }
        Step::DropAside(which) => {
            if let Some(garment) = nth(desk, which) {
                desk.drop_set_aside(&format!("garment-assay/page/{}", garment.id().as_str()));
            }
        }
        Step::Erase => {
            desk.erase();
            *undo = None;
        }
        Step::Reopen => {
            desk.reopen();
            *undo = None;
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn any_journey_under_any_harm_keeps_what_was_acknowledged_or_says_so(
        steps in prop::collection::vec(step(), 0..40),
        plan in prop::collection::btree_map(0_u64..250, select(Harm::ALL.to_vec()), 0..8),
    ) {
        let mut desk = Desk::new(plan);
        let mut undo = None;
        for (number, step) in steps.into_iter().enumerate() {
            take(&mut desk, number, step, &mut undo);
        }
        desk.assert_holds();
    }
}

// Two windows that write at the same instant: neither has seen the other's, both count one more, and the later write lies there.

fn garment(label: &str) -> Garment {
    bare("g").after(Act::Label(label.to_owned()))
}

const PLACE: &str = "garment-assay/page/g";

fn rack(shelf: &MemoryShelf) -> Vec<Garment> {
    let mut garments = Notebook::open(shelf.clone()).1.garments;
    garments.sort_by(|one, other| one.id().cmp(other.id()));
    garments
}

#[test]
fn what_another_window_wrote_at_the_same_instant_is_not_written_over_nor_deleted() {
    let windows = || {
        let shelf = MemoryShelf::default();
        let (mut one, _) = Notebook::open(shelf.clone());
        one.keep(&garment("")).expect("room");
        one.keep(&garment("mine")).expect("room");
        shelf.set(PLACE, &write(&garment("yours"), 2)).expect("room");
        (shelf, one)
    };
    let (shelf, mut one) = windows();
    let kept = one.keep(&garment("mine, later")).expect("room");
    let renamed = kept.renamed.expect("a new name");
    assert_eq!(renamed.theirs, Some(garment("yours")));
    assert_eq!(rack(&shelf), [garment("yours"), garment("mine, later").named(id("g~2"))]);
    let (shelf, mut one) = windows();
    let stays = one.discard(&id("g")).expect("no fault").stays.expect("it stays");
    assert_eq!(stays.theirs, Some(garment("yours")));
    assert_eq!(rack(&shelf), [garment("yours")]);
    // Whoever has seen it may delete it.
    assert_eq!(one.discard(&id("g")).expect("no fault").stays, None);
    assert_eq!(rack(&shelf), []);
}

#[test]
fn of_two_writings_of_one_count_on_shelf_and_in_mirror_both_stay() {
    let shelf = MemoryShelf::default();
    shelf.set(PLACE, &write(&garment("yours"), 2)).expect("room");
    let mirror = [(PLACE.to_owned(), write(&garment("mine"), 2))];
    let (mut notebook, _) = Notebook::open(shelf.clone());
    let healed = notebook.heal(&mirror).expect("no fault");
    let beside = garment("mine").named(id("g~2"));
    assert_eq!(healed.garments, std::slice::from_ref(&beside));
    assert_eq!(rack(&shelf), [garment("yours"), beside]);
    assert_eq!(notebook.heal(&healed.to_mirror), Ok(Healed::default()), "twice is once");
}

#[test]
fn of_a_deletion_and_an_edit_of_one_count_the_edit_stays() {
    let gone = {
        let (mut notebook, _) = Notebook::open(MemoryShelf::default());
        notebook.keep(&garment("")).expect("room");
        notebook.discard(&id("g")).expect("no fault").page.1
    };
    let edited = write(&garment("edited"), 2);
    for (here, there) in [(&gone, &edited), (&edited, &gone)] {
        let shelf = MemoryShelf::default();
        shelf.set(PLACE, here).expect("room");
        let (mut notebook, _) = Notebook::open(shelf.clone());
        let healed = notebook.heal(&[(PLACE.to_owned(), there.clone())]).expect("no fault");
        assert_eq!((healed.gone, rack(&shelf)), (Vec::new(), vec![garment("edited")]));
        let pages = [(PLACE.to_owned(), shelf.get(PLACE).expect("a shelf").expect("a page"))];
        assert_eq!(notebook.heal(&pages), Ok(Healed::default()), "twice is once");
    }
}
