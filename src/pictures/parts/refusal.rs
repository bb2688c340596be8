//! Why a picture was not read, in words: the reason and what to do.

use garment_assay::language::one;
use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
use photo::{Answer, ScaleFault, SeamRefusal, StainRefusal, WeaveRefusal};

/// What is said of an answer that is a refusal; none of a reading.
pub fn sentence(answer: &Answer) -> Option<String> {
    match answer {
        Answer::NoScale(fault) => Some(scale(*fault).to_owned()),
        Answer::Seam(_, Err(refusal)) => Some(seam(*refusal)),
        Answer::Weave(_, Err(refusal)) => Some(weave(*refusal).to_owned()),
        Answer::Stain(Err(refusal)) => Some(stain(*refusal).to_owned()),
        Answer::Seam(_, Ok(_)) | Answer::Weave(_, Ok(_)) | Answer::Stain(Ok(_)) => None,
    }
}

/// Two readings that fit about as well, in stitches per centimetre, the likelier first.
pub fn rivals(answer: &Answer) -> Option<[f64; 2]> {
    match answer {
        Answer::Seam(_, Err(SeamRefusal::TwoReadings { likelier, other })) => Some([*likelier, *other]),
        _ => None,
    }
}

fn scale(fault: ScaleFault) -> &'static str {
    match fault {
        ScaleFault::Marks => say!("The marks lie too near each other, or outside the picture. Set them again, far apart."),
        ScaleFault::Size => {
            say!("The length between the marks is missing. Type how many millimetres or inches lie between them.")
        }
        ScaleFault::NotACard => {
            say!(
                "These four places are not the corners of a bank card. Set each where the straight sides of the card would meet."
            )
        }
        ScaleFault::FewOnRim => say!("Too few places are marked on the rim of the coin. Mark five or more, spread all round it."),
        ScaleFault::NotACoin => {
            say!("The marks do not lie on the rim of one coin. Set them again on its outer edge, spread all round it.")
        }
    }
}

fn seam(refusal: SeamRefusal) -> String {
    let spoken = Decimal::spoken();
    match refusal {
        SeamRefusal::Marks => {
            say!("The two marks on the seam make no sense. Set them again, far apart, on the same row of stitches.").to_owned()
        }
        SeamRefusal::NoSeam => say!(
            "No row of stitches stands out between the marks. Mark the thread itself, or take the picture again with light from the side."
        )
        .to_owned(),
        SeamRefusal::TooFew { stitches } if one(stitches) => say!(
            "Only about {stitches} whole stitch lies between the marks. Mark a longer stretch, ten stitches or more.",
            stitches
        ),
        SeamRefusal::TooFew { stitches } => say!(
            "Only about {stitches} whole stitches lie between the marks. Mark a longer stretch, ten stitches or more.",
            stitches
        ),
        SeamRefusal::TooSmall { px_per_stitch } => say!(
            "A stitch is only about {pixels} pixels long. Take the picture from closer, so that a stitch has 12 or more.",
            pixels = written(px_per_stitch, 0, spoken)
        ),
        SeamRefusal::Faint => say!(
            "The stitches are too faint to be told apart. Take the picture again: hold still, let the phone focus, with light from the side."
        )
        .to_owned(),
        SeamRefusal::TwoReadings { likelier, other } => say!(
            "It may be {likelier} stitches in a centimetre or {other}. Count a few by eye and choose.",
            likelier = written(likelier, 1, spoken),
            other = written(other, 1, spoken)
        ),
        SeamRefusal::Bends => {
            say!("The seam bends too much between the marks. Mark a shorter stretch that is nearly straight.").to_owned()
        }
        SeamRefusal::Unsteady => say!(
            "The row of stitches cannot be followed from mark to mark. Mark a stretch where it lies free, or take the picture from closer."
        )
        .to_owned(),
        SeamRefusal::Uneven => {
            say!("The stitches are so uneven that one may be lost or counted twice. Count them by eye, or mark another stretch.")
                .to_owned()
        }
    }
}

fn weave(refusal: WeaveRefusal) -> &'static str {
    match refusal {
        WeaveRefusal::Marks => say!("The marks cannot be read. Set both on one yarn, far apart."),
        WeaveRefusal::Covered => say!("Ruler or card lie in the way. Mark a yarn further from them."),
        WeaveRefusal::NoYarns => say!("The yarns do not stand out. Go closer, focus, and let light fall from the side."),
        WeaveRefusal::TooFar => say!("The yarns are too small in the picture. Go closer, so that you see each one."),
        WeaveRefusal::TooFew => say!("Too few yarns lie between the marks. Set the marks further apart."),
        WeaveRefusal::NoWeave => say!(
            "What repeats here does not look like a weave along your marks. Set both marks on the same yarn, on flat cloth without a seam."
        ),
        WeaveRefusal::Astray => say!(
            "The marks do not seem to follow a yarn: the weave lies at another angle. Set both on one yarn, not along the slanting line of a twill."
        ),
        WeaveRefusal::Doubtful => {
            say!(
                "Two counts fit this picture about as well. Go closer, let light fall from the side, and set the marks further apart."
            )
        }
    }
}

fn stain(refusal: StainRefusal) -> &'static str {
    match refusal {
        StainRefusal::Marks => {
            say!("The marks cannot be read. Draw each as a box inside the picture, larger than a fingertip’s width of tissue.")
        }
        StainRefusal::NoWhiteNear => {
            say!("There is no white near the stain to compare with. Mark clean tissue on all sides of it, close by.")
        }
        StainRefusal::TooBright => say!("The white is overexposed. Take the picture again in softer light, or darker."),
        StainRefusal::TooDark => say!("The white is too dark. Take the picture again by a window, or brighter."),
        StainRefusal::WhiteUneven => {
            say!(
                "The white is not the same all round. Look for a shadow or a fold, lay the tissue flat, and mark clean tissue only."
            )
        }
        StainRefusal::StainUneven => {
            say!("The stain is not even inside its mark. Draw the mark smaller, where the colour is strongest.")
        }
        StainRefusal::Reversed => say!("The stain is brighter than the white. Mark the stain first and the white after it."),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fault_of_the_scale_is_a_reason_and_what_to_do() {
        for fault in [ScaleFault::Marks, ScaleFault::Size, ScaleFault::NotACard, ScaleFault::FewOnRim, ScaleFault::NotACoin] {
            let words = scale(fault);
            assert!(words.ends_with('.') && !words.contains('!') && words.matches(". ").count() == 1, "{words}");
        }
    }

    #[test]
    fn a_refusal_to_count_says_what_to_do() {
        let all = [
            SeamRefusal::Marks,
            SeamRefusal::NoSeam,
            SeamRefusal::TooFew { stitches: 3 },
            SeamRefusal::TooSmall { px_per_stitch: 5.2 },
            SeamRefusal::Faint,
            SeamRefusal::TwoReadings { likelier: 4.0, other: 2.0 },
            SeamRefusal::Bends,
            SeamRefusal::Unsteady,
            SeamRefusal::Uneven,
        ];
        for refusal in all {
            let words = seam(refusal);
            let verbs = ["Mark", "Set", "Take", "Count"];
            assert!(words.ends_with('.') && verbs.iter().any(|verb| words.contains(verb)) && !words.contains('{'), "{words}");
        }
        let two = seam(SeamRefusal::TwoReadings { likelier: 4.0, other: 2.06 });
        assert_eq!(two, "It may be 4.0 stitches in a centimetre or 2.1. Count a few by eye and choose.");
    }
}
