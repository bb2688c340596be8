//! What must hold of the drawings of outerwear: no knob breaks one, and what is told is what was drawn.

use super::tests::{check_marks, pieces};
use super::*;

fn drawn(outer: Outer) -> Drawing {
    let picture = Picture::Outer(outer);
    let drawn = drawing(&picture, 3);
    check_marks(&picture, &drawn);
    assert!(!picture.words().is_empty());
    drawn
}

#[test]
fn no_knob_value_breaks_a_drawing_of_outerwear() {
    for many in [0, 1, 7, 255] {
        drawn(Outer::Hardware(Hardware { count: many }));
        drawn(Outer::Leak(FillLeak { wisps: many, close: many > 1 }));
        drawn(Outer::Tails(QuiltTails { ends: many }));
        drawn(Outer::Tacks(PocketTacks { tacks: many, backed: many > 1 }));
    }
}

#[test]
fn what_is_counted_on_outerwear_is_what_was_told() {
    for ends in [1, 6, 14] {
        assert_eq!(truth(&Picture::Outer(Outer::Tails(QuiltTails { ends }))), [Known::LooseEnds(ends)]);
        let tails = drawn(Outer::Tails(QuiltTails { ends }));
        assert_eq!(tails.marks.last().map(pieces).unwrap_or_default().len(), usize::from(ends));
    }
    for count in [1, 8, 18] {
        let marked = drawn(Outer::Hardware(Hardware { count }));
        assert_eq!(marked.marks.last().map(pieces).unwrap_or_default().len(), usize::from(count));
    }
    for tacks in 1..=4 {
        // Eight strokes a tack.
        let tacked = drawn(Outer::Tacks(PocketTacks { tacks, backed: false }));
        assert_eq!(tacked.marks.last().map(pieces).unwrap_or_default().len(), 8 * usize::from(tacks));
    }
    // Quills, one for each feather that comes out.
    let leaking = drawn(Outer::Leak(FillLeak { wisps: 9, close: false }));
    assert_eq!(leaking.marks.last().map(pieces).unwrap_or_default().len(), 9);
}
