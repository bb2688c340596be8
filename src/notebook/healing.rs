//! The notebook and its other copies: healing from a mirror, and word of what another window wrote.

use std::collections::{BTreeMap, BTreeSet};

use super::kept::{KeepFault, Notebook, SETTINGS, read_for, rev_of};
use super::page::{Page, Unreadable, write};
use super::record::{PageName, Record};
use super::settings::Settings;
use super::shelf::{Shelf, ShelfFault};
use crate::fit::{Person, PersonId};
use crate::garment::{Garment, Id};

/// What a look at the mirror brought.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Healed {
    /// Garments of which the mirror had a newer or the only readable page; now on the shelf too.
    pub garments: Vec<Garment>,
    /// Garments that the mirror knows to be deleted.
    pub gone: Vec<Id>,
    /// People of whom the mirror had a newer or the only readable page; now on the shelf too.
    pub people: Vec<Person>,
    /// People whom the mirror knows to be deleted.
    pub people_gone: Vec<PersonId>,
    /// Pages that the mirror lacks.
    pub to_mirror: Vec<(String, String)>,
    /// Keys of pages that were unreadable and now are not.
    pub mended: Vec<String>,
    /// The shelf was full, and the reserve was given up.
    pub reserve_used: bool,
    /// The shelf refused part-way; the rest is as it was, and looking again goes on.
    pub fault: Option<ShelfFault>,
}

impl Healed {
    fn took_nothing_over(&self) -> bool {
        self.garments.is_empty() && self.gone.is_empty() && self.people.is_empty() && self.people_gone.is_empty()
    }
}

/// What one page of the mirror brought.
struct Taken<R: Record> {
    /// A record that is new here or newer.
    record: Option<R>,
    /// A record that is deleted.
    gone: Option<R::Name>,
    /// The page here could not be read, and now can.
    mended: bool,
}

/// What another window did to a page.
#[derive(Debug, PartialEq)]
pub enum Elsewhere {
    /// It wrote this garment.
    Changed(Box<Garment>),
    /// It deleted that garment.
    Gone(Id),
    /// It wrote that garment without having seen what was written here, and its page has taken the place of ours: this, or none where it
    /// deleted it. Nobody else has ours now.
    Over(Id, Option<Box<Garment>>),
    /// It wrote this person.
    PersonChanged(Box<Person>),
    /// It deleted that person.
    PersonGone(PersonId),
    /// As with a garment.
    PersonOver(PersonId, Option<Box<Person>>),
    /// It wrote the settings.
    Chosen(Box<Settings>),
    /// Nothing that concerns the rack.
    Nothing,
}

impl Elsewhere {
    /// What a page says that lies under a key, whether or not it was read before.
    pub fn of(key: &str, text: &str) -> Elsewhere {
        if let Some(name) = Id::of_key(key) {
            return Elsewhere::garment(name.clone(), read_for(&name, text).ok());
        }
        PersonId::of_key(key).map_or(Elsewhere::Nothing, |name| Elsewhere::person(name.clone(), read_for(&name, text).ok()))
    }

    fn garment(name: Id, page: Option<Page>) -> Elsewhere {
        match page {
            Some(Page::Here { record, .. }) => Elsewhere::Changed(record),
            Some(Page::Gone { .. }) => Elsewhere::Gone(name),
            None => Elsewhere::Nothing,
        }
    }

    fn person(name: PersonId, page: Option<Page<Person>>) -> Elsewhere {
        match page {
            Some(Page::Here { record, .. }) => Elsewhere::PersonChanged(record),
            Some(Page::Gone { .. }) => Elsewhere::PersonGone(name),
            None => Elsewhere::Nothing,
        }
    }
}

/// What another window wrote.
struct News<R> {
    page: Page<R>,
    /// It took the place of what was written here, unseen.
    over: bool,
}

impl<S: Shelf> Notebook<S> {
    /// Compares the shelf with the pages of a mirror; of each record the page written more often wins, on both sides. A record that was
    /// written here since opening, before the mirror's newer page was known, stays beside that one; so do two that were written equally
    /// often and differ. An edit counts more than a deletion of the same count.
    ///
    /// # Errors
    /// The shelf refused before anything was changed. If it refuses later, [`Healed::fault`] says so: what was taken over by then must
    /// reach the screen, or the next edit there would start from an older state.
    pub fn heal(&mut self, mirror: &[(String, String)]) -> Result<Healed, KeepFault> {
        self.heal_where_unlike(mirror, &BTreeSet::new())
    }

    /// The same where some pages of the mirror were found to say what the shelf says, and are no longer among `mirror`: those under the keys
    /// `alike`. Mostly that is all of them, and finding it out can be done in turns. One that was written here since goes to the mirror.
    ///
    /// # Errors
    /// As with [`heal`](Notebook::heal).
    pub fn heal_where_unlike(&mut self, mirror: &[(String, String)], alike: &BTreeSet<String>) -> Result<Healed, KeepFault> {
        let mut healed = Healed::default();
        if let Err(fault) = self.heal_into(&mut healed, mirror, alike) {
            if healed.took_nothing_over() {
                return Err(KeepFault(fault));
            }
            healed.fault = Some(fault);
        }
        Ok(healed)
    }

    fn heal_into(
        &mut self,
        healed: &mut Healed,
        mirror: &[(String, String)],
        alike: &BTreeSet<String>,
    ) -> Result<(), ShelfFault> {
        for (key, text) in mirror {
            let mended = if let Some(name) = Id::of_key(key) {
                let Some(taken) = self.heal_page(&name, text, &mut healed.reserve_used)? else { continue };
                healed.garments.extend(taken.record);
                healed.gone.extend(taken.gone);
                taken.mended
            } else if let Some(name) = PersonId::of_key(key) {
                let Some(taken) = self.heal_page(&name, text, &mut healed.reserve_used)? else { continue };
                healed.people.extend(taken.record);
                healed.people_gone.extend(taken.gone);
                taken.mended
            } else {
                continue;
            };
            if mended {
                healed.mended.push(key.clone());
            }
        }
        let mirrored: BTreeMap<&str, &str> = mirror.iter().map(|(key, text)| (key.as_str(), text.as_str())).collect();
        for key in self.shelf.keys()? {
            if alike.contains(&key) && !self.written.contains(&key) {
                continue;
            }
            let Some(text) = self.shelf.get(&key)? else { continue };
            let known = self.known.get(&key).and_then(|known| known.rev_of(&text));
            let Some(Ok(local)) = known.map(Ok).or_else(|| rev_of(&key, &text)) else { continue };
            match mirrored.get(key.as_str()).and_then(|text| rev_of(&key, text)) {
                // A newer version's page stays in the mirror as it stays on the shelf.
                Some(Err(Unreadable::Newer { .. } | Unreadable::UnknownFamily(_))) => {}
                Some(Ok(rev)) if rev >= local => {}
                _ => healed.to_mirror.push((key, text)),
            }
        }
        Ok(())
    }

    /// Takes over one page of the mirror, if it is the better one; says whether the reserve was given up, also where it fails then.
    fn heal_page<N: PageName>(
        &mut self,
        name: &N,
        text: &str,
        reserve_used: &mut bool,
    ) -> Result<Option<Taken<N::Of>>, ShelfFault> {
        let Ok(theirs) = read_for(name, text) else { return Ok(None) };
        let key = name.key();
        let local = self.shelf.get(&key)?;
        let mut mended = false;
        match local.as_deref().map(|text| (text, read_for(name, text))) {
            Some((_, Ok(page))) if page.rev() > theirs.rev() || page == theirs => return Ok(None),
            // Of one count and not the same, two windows wrote them at one instant, or an older state came back and was gone on with.
            Some((_, Ok(Page::Here { rev, record }))) if rev == theirs.rev() || self.written.contains(&key) => {
                return self.heal_apart(&*record, theirs, reserve_used).map(Some);
            }
            Some((text, Err(Unreadable::Damaged))) => {
                *reserve_used |= self.set_damaged_aside(name, text)?;
                mended = true;
            }
            Some((_, Err(_))) => return Ok(None),
            Some((_, Ok(_))) | None => {}
        }
        *reserve_used |= self.put(&key, text)?;
        self.note(key, theirs.rev(), text);
        let (record, gone) = match theirs {
            Page::Here { record, .. } => (Some(*record), None),
            Page::Gone { .. } => (None, Some(name.clone())),
        };
        Ok(Some(Taken { record, gone, mended }))
    }

    /// The mirror has a newer page of a record that was edited here meanwhile: ours keeps the name, theirs comes beside it.
    fn heal_apart<R: Record>(&mut self, ours: &R, theirs: Page<R>, reserve_used: &mut bool) -> Result<Taken<R>, ShelfFault> {
        let rev = theirs.rev();
        let mut taken = Taken { record: None, gone: None, mended: false };
        if let Page::Here { record: theirs, .. } = theirs
            && *theirs != *ours
        {
            let theirs = theirs.under(self.free_name(theirs.page_name())?);
            let (_, given_up) = self.write(theirs.page_name(), 0, |rev| write(&theirs, rev))?;
            *reserve_used |= given_up;
            taken.record = Some(theirs);
        }
        let (_, given_up) = self.write(ours.page_name(), rev, |rev| write(ours, rev))?;
        *reserve_used |= given_up;
        Ok(taken)
    }

    /// Takes note of what another window wrote under a key; `None` when it removed the key. Word of a page that was read or written
    /// here since comes too late, and changes nothing.
    pub fn written_elsewhere(&mut self, key: &str, text: Option<&str>) -> Elsewhere {
        if let (SETTINGS, Some(text)) = (key, text) {
            return Elsewhere::Chosen(Box::new(Settings::read(text)));
        }
        if let Some(name) = Id::of_key(key) {
            return match text {
                Some(text) => match self.news(&name, text) {
                    Some(News { page, over: true }) => Elsewhere::Over(name, page.record()),
                    news => Elsewhere::garment(name, news.map(|news| news.page)),
                },
                None => Elsewhere::garment(name, Some(self.removed(key))),
            };
        }
        let Some(name) = PersonId::of_key(key) else { return Elsewhere::Nothing };
        match text {
            Some(text) => match self.news(&name, text) {
                Some(News { page, over: true }) => Elsewhere::PersonOver(name, page.record()),
                news => Elsewhere::person(name, news.map(|news| news.page)),
            },
            None => Elsewhere::person(name, Some(self.removed(key))),
        }
    }

    /// A page that another window wrote, unless it is known already or cannot be read.
    ///
    /// Two windows that write at the same instant both count one more. Word of a page with our own count and another text, or with a lower
    /// one that nevertheless lies on the shelf, comes of somebody who had not seen ours; so does a higher one after that, until it is known that
    /// they have. Whose page lies on the shelf now has won; the
    /// other, and only that one, must save its own elsewhere.
    fn news<N: PageName>(&mut self, name: &N, text: &str) -> Option<News<N::Of>> {
        let page = read_for(name, text).ok()?;
        let key = name.key();
        let lies = self.shelf.get(&key).ok()?;
        let stands: Option<Page<N::Of>> = lies.as_deref().and_then(|lies| read_for(name, lies).ok());
        let known = self.known.get(&key).copied();
        let is_known = |page: &Page<N::Of>, text: &str| known.is_some_and(|known| known.is(page.rev(), text));
        let we_stand = lies.as_deref().zip(stands.as_ref()).is_some_and(|(lies, stands)| is_known(stands, lies));
        if let Some(known) = self.known.get_mut(&key)
            && known.ours
            && we_stand
            && !is_known(&page, text)
            && (page.rev() == known.rev || page.rev() > known.rev && known.rivalled)
        {
            // Whoever wrote that will hear of ours, but may write again before.
            known.rivalled = true;
            return None;
        }
        let Some(known) = known.filter(|known| page.rev() <= known.rev) else {
            let over = known.is_some_and(|known| known.ours && known.rivalled);
            self.note(key, page.rev(), text);
            return Some(News { page, over });
        };
        let (lies, stands) = (lies?, stands?);
        let unseen = page.rev() == known.rev || lies == text;
        if is_known(&page, text) || we_stand || !unseen {
            return None;
        }
        self.note(key, stands.rev(), &lies);
        Some(News { page: stands, over: known.ours })
    }

    /// Another window took a page away altogether.
    fn removed<R>(&mut self, key: &str) -> Page<R> {
        Page::Gone { rev: self.known.remove(key).map_or(0, |known| known.rev) }
    }
}
