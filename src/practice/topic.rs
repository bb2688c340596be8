//! What can be practised.

use crate::say;

/// One thing to train the eye on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Topic {
    /// How many stitches to the inch.
    Count,
    /// Which of two rows has more stitches.
    More,
    /// How far a seam is puckered.
    Pucker,
    /// Restarts and skipped stitches.
    Faults,
    /// Felled, mock-felled or overlocked, from the inside.
    Felled,
    /// Whiskers by hand, by laser, printed.
    Whiskers,
    /// The weave, and which way a twill runs.
    Weave,
    /// How steep a twill runs.
    Twill,
    /// Coloured yarns or a print.
    Colour,
    /// A whole garment by its evidence.
    Whole,
}

impl Topic {
    /// All of them, in the order in which they are learned.
    pub const ALL: [Topic; 10] = [
        Topic::More,
        Topic::Count,
        Topic::Pucker,
        Topic::Faults,
        Topic::Felled,
        Topic::Whiskers,
        Topic::Weave,
        Topic::Twill,
        Topic::Colour,
        Topic::Whole,
    ];

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Topic::Count => "count",
            Topic::More => "more",
            Topic::Pucker => "pucker",
            Topic::Faults => "faults",
            Topic::Felled => "felled",
            Topic::Whiskers => "whiskers",
            Topic::Weave => "weave",
            Topic::Twill => "twill",
            Topic::Colour => "colour",
            Topic::Whole => "whole",
        }
    }

    /// The topic of that key.
    pub fn from_key(key: &str) -> Option<Topic> {
        Topic::ALL.into_iter().find(|topic| topic.key() == key)
    }

    /// The words on the screen.
    pub fn name(self) -> &'static str {
        match self {
            Topic::Count => say!("Count the stitches"),
            Topic::More => say!("Which row has more"),
            Topic::Pucker => say!("Grade the pucker"),
            Topic::Faults => say!("Restarts and skips"),
            Topic::Felled => say!("Seams from inside"),
            Topic::Whiskers => say!("Whiskers"),
            Topic::Weave => say!("The weave"),
            Topic::Twill => say!("Steepness of a twill"),
            Topic::Colour => say!("Yarn or print"),
            Topic::Whole => say!("Whole garments"),
        }
    }

    /// What one learns to see, in a sentence.
    pub fn says(self) -> &'static str {
        match self {
            Topic::Count => say!("Stitches to the inch, against a tape."),
            Topic::More => say!("Two rows beside each other: tell the closer one at a glance."),
            Topic::Pucker => say!("How far a seam draws the cloth together."),
            Topic::Faults => say!("Places where a row was begun again, and stitches that did not catch."),
            Topic::Felled => say!("Edges locked into each other, or an overlocked edge laid flat."),
            Topic::Whiskers => say!("Rubbed by hand, burnt by laser, or printed."),
            Topic::Weave => say!("How yarns cross, and which way the line of a twill runs."),
            Topic::Twill => say!("The angle between the line of a twill and the weft."),
            Topic::Colour => say!("Colour in the yarns, or laid on the face."),
            Topic::Whole => say!("From what was found on a garment to its band and its ticket."),
        }
    }

    /// What to look at where it goes wrong.
    pub fn look_at(self) -> &'static str {
        match self {
            Topic::Count => {
                say!("Start at a needle hole at one end of the inch and count the stitches to the other end, not the holes.")
            }
            Topic::More => say!("Do not look at the thread. Let your eye run along the gaps between the stitches."),
            Topic::Pucker => say!("Look at the shadows beside the seam, not at the stitching."),
            Topic::Faults => say!("Run along the row once for length: a skip is twice as long, a restart lies double."),
            Topic::Felled => say!("Look for a cut edge. Where felled, both edges are inside and none shows."),
            Topic::Whiskers => say!("Compare the legs. A hand never does the same twice; a laser and a print do."),
            Topic::Weave => say!("Follow one weft yarn and see where it comes up next: a step aside, two, or scattered."),
            Topic::Twill => say!("Find one crossing, go one yarn to the side, and see how far up the next one lies."),
            Topic::Colour => say!("Look at the edge of the colour and at the back: a print stops at no yarn."),
            Topic::Whole => {
                say!(
                    "Weigh what is hard to fake: cloth, seams from inside, even stitching. A fly of buttons is cost, not quality."
                )
            }
        }
    }
}

/// How hard the specimens of a run are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Level {
    /// Plain to see.
    Easy,
    /// As one meets them.
    #[default]
    Middling,
    /// On the border.
    Hard,
}

impl Level {
    /// All of them, easiest first.
    pub const ALL: [Level; 3] = [Level::Easy, Level::Middling, Level::Hard];

    /// The words on the screen.
    pub fn name(self) -> &'static str {
        match self {
            Level::Easy => say!("plain to see"),
            Level::Middling => say!("as one meets them"),
            Level::Hard => say!("on the border"),
        }
    }

    /// Difficulty in logits: at 0 a learner of middling skill knows the answer half of the time. Judgement.
    pub const fn difficulty(self) -> f64 {
        match self {
            Level::Easy => -1.5,
            Level::Middling => 0.0,
            Level::Hard => 1.5,
        }
    }
}

/// Some of the topics.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Topics(u16);

impl Topics {
    /// Every one.
    pub const ALL: Topics = Topics((1 << Topic::ALL.len()) - 1);

    /// Those topics; none when there are none.
    pub fn of(topics: &[Topic]) -> Option<Topics> {
        let bits = topics.iter().fold(0, |bits, topic| bits | 1 << place(*topic));
        (bits != 0).then_some(Topics(bits))
    }

    /// Whether it is among them.
    pub fn contains(self, topic: Topic) -> bool {
        self.0 & (1 << place(topic)) != 0
    }

    /// Each of them, in the order of [`Topic::ALL`].
    pub fn each(self) -> impl Iterator<Item = Topic> {
        Topic::ALL.into_iter().filter(move |topic| self.contains(*topic))
    }

    /// As bits, the first topic lowest.
    pub(super) fn bits(self) -> u16 {
        self.0
    }

    /// The other way; none for no topic, or for one that this version does not know.
    pub(super) fn of_bits(bits: u16) -> Option<Topics> {
        (bits != 0 && bits & !Topics::ALL.0 == 0).then_some(Topics(bits))
    }
}

fn place(topic: Topic) -> usize {
    Topic::ALL.iter().position(|other| *other == topic).unwrap_or_default()
}
