//! Reading about the checks: a lesson for each, composed of what the catalog says of it, of what its curve makes of each answer, and of a
//! longer text that is fetched when it is first read; courses that put the lessons of a family, or of second-hand pieces, in an order; and
//! what was read. It knows no check by name: a check that is added has its lesson at once, and needs only its text.

mod course;
mod lesson;
mod marks;
mod subject;
mod telling;
mod text;
mod words;

pub use course::{Course, FIRST, Part};
pub use lesson::Lesson;
pub use marks::Marks;
pub use subject::Subject;
pub use telling::{Alone, Telling};
pub use text::{Section, Text, TextFault, Texts};
