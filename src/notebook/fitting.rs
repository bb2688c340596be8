//! What was noted in the fitting room, as the field `fit` of a garment's page.
//!
//! ```text
//! {"who":"…","cut":"slim","cloth":"raw","wash":{"warmth":"warm","drying":"line"},"label":{"system":"waist-inches","text":"32"},
//!  "inside":{"hem":{"amount":3.0,"unit":"cm"}},"moves":{"sit":"freely"},"signs":{"front-lines":false}}
//! ```
//! What this version does not know of it is set aside piece by piece, each piece as a `fit` of its own, and laid under the rest in writing.

use serde_json::{Map, Value, json};

use super::page::{amount_read, amount_written, has_only};
use crate::catalog::FitTable;
use crate::fit::{LabelSystem, PersonId, Went};
use crate::garment::{Act, FitAct, Fitting, Garment, LabelSize};
use crate::measure::{Drying, Warmth};

/// Name of the field.
pub(super) const FIELD: &str = "fit";
/// Fields of it that hold one thing for each key of the family's table.
const BY_KEY: [&str; 3] = ["inside", "moves", "signs"];

fn warmth_key(warmth: Warmth) -> &'static str {
    match warmth {
        Warmth::Cool => "cool",
        Warmth::Warm => "warm",
        Warmth::Hot => "hot",
    }
}

fn drying_key(drying: Drying) -> &'static str {
    match drying {
        Drying::Line => "line",
        Drying::Tumble => "tumble",
    }
}

/// What was noted, over what was set aside; none when there is neither.
pub(super) fn written(table: Option<&FitTable>, fitting: &Fitting, aside: Vec<Value>) -> Option<Value> {
    let mut all = Map::new();
    let mut other = None;
    for piece in aside {
        match piece {
            Value::Object(piece) => lay_over(&mut all, piece),
            piece => other = Some(piece),
        }
    }
    lay_over(&mut all, noted(table, fitting));
    // Something of another shape altogether stays until something is noted here.
    if all.is_empty() { other } else { Some(Value::Object(all)) }
}

fn lay_over(all: &mut Map<String, Value>, piece: Map<String, Value>) {
    for (field, value) in piece {
        match (all.get_mut(&field), value) {
            (Some(Value::Object(under)), Value::Object(over)) if BY_KEY.contains(&field.as_str()) => under.extend(over),
            (_, value) => drop(all.insert(field, value)),
        }
    }
}

fn noted(table: Option<&FitTable>, fitting: &Fitting) -> Map<String, Value> {
    let mut noted = Map::new();
    let mut put = |field: &str, value: Option<Value>| {
        if let Some(value) = value {
            noted.insert(field.to_owned(), value);
        }
    };
    put("who", fitting.who().map(|who| who.as_str().into()));
    put("cut", fitting.cut().map(|cut| cut.key.into()));
    put("cloth", fitting.cloth().map(|cloth| cloth.key.into()));
    let wash = fitting.wash();
    put("wash", wash.map(|(warmth, drying)| json!({ "warmth": warmth_key(warmth), "drying": drying_key(drying) })));
    put("label", fitting.label().map(|label| json!({ "system": label.system().key(), "text": label.text() })));
    // A garment of a family without a table takes none of these.
    let Some(table) = table else { return noted };
    let inside = table.allowances.iter().filter_map(|one| Some((one.key, amount_written(fitting.allowance(one)?))));
    let moves = table.moves.iter().filter_map(|one| Some((one.key, fitting.went(one)?.key().into())));
    let signs = table.signs.iter().filter_map(|one| Some((one.key, fitting.seen(one)?.into())));
    put("inside", by_key(inside));
    put("moves", by_key(moves));
    put("signs", by_key(signs));
    noted
}

fn by_key(all: impl Iterator<Item = (&'static str, Value)>) -> Option<Value> {
    let all: Map<String, Value> = all.map(|(key, value)| (key.to_owned(), value)).collect();
    (!all.is_empty()).then_some(Value::Object(all))
}

/// The garment with what its page says of the fitting room.
pub(super) fn read(garment: Garment, value: Value) -> Garment {
    let (Some(table), Value::Object(fields)) = (garment.family().fit, &value) else {
        return garment.with_aside(FIELD.to_owned(), value.to_string());
    };
    let mut pieces: Vec<(Option<FitAct>, Value)> = Vec::new();
    for (field, value) in fields {
        match value {
            Value::Object(all) if BY_KEY.contains(&field.as_str()) => {
                pieces.extend(all.iter().map(|(key, value)| (keyed(table, field, key, value), json!({ field: { key: value } }))));
            }
            value => pieces.push((single(table, field, value), json!({ field: value }))),
        }
    }
    pieces.into_iter().fold(garment, |garment, (act, piece)| {
        // An act that the garment refuses, for an amount beyond belief or a label of another trade, is not lost either.
        let taken = act.map(|act| (garment.after(Act::Fit(act.clone())), act)).filter(|(next, act)| holds(next.fitting(), act));
        match taken {
            Some((next, _)) => next,
            None => garment.with_aside(FIELD.to_owned(), piece.to_string()),
        }
    })
}

/// Whether what an act says is what is noted now.
fn holds(fitting: &Fitting, act: &FitAct) -> bool {
    match act {
        FitAct::Who(who) => fitting.who() == who.as_ref(),
        FitAct::Cut(cut) => fitting.cut() == *cut,
        FitAct::Cloth(cloth) => fitting.cloth() == *cloth,
        FitAct::Wash(wash) => fitting.wash() == *wash,
        FitAct::Label(label) => fitting.label() == label.as_ref(),
        FitAct::Allowance(one, amount) => fitting.allowance(one) == *amount,
        FitAct::Move(one, went) => fitting.went(one) == *went,
        FitAct::Sign(one, seen) => fitting.seen(one) == *seen,
        // Nothing that is read says all of them at once.
        FitAct::Signs(_) => false,
    }
}

fn single(table: &FitTable, field: &str, value: &Value) -> Option<FitAct> {
    match field {
        "who" => Some(FitAct::Who(Some(PersonId::new(value.as_str()?)?))),
        "cut" => {
            let key = value.as_str()?;
            Some(FitAct::Cut(Some(table.cuts.iter().copied().find(|cut| cut.key == key)?)))
        }
        "cloth" => {
            let key = value.as_str()?;
            Some(FitAct::Cloth(Some(table.cloths.iter().copied().find(|cloth| cloth.key == key)?)))
        }
        "wash" if has_only(value, &["warmth", "drying"]) => {
            let (warmth, drying) = (value.get("warmth")?.as_str()?, value.get("drying")?.as_str()?);
            let warmth = [Warmth::Cool, Warmth::Warm, Warmth::Hot].into_iter().find(|one| warmth_key(*one) == warmth)?;
            let drying = [Drying::Line, Drying::Tumble].into_iter().find(|one| drying_key(*one) == drying)?;
            Some(FitAct::Wash(Some((warmth, drying))))
        }
        "label" if has_only(value, &["system", "text"]) => {
            let (system, text) = (LabelSystem::from_key(value.get("system")?.as_str()?)?, value.get("text")?.as_str()?);
            // A text that would be cut is left to whoever wrote it.
            Some(FitAct::Label(Some(LabelSize::new(system, text).filter(|label| label.text() == text)?)))
        }
        _ => None,
    }
}

fn keyed(table: &FitTable, field: &str, key: &str, value: &Value) -> Option<FitAct> {
    match field {
        "inside" => {
            let allowance = table.allowances.iter().copied().find(|one| one.key == key)?;
            Some(FitAct::Allowance(allowance, Some(amount_read(value)?)))
        }
        "moves" => {
            let one = table.moves.iter().copied().find(|one| one.key == key)?;
            Some(FitAct::Move(one, Some(Went::from_key(value.as_str()?)?)))
        }
        "signs" => {
            let one = table.signs.iter().copied().find(|one| one.key == key)?;
            Some(FitAct::Sign(one, Some(value.as_bool()?)))
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::jeans::JEANS;
    use crate::catalog::sources::SOURCES;
    use crate::catalog::{Family, Move, Sign};
    use crate::fit::{Allowance, Cure, Cut};
    use crate::garment::Id;
    use crate::measure::{ChangeRange, ClothBeforeWash};
    use crate::quantity::{Amount, Unit};
    use crate::trade::Day;
    use proptest::prelude::*;
    use proptest::sample::select;

    // A table of the tests' own: what stands in the catalog may change, the stored form may not.
    static CLOSE: Cut = Cut { key: "close", name: "Close", says: "" };
    static WIDE: Cut = Cut { key: "wide", name: "Wide", says: "" };
    static RAW: ClothBeforeWash = ClothBeforeWash {
        key: "raw",
        name: "Raw",
        tell: "",
        length: ChangeRange { low: -3.0, high: -1.0 },
        width: ChangeRange { low: -3.0, high: -1.0 },
        felts: false,
        raw: true,
    };
    static HEM: Allowance = Allowance { key: "hem", name: "Hem", how: "", most_cm: 12.0 };

    static SIT: Move = Move {
        key: "sit",
        name: "Sit down",
        how: "",
        looks: ["", "", ""],
        cause: "",
        cure: Cure::None,
        needs: None,
        tries: &[],
        weight: 0.5,
        caution: None,
        drawn: None,
        source: SOURCES[0],
    };
    static LINES: Sign = Sign {
        key: "front-lines",
        name: "Lines in front",
        looks: "",
        cause: "",
        cure: Cure::None,
        needs: None,
        mend: "",
        weight: 0.5,
        drawn: None,
        source: SOURCES[0],
    };
    static TABLE: FitTable = FitTable {
        cuts: &[&CLOSE, &WIDE],
        lines: &[],
        cloths: &[&RAW],
        give: None,
        usual_give: (0.0, 1.0),
        growth: None,
        allowances: &[&HEM],
        moves: &[&SIT],
        signs: &[&LINES],
        labels: &[LabelSystem::WaistInches],
    };
    static FAMILY: Family = Family { fit: Some(&TABLE), ..PLAIN };
    const PLAIN: Family = Family {
        key: "tests",
        name: "Tests",
        example: "",
        drawn: JEANS.drawn,
        covers: "",
        checks: &[],
        points: &[],
        drawn_points: &[],
        bill: None,
        defects: &[],
        fit: None,
        second_hand: &[],
        cautions: &[],
    };
    static WITHOUT_A_TABLE: Family = PLAIN;

    fn bare() -> Garment {
        Garment::new(Id::new("g").expect("a name"), &FAMILY, Day::new(2026, 11, 26).expect("a day"))
    }

    /// The field as it would be written for that garment.
    fn written_of(garment: &Garment) -> Option<Value> {
        let aside = garment.aside().iter().map(|(_, text)| serde_json::from_str(text).expect("JSON")).collect();
        written(garment.family().fit, garment.fitting(), aside)
    }

    fn act() -> impl Strategy<Value = FitAct> {
        let wash = (select(vec![Warmth::Cool, Warmth::Warm, Warmth::Hot]), select(vec![Drying::Line, Drying::Tumble]));
        let inside = (0.0..12.0_f64, select(vec![Unit::Centimetre, Unit::Millimetre, Unit::Inch]));
        prop_oneof![
            "[a-z0-9~-]{1,80}".prop_map(|who| FitAct::Who(PersonId::new(&who))),
            Just(FitAct::Who(None)),
            prop::option::of(select(TABLE.cuts.to_vec())).prop_map(FitAct::Cut),
            prop::option::of(select(TABLE.cloths.to_vec())).prop_map(FitAct::Cloth),
            prop::option::of(wash).prop_map(FitAct::Wash),
            any::<Option<String>>()
                .prop_map(|text| FitAct::Label(text.and_then(|text| LabelSize::new(LabelSystem::WaistInches, &text)))),
            prop::option::of(inside)
                .prop_map(|inside| FitAct::Allowance(&HEM, inside.map(|(number, unit)| Amount { number, unit }))),
            prop::option::of(select(Went::ALL.to_vec())).prop_map(move |went| FitAct::Move(&SIT, went)),
            any::<Option<bool>>().prop_map(move |seen| FitAct::Sign(&LINES, seen)),
        ]
    }

    proptest! {
        #[test]
        fn what_was_noted_in_the_fitting_room_is_read_as_it_was_written(acts in prop::collection::vec(act(), 0..20)) {
            let noted = acts.into_iter().fold(bare(), |garment, act| garment.after(Act::Fit(act)));
            let again = match written_of(&noted) {
                Some(value) => read(bare(), value),
                None => bare(),
            };
            prop_assert_eq!(again.fitting(), noted.fitting());
            prop_assert_eq!(again.aside(), &[]);
        }
    }

    #[test]
    fn every_part_stands_in_its_unit_under_its_key() {
        let inch = |number| Some(Amount { number, unit: Unit::Inch });
        let noted = [
            FitAct::Who(PersonId::new("p-1")),
            FitAct::Cut(Some(&WIDE)),
            FitAct::Cloth(Some(&RAW)),
            FitAct::Wash(Some((Warmth::Hot, Drying::Tumble))),
            FitAct::Label(LabelSize::new(LabelSystem::WaistInches, "W32 L34")),
            FitAct::Allowance(&HEM, inch(1.25)),
            FitAct::Move(&SIT, Some(Went::Pulled)),
            FitAct::Sign(&LINES, Some(false)),
        ];
        let garment = noted.into_iter().fold(bare(), |garment, act| garment.after(Act::Fit(act)));
        let known = json!({
            "who": "p-1", "cut": "wide", "cloth": "raw", "wash": { "warmth": "hot", "drying": "tumble" },
            "label": { "system": "waist-inches", "text": "W32 L34" }, "inside": { "hem": { "amount": 1.25, "unit": "in" } },
            "moves": { "sit": "pulled" }, "signs": { "front-lines": false },
        });
        assert_eq!(written_of(&garment), Some(known));
    }

    #[test]
    fn a_label_that_was_cut_at_a_space_is_read_as_it_was_written() {
        let label = LabelSize::new(LabelSystem::WaistInches, " W32 L34 and a note   that is cut").expect("a label");
        let garment = bare().after(Act::Fit(FitAct::Label(Some(label.clone()))));
        let again = read(bare(), written_of(&garment).expect("a fitting"));
        assert_eq!((again.fitting().label(), again.aside().len()), (Some(&label), 0));
        assert_eq!(label.text(), "W32 L34 and a note");
    }

    #[test]
    fn nothing_noted_is_nothing_written() {
        assert_eq!(written_of(&bare()), None);
    }

    #[test]
    fn what_this_version_does_not_know_of_it_is_set_aside_piece_by_piece_and_written_back() {
        let unknown = json!({
            "who": "a b", "cut": "balloon", "cloth": 7, "wash": { "warmth": "warm", "drying": "line", "times": 3 },
            "label": { "system": "letters-chest", "text": "M" }, "mood": "glad",
            "inside": { "hem": { "amount": 500.0, "unit": "cm" }, "cuff": { "amount": 2.0, "unit": "cm" } },
            "moves": { "sit": "sideways", "leap": "freely" }, "signs": { "front-lines": "faint", "halo": true },
        });
        let garment = read(bare(), unknown.clone());
        assert_eq!((garment.fitting(), garment.aside().len()), (&Fitting::default(), 12));
        assert_eq!(written_of(&garment), Some(unknown.clone()));
        // What is noted since counts, each in its place; the rest stays where it is.
        let noted = garment.after(Act::Fit(FitAct::Cut(Some(&CLOSE)))).after(Act::Fit(FitAct::Move(&SIT, Some(Went::Freely))));
        let mut known = unknown;
        known["cut"] = "close".into();
        known["moves"]["sit"] = "freely".into();
        assert_eq!(written_of(&noted), Some(known.clone()));
        let again = read(bare(), known);
        assert_eq!((again.fitting(), again.aside().len()), (noted.fitting(), 10));
    }

    #[test]
    fn a_fitting_of_another_shape_or_of_a_family_without_a_table_stays_as_it_is() {
        for value in [json!([1, 2]), json!("tight"), json!(null), json!({ "moves": [1] })] {
            let garment = read(bare(), value.clone());
            assert_eq!((garment.fitting(), written_of(&garment)), (&Fitting::default(), Some(value.clone())), "{value}");
            // It gives way to what is noted.
            let noted = garment.after(Act::Fit(FitAct::Cut(Some(&WIDE))));
            let again = read(bare(), written_of(&noted).expect("a fitting"));
            assert_eq!(again.fitting(), noted.fitting(), "{value}");
        }
        let whole = json!({ "who": "p-1", "cut": "wide", "moves": { "sit": "freely" } });
        let garment = read(
            Garment::new(Id::new("g").expect("a name"), &WITHOUT_A_TABLE, Day::new(2026, 11, 26).expect("a day")),
            whole.clone(),
        );
        assert_eq!((garment.aside().len(), written_of(&garment)), (1, Some(whole)));
    }
}
