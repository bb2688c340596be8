//! Does it fit, and will it go on fitting: body measures, the ease between cloth and body, what wash and wear do to it, what a tailor can
//! mend, and the verdict from all of it. Numbers are of cloth; nothing here speaks about bodies.

mod alter;
mod assess;
mod body;
mod borders;
mod ease;
mod label;
mod mirror;
mod person;
mod size;
pub mod sources;
mod verdict;

pub use alter::{Allowance, Alteration, Cost, Room, Way};
pub use assess::{After, Between, LineFit, Moment, Reach, Read, Span, Tape, Time, assess};
pub use body::{
    ARM, BACK, BAND, BODY_MEASURES, BUST, BodyMeasure, BodyPlace, CHEST, HEIGHT, HIP, INSIDE_LEG, NECK, SHOULDERS, THIGH,
    UPPER_ARM, WAIST, body_measure,
};
pub use ease::{Against, Along, Cut, Ease, EaseRow, Lies, Line, Sits, floor, needed_stretch, wanted};
pub use label::{LabelFault, LabelSystem, Nominal, nominal};
pub use mirror::Went;
pub use person::{BodyReading, Person, PersonId};
pub use size::{Place, SizeAdvice, advise};
pub use verdict::{Cure, Fate, Finding, Sure, Verdict, verdict};
