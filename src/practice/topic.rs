//! What can be practised.

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
    pub const fn name(self) -> &'static str {
        match self {
            Topic::Count => "Count the stitches",
            Topic::More => "Which row has more",
            Topic::Pucker => "Grade the pucker",
            Topic::Faults => "Restarts and skips",
            Topic::Felled => "Seams from inside",
            Topic::Whiskers => "Whiskers",
            Topic::Weave => "The weave",
            Topic::Twill => "Steepness of a twill",
            Topic::Colour => "Yarn or print",
            Topic::Whole => "Whole garments",
        }
    }

    /// What one learns to see, in a sentence.
    pub const fn says(self) -> &'static str {
        match self {
            Topic::Count => "Stitches to the inch, against a tape.",
            Topic::More => "Two rows beside each other: tell the closer one at a glance.",
            Topic::Pucker => "How far a seam draws the cloth together.",
            Topic::Faults => "Places where a row was begun again, and stitches that did not catch.",
            Topic::Felled => "Edges locked into each other, or an overlocked edge laid flat.",
            Topic::Whiskers => "Rubbed by hand, burnt by laser, or printed.",
            Topic::Weave => "How yarns cross, and which way the line of a twill runs.",
            Topic::Twill => "The angle between the line of a twill and the weft.",
            Topic::Colour => "Colour in the yarns, or laid on the face.",
            Topic::Whole => "From what was found on a garment to its band and its ticket.",
        }
    }

    /// What to look at where it goes wrong.
    pub const fn look_at(self) -> &'static str {
        match self {
            Topic::Count => {
                "Start at a needle hole at one end of the inch and count the stitches to the other end, not the holes."
            }
            Topic::More => "Do not look at the thread. Let your eye run along the gaps between the stitches.",
            Topic::Pucker => "Look at the shadows beside the seam, not at the stitching.",
            Topic::Faults => "Run along the row once for length: a skip is twice as long, a restart lies double.",
            Topic::Felled => "Look for a cut edge. Where felled, both edges are inside and none shows.",
            Topic::Whiskers => "Compare the legs. A hand never does the same twice; a laser and a print do.",
            Topic::Weave => "Follow one weft yarn and see where it comes up next: a step aside, two, or scattered.",
            Topic::Twill => "Find one crossing, go one yarn to the side, and see how far up the next one lies.",
            Topic::Colour => "Look at the edge of the colour and at the back: a print stops at no yarn.",
            Topic::Whole => {
                "Weigh what is hard to fake: cloth, seams from inside, even stitching. A fly of buttons is cost, not quality."
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
    pub const fn name(self) -> &'static str {
        match self {
            Level::Easy => "plain to see",
            Level::Middling => "as one meets them",
            Level::Hard => "on the border",
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
