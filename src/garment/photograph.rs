//! Photographs kept as evidence of a garment: which they are and what they show. The picture's bytes lie elsewhere, under the id.

use std::fmt;

use sha2::{Digest, Sha256};

use crate::check::Check;
use crate::trade::Day;

/// Names a picture by its bytes, so that the same picture has one name on every device, and one that was altered has another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PhotographId([u8; PhotographId::BYTES]);

impl PhotographId {
    const BYTES: usize = 16;

    /// The name of these bytes: the first 128 bits of their SHA-256. Two pictures of one name would be chance beyond hope, and nobody can
    /// make a second one to a name with less than some 2^128 trials.
    ///
    /// # Source
    /// FIPS 180-4, section 6.2. The digest of `abc` begins with `ba7816bf8f01cfea414140de5dae2223` (FIPS 180-2, appendix B.1).
    pub fn of(bytes: &[u8]) -> PhotographId {
        let digest = Sha256::digest(bytes);
        let mut id = [0; PhotographId::BYTES];
        for (to, from) in id.iter_mut().zip(digest.iter()) {
            *to = *from;
        }
        PhotographId(id)
    }

    /// Reads 32 hexadecimal digits in small letters; anything else is no name of a picture.
    pub fn parse(text: &str) -> Option<PhotographId> {
        let digit = |byte: u8| match byte {
            b'0'..=b'9' => Some(byte - b'0'),
            b'a'..=b'f' => Some(byte - b'a' + 10),
            _ => None,
        };
        let mut id = [0; PhotographId::BYTES];
        if text.len() != 2 * PhotographId::BYTES {
            return None;
        }
        for (to, pair) in id.iter_mut().zip(text.as_bytes().chunks_exact(2)) {
            *to = 16 * digit(pair[0])? + digit(pair[1])?;
        }
        Some(PhotographId(id))
    }
}

impl fmt::Display for PhotographId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

/// One photograph: a fact of the record. What can be seen on it is the person's to say.
#[derive(Clone, Debug, PartialEq)]
pub struct Photograph {
    id: PhotographId,
    caption: String,
    check: Option<&'static Check>,
    added: Day,
    width: u32,
    height: u32,
}

impl Photograph {
    /// Longest caption kept, in characters (Unicode code points); what is over is cut.
    pub const LONGEST_CAPTION: usize = 200;
    /// Longest side that is believed, in pixels. Judgement: beyond any telephone's camera.
    pub const LONGEST_SIDE: u32 = 30_000;

    /// A picture of that name, added on that day, so many pixels wide and high; none where a side has no pixels or more than are believed.
    pub fn new(id: PhotographId, added: Day, width: u32, height: u32) -> Option<Photograph> {
        let sides = 1..=Photograph::LONGEST_SIDE;
        let fits = sides.contains(&width) && sides.contains(&height);
        fits.then_some(Photograph { id, caption: String::new(), check: None, added, width, height })
    }

    /// The same as evidence for that check, or for none.
    pub fn for_check(self, check: Option<&'static Check>) -> Photograph {
        Photograph { check, ..self }
    }

    /// The same with that caption, in one line and no longer than one may be.
    pub fn captioned(self, caption: &str) -> Photograph {
        let plain: String = caption.chars().map(|sign| if sign.is_control() { ' ' } else { sign }).collect();
        let line = plain.split_whitespace().collect::<Vec<_>>().join(" ");
        let cut: String = line.chars().take(Photograph::LONGEST_CAPTION).collect();
        Photograph { caption: cut.trim_end().to_owned(), ..self }
    }

    /// Names its bytes.
    pub fn id(&self) -> PhotographId {
        self.id
    }

    /// What the person says that it shows; may be empty.
    pub fn caption(&self) -> &str {
        &self.caption
    }

    /// The check that it is evidence for, where the person said so.
    pub fn check(&self) -> Option<&'static Check> {
        self.check
    }

    /// The day on which it was added.
    pub fn added(&self) -> Day {
        self.added
    }

    /// Its width and height in pixels.
    pub fn size(&self) -> (u32, u32) {
        (self.width, self.height)
    }
}

/// One thing done to the photographs of a garment.
#[derive(Clone, Debug, PartialEq)]
pub enum PhotographAct {
    /// Adds one; one that is there already stays as it is.
    Add(Photograph),
    /// Says what one shows.
    Caption(PhotographId, String),
    /// Takes one out of the record.
    Remove(PhotographId),
    /// Puts one in at that place of the order, or as it was; undo and a join make it.
    PutBack(usize, Photograph),
}

/// The photographs of one garment, in the order in which they were added; no two of one name.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Photographs(Vec<Photograph>);

impl Photographs {
    /// Most photographs of one garment. Judgement: more than a sheet of evidence needs, few enough that a page stays some kilobytes.
    pub const MOST: usize = 24;

    /// All of them.
    pub fn all(&self) -> &[Photograph] {
        &self.0
    }

    /// How many there are.
    pub fn count(&self) -> usize {
        self.0.len()
    }

    /// The one of that name.
    pub fn get(&self, id: PhotographId) -> Option<&Photograph> {
        self.0.iter().find(|one| one.id == id)
    }

    /// How many are evidence for that check.
    pub fn of_check(&self, check: &Check) -> usize {
        self.0.iter().filter(|one| one.check.is_some_and(|other| other == check)).count()
    }

    fn place(&self, id: PhotographId) -> Option<usize> {
        self.0.iter().position(|one| one.id == id)
    }

    /// They after an act. Total: one more than there may be, or an act about one that is not there, changes nothing.
    pub(super) fn after(&self, act: PhotographAct) -> Photographs {
        let mut next = self.clone();
        match act {
            PhotographAct::Add(one) => {
                if next.0.len() < Photographs::MOST && next.place(one.id).is_none() {
                    next.0.push(one);
                }
            }
            PhotographAct::Caption(id, caption) => {
                if let Some(place) = next.place(id) {
                    next.0[place] = next.0[place].clone().captioned(&caption);
                }
            }
            PhotographAct::Remove(id) => next.0.retain(|one| one.id != id),
            PhotographAct::PutBack(place, one) => {
                next.0.retain(|other| other.id != one.id);
                if next.0.len() < Photographs::MOST {
                    let place = place.min(next.0.len());
                    next.0.insert(place, one);
                }
            }
        }
        next
    }

    /// The act that puts back what `act` would change.
    pub(super) fn undoing(&self, act: &PhotographAct) -> PhotographAct {
        match act {
            PhotographAct::Caption(id, _) => {
                PhotographAct::Caption(*id, self.get(*id).map_or(String::new(), |one| one.caption.clone()))
            }
            PhotographAct::Add(Photograph { id, .. })
            | PhotographAct::Remove(id)
            | PhotographAct::PutBack(_, Photograph { id, .. }) => match self.place(*id) {
                Some(place) => PhotographAct::PutBack(place, self.0[place].clone()),
                None => PhotographAct::Remove(*id),
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_name_is_the_beginning_of_the_published_digest() {
        // FIPS 180-2, appendix B.1 and B.2; the empty message from NIST's test vectors for byte-oriented SHA-256.
        assert_eq!(PhotographId::of(b"abc").to_string(), "ba7816bf8f01cfea414140de5dae2223");
        let two_blocks = b"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";
        assert_eq!(PhotographId::of(two_blocks).to_string(), "248d6a61d20638b8e5c026930c3e6039");
        assert_eq!(PhotographId::of(b"").to_string(), "e3b0c44298fc1c149afbf4c8996fb924");
    }

    #[test]
    fn a_name_is_read_as_it_is_written_and_in_no_other_way() {
        let id = PhotographId::of(b"abc");
        assert_eq!(PhotographId::parse(&id.to_string()), Some(id));
        for text in [
            "",
            "ba78",
            "BA7816BF8F01CFEA414140DE5DAE2223",
            "ba7816bf8f01cfea414140de5dae222g",
            "ba7816bf8f01cfea414140de5dae22234",
        ] {
            assert_eq!(PhotographId::parse(text), None, "{text}");
        }
        // As long in bytes, but not in digits.
        assert_eq!(PhotographId::parse("ä7816bf8f01cfea414140de5dae2223"), None);
    }

    #[test]
    fn a_caption_is_one_line_and_cut() {
        let day = Day::new(2026, 11, 26).expect("a day");
        let one = Photograph::new(PhotographId::of(b"x"), day, 4, 3).expect("pixels");
        assert_eq!(one.clone().captioned(" loose\r\n\tthread \u{0} ").caption(), "loose thread");
        let long = one.captioned(&"ä ".repeat(200));
        assert_eq!(long.caption().chars().count(), Photograph::LONGEST_CAPTION - 1);
        assert_eq!(long.clone().captioned(long.caption()), long);
        for (width, height) in [(0, 3), (3, 0), (Photograph::LONGEST_SIDE + 1, 3)] {
            assert_eq!(Photograph::new(PhotographId::of(b"x"), day, width, height), None);
        }
    }
}
