//! The pictures beside the answers: every one of them can be drawn, is light enough to stand on a screen with others, and shows
//! something else than its neighbours.

use garment_assay::catalog::FAMILIES;
use garment_assay::check::Check;
use garment_assay::specimen::{Picture, drawing};

fn checks() -> impl Iterator<Item = &'static Check> {
    FAMILIES.iter().flat_map(|family| family.checks).copied()
}

fn pictures(check: &Check) -> Vec<Picture> {
    check.levels.iter().filter_map(|level| level.drawn).collect()
}

#[test]
fn a_check_has_a_picture_for_each_answer_or_for_none() {
    for check in checks() {
        let drawn = pictures(check).len();
        assert!(drawn == 0 || drawn == check.levels.len(), "{}: {drawn} of {}", check.key, check.levels.len());
    }
}

#[test]
fn only_answers_that_are_words_on_a_label_go_without_a_picture() {
    let bare: Vec<&str> = checks().filter(|check| pictures(check).is_empty()).map(|check| check.key).collect();
    assert_eq!(bare, ["fibre-label", "made-in"]);
}

#[test]
fn pictures_of_one_check_differ_in_drawing_and_in_words() {
    for check in checks() {
        let pictures = pictures(check);
        for (place, one) in pictures.iter().enumerate() {
            for other in &pictures[..place] {
                assert_ne!(drawing(one, 1).marks, drawing(other, 1).marks, "{}", check.key);
                assert_ne!(one.words(), other.words(), "{}", check.key);
            }
        }
    }
}

#[test]
fn pictures_are_light_enough_for_a_phone() {
    // Aim: 40 marks and 3 KB of path each. Measured: up to 18 marks and 3.9 KB; the limit here keeps it from growing.
    for picture in checks().flat_map(pictures) {
        let drawing = drawing(&picture, 7);
        let text: usize = drawing.marks.iter().map(|mark| mark.path.len()).sum();
        assert!(!drawing.marks.is_empty() && drawing.marks.len() <= 40, "{picture:?}: {} marks", drawing.marks.len());
        assert!(text <= 4500, "{picture:?}: {text} bytes");
    }
}
