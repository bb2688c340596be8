//! Pages at which the app stopped when it read them: where `web/rescue.js` put them, out of the way, until somebody drops them.

use std::collections::BTreeSet;

use super::kept::{KeepFault, Notebook};
use super::record::PageName;
use super::shelf::Shelf;
use crate::fit::PersonId;
use crate::garment::Id;

/// What all keys begin with.
const OURS: &str = "garment-assay/";
/// What the keys of texts begin with that are listed and not read; what follows is the rest of the key that each had. Never changed.
pub(super) const ASIDE: &str = "garment-assay/aside/";

/// The key that a text had before it was set aside.
pub(super) fn before_aside(key: &str) -> Option<String> {
    key.strip_prefix(ASIDE).map(|rest| format!("{OURS}{rest}"))
}

impl<S: Shelf> Notebook<S> {
    /// Those pages of a mirror that may be read: not what was set aside here, or the next start would stop at it again.
    pub fn without_aside(&self, mirror: Vec<(String, String)>) -> Vec<(String, String)> {
        let keys = self.shelf.keys().unwrap_or_default();
        // One that was taken in again since has a page of its own, and its mirror's is that one's.
        let aside = keys.iter().filter_map(|key| before_aside(key)).filter(|key| !keys.contains(key));
        let aside: BTreeSet<String> = aside.collect();
        mirror.into_iter().filter(|(key, _)| !aside.contains(key)).collect()
    }

    /// Takes a page that could not be read off the shelf for good; one that can be read by now stays. Gives back the key of the mirror's
    /// page that must go too: that of a page which was set aside, unless there is another in its place by now.
    ///
    /// # Errors
    /// The shelf refused.
    pub fn drop_set_aside(&mut self, key: &str) -> Result<Option<String>, KeepFault> {
        self.drop_unread(key)?;
        let page = before_aside(key).filter(|key| Id::of_key(key).is_some() || PersonId::of_key(key).is_some());
        let Some(page) = page else { return Ok(None) };
        let there = self.shelf.get(&page).map_err(KeepFault)?;
        Ok(there.is_none().then_some(page))
    }
}
