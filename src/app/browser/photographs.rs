//! The pictures of photographs in IndexedDB, each under its id; the pages that name them lie elsewhere.
//!
//! A database of its own, so that what goes wrong with large pictures cannot take the mirror of the notes along.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::rc::Rc;

use garment_assay::garment::PhotographId;
use garment_assay::language::said;
use garment_assay::notebook::{Bundle, unbundle};
use garment_assay::say;
use garment_assay::trade::Day;
use js_sys::{Array, Date, Uint8Array};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::spawn_local;
use web_sys::{
    Blob, BlobPropertyBag, DomException, File, FileList, IdbDatabase, IdbObjectStore, IdbTransaction, IdbTransactionMode,
};

use super::files;
use super::mirror::{self, completed, settled};
use super::picture::{Address, NoPicture, bytes, shrunk};
use super::turns::{self, Pieces};

const DATABASE: &str = "garment-assay-photographs";
/// Pictures by id.
const PICTURES: &str = "pictures";
/// Since when no page names a picture: milliseconds by id.
const UNNAMED: &str = "unnamed";
/// How long a picture that no page names is kept. In that time another window may still undo what took it out of its page, or a zip that
/// was just taken in may get its pages. Judgement: nobody leaves an undo open for longer than a day.
const GRACE: f64 = 24.0 * 3600.0 * 1000.0;

thread_local! {
    static OPEN: RefCell<Option<IdbDatabase>> = const { RefCell::new(None) };
}

/// Why pictures are not kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// There is no room for them.
    Full,
    /// The browser keeps none for this page.
    Refused,
}

impl Fault {
    /// What is to be done about it.
    pub fn words(self) -> &'static str {
        match self {
            Fault::Full => {
                say!(
                    "There is no room left for it in this browser. Make room on the device, or export and remove photographs you no longer need."
                )
            }
            Fault::Refused => {
                say!("This browser keeps no pictures for this page. A private window or a setting can be the cause.")
            }
        }
    }
}

fn fault(error: Option<DomException>) -> Fault {
    match error.map(|error| error.name()).as_deref() {
        Some("QuotaExceededError" | "NS_ERROR_DOM_QUOTA_REACHED") => Fault::Full,
        _ => Fault::Refused,
    }
}

async fn database() -> Result<IdbDatabase, JsValue> {
    if let Some(open) = OPEN.with_borrow(Clone::clone) {
        return Ok(open);
    }
    let database = mirror::database(DATABASE, &[PICTURES, UNNAMED]).await?;
    // Another window with a newer version must be able to change it, and the browser may close it by itself: it is opened anew then.
    let closing = {
        let database = database.clone();
        Closure::<dyn FnMut()>::new(move || {
            OPEN.set(None);
            database.close();
        })
        .into_js_value()
    };
    database.set_onversionchange(Some(closing.unchecked_ref()));
    database.set_onclose(Some(closing.unchecked_ref()));
    OPEN.set(Some(database.clone()));
    Ok(database)
}

async fn begun(mode: IdbTransactionMode) -> Result<(IdbTransaction, IdbObjectStore, IdbObjectStore), JsValue> {
    let names = Array::of2(&PICTURES.into(), &UNNAMED.into());
    let database = database().await?;
    let transaction = match mode {
        IdbTransactionMode::Readwrite => mirror::lasting(&database, &names)?,
        _ => database.transaction_with_str_sequence_and_mode(&names, mode)?,
    };
    let (pictures, unnamed) = (transaction.object_store(PICTURES)?, transaction.object_store(UNNAMED)?);
    Ok((transaction, pictures, unnamed))
}

/// Keeps pictures, all or none.
pub async fn keep(pictures: &[(PhotographId, Blob)]) -> Result<(), Fault> {
    let of = |error: JsValue| fault(error.dyn_into().ok());
    let (transaction, store, unnamed) = begun(IdbTransactionMode::Readwrite).await.map_err(of)?;
    for (id, blob) in pictures {
        let key = JsValue::from(id.to_string());
        store.put_with_key(blob, &key).map_err(of)?;
        unnamed.delete(&key).map_err(of)?;
    }
    completed(&transaction).await.map_err(|_| fault(transaction.error()))
}

async fn find(id: PhotographId) -> Result<Option<Blob>, JsValue> {
    let (_, store, _) = begun(IdbTransactionMode::Readonly).await?;
    let found = settled(&store.get(&id.to_string().into())?).await?;
    Ok(found.dyn_into().ok())
}

/// The pictures that are here.
async fn here() -> Result<BTreeSet<PhotographId>, JsValue> {
    let (_, store, _) = begun(IdbTransactionMode::Readonly).await?;
    let keys: Array = settled(&store.get_all_keys()?).await?.unchecked_into();
    Ok(keys.iter().filter_map(|key| PhotographId::parse(&key.as_string()?)).collect())
}

/// What there is to be seen of a photograph.
#[derive(Clone, Debug, PartialEq)]
pub enum Seen {
    /// The picture.
    Here(Rc<Address>),
    /// It is not on this device.
    Missing,
}

/// Looks for a picture.
pub fn see(id: PhotographId, then: impl FnOnce(Seen) + 'static) {
    spawn_local(async move {
        let found = find(id).await.ok().flatten();
        then(found.as_ref().and_then(Address::of).map_or(Seen::Missing, |address| Seen::Here(Rc::new(address))));
    });
}

/// How taking in what was chosen goes on.
#[derive(Clone, Debug, PartialEq)]
pub enum Taking {
    /// So many files were looked at, of so many.
    Looked(usize, usize),
    /// One is kept: its id, width and height in pixels.
    Kept(PhotographId, u32, u32),
    /// The file of that name is no picture that can be kept.
    NoPicture(String, NoPicture),
    /// The picture could not be kept, and nothing after it was tried.
    NotKept(Fault),
    /// That was the last.
    Done,
}

/// Shrinks and keeps the files that were chosen, no more than `most`, one after the other.
pub fn take(files: &FileList, most: usize, told: impl Fn(Taking) + 'static) {
    // The list is emptied with its field.
    let files: Vec<File> = (0..files.length()).filter_map(|place| files.get(place)).take(most).collect();
    spawn_local(async move {
        for (place, file) in files.iter().enumerate() {
            told(Taking::Looked(place, files.len()));
            match shrunk(file).await {
                Err(why) => told(Taking::NoPicture(file.name(), why)),
                Ok(picture) => match keep(&[(picture.id, picture.blob)]).await {
                    Ok(()) => told(Taking::Kept(picture.id, picture.width, picture.height)),
                    Err(fault) => {
                        told(Taking::NotKept(fault));
                        break;
                    }
                },
            }
        }
        told(Taking::Done);
    });
}

/// How many of these pictures are here, and how many bytes they come to.
pub fn weigh(ids: Vec<PhotographId>, then: impl FnOnce(usize, f64) + 'static) {
    spawn_local(async move {
        let mut sizes = Vec::new();
        for id in ids {
            sizes.extend(find(id).await.ok().flatten().map(|blob| blob.size()));
        }
        then(sizes.len(), sizes.iter().sum());
    });
}

/// Lets go of pictures that no page names, and has not for a day.
pub fn sweep(named: BTreeSet<PhotographId>) {
    spawn_local(async move {
        // What cannot be swept now is swept another time.
        let _ = swept(&named).await;
    });
}

async fn swept(named: &BTreeSet<PhotographId>) -> Result<(), JsValue> {
    let (transaction, pictures, unnamed) = begun(IdbTransactionMode::Readwrite).await?;
    let keys: Array = settled(&pictures.get_all_keys()?).await?.unchecked_into();
    let now = Date::now();
    for key in keys.iter() {
        if key.as_string().and_then(|key| PhotographId::parse(&key)).is_some_and(|id| named.contains(&id)) {
            unnamed.delete(&key)?;
            continue;
        }
        match settled(&unnamed.get(&key)?).await?.as_f64() {
            Some(since) if now - since > GRACE => {
                pictures.delete(&key)?;
                unnamed.delete(&key)?;
            }
            Some(_) => {}
            None => drop(unnamed.put_with_key(&now.into(), &key)?),
        }
    }
    completed(&transaction).await
}

/// Erases all pictures; says whether that went well.
pub fn clear(then: impl FnOnce(bool) + 'static) {
    spawn_local(async move {
        let cleared = async {
            let (transaction, pictures, unnamed) = begun(IdbTransactionMode::Readwrite).await?;
            pictures.clear()?;
            unnamed.clear()?;
            completed(&transaction).await
        };
        // Where none could ever be kept there is none to be erased.
        then(cleared.await.is_ok() || database().await.is_err());
    });
}

/// How a zip comes about.
#[derive(Clone, Debug, PartialEq)]
pub enum Packing {
    /// So many pictures are in it, of so many.
    Packed(usize, usize),
    /// It was handed to the browser, without so many pictures that are not here.
    Saved(usize),
    /// It was not.
    Failed(String),
}

/// Packs an export and these pictures into one file, and offers it to be saved.
pub fn pack(name: String, export: Pieces, made: Day, ids: Vec<PhotographId>, told: impl Fn(Packing) + 'static) {
    told(Packing::Packed(0, ids.len()));
    spawn_local(async move {
        let export = turns::text(export).await;
        told(match packed(&export, made, &ids, &told).await {
            Ok((blob, left_out)) => match files::save_blob(&name, &blob) {
                Ok(()) => Packing::Saved(left_out),
                Err(_) => Packing::Failed(said(files::NOT_SAVED).to_owned()),
            },
            Err(why) => Packing::Failed(why),
        });
    });
}

async fn packed(export: &str, made: Day, ids: &[PhotographId], told: &impl Fn(Packing)) -> Result<(Blob, usize), String> {
    let parts = Array::new();
    let put = |bytes: &[u8]| {
        parts.push(&Uint8Array::from(bytes));
    };
    let (mut bundle, begin) = Bundle::begin(export, made).map_err(|fault| fault.to_string())?;
    put(&begin);
    let mut left_out = 0;
    for (place, id) in ids.iter().enumerate() {
        told(Packing::Packed(place, ids.len()));
        let picture = find(*id).await.ok().flatten();
        let read = match &picture {
            Some(blob) => bytes(blob).await,
            None => None,
        };
        let before = match read {
            Some(read) => bundle.add(*id, &read).map_err(|fault| fault.to_string())?,
            None => None,
        };
        match (before, picture) {
            (Some(before), Some(picture)) => {
                put(&before);
                parts.push(&picture);
            }
            _ => left_out += 1,
        }
    }
    put(&bundle.end());
    let properties = BlobPropertyBag::new();
    properties.set_type("application/zip");
    let blob = Blob::new_with_blob_sequence_and_options(&parts, &properties).map_err(|_| said(files::NOT_SAVED).to_owned())?;
    Ok((blob, left_out))
}

/// Pictures that came in a zip and are not kept yet. Cheap to hand on.
#[derive(Clone, Default)]
pub struct Pictures(Rc<Vec<(PhotographId, Blob)>>);

impl PartialEq for Pictures {
    fn eq(&self, other: &Pictures) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl Pictures {
    /// How many.
    pub fn count(&self) -> usize {
        self.0.len()
    }

    /// Keeps those that are named, all or none.
    ///
    /// # Errors
    /// [`Fault`].
    pub async fn keep(&self, named: &[PhotographId]) -> Result<(), Fault> {
        let wanted: Vec<_> = self.0.iter().filter(|(id, _)| named.contains(id)).cloned().collect();
        if wanted.is_empty() { Ok(()) } else { keep(&wanted).await }
    }
}

/// What a chosen file holds.
#[derive(Clone, PartialEq)]
pub struct Opened {
    /// The export.
    pub text: Rc<str>,
    /// The pictures with it.
    pub pictures: Pictures,
    /// How many of these are not on this device yet.
    pub fresh: usize,
    /// Pictures that it names and that are not in it.
    pub missing: usize,
    /// Pictures that were damaged or exchanged, and are not taken.
    pub refused: usize,
}

/// Opens what was read of a zip.
///
/// # Errors
/// The sentence for why not.
pub async fn unpacked(bytes: &[u8]) -> Result<Opened, String> {
    let brought = unbundle(bytes).map_err(|fault| fault.to_string())?;
    let properties = BlobPropertyBag::new();
    properties.set_type("image/jpeg");
    let mut pictures = Vec::new();
    for (id, bytes) in &brought.photographs {
        let part = Array::of1(&Uint8Array::from(&bytes[..]));
        let blob = Blob::new_with_u8_array_sequence_and_options(&part, &properties);
        pictures.push((*id, blob.map_err(|_| say!("There is no room to open this zip. Nothing was changed.").to_owned())?));
    }
    let here = here().await.unwrap_or_default();
    Ok(Opened {
        fresh: pictures.iter().filter(|(id, _)| !here.contains(id)).count(),
        text: brought.notes.as_ref().into(),
        pictures: Pictures(Rc::new(pictures)),
        missing: brought.missing,
        refused: brought.refused.len(),
    })
}
