//! Which stitch and which seam lie before you, from what an untrained eye can see. It names; it does not grade.

use super::Choice;
use crate::say;

/// A question about a seam that a look answers.
#[derive(Debug)]
pub struct Look {
    /// Name for code and tests.
    pub key: &'static str,
    /// The question.
    pub(crate) ask: &'static str,
    /// What may be seen.
    pub choices: &'static [Choice],
}

crate::language::says!(Look { ask });

/// A stitch type by its number in ISO 4915; ASTM D6193 uses the same numbers.
#[derive(Debug, PartialEq)]
pub struct StitchType {
    /// Its number: "301", and "515, 516" for two that look alike.
    pub number: &'static str,
    /// Its usual name.
    pub(crate) name: &'static str,
    /// Where it is met.
    pub(crate) met: &'static str,
    /// What it implies for wear.
    pub(crate) implies: &'static str,
    /// Key of what its back shows, among the choices of the look at the back.
    pub back: &'static str,
    /// Rows of needle thread on the face, least and most; none where the face shows nothing that can be counted.
    pub rows: Option<(u8, u8)>,
    /// Cm of thread on each cm of seam; none where no figure was seen.
    pub ratio: Option<f64>,
    /// The part of that on the needles.
    pub needle_share: Option<f64>,
}

crate::language::says!(StitchType { name, met, implies });

/// A seam class by its letters in ASTM D6193 and its class digit in ISO 4916.
#[derive(Debug, PartialEq, Eq)]
pub struct SeamClass {
    /// Name for code and tests.
    pub key: &'static str,
    /// Letters of ASTM D6193.
    pub(crate) letters: &'static str,
    /// Class digit of ISO 4916.
    pub(crate) class: &'static str,
    /// Its usual name.
    pub(crate) name: &'static str,
    /// What it implies.
    pub(crate) implies: &'static str,
}

crate::language::says!(SeamClass { letters, class, name, implies });

/// What the back of the stitching shows.
pub static BACK: Look = Look {
    key: "back",
    ask: "Turn the seam over. What does the back show?",
    choices: &[
        Choice::new("same-line", "The same line", "The back looks like the face: one thread length after the other."),
        Choice::new("rope", "A rope of loops", "A thick double line; each loop goes through the next."),
        Choice::new("one-thread-loops", "Loops of a single thread", "A thin chain; the thread is the one on the face."),
        Choice::new("ladder", "A ladder", "Threads cross between two or more rows."),
        Choice::new("wrapped", "Thread wraps the raw edge", "Threads go round the edge of the cloth, and a line holds them."),
        Choice::new(
            "wrapped-and-line",
            "A wrapped edge and a line apart",
            "A rope of loops, then a gap, then threads round the edge.",
        ),
        Choice::new("zigzag", "A zigzag, on both sides", "The thread swings from side to side, front and back."),
        Choice::new("zigzag-inside", "A zigzag, inside only", "Outside there is nothing, or tiny pricks."),
        Choice::new("ladder-both", "A ladder on both sides", "Threads cross between rows outside too."),
    ],
};

/// How many rows of stitches the face shows.
pub static ROWS: Look = Look {
    key: "rows",
    ask: "How many lines of needle thread does this one stitching have?",
    choices: &[
        Choice::new("none", "None", "Nothing to be seen on the face."),
        Choice::new("one", "One", "A single line."),
        Choice::new("two", "Two", "Two lines side by side, tied to the same loops behind."),
        Choice::new("three", "Three", "Three lines side by side."),
        Choice::new("four", "Four", "Four lines side by side."),
    ],
};

/// What became of the raw edges inside.
pub static EDGE: Look = Look {
    key: "edge",
    ask: "Look inside. What became of the raw edges?",
    choices: &[
        Choice::new("hidden-two-rows", "None to be seen, and two rows on both sides", "The edges are folded into each other."),
        Choice::new("hidden-one-row", "None to be seen, one row inside only", "A little tube of cloth inside, nothing outside."),
        Choice::new(
            "wrapped-rows-outside",
            "Wrapped in thread, with rows on the outside",
            "From outside it looks folded in; inside it is not.",
        ),
        Choice::new("wrapped", "Wrapped in thread, nothing outside", "The edge is oversewn."),
        Choice::new("tape-both", "Both together in one tape", "A strip of cloth is folded round the edge."),
        Choice::new("tape-each", "Each in a tape of its own, pressed apart", "Two bound edges, lying flat."),
        Choice::new("butted", "They meet without overlap", "Flat, with a band of stitches over the meeting line."),
        Choice::new("turned-once", "A hem turned once", "The raw edge shows on the inside, or is wrapped."),
        Choice::new("turned-twice", "A hem turned twice", "No raw edge on the inside of the hem."),
        Choice::new("one-ply", "There is no second layer", "Rows sewn on a single layer, for looks."),
        Choice::new("raw", "Raw", "The cut edge as it was."),
    ],
};

/// Stitch types, the ones met oftenest in clothes first. Ratios: handbook, section 2.2, where 301 and 401 are confirmed in a published
/// measurement and the rest from memory.
pub static STITCH_TYPES: &[StitchType] = &[
    stitch(
        "301",
        "Lockstitch",
        "Topstitching, pockets, collars, shirts.",
        "Secure, does not run; gives little.",
        "same-line",
        Some((1, 1)),
    )
    .thread(2.5, 0.5),
    stitch(
        "401",
        "Two-thread chainstitch",
        "Inseam, seat, yoke and waistband of jeans; hems of some.",
        "Strong, gives well, quick to sew. It can run from one end.",
        "rope",
        Some((1, 1)),
    )
    .thread(5.5, 0.25),
    stitch(
        "504",
        "Three-thread overedge",
        "Seams of knits, single edges of wovens.",
        "Right for knits. As the only seam of a woven piece it is the cheap way.",
        "wrapped",
        Some((1, 1)),
    )
    .thread(14.0, 0.2),
    stitch(
        "503",
        "Two-thread overedge",
        "Single edges, blind hems.",
        "It tidies an edge; it is no seam by itself.",
        "wrapped",
        Some((0, 1)),
    )
    .thread(12.0, 0.55),
    stitch(
        "515, 516",
        "Safety stitch",
        "Outseams of jeans, shirts and trousers of the middle of the market.",
        "A true seam and a tidy edge in one pass. Sturdy; not flat.",
        "wrapped-and-line",
        Some((1, 2)),
    )
    .thread(20.0, 0.2),
    stitch(
        "514",
        "Four-thread overedge",
        "Seams of better T-shirts and other knits.",
        "Gives well and holds: two lines tied into the edge.",
        "wrapped",
        Some((2, 2)),
    )
    .thread(20.0, 0.25),
    stitch(
        "512",
        "Four-thread mock safety stitch",
        "Shoulders of knits, light wovens.",
        "Between 504 and 516: its lines are part of the edge wrap.",
        "wrapped",
        Some((2, 2)),
    )
    .thread(18.0, 0.25),
    stitch(
        "406",
        "Two-needle cover stitch",
        "Hems of T-shirts, belt loops, bindings.",
        "The usual hem of a knit; gives well.",
        "ladder",
        Some((2, 2)),
    )
    .thread(18.0, 0.3),
    stitch(
        "407",
        "Three-needle cover stitch",
        "Elastic of underwear.",
        "Gives more evenly than two needles.",
        "ladder",
        Some((3, 3)),
    ),
    stitch(
        "304",
        "Zigzag lockstitch",
        "Lingerie; set very close it is a bar tack.",
        "Gives, and does not run.",
        "zigzag",
        Some((1, 1)),
    )
    .thread(7.0, 0.5),
    stitch(
        "103",
        "Blind stitch",
        "Hems of trousers, skirts and dresses.",
        "Usual on tailored hems. A caught heel can unravel it.",
        "zigzag-inside",
        None,
    ),
    stitch(
        "101",
        "Single-thread chainstitch",
        "Basting, linking of some knits, buttons.",
        "Low security: it runs out from one end.",
        "one-thread-loops",
        Some((1, 1)),
    )
    .thread(4.0, 1.0),
    stitch("602", "Two-needle top and bottom cover", "Bindings, sportswear.", "Flat, gives well.", "ladder-both", Some((2, 2)))
        .thread(25.0, 0.2),
    stitch(
        "605",
        "Three-needle top and bottom cover",
        "Sportswear, flat seams.",
        "Flat and smooth on the skin.",
        "ladder-both",
        Some((3, 3)),
    )
    .thread(28.0, 0.3),
    stitch(
        "607",
        "Four-needle flat seam",
        "Base layers worn on the skin.",
        "Dear to sew, flat and comfortable.",
        "ladder-both",
        Some((4, 4)),
    ),
];

/// Seam classes, each found by one choice of [`EDGE`].
pub static SEAM_CLASSES: &[(&str, SeamClass)] = &[
    (
        "hidden-two-rows",
        seam("felled", "LSc", "2", "Flat felled seam", "The longest wear for its minutes; it needs a folding machine."),
    ),
    ("hidden-one-row", seam("french", "SS, twice", "1", "French seam", "Sewn twice, edges shut inside: slow, a sign of care.")),
    (
        "wrapped-rows-outside",
        seam("mock-felled", "LSq", "2", "Mock felled seam", "Outside it passes for felled; inside the edge is only oversewn."),
    ),
    (
        "wrapped",
        seam(
            "plain-overedged",
            "SSa, oversewn",
            "1",
            "Plain seam, oversewn",
            "The usual seam. It holds as well as its stitch does.",
        ),
    ),
    (
        "tape-both",
        seam("bound", "BS", "3", "Bound seam", "Clean, of middling cost; silk or cotton cut slantwise is the good kind."),
    ),
    ("tape-each", seam("open-bound", "SSa with BS", "1 and 3", "Open seam, each edge bound", "Dear to make; unlined tailoring.")),
    ("butted", seam("flat", "FSa", "4", "Flat seam", "Made for comfort on the skin.")),
    ("turned-once", seam("hem-once", "EFa", "6", "Hem turned once", "With the edge oversewn it is the cheaper hem.")),
    ("turned-twice", seam("hem-twice", "EFb", "6", "Hem turned twice", "The cleaner hem.")),
    ("one-ply", seam("ornamental", "OSa", "5", "Rows for looks", "It joins nothing.")),
    ("raw", seam("plain", "SSa", "1", "Plain seam", "A woven edge left raw frays; a knit edge may be left so.")),
];

const fn stitch(
    number: &'static str,
    name: &'static str,
    met: &'static str,
    implies: &'static str,
    back: &'static str,
    rows: Option<(u8, u8)>,
) -> StitchType {
    StitchType { number, name, met, implies, back, rows, ratio: None, needle_share: None }
}

const fn seam(
    key: &'static str,
    letters: &'static str,
    class: &'static str,
    name: &'static str,
    implies: &'static str,
) -> SeamClass {
    SeamClass { key, letters, class, name, implies }
}

impl SeamClass {
    /// What it means for strength, for thread and for cost.
    ///
    /// # Source
    /// Handbook, section 1.6: felled, bound, mock felled, and the order of work content; the rest judgement.
    pub fn costs(&self) -> &'static str {
        match self.key {
            "felled" => {
                say!(
                    "Four layers and two rows: strongest, twice the thread of one row, and the second dearest kind of long seam."
                )
            }
            "french" => say!("Two passes and two rows of thread. Strong in light cloth; too thick in denim."),
            "mock-felled" => say!("The rows outside add strength. More thread than felled, less work, since nothing is folded."),
            "plain-overedged" => say!("As strong as its one line. The wrap takes most of the thread; quick and cheap."),
            "bound" => say!("The tape protects the edge and adds little strength. A tape to buy and a slow pass."),
            "open-bound" => say!("One line carries it all. Two tapes and three passes: the dearest kind of long seam."),
            "flat" => {
                say!("No layers overlap, so the threads carry it all: it takes a great deal of thread and a machine of its own.")
            }
            "hem-once" => say!("It carries little. One row of thread and one pass."),
            "hem-twice" => say!("It carries little, and holds longer. One row of thread, and a folder or a steady hand."),
            "ornamental" => say!("No load, a little thread, a few seconds."),
            _ => say!("As strong as its one line. The least thread and the least work there is."),
        }
    }
}

impl StitchType {
    /// The class in ISO 4915: the first digit of its number, 1 for a single-thread chain, 3 lock, 4 chain, 5 overedge, 6 cover.
    pub fn class(&self) -> char {
        self.number.chars().next().unwrap_or('0')
    }

    /// What it means for strength.
    ///
    /// # Source
    /// Handbook, section 2.3 for 301 and 401 (a thread maker's bulletin: 1.5 and 1.7 times the thread for each stitch); section 1.5 for
    /// what runs; the rest judgement.
    pub fn strength(&self) -> &'static str {
        match self.number {
            "301" => say!("Each stitch holds about 1½ times what its thread breaks at."),
            "401" => say!("Each stitch holds about 1.7 times what its thread breaks at, and it gives before it breaks."),
            "515, 516" => say!("The line apart is a chainstitch and carries the load; the wrap only tidies the edge."),
            "512" | "514" => say!("Two lines share the load and give with the cloth. No figure is at hand."),
            "503" | "103" => say!("It is not made to carry load."),
            "504" => {
                say!("One line in the wrap carries the load: enough for a knit, little for a woven seam. No figure is at hand.")
            }
            _ if self.class() == '1' => say!("It holds only as long as its end is caught."),
            _ => say!("It is made to give rather than to carry. No figure is at hand."),
        }
    }

    /// What it means for the cost of sewing, thread aside: how fast such machines run, and what they need.
    ///
    /// # Source
    /// Handbook, section 3 for running speeds (common practice), section 1.5 for bobbins; the rest judgement.
    pub fn cost(&self) -> &'static str {
        match self.class() {
            '1' => say!("A machine of its own and a single thread, with no bobbin to change."),
            '3' => say!("The slower machine, 2500 to 4500 stitches a minute, stopped for every new bobbin."),
            '4' => say!("A quick machine, 3000 to 5500 stitches a minute, and no bobbin to change."),
            '5' => say!("The quickest machine, 5000 to 7000 stitches a minute; it sews and trims in one pass."),
            _ => say!("A machine of its own with many threads, kept for this one job."),
        }
    }

    const fn thread(self, ratio: f64, needle_share: f64) -> StitchType {
        StitchType { ratio: Some(ratio), needle_share: Some(needle_share), ..self }
    }
}

/// Stitch types that look like that: what the back shows (a key of [`BACK`]), and how many rows the face shows (a key of [`ROWS`]); `None`
/// where nobody looked or nobody can tell, which leaves more of them. Oftenest met first; more than one where looks cannot part them, none
/// where nothing known looks so or a key is unknown.
///
/// # Source
/// Handbook, section 1.5; numbers of ISO 4915 and ASTM D6193, looks from stitch guides, some from memory.
pub fn stitches_that_look_so(back: Option<&str>, rows: Option<&str>) -> impl Iterator<Item = &'static StitchType> {
    let counted = rows.map(|key| (0_u8..).zip(ROWS.choices).find(|(_, choice)| choice.key == key).map(|(rows, _)| rows));
    STITCH_TYPES.iter().filter(move |stitch| {
        let fits = |rows: u8| stitch.rows.map_or(rows == 0, |(least, most)| (least..=most).contains(&rows));
        back.is_none_or(|back| stitch.back == back) && counted.is_none_or(|rows| rows.is_some_and(fits))
    })
}

/// Seam classes that the raw edges leave open: the one that a key of [`EDGE`] tells; all of them for `None`, where nobody can tell; none
/// for an unknown key.
pub fn seams_that_look_so(edge: Option<&str>) -> impl Iterator<Item = &'static SeamClass> {
    SEAM_CLASSES.iter().filter(move |(key, _)| edge.is_none_or(|edge| edge == *key)).map(|(_, class)| class)
}

/// The seam class that the raw edges tell (a key of [`EDGE`]); none for an unknown key.
///
/// # Source
/// Handbook, section 1.6; letters of ASTM D6193, digits of ISO 4916, partly from memory.
pub fn seam_class_of(edge: &str) -> Option<&'static SeamClass> {
    SEAM_CLASSES.iter().find(|(key, _)| *key == edge).map(|(_, class)| class)
}
