//! Drawn cloth, seams and faults with a known truth: the pictures beside answers, and what practice is made of.

mod chance;
mod closing;
mod cloth;
mod cloth_trial;
mod drawing;
mod edges;
mod ends;
mod finish;
mod pen;
mod picture;
mod pucker;
mod seam;
mod seam_place;
mod shape;
mod stitching;
mod trims;
mod words;

pub use closing::{Buttonhole, Fly, Label};
pub use cloth::{ClothFace, ClothFlaw, Fold, PocketCloth, Weave};
pub use cloth_trial::{Give, Growth, RubOff};
pub use drawing::{Drawing, Ink, Mark, Paint, drawing};
pub use edges::{BagClosing, BagSeam, Edge, Hem, HemStitch, OutseamEdge};
pub use ends::{Ending, RowEnd, ThreadTails};
pub use finish::{Fade, FadeEdge, Harm, Wash, Wear, WhiskerWork, Whiskers};
pub use picture::{Known, Picture, truth};
pub use pucker::Pucker;
pub use seam::{Join, JoinedSeam};
pub use seam_place::{BeltLoop, Crotch, SeatYoke};
pub use shape::{BackPockets, Bagging, LegTwist, Matching, Symmetry};
pub use stitching::{Course, Topstitch};
pub use trims::{BarTack, Button, Rivet, StressPoints, TackState};
