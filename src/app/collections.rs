//! Garments grouped by the season, show or project that they stand under.

use std::rc::Rc;

use garment_assay::garment::Garment;

/// The names of the collections that there are, each once, in the order of the alphabet whatever the case.
pub fn names(garments: &[Rc<Garment>]) -> Vec<String> {
    let mut names: Vec<String> = garments.iter().map(|garment| garment.collection().to_owned()).collect();
    names.retain(|name| !name.is_empty());
    names.sort_by_cached_key(|name| (name.to_lowercase(), name.clone()));
    names.dedup();
    names
}

/// Which garments are meant.
#[derive(Clone, Debug, PartialEq)]
pub enum Which {
    /// All of them.
    All,
    /// Those in the collection of that name.
    In(String),
    /// Those in none.
    Nowhere,
    /// Those that were put away.
    Away,
    /// Those that were ticked.
    Ticked,
}

impl Which {
    /// Its name as the value of an option.
    pub fn key(&self) -> String {
        match self {
            Which::All => "all".to_owned(),
            Which::In(name) => format!("in {name}"),
            Which::Nowhere => "nowhere".to_owned(),
            Which::Away => "away".to_owned(),
            Which::Ticked => "ticked".to_owned(),
        }
    }

    /// The other way; all, where there is no such name.
    pub fn of_key(key: &str) -> Which {
        match key {
            "nowhere" => Which::Nowhere,
            "away" => Which::Away,
            "ticked" => Which::Ticked,
            key => key.strip_prefix("in ").map_or(Which::All, |name| Which::In(name.to_owned())),
        }
    }

    /// Whether a garment is meant, wherever it is; what was ticked is not known here.
    pub fn means(&self, garment: &Garment) -> bool {
        match self {
            Which::All | Which::Ticked => true,
            Which::In(name) => garment.collection() == name,
            Which::Nowhere => garment.collection().is_empty(),
            Which::Away => garment.archived(),
        }
    }

    /// Whether the rack shows a garment: what was put away is out of sight until it is asked for.
    pub fn shows(&self, garment: &Garment) -> bool {
        self.means(garment) && (*self == Which::Away || !garment.archived())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::catalog::FAMILIES;
    use garment_assay::garment::{Act, Id};
    use garment_assay::trade::Day;

    fn garment(collection: &str, archived: bool) -> Garment {
        let day = Day::new(2026, 11, 26).expect("a day");
        Garment::new(Id::new("g").expect("a plain name"), FAMILIES[0], day)
            .after(Act::Collection(collection.to_owned()))
            .after(Act::Archived(archived))
    }

    #[test]
    fn keys_lead_back_whatever_a_collection_is_called() {
        let named = ["away", "all", "nowhere", "in away", "Autumn \"27\""].map(|name| Which::In(name.to_owned()));
        for which in named.into_iter().chain([Which::All, Which::Nowhere, Which::Away, Which::Ticked]) {
            assert_eq!(Which::of_key(&which.key()), which);
        }
    }

    #[test]
    fn what_was_put_away_is_shown_only_when_asked_for() {
        let (here, away) = (garment("Autumn", false), garment("Autumn", true));
        for which in [Which::All, Which::In("Autumn".to_owned())] {
            assert_eq!((which.shows(&here), which.shows(&away), which.means(&away)), (true, false, true));
        }
        assert_eq!((Which::Away.shows(&here), Which::Away.shows(&away)), (false, true));
        assert_eq!((Which::Nowhere.shows(&here), Which::Nowhere.shows(&garment("", false))), (false, true));
    }

    #[test]
    fn collections_are_named_once_and_in_order() {
        let racks = ["spring", "Autumn", "", "autumn", "spring"].map(|name| Rc::new(garment(name, false)));
        assert_eq!(names(&racks), ["Autumn", "autumn", "spring"]);
    }
}
