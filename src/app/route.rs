//! Which screen is open, as the part of the address after `#`.

use garment_assay::fit::PersonId;
use garment_assay::garment::Id;

/// A screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// The list of garments noted.
    Rack,
    /// Starting the check of a new garment.
    Start,
    /// A whole garment on one sheet: a new one, or one that is noted.
    Desk(Option<Id>),
    /// Going on with a garment where it was left.
    Resume(Id),
    /// One check of a garment, by its key.
    Check(Id, String),
    /// All checks of a garment.
    Checks(Id),
    /// What the evidence says.
    Result(Id),
    /// Label, place, ticket and note of a garment.
    Details(Id),
    /// What stands behind the ticket of a garment.
    Ticket(Id),
    /// What was read with a tape at each point of measure of a garment.
    TapeSheet(Id),
    /// The fitting room of a garment.
    Fitting(Id),
    /// What a supplier offers a garment for.
    Offer(Id),
    /// A lot of a garment, inspected by a sample.
    Lot(Id),
    /// The photographs of a garment; with the check, by its key, from which they were opened, where they were.
    Photographs(Id, Option<String>),
    /// A garment on one printed page.
    Sheet(Id),
    /// The people whose measures are kept.
    People,
    /// The measures of one person; with the garment from whose fitting room they were opened, where they were.
    Person(PersonId, Option<Id>),
    /// The instruments.
    Bench,
    /// Which stitch and which seam it is, from what can be seen.
    SeamKind,
    /// One instrument used alone, by its key.
    Instrument(String),
    /// The ruler on the screen, and fitting it.
    Ruler,
    /// Counting on the ruler with the instrument of that key, for a check of a garment or for nobody.
    Marks(String, Option<(Id, String)>),
    /// Counting on the camera's picture with the instrument of that key, for a check of a garment or for nobody.
    Live(String, Option<(Id, String)>),
    /// Reading a picture with the instrument of that key, for a check of a garment or for nobody.
    Picture(String, Option<(Id, String)>),
    /// Units, currency, look, data out and in.
    Settings,
    /// Sources, and every number that is judgement.
    Numbers,
    /// What the app is made of by others, and under which licences.
    Licences,
    /// Two to four garments side by side.
    Beside(Vec<Id>),
    /// Two to four garments on one printed page.
    BesideSheet(Vec<Id>),
    /// Handing on tables, files and messages; with the garments that were chosen for it, where some were.
    HandOn(Vec<Id>),
    /// Guesses at tickets, and the habit in them.
    Guesses,
    /// Training the eye on drawn specimens.
    Practice,
    /// The courses about the checks.
    Learn,
    /// The course of the subject of that key: a family, or second-hand pieces.
    Course(String),
    /// The lesson about a check, by the keys of subject and check; with the garment from whose check it was opened.
    Lesson(String, String, Option<Id>),
    /// The market, and the prices, wages and shares behind a build-up.
    Rates,
}

impl Route {
    /// Reads what stands after `#`; anything unknown is the rack.
    pub fn parse(hash: &str) -> Route {
        let parts: Vec<&str> = hash.trim_start_matches('#').split('/').filter(|part| !part.is_empty()).collect();
        let garment = |id: &str, make: fn(Id) -> Route| Id::new(id).map_or(Route::Rack, make);
        match parts.as_slice() {
            ["new"] => Route::Start,
            ["desk"] => Route::Desk(None),
            ["desk", id] => garment(id, |id| Route::Desk(Some(id))),
            ["settings"] => Route::Settings,
            ["numbers"] => Route::Numbers,
            ["licences"] => Route::Licences,
            ["people"] => Route::People,
            ["people", person] => PersonId::new(person).map_or(Route::People, |person| Route::Person(person, None)),
            ["people", person, "for", id] => {
                PersonId::new(person).map_or(Route::People, |person| Route::Person(person, Id::new(id)))
            }
            ["rates"] => Route::Rates,
            ["guesses"] => Route::Guesses,
            ["practice"] => Route::Practice,
            ["learn"] => Route::Learn,
            ["learn", subject] => Route::Course((*subject).to_owned()),
            ["learn", subject, check] => Route::Lesson((*subject).to_owned(), (*check).to_owned(), None),
            ["learn", subject, check, "for", id] => Route::Lesson((*subject).to_owned(), (*check).to_owned(), Id::new(id)),
            ["beside", ids @ ..] => Route::Beside(ids.iter().filter_map(|id| Id::new(id)).collect()),
            ["beside-sheet", ids @ ..] => Route::BesideSheet(ids.iter().filter_map(|id| Id::new(id)).collect()),
            ["hand-on", ids @ ..] => Route::HandOn(ids.iter().filter_map(|id| Id::new(id)).collect()),
            ["bench"] => Route::Bench,
            ["bench", "ruler"] => Route::Ruler,
            ["bench", "seam-kind"] => Route::SeamKind,
            ["bench", key] => Route::Instrument((*key).to_owned()),
            ["bench", key, "marks"] => Route::Marks((*key).to_owned(), None),
            ["garment", id, "check", check, "marks", key] => {
                Id::new(id).map_or(Route::Rack, |id| Route::Marks((*key).to_owned(), Some((id, (*check).to_owned()))))
            }
            ["bench", key, "live"] => Route::Live((*key).to_owned(), None),
            ["garment", id, "check", check, "live", key] => {
                Id::new(id).map_or(Route::Rack, |id| Route::Live((*key).to_owned(), Some((id, (*check).to_owned()))))
            }
            ["bench", key, "picture"] => Route::Picture((*key).to_owned(), None),
            ["garment", id, "check", check, "picture", key] => {
                Id::new(id).map_or(Route::Rack, |id| Route::Picture((*key).to_owned(), Some((id, (*check).to_owned()))))
            }
            ["garment", id] => garment(id, Route::Resume),
            ["garment", id, "checks"] => garment(id, Route::Checks),
            ["garment", id, "result"] => garment(id, Route::Result),
            ["garment", id, "details"] => garment(id, Route::Details),
            ["garment", id, "ticket"] => garment(id, Route::Ticket),
            ["garment", id, "tape"] => garment(id, Route::TapeSheet),
            ["garment", id, "fit"] => garment(id, Route::Fitting),
            ["garment", id, "offer"] => garment(id, Route::Offer),
            ["garment", id, "lot"] => garment(id, Route::Lot),
            ["garment", id, "photographs"] => garment(id, |id| Route::Photographs(id, None)),
            ["garment", id, "check", check, "photographs"] => {
                Id::new(id).map_or(Route::Rack, |id| Route::Photographs(id, Some((*check).to_owned())))
            }
            ["garment", id, "sheet"] => garment(id, Route::Sheet),
            ["garment", id, "check", key] => Id::new(id).map_or(Route::Rack, |id| Route::Check(id, (*key).to_owned())),
            _ => Route::Rack,
        }
    }

    /// The address of the screen, `#` included.
    pub fn href(&self) -> String {
        match self {
            Route::Rack => "#/".to_owned(),
            Route::Start => "#/new".to_owned(),
            Route::Desk(None) => "#/desk".to_owned(),
            Route::Desk(Some(id)) => format!("#/desk/{}", id.as_str()),
            Route::Settings => "#/settings".to_owned(),
            Route::Numbers => "#/numbers".to_owned(),
            Route::Licences => "#/licences".to_owned(),
            Route::People => "#/people".to_owned(),
            Route::Person(person, None) => format!("#/people/{}", person.as_str()),
            Route::Person(person, Some(id)) => format!("#/people/{}/for/{}", person.as_str(), id.as_str()),
            Route::Rates => "#/rates".to_owned(),
            Route::Guesses => "#/guesses".to_owned(),
            Route::Practice => "#/practice".to_owned(),
            Route::Learn => "#/learn".to_owned(),
            Route::Course(family) => format!("#/learn/{family}"),
            Route::Lesson(family, check, None) => format!("#/learn/{family}/{check}"),
            Route::Lesson(family, check, Some(id)) => format!("#/learn/{family}/{check}/for/{}", id.as_str()),
            Route::Beside(ids) => ids.iter().fold("#/beside".to_owned(), |href, id| format!("{href}/{}", id.as_str())),
            Route::BesideSheet(ids) => ids.iter().fold("#/beside-sheet".to_owned(), |href, id| format!("{href}/{}", id.as_str())),
            Route::HandOn(ids) => ids.iter().fold("#/hand-on".to_owned(), |href, id| format!("{href}/{}", id.as_str())),
            Route::Bench => "#/bench".to_owned(),
            Route::Ruler => "#/bench/ruler".to_owned(),
            Route::SeamKind => "#/bench/seam-kind".to_owned(),
            Route::Instrument(key) => format!("#/bench/{key}"),
            Route::Marks(key, None) => format!("#/bench/{key}/marks"),
            Route::Marks(key, Some((id, check))) => format!("#/garment/{}/check/{check}/marks/{key}", id.as_str()),
            Route::Live(key, None) => format!("#/bench/{key}/live"),
            Route::Live(key, Some((id, check))) => format!("#/garment/{}/check/{check}/live/{key}", id.as_str()),
            Route::Picture(key, None) => format!("#/bench/{key}/picture"),
            Route::Picture(key, Some((id, check))) => format!("#/garment/{}/check/{check}/picture/{key}", id.as_str()),
            Route::Resume(id) => format!("#/garment/{}", id.as_str()),
            Route::Checks(id) => format!("#/garment/{}/checks", id.as_str()),
            Route::Result(id) => format!("#/garment/{}/result", id.as_str()),
            Route::Details(id) => format!("#/garment/{}/details", id.as_str()),
            Route::Ticket(id) => format!("#/garment/{}/ticket", id.as_str()),
            Route::TapeSheet(id) => format!("#/garment/{}/tape", id.as_str()),
            Route::Fitting(id) => format!("#/garment/{}/fit", id.as_str()),
            Route::Offer(id) => format!("#/garment/{}/offer", id.as_str()),
            Route::Lot(id) => format!("#/garment/{}/lot", id.as_str()),
            Route::Photographs(id, None) => format!("#/garment/{}/photographs", id.as_str()),
            Route::Photographs(id, Some(check)) => format!("#/garment/{}/check/{check}/photographs", id.as_str()),
            Route::Sheet(id) => format!("#/garment/{}/sheet", id.as_str()),
            Route::Check(id, key) => format!("#/garment/{}/check/{key}", id.as_str()),
        }
    }

    /// The same screen about another garment.
    pub fn of(self, id: Id) -> Route {
        match self {
            Route::Resume(_) => Route::Resume(id),
            Route::Desk(Some(_)) => Route::Desk(Some(id)),
            Route::Check(_, key) => Route::Check(id, key),
            Route::Checks(_) => Route::Checks(id),
            Route::Result(_) => Route::Result(id),
            Route::Details(_) => Route::Details(id),
            Route::Ticket(_) => Route::Ticket(id),
            Route::TapeSheet(_) => Route::TapeSheet(id),
            Route::Fitting(_) => Route::Fitting(id),
            Route::Offer(_) => Route::Offer(id),
            Route::Lot(_) => Route::Lot(id),
            Route::Photographs(_, check) => Route::Photographs(id, check),
            Route::Sheet(_) => Route::Sheet(id),
            Route::Person(person, Some(_)) => Route::Person(person, Some(id)),
            Route::Lesson(family, check, Some(_)) => Route::Lesson(family, check, Some(id)),
            Route::Marks(key, Some((_, check))) => Route::Marks(key, Some((id, check))),
            Route::Live(key, Some((_, check))) => Route::Live(key, Some((id, check))),
            Route::Picture(key, Some((_, check))) => Route::Picture(key, Some((id, check))),
            other => other,
        }
    }

    /// The garment that the screen is about.
    pub fn garment(&self) -> Option<&Id> {
        match self {
            Route::Resume(id)
            | Route::Checks(id)
            | Route::Result(id)
            | Route::Details(id)
            | Route::Ticket(id)
            | Route::TapeSheet(id)
            | Route::Fitting(id)
            | Route::Offer(id)
            | Route::Lot(id)
            | Route::Sheet(id)
            | Route::Photographs(id, _)
            | Route::Check(id, _) => Some(id),
            Route::Person(_, garment) | Route::Lesson(_, _, garment) | Route::Desk(garment) => garment.as_ref(),
            Route::Marks(_, target) | Route::Live(_, target) | Route::Picture(_, target) => target.as_ref().map(|(id, _)| id),
            Route::Rack
            | Route::Start
            | Route::Settings
            | Route::Numbers
            | Route::Licences
            | Route::People
            | Route::Practice
            | Route::Learn
            | Route::Course(_)
            | Route::Rates
            | Route::Guesses
            | Route::Beside(_)
            | Route::BesideSheet(_)
            | Route::HandOn(_)
            | Route::Bench
            | Route::SeamKind
            | Route::Instrument(_)
            | Route::Ruler => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_address_leads_back_to_its_screen() {
        let id = || Id::new("m2x-7").expect("a plain name");
        let person = || PersonId::new("p-1").expect("a plain name");
        let routes = [
            Route::Rack,
            Route::Start,
            Route::Desk(None),
            Route::Desk(Some(id())),
            Route::Settings,
            Route::Numbers,
            Route::Licences,
            Route::Rates,
            Route::Guesses,
            Route::Practice,
            Route::Learn,
            Route::Course("a-family".to_owned()),
            Route::Lesson("a-family".to_owned(), "a-check".to_owned(), None),
            Route::Lesson("a-family".to_owned(), "a-check".to_owned(), Some(id())),
            Route::HandOn(Vec::new()),
            Route::HandOn(vec![id(), id()]),
            Route::Beside(Vec::new()),
            Route::Beside(vec![id(), id()]),
            Route::BesideSheet(Vec::new()),
            Route::BesideSheet(vec![id(), id()]),
            Route::Resume(id()),
            Route::Checks(id()),
            Route::Result(id()),
            Route::Details(id()),
            Route::Check(id(), "inseam".to_owned()),
            Route::Ticket(id()),
            Route::TapeSheet(id()),
            Route::Fitting(id()),
            Route::Offer(id()),
            Route::Lot(id()),
            Route::Sheet(id()),
            Route::People,
            Route::Person(person(), None),
            Route::Person(person(), Some(id())),
            Route::Bench,
            Route::SeamKind,
            Route::Ruler,
            Route::Instrument("girth".to_owned()),
            Route::Marks("stitch-comb".to_owned(), None),
            Route::Marks("stitch-comb".to_owned(), Some((id(), "spi".to_owned()))),
            Route::Live("stitch-comb-live".to_owned(), None),
            Route::Live("stitch-comb-live".to_owned(), Some((id(), "spi".to_owned()))),
            Route::Photographs(id(), None),
            Route::Photographs(id(), Some("spi".to_owned())),
            Route::Picture("stitch-photo".to_owned(), None),
            Route::Picture("stitch-photo".to_owned(), Some((id(), "spi".to_owned()))),
        ];
        for route in routes {
            assert_eq!(Route::parse(&route.href()), route);
        }
    }

    #[test]
    fn an_address_nobody_made_is_the_rack() {
        for hash in ["", "#", "#/garment", "#/garment/a b", "#/garment/x/check", "#/elsewhere/1/2/3"] {
            assert_eq!(Route::parse(hash), Route::Rack, "{hash}");
        }
        for hash in ["#/people/a b", "#/people/a b/for/x"] {
            assert_eq!(Route::parse(hash), Route::People, "{hash}");
        }
    }
}
