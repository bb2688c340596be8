//! Wings of the house: pages whose code is loaded when the first page of their wing is opened, so that a first visit need not wait for it.
//!
//! Which pages stand together follows from what they have in common and from when they are used. All wings share memory and types with the
//! rest of the app; only their code and their words come later. `scripts/wings.sh` says how they are cut out of the program.

mod body;
mod house;
mod judging;
mod price;
mod study;

use std::rc::Rc;
use std::task::{Context, Poll, Waker};

use garment_assay::check::Check;
use garment_assay::garment::{Answer, Garment, Id, Readings};
use garment_assay::learn::Subject;
use garment_assay::measure::{INSTRUMENTS, Instrument};
use wasm_split_helpers::SplitLoaderError;
use yew::prelude::*;

use super::appraisals::Appraisals;
use super::browser::turns::breath;
use super::lessons::Lessons;
use super::model::{Message, Model};
use super::parts::means::Means;
use super::pricing::Pricing;
use super::route::Route;

/// A page, or that its wing did not load.
pub type Came = Result<Html, SplitLoaderError>;

/// A wing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Wing {
    /// Checking a garment, from its start to the result.
    Judging,
    /// The list of checks that stands beside the other pages of a garment.
    Beside,
    /// What it costs, what it is offered for, and what is handed on.
    Price,
    /// Whether it fits, and whom.
    Body,
    /// Lessons, practice, the bench and the settings.
    Study,
}

impl Wing {
    /// The wing that the page of that route is in, and none for the rack, which is always here.
    pub fn of(scene: &Scene) -> Option<Wing> {
        let garment = scene.garment().is_some();
        match &scene.model.route {
            Route::Check(_, key) => scene.check_put(key).map(|_| Wing::Judging),
            Route::Start => Some(Wing::Judging),
            Route::Checks(_) | Route::Result(_) | Route::Details(_) | Route::Photographs(..) => garment.then_some(Wing::Judging),
            Route::Ticket(_) | Route::Offer(_) | Route::Lot(_) | Route::Sheet(_) => garment.then_some(Wing::Price),
            Route::Desk(_) | Route::Rates | Route::Beside(_) | Route::BesideSheet(_) | Route::HandOn(_) | Route::Guesses => {
                Some(Wing::Price)
            }
            Route::TapeSheet(_) | Route::Fitting(_) => garment.then_some(Wing::Body),
            Route::People | Route::Person(..) => Some(Wing::Body),
            Route::Settings
            | Route::Numbers
            | Route::Licences
            | Route::Practice
            | Route::Learn
            | Route::Lesson(..)
            | Route::Bench => Some(Wing::Study),
            Route::SeamKind | Route::Ruler => Some(Wing::Study),
            Route::Course(key) => Subject::of(key).map(|_| Wing::Study),
            Route::Instrument(key) | Route::Marks(key, _) => instrument_of(key).map(|_| Wing::Study),
            Route::Live(key, _) => by_means(key, Means::Camera).map(|_| Wing::Study),
            Route::Picture(key, _) => by_means(key, Means::Picture).map(|_| Wing::Study),
            Route::Rack | Route::Resume(_) => None,
        }
    }

    /// The page of the scene that is in this wing.
    pub async fn page(self, scene: Scene) -> Came {
        match self {
            Wing::Judging => judging::page(scene).await,
            Wing::Beside => judging::beside(scene).await,
            Wing::Price => price::page(scene).await,
            Wing::Body => body::page(scene).await,
            Wing::Study => study::page(scene).await,
        }
    }
}

pub use house::house;

/// Brings the house, in which all other wings are, and has it read the notes. Whether it came.
pub async fn bring_house() -> bool {
    if house::bring().await.is_err() {
        return false;
    }
    // Its code was put together in the turn in which it came.
    breath().await;
    let Ok(notes) = house::notes().await else { return false };
    notes.await;
    true
}

/// Brings the code of every wing, one after the other, so that none has to be waited for, or is out of reach once the network is gone.
/// Whether all came.
pub async fn bring_all() -> bool {
    breath().await;
    judging::bring().await.is_ok() && price::bring().await.is_ok() && body::bring().await.is_ok() && study::bring().await.is_ok()
}

pub use price::worths;

/// What a wing gives, if its code is here; else nothing, and `came` is called once that is here or did not come.
pub fn at_once<T: 'static>(
    given: impl Future<Output = Result<T, SplitLoaderError>> + 'static,
    came: impl FnOnce(bool) + 'static,
) -> Option<T> {
    let mut given = Box::pin(given);
    match given.as_mut().poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(given) => given.ok(),
        Poll::Pending => {
            wasm_bindgen_futures::spawn_local(async move {
                came(given.await.is_ok());
            });
            None
        }
    }
}

/// All that a page may be shown from.
#[derive(Clone)]
pub struct Scene {
    /// What the app knows.
    pub model: Rc<Model>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// Build-ups.
    pub pricing: Pricing,
    /// Courses and texts of the lessons.
    pub lessons: Lessons,
    /// What was last read on the bench with the instrument that is open.
    pub on_the_bench: Option<Readings>,
    /// How often the page was resized.
    pub resized: u32,
    /// Where messages go.
    pub send: Callback<Message>,
}

impl Scene {
    /// The garment that is open.
    pub fn garment(&self) -> Option<&Rc<Garment>> {
        self.model.route.garment().and_then(|id| self.model.garment(id))
    }

    /// The check of that key, if it is put to the garment that is open as it is.
    pub fn check_put(&self, key: &str) -> Option<&'static Check> {
        check_put(self.garment()?, key)
    }

    /// The check that an instrument's reading is for, with its garment, and what is kept of that instrument there or on the bench.
    fn taken_for(
        &self,
        instrument: &'static Instrument,
        target: &Option<(Id, String)>,
    ) -> (Option<(Id, &'static Check)>, Option<Readings>) {
        let shown = self.garment();
        let found = target.as_ref().zip(shown);
        let target = found.and_then(|((id, check), garment)| Some((id.clone(), check_put(garment, check)?)));
        let kept = match (&target, shown) {
            (Some((_, check)), Some(garment)) => match garment.answer(check) {
                Some(Answer::Measured(readings)) if readings.instrument == instrument => Some(readings.clone()),
                _ => None,
            },
            _ => self.on_the_bench.clone(),
        };
        (target, kept)
    }
}

/// The check of that key, if it is put to the garment as it is.
pub fn check_put(garment: &Garment, key: &str) -> Option<&'static Check> {
    garment.checks().find(|check| check.key == key)
}

/// The instrument of that key.
pub fn instrument_of(key: &str) -> Option<&'static Instrument> {
    INSTRUMENTS.iter().copied().find(|instrument| instrument.key == key)
}

fn by_means(key: &str, means: Means) -> Option<&'static Instrument> {
    instrument_of(key).filter(|instrument| Means::of(instrument) == means)
}
