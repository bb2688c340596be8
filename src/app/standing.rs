//! How safely the app and the notes lie on this device: the copy for use without a network, a newer version, the browser's promise, the last
//! export; and which one line of it a screen shows. Pure, as the model is.

use std::rc::Rc;

use garment_assay::garment::{Garment, Id};
use garment_assay::notebook::{Keeping, Unheld};
use garment_assay::say;

use super::model::{Effect, Model};
use super::route::Route;

/// How the copy for use without a network stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Copy {
    /// It is being made, or nobody has said yet.
    #[default]
    Loading,
    /// All of the app is on this device.
    Whole,
    /// What was opened is; so many bytes are not, before they are packed for the way.
    Part(u64),
    /// Not all files arrived.
    Failed,
    /// The address is not a secure one, and browsers keep copies of such pages only.
    Insecure,
    /// The browser has no way to keep one, or not in this window.
    Lacking,
}

/// How a newer version stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Newer {
    /// There is none.
    #[default]
    No,
    /// One is on this device and waits to be used.
    Waiting,
    /// It is to be used now: the page is loaded again as soon as the browser lets it in.
    Coming,
    /// Another window has gone over to one; this page is still of the version before.
    TakenElsewhere,
}

/// Whether the browser may throw away what is noted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Lasting {
    /// Nobody has said yet.
    #[default]
    Unknown,
    /// The browser has promised to keep it.
    Promised,
    /// It has not, and can be asked.
    NotPromised,
    /// It cannot be asked.
    CannotBeAsked,
}

/// All of it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Standing {
    /// The copy for use without a network.
    pub copy: Copy,
    /// A newer version.
    pub newer: Newer,
    /// The browser's promise.
    pub lasting: Lasting,
    /// What was done so far to keep the notes safe.
    pub keeping: Rc<Keeping>,
    /// The newer version was left for later.
    pub newer_left: bool,
}

/// Something about it that happened, or that the person wants.
#[derive(Clone, Debug, PartialEq)]
pub enum Step {
    /// The copy and a newer version stand so.
    Told(Copy, Newer),
    /// The browser's promise stands so, and whether the person was waiting to hear it.
    Lasting(Lasting, bool),
    /// These garments were handed out as a file from which they can be read back.
    Exported(Vec<Id>),
    /// The newer version is to be used now.
    TakeNewer,
    /// Not now.
    LeaveNewer,
    /// The page is to be loaded again.
    Reload,
    /// What is missing of the copy is to be fetched.
    FetchRest,
    /// The browser is to be asked for its promise.
    AskPromise,
    /// It is not to be asked.
    LeavePromise,
    /// The reminder is to stay away for a while.
    PutOff,
}

/// What is asked of the browser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wish {
    /// Go over to the newer version.
    TakeNewer,
    /// Load the page again.
    Reload,
    /// Fetch what is missing of the copy.
    FetchRest,
    /// Ask for the promise.
    AskPromise,
}

/// The one line that a screen shows of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// A newer version is ready.
    Newer,
    /// It was asked for and is on its way in.
    Coming,
    /// Another window has gone over to one.
    TakenElsewhere,
    /// The browser could be asked for its promise.
    AskPromise,
    /// Garments are in no file.
    Remind(Unheld),
}

impl Standing {
    /// The garments of one's own that no file holds.
    pub fn unheld(&self, garments: &[Rc<Garment>], today: garment_assay::trade::Day) -> Option<Unheld> {
        self.keeping.unheld(garments.iter().map(Rc::as_ref), today)
    }
}

impl Model {
    /// The line for the screen that is open. None in the middle of a check, nor wherever else a hand is at work; the settings have a card that says all of it.
    pub fn line(&self) -> Option<Line> {
        let quiet = matches!(self.route, Route::Rack | Route::Result(_));
        let standing = &self.standing;
        // What is wrong with storage stands there already, and is graver.
        if !quiet || self.fault.is_some() || self.low_on_room {
            return None;
        }
        let promised = standing.lasting == Lasting::Promised;
        match standing.newer {
            Newer::Waiting if !standing.newer_left => return Some(Line::Newer),
            Newer::Coming => return Some(Line::Coming),
            Newer::TakenElsewhere => return Some(Line::TakenElsewhere),
            Newer::Waiting | Newer::No => {}
        }
        if standing.lasting == Lasting::Unknown {
            return None;
        }
        let garments = || self.garments.iter().map(Rc::as_ref);
        if standing.lasting == Lasting::NotPromised && standing.keeping.asks(garments(), promised) {
            return Some(Line::AskPromise);
        }
        standing.keeping.reminds(garments(), promised, self.today).map(Line::Remind)
    }

    /// What becomes of the model with a step, and what must happen outside.
    pub fn after_step(&mut self, step: Step) -> Vec<Effect> {
        let keeping = match step {
            Step::Told(copy, newer) => {
                // Another newer one than the one that was left.
                self.standing.newer_left &= newer == Newer::Waiting;
                (self.standing.copy, self.standing.newer) = (copy, newer);
                return Vec::new();
            }
            Step::Lasting(lasting, awaited) => {
                self.standing.lasting = lasting;
                if awaited {
                    self.notice = Some(Rc::new(super::model::Notice::plain(if lasting == Lasting::Promised {
                        say!("The browser has promised to keep what you note here.")
                    } else {
                        say!("The browser has not promised it. Export now and then.")
                    })));
                }
                return Vec::new();
            }
            Step::TakeNewer => return vec![Effect::Wish(Wish::TakeNewer)],
            Step::LeaveNewer => {
                self.standing.newer_left = true;
                return Vec::new();
            }
            Step::Reload => return vec![Effect::Wish(Wish::Reload)],
            Step::FetchRest => return vec![Effect::Wish(Wish::FetchRest)],
            Step::Exported(ref ids) => {
                let garments: Vec<&Garment> = ids.iter().filter_map(|id| self.garment(id)).map(Rc::as_ref).collect();
                self.standing.keeping.after_export(self.today, &garments)
            }
            Step::AskPromise | Step::LeavePromise => self.standing.keeping.after_asking(),
            Step::PutOff => self.standing.keeping.after_putting_off(self.today),
        };
        self.standing.keeping = Rc::new(keeping);
        let ask = (step == Step::AskPromise).then_some(Effect::Wish(Wish::AskPromise));
        [Some(Effect::KeepKeeping), ask].into_iter().flatten().collect()
    }
}

#[cfg(test)]
mod tests {
    use super::super::model::tests::{answered_times, id, model};
    use super::*;

    fn ready(newer: Newer) -> Model {
        let mut model = model(vec![answered_times("g", 3)]);
        model.after_step(Step::Told(Copy::Whole, newer));
        model.after_step(Step::Lasting(Lasting::Promised, false));
        model
    }

    #[test]
    fn a_newer_version_is_offered_where_no_hand_is_at_work_and_nowhere_else() {
        let mut model = ready(Newer::Waiting);
        for (route, line) in [
            (Route::Rack, Some(Line::Newer)),
            (Route::Result(id("g")), Some(Line::Newer)),
            (Route::Settings, None),
            (Route::Check(id("g"), "x".to_owned()), None),
            (Route::Desk(None), None),
            (Route::Fitting(id("g")), None),
            (Route::Practice, None),
            (Route::Start, None),
        ] {
            model.route = route;
            assert_eq!(model.line(), line, "{:?}", model.route);
        }
        assert_eq!(model.after_step(Step::TakeNewer), [Effect::Wish(Wish::TakeNewer)]);
    }

    #[test]
    fn a_newer_version_left_for_later_is_not_offered_again_and_another_windows_is() {
        let mut model = ready(Newer::Waiting);
        assert_eq!(model.after_step(Step::LeaveNewer), []);
        assert_eq!(model.line(), None);
        model.after_step(Step::Told(Copy::Whole, Newer::Waiting));
        assert_eq!(model.line(), None, "told again of the same");
        assert_eq!(model.standing.newer, Newer::Waiting, "the settings still say so");
        model.after_step(Step::Told(Copy::Whole, Newer::TakenElsewhere));
        assert_eq!(model.line(), Some(Line::TakenElsewhere));
    }

    #[test]
    fn the_promise_is_asked_for_once_answers_are_there_and_the_browser_can_be_asked() {
        let mut model = ready(Newer::No);
        for (lasting, line) in [
            (Lasting::Unknown, None),
            (Lasting::Promised, None),
            (Lasting::CannotBeAsked, None),
            (Lasting::NotPromised, Some(Line::AskPromise)),
        ] {
            model.after_step(Step::Lasting(lasting, false));
            assert_eq!(model.line(), line, "{lasting:?}");
        }
        assert_eq!(model.after_step(Step::AskPromise), [Effect::KeepKeeping, Effect::Wish(Wish::AskPromise)]);
        assert_eq!(model.line(), None);
        model.after_step(Step::Lasting(Lasting::NotPromised, true));
        assert!(model.notice.as_ref().is_some_and(|notice| notice.text.contains("has not promised")));
    }

    #[test]
    fn garments_in_no_file_are_spoken_of_until_they_are_exported_or_it_is_put_off() {
        let mut model = ready(Newer::No);
        model.after_step(Step::Lasting(Lasting::CannotBeAsked, false));
        model.today = garment_assay::trade::Day::new(2026, 12, 25).expect("a day");
        assert_eq!(model.line(), Some(Line::Remind(Unheld { count: 1, days: 30 })));
        let mut later = model.clone();
        assert_eq!(later.after_step(Step::PutOff), [Effect::KeepKeeping]);
        assert_eq!(later.line(), None);
        assert_eq!(model.after_step(Step::Exported(vec![id("g")])), [Effect::KeepKeeping]);
        assert_eq!(model.line(), None);
        assert_eq!(model.standing.unheld(&model.garments, model.today), None);
    }
}
