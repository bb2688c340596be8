//! Drawn cloth, seams and faults with a known truth: the pictures beside answers, and what practice is made of.

mod chance;
mod cloth;
mod cloth_trial;
mod drawing;
mod finish;
mod pen;
mod picture;
mod seam;
mod seam_place;
mod shape;
mod stitching;
mod trims;

pub use cloth::{ClothFace, ClothFlaw, Fold, PocketCloth, Weave};
pub use cloth_trial::{Give, Growth, RubOff};
pub use drawing::{Drawing, Ink, Mark, Paint, drawing};
pub use finish::{Fade, FadeEdge, Harm, Wash, Wear, WhiskerWork, Whiskers};
pub use picture::{Known, Picture, truth};
pub use seam::{BagClosing, BagSeam, Edge, Hem, HemStitch, Join, JoinedSeam, OutseamEdge};
pub use seam_place::{BeltLoop, Crotch, SeatYoke};
pub use shape::{BackPockets, Bagging, LegTwist, Matching, Symmetry};
pub use stitching::{Course, Ending, Pucker, RowEnd, ThreadTails, Topstitch};
pub use trims::{BarTack, Button, Buttonhole, Fly, Label, Rivet, StressPoints, TackState};
