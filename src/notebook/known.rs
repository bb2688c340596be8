//! Which pages were seen here: a page is written over or deleted only by whoever has seen it.

use std::hash::{DefaultHasher, Hash, Hasher};

use super::kept::Notebook;
use super::shelf::Shelf;

/// A page as it was last read or written here. Its text tells it from one that another window wrote at the same instant: then both have
/// counted one more, and the count says nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Known {
    pub(super) rev: u64,
    text: u64,
    /// It was written here, not only read.
    pub(super) ours: bool,
    /// Another window wrote the page as often, at the same instant and unseen here, and ours took its place. It may write once more before it
    /// hears of ours, and then counts one more than we do without having seen it.
    pub(super) rivalled: bool,
}

impl Known {
    fn new(rev: u64, text: &str) -> Known {
        let mut hasher = DefaultHasher::new();
        text.hash(&mut hasher);
        Known { rev, text: hasher.finish(), ours: false, rivalled: false }
    }

    /// How often that text was written, if it is the page known here: it was read then, and need not be read again.
    pub(super) fn rev_of(&self, text: &str) -> Option<u64> {
        (self.text == Known::new(self.rev, text).text).then_some(self.rev)
    }

    /// Whether it is that page.
    pub(super) fn is(&self, rev: u64, text: &str) -> bool {
        let other = Known::new(rev, text);
        (self.rev, self.text) == (other.rev, other.text)
    }
}

impl<S: Shelf> Notebook<S> {
    /// Takes note of a page that lies on the shelf.
    pub(super) fn note(&mut self, key: String, rev: u64, text: &str) {
        self.known.insert(key, Known::new(rev, text));
    }

    /// Takes note of a page that was written here.
    pub(super) fn note_ours(&mut self, key: String, rev: u64, text: &str) {
        // Written again before the other window was heard from, it is as unseen there as before.
        let rivalled = self.known.get(&key).is_some_and(|known| known.rivalled);
        self.known.insert(key, Known { ours: true, rivalled, ..Known::new(rev, text) });
    }

    /// How many times the page had been written when it was last read or written here; 0 for one that was not.
    pub(super) fn known_rev(&self, key: &str) -> u64 {
        self.known.get(key).map_or(0, |known| known.rev)
    }

    /// Whether that page is the one known here, or an older one that came back.
    pub(super) fn has_seen(&self, key: &str, rev: u64, text: &str) -> bool {
        self.known.get(key).is_some_and(|known| rev < known.rev || known.is(rev, text))
    }
}
