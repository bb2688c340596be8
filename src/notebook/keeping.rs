//! How safely the notebook lies in this browser: which garments a file holds, and when to speak of it. It is about this browser, so it is in
//! no file. Whether the browser has promised to keep what lies in it is handed in, and so is the day.

use std::collections::BTreeSet;

use serde_json::{Value, json};

use crate::garment::{Garment, Id};
use crate::trade::Day;

/// Answers on one garment after which it would be a pity to lose it. Judgement.
const WORTH_KEEPING: usize = 3;
/// Garments in no file that are many. Judgement.
const MANY: usize = 5;
/// Days after which many are spoken of: somebody who notes five in an afternoon is not to be held up in the shop. Judgement.
const MANY_DAYS: i32 = 2;
/// Days after which even one is spoken of. Judgement.
const LONG_DAYS: i32 = 14;
/// Days for which a reminder that was put off stays away. Judgement.
const PUT_OFF_DAYS: i32 = 14;

/// What was done so far to keep the notebook safe.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Keeping {
    asked: bool,
    exported: Option<Day>,
    held: BTreeSet<Id>,
    put_off: Option<Day>,
}

/// Garments that no file holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Unheld {
    /// How many.
    pub count: usize,
    /// Days since the first of them was noted.
    pub days: i32,
}

impl Keeping {
    /// The day of the latest export.
    pub fn exported(&self) -> Option<Day> {
        self.exported
    }

    /// Once these garments were handed out as a file from which they can be read back. The files before are taken to be there still;
    /// that a garment was changed since is not known here.
    pub fn after_export(&self, today: Day, garments: &[&Garment]) -> Keeping {
        let mut held = self.held.clone();
        held.extend(garments.iter().map(|garment| garment.id().clone()));
        Keeping { exported: Some(today), held, ..self.clone() }
    }

    /// Once the person was asked whether the browser is to be asked for a promise, whatever they said.
    pub fn after_asking(&self) -> Keeping {
        Keeping { asked: true, ..self.clone() }
    }

    /// Once the reminder was put off.
    pub fn after_putting_off(&self, today: Day) -> Keeping {
        Keeping { put_off: Some(today), ..self.clone() }
    }

    /// With what another window has noted meanwhile.
    pub fn joined(&self, other: &Keeping) -> Keeping {
        Keeping {
            asked: self.asked || other.asked,
            exported: self.exported.max(other.exported),
            held: self.held.union(&other.held).cloned().collect(),
            put_off: self.put_off.max(other.put_off),
        }
    }

    /// Whether to ask for the browser's promise now: once, and not before there is something that would be a pity to lose.
    pub fn asks<'a>(&self, mut garments: impl Iterator<Item = &'a Garment>, promised: bool) -> bool {
        !promised && !self.asked && garments.any(|garment| !garment.id().is_invented() && garment.answered() >= WORTH_KEEPING)
    }

    /// The garments of one's own that no file holds, if there are any.
    pub fn unheld<'a>(&self, garments: impl Iterator<Item = &'a Garment>, today: Day) -> Option<Unheld> {
        let unheld = garments.filter(|garment| !garment.id().is_invented() && !self.held.contains(garment.id()));
        unheld.fold(None, |so_far, garment| {
            let days = today.days_since(garment.noted());
            let Unheld { count, days: most } = so_far.unwrap_or(Unheld { count: 0, days });
            Some(Unheld { count: count + 1, days: most.max(days) })
        })
    }

    /// Those garments, if it is time to speak of them: many for two days, or any for a fortnight; never where the browser has promised to keep
    /// them, nor for a fortnight after it was put off.
    pub fn reminds<'a>(&self, garments: impl Iterator<Item = &'a Garment>, promised: bool, today: Day) -> Option<Unheld> {
        // A clock that was set back must not silence it for good.
        let put_off = self.put_off.is_some_and(|day| (0..PUT_OFF_DAYS).contains(&today.days_since(day)));
        if promised || put_off {
            return None;
        }
        let due = |unheld: &Unheld| unheld.days >= LONG_DAYS || (unheld.count >= MANY && unheld.days >= MANY_DAYS);
        self.unheld(garments, today).filter(due)
    }

    /// Writes it for storage.
    pub(super) fn write(&self) -> String {
        let day = |day: Option<Day>| day.map(|day| day.to_string());
        let held: Vec<&str> = self.held.iter().map(Id::as_str).collect();
        json!({ "asked": self.asked, "exported": day(self.exported), "held": held, "put_off": day(self.put_off) }).to_string()
    }

    /// Reads it. What cannot be read is as if it had not been: a reminder too many is no loss.
    pub(super) fn read(text: &str) -> Keeping {
        let stored: Value = serde_json::from_str(text).unwrap_or_default();
        let day = |name: &str| stored.get(name).and_then(Value::as_str).and_then(Day::parse);
        let held = stored.get("held").and_then(Value::as_array).into_iter().flatten();
        Keeping {
            asked: stored.get("asked").and_then(Value::as_bool).unwrap_or_default(),
            exported: day("exported"),
            held: held.filter_map(Value::as_str).filter_map(Id::new).collect(),
            put_off: day("put_off"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::FAMILIES;
    use crate::check::Check;
    use crate::garment::{Act, Answer};

    fn day(date: u8) -> Day {
        Day::new(2026, 11, date).expect("a day")
    }

    fn id(name: &str) -> Id {
        Id::new(name).expect("a plain name")
    }

    fn garment(name: &str, noted: u8) -> Garment {
        Garment::new(id(name), FAMILIES[0], day(noted))
    }

    fn answered(name: &str, answers: usize) -> Garment {
        let checks = FAMILIES[0].checks.iter().take(answers);
        let answer = |garment: Garment, check: &&'static Check| garment.after(Act::Answer(check, Answer::CannotTell));
        checks.fold(garment(name, 1), answer)
    }

    fn days(keeping: &Keeping, garments: &[Garment], dates: std::ops::RangeInclusive<u8>) -> Vec<u8> {
        dates.filter(|date| keeping.reminds(garments.iter(), false, day(*date)).is_some()).collect()
    }

    #[test]
    fn the_promise_is_asked_for_once_and_not_before_a_garment_has_some_answers() {
        let keeping = Keeping::default();
        assert!(!keeping.asks([].iter(), false));
        assert!(!keeping.asks([answered("a", 2), answered("b", 2)].iter(), false));
        assert!(keeping.asks([answered("a", 0), answered("b", 3)].iter(), false));
        assert!(!keeping.asks([answered("invented-b", 3)].iter(), false));
        assert!(!keeping.asks([answered("b", 3)].iter(), true));
        assert!(!keeping.after_asking().asks([answered("b", 3)].iter(), false));
    }

    #[test]
    fn one_garment_is_spoken_of_after_a_fortnight_and_five_after_two_days() {
        let keeping = Keeping::default();
        let some = |count: usize| (0..count).map(|at| garment(&format!("g{at}"), 10)).collect::<Vec<_>>();
        assert_eq!(days(&keeping, &some(0), 1..=30), [0_u8; 0]);
        assert_eq!(days(&keeping, &some(1), 1..=30), (24..=30).collect::<Vec<_>>());
        assert_eq!(days(&keeping, &some(4), 1..=30), (24..=30).collect::<Vec<_>>());
        assert_eq!(days(&keeping, &some(5), 1..=30), (12..=30).collect::<Vec<_>>());
        assert!(keeping.reminds(some(5).iter(), true, day(30)).is_none(), "the browser has promised");
        let invented: Vec<Garment> = (0..9).map(|at| garment(&format!("invented-{at}"), 1)).collect();
        assert_eq!(days(&keeping, &invented, 1..=30), [0_u8; 0]);
    }

    #[test]
    fn what_a_file_holds_is_not_spoken_of_and_what_was_noted_since_is() {
        let old = [garment("a", 1), garment("b", 2)];
        let both: Vec<&Garment> = old.iter().collect();
        let keeping = Keeping::default().after_export(day(5), &both[..1]);
        assert_eq!(keeping.exported(), Some(day(5)));
        assert_eq!(keeping.reminds(old.iter(), false, day(20)), Some(Unheld { count: 1, days: 18 }));
        let keeping = keeping.after_export(day(6), &both[1..]);
        assert_eq!(keeping.unheld(old.iter(), day(30)), None, "both files are taken to be there");
        let more = [old[0].clone(), garment("c", 7)];
        assert_eq!(keeping.unheld(more.iter(), day(9)), Some(Unheld { count: 1, days: 2 }));
    }

    #[test]
    fn a_reminder_put_off_stays_away_for_a_fortnight_and_a_clock_set_back_does_not_silence_it() {
        let one = [garment("a", 1)];
        let keeping = Keeping::default().after_putting_off(day(16));
        assert_eq!(days(&keeping, &one, 15..=30), [15, 30]);
    }

    #[test]
    fn two_windows_lose_nothing_of_each_other() {
        let (a, b) = (garment("a", 1), garment("b", 1));
        let here = Keeping::default().after_export(day(3), &[&a]).after_asking();
        let there = Keeping::default().after_export(day(4), &[&b]).after_putting_off(day(2));
        let joined = here.joined(&there);
        assert_eq!(joined, there.joined(&here));
        assert_eq!((joined.exported(), joined.unheld([&a, &b].into_iter(), day(9))), (Some(day(4)), None));
        assert_eq!(joined.put_off, Some(day(2)));
        assert!(joined.asked);
    }

    #[test]
    fn what_is_written_is_read_and_what_cannot_be_read_is_as_if_it_had_not_been() {
        let a = garment("a", 1);
        let keeping = Keeping::default().after_export(day(3), &[&a]).after_asking().after_putting_off(day(9));
        assert_eq!(Keeping::read(&keeping.write()), keeping);
        assert_eq!(Keeping::read(&Keeping::default().write()), Keeping::default());
        for text in ["", "{", "[]", "null", r#"{"asked":7,"exported":"2026-13-01","held":[7,"a b"],"put_off":[]}"#] {
            assert_eq!(Keeping::read(text), Keeping::default(), "{text}");
        }
    }
}
