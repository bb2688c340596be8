//! Drawn cloth, seams and faults with a known truth: the pictures beside answers, and what practice is made of.
//!
//! ```
//! use garment_assay::specimen::{Picture, Topstitch, drawing, truth};
//!
//! static RESTARTED: Picture = Picture::Topstitch(Topstitch { restarts: 2, ..Topstitch::CLEAN });
//! assert_eq!(drawing(&RESTARTED, 7), drawing(&RESTARTED, 7));
//! assert_eq!(RESTARTED.words(), "2 rows of topstitching, 8 stitches per inch, 2 restarts, rows parallel");
//! assert!(!truth(&RESTARTED).is_empty());
//! ```

mod chance;
mod closing;
mod cloth;
mod cloth_trial;
mod drawing;
mod dress;
mod dress_flat;
mod dress_seams;
mod dress_shape;
mod edges;
mod ends;
mod finish;
mod graded;
mod handling;
mod jacket_details;
mod jacket_front;
mod jacket_inside;
mod jacket_match;
mod jacket_points;
mod jacket_shape;
#[cfg(test)]
mod knits_tests;
mod light_cloth;
mod pen;
mod photograph;
mod picture;
mod points;
mod pucker;
mod raw_edge;
mod seam;
mod seam_look;
mod seam_place;
mod shape;
mod shirt_button;
mod shirt_collar;
mod shirt_front;
mod shirt_inside;
#[cfg(test)]
mod shirt_tests;
mod stitch_run;
mod stitching;
mod sweater;
mod sweater_knit;
mod sweater_seams;
mod sweater_shape;
mod tee_knit;
mod tee_seams;
mod top_flat;
mod trims;
mod waves;
mod wear;
mod whiskers;
mod whole;
mod words;

#[cfg(test)]
mod tests;

pub use closing::{Buttonhole, Fly, Label};
pub use cloth::{ClothFace, ClothFlaw, Fold, PocketCloth, Weave};
pub use cloth_trial::{Give, Growth, LightThrough, RubOff};
pub use drawing::{Drawing, Ink, Mark, Paint, drawing};
pub use dress::Dress;
pub use dress_flat::{DressFlat, DressPoint, HemRound};
pub use dress_seams::{DressZip, EdgeInside, HemLine, SlipPull, TailsInside};
pub use dress_shape::{Darts, Hooks, HungDress, SkirtLining};
pub use edges::{BagClosing, BagSeam, Edge, Hem, HemStitch, OutseamEdge};
pub use ends::{Ending, RowEnd, ThreadTails};
pub use finish::{Fade, FadeEdge, Wash};
pub use graded::{ColourPair, Pilling};
pub use handling::{Fingertips, HolesMarked, Hung, Rubbing, RulerOnSeam, SideLight, WashMarks, Window};
pub use jacket_details::{Crushed, CuffVent, JetPocket, PurledHole, SewnButton};
pub use jacket_front::{FrontEdge, FrontLayer, Lapels};
pub use jacket_inside::{LiningHem, SpareCloth};
pub use jacket_match::Matched;
pub use jacket_points::{JacketFlat, JacketMeasure, JacketPoint};
pub use jacket_shape::{CollarSit, SleeveHead};
pub use light_cloth::{Layers, LightHand};
pub use photograph::{ClothKind, ClothPhotograph, Graduation, Level, Photograph, Pixel, RubPhotograph, Scale, SeamTruth, Sewn};
pub use photograph::{cloth_photograph, photograph, rub_photograph};
pub use picture::{Known, Picture, truth};
pub use points::{JeansFlat, Measure, Point};
pub use pucker::Pucker;
pub use raw_edge::{EdgeFate, RawEdge};
pub use seam::{Join, JoinedSeam};
pub use seam_look::{BackLook, NeedleLines, SeamBack};
pub use seam_place::{BeltLoop, Crotch, SeatYoke};
pub use shape::{BackPockets, Bagging, LegTwist, Matching, Symmetry};
pub use shirt_button::{Hold, ShirtButton};
pub use shirt_collar::{Collar, Cuffs};
pub use shirt_front::{FineStitches, ShirtFront, ShirtPattern};
pub use shirt_inside::{SeamWidth, ShirtTail, TailTurn};
pub use stitch_run::{StitchKind, StitchRun};
pub use stitching::{Course, Topstitch};
pub use sweater::Sweater;
pub use sweater_knit::{Gauge, Loops, Poked, YarnEnds};
pub use sweater_seams::{JoinPulled, KnitJoin, Shaping};
pub use sweater_shape::{CardiganBand, HungSweater, RibCuff, SweaterNeck};
pub use tee_knit::{BodyTwist, NeckRib, Print};
pub use tee_seams::{Cover, HemState, KnitHem, KnitSeam, Taped};
pub use top_flat::{ShirtDetails, TopCut, TopFlat, TopPoint};
pub use trims::{BarTack, Button, Rivet, StressPoints, TackState};
pub use waves::SeamWaves;
pub use wear::{Harm, Tear, Wear};
pub use whiskers::{WhiskerWork, Whiskers};
pub use whole::{Details, Waistband};
