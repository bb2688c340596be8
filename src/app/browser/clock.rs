//! The clock and chance, which the library never asks for itself.

use std::cell::RefCell;
use std::collections::HashMap;

use garment_assay::fit::PersonId;
use garment_assay::garment::Id;
use garment_assay::language::{Language, spoken};
use garment_assay::trade::Day;
use js_sys::Intl::DateTimeFormat;
use js_sys::{Array, Date, Function, Math, Number, Object, Reflect};
use wasm_bindgen::JsValue;

/// Today by the device's own calendar.
pub fn today() -> Day {
    let now = Date::new_0();
    let part = |value: u32| u8::try_from(value).unwrap_or(0);
    let year = u16::try_from(now.get_full_year()).unwrap_or(0);
    Day::new(year, part(now.get_month() + 1), part(now.get_date())).or(Day::new(2000, 1, 1)).expect("1 January 2000 is a day")
}

/// A new name: the time, so that names sort, and chance, so that two devices never make the same one.
fn new_name() -> String {
    let base36 = |number: f64| String::from(Number::from(number.floor()).to_string_with_radix(36).unwrap_or_default());
    format!("{}-{}", base36(Date::now()), base36(Math::random() * 1e12))
}

/// A new name for a garment.
pub fn new_id() -> Id {
    Id::new(&new_name()).or(Id::new("g")).expect("a plain letter is a name")
}

/// A new name for a person.
pub fn new_person_id() -> PersonId {
    PersonId::new(&new_name()).or(PersonId::new("p")).expect("a plain letter is a name")
}

/// A seed for specimens that nobody has seen before.
pub fn seed() -> u32 {
    (Math::random() * f64::from(u32::MAX)) as u32
}

/// Seconds since some moment in the past; only differences mean something.
pub fn seconds() -> f64 {
    Date::now() / 1000.0
}

thread_local! {
    /// Days that were written, in the language in which they were: a browser takes a millisecond or two to write one anew.
    static WRITTEN: RefCell<(Language, HashMap<Day, String>)> = RefCell::default();
    /// What writes them. It is slow to make.
    static WRITER: RefCell<Option<(Language, Function)>> = const { RefCell::new(None) };
}

/// Makes ready what writes days, which takes a browser some 25 ms the first time: in a turn of its own, before the rows are drawn that need it.
pub fn make_ready() {
    let _ = written_day(today());
}

/// A day as people here write it: "25 Nov 2026".
pub fn written_day(day: Day) -> String {
    let language = spoken();
    WRITTEN.with_borrow_mut(|(of, written)| {
        if *of != language {
            (*of, *written) = (language, HashMap::new());
        }
        written.entry(day).or_insert_with(|| write_day(day, language)).clone()
    })
}

fn write_day(day: Day, language: Language) -> String {
    // A date without an hour is read as of Greenwich, and is written so too: the device may be carried to another time zone meanwhile.
    let when = Date::new(&JsValue::from_str(&day.to_string()));
    WRITER.with_borrow_mut(|writer| {
        let writes = match writer.take().filter(|(of, _)| *of == language) {
            Some((_, writes)) => writes,
            None => day_writer(language),
        };
        let text = writes.call1(&JsValue::UNDEFINED, &when).ok().and_then(|text| text.as_string());
        *writer = Some((language, writes));
        text.unwrap_or_else(|| day.to_string())
    })
}

fn day_writer(language: Language) -> Function {
    let options = Object::new();
    for (name, value) in [("day", "numeric"), ("month", "short"), ("year", "numeric"), ("timeZone", "UTC")] {
        let _ = Reflect::set(&options, &name.into(), &value.into());
    }
    // English here is that of Britain, whose days stand before their months.
    let tag = match language {
        Language::English => "en-GB",
        other => other.tag(),
    };
    DateTimeFormat::new(&Array::of1(&tag.into()), &options).format()
}
