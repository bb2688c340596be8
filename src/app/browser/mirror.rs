//! A second copy of every page in IndexedDB, since a browser that is killed can lose the last minute of local storage.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::rc::Rc;

use js_sys::{Array, Function, Object, Promise, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{IdbDatabase, IdbObjectStore, IdbOpenDbRequest, IdbRequest, IdbTransaction, IdbTransactionMode};

use super::turns::Turns;

const DATABASE: &str = "garment-assay";
const PAGES: &str = "pages";

/// The mirror; clones are the same one. Without IndexedDB it holds nothing and says so.
#[derive(Clone, Default)]
pub struct Mirror {
    database: Rc<RefCell<Option<IdbDatabase>>>,
}

/// What the mirror holds.
#[derive(Default)]
pub struct Mirrored {
    /// Keys of pages that lie on the shelf in the same words.
    pub alike: BTreeSet<String>,
    /// The others: key and text.
    pub unlike: Vec<(String, String)>,
}

/// Opens the database of that name; its stores are made when it is opened for the first time.
pub(super) async fn database(name: &str, stores: &'static [&'static str]) -> Result<IdbDatabase, JsValue> {
    let factory = web_sys::window().and_then(|window| window.indexed_db().ok().flatten()).ok_or(JsValue::NULL)?;
    let request: IdbOpenDbRequest = factory.open_with_u32(name, 1)?;
    let upgrade = {
        let request = request.clone();
        Closure::once_into_js(move || {
            if let Ok(result) = request.result() {
                let database = result.unchecked_into::<IdbDatabase>();
                for store in stores {
                    let _ = database.create_object_store(store);
                }
            }
        })
    };
    request.set_onupgradeneeded(Some(upgrade.unchecked_ref()));
    Ok(settled(&request).await?.unchecked_into())
}

impl Mirror {
    /// Opens the mirror and reads every page in it, in turns. Those that `says` the shelf has in the same words are named only.
    pub async fn open(&self, says: impl Fn(&str, &str) -> bool) -> Result<Mirrored, JsValue> {
        let database = database(DATABASE, &[PAGES]).await?;
        // Another window with a newer version of the app must be able to change the database.
        let closing = {
            let (handle, database) = (self.database.clone(), database.clone());
            Closure::once_into_js(move || {
                handle.borrow_mut().take();
                database.close();
            })
        };
        database.set_onversionchange(Some(closing.unchecked_ref()));
        let (store, _) = store(&database, IdbTransactionMode::Readonly)?;
        let (keys, texts) = (store.get_all_keys()?, store.get_all()?);
        let keys: Array = settled(&keys).await?.unchecked_into();
        let texts: Array = settled(&texts).await?.unchecked_into();
        self.database.replace(Some(database));
        let (mut mirrored, turns) = (Mirrored::default(), Turns::new());
        for (key, text) in keys.iter().zip(texts.iter()) {
            let (Some(key), Some(text)) = (key.as_string(), text.as_string()) else { continue };
            if says(&key, &text) {
                mirrored.alike.insert(key);
            } else {
                mirrored.unlike.push((key, text));
            }
            turns.pause().await;
        }
        Ok(mirrored)
    }

    /// Writes pages; resolves when they are on disk as far as the browser tells. False when there is no mirror.
    pub async fn put(&self, pages: Vec<(String, String)>) -> Result<bool, JsValue> {
        let Some(database) = self.database.borrow().clone() else { return Ok(false) };
        let (store, transaction) = store(&database, IdbTransactionMode::Readwrite)?;
        for (key, text) in pages {
            store.put_with_key(&text.into(), &key.into())?;
        }
        completed(&transaction).await?;
        Ok(true)
    }

    /// Empties the mirror.
    pub async fn clear(&self) -> Result<(), JsValue> {
        let open = self.database.borrow().clone();
        let database = match open {
            Some(database) => database,
            // It did not open at the start, or was let go of for another window; what it holds would come back all the same.
            None => match database(DATABASE, &[PAGES]).await {
                Err(error) if error.is_null() => return Ok(()),
                opened => opened?,
            },
        };
        let (store, transaction) = store(&database, IdbTransactionMode::Readwrite)?;
        store.clear()?;
        completed(&transaction).await
    }
}

fn store(database: &IdbDatabase, mode: IdbTransactionMode) -> Result<(IdbObjectStore, IdbTransaction), JsValue> {
    let transaction = match mode {
        IdbTransactionMode::Readwrite => lasting(database, &PAGES.into())?,
        _ => database.transaction_with_str_and_mode(PAGES, mode)?,
    };
    Ok((transaction.object_store(PAGES)?, transaction))
}

/// A transaction that writes, and is complete only when the device says that it has it. By default some browsers take it for complete when
/// the system does, and what a device that loses its power has then not written is gone. Where that cannot be asked for, the wish is not heard.
pub(super) fn lasting(database: &IdbDatabase, stores: &JsValue) -> Result<IdbTransaction, JsValue> {
    let options = Object::new();
    Reflect::set(&options, &"durability".into(), &"strict".into())?;
    // web-sys has no stable name for the third argument.
    let begin: Function = Reflect::get(database, &"transaction".into())?.dyn_into()?;
    let terms = Array::of3(stores, &"readwrite".into(), &options);
    Ok(begin.apply(database, &terms)?.unchecked_into())
}

/// The result of a request, once it has one.
pub(super) async fn settled(request: &IdbRequest) -> Result<JsValue, JsValue> {
    let promise = Promise::new(&mut |resolve, reject| {
        request.set_onsuccess(Some(&resolve));
        request.set_onerror(Some(&reject));
    });
    JsFuture::from(promise).await?;
    request.result()
}

/// A write counts when its transaction is complete, not when the request succeeded.
pub(super) async fn completed(transaction: &IdbTransaction) -> Result<(), JsValue> {
    let promise = Promise::new(&mut |resolve, reject| {
        transaction.set_oncomplete(Some(&resolve));
        transaction.set_onabort(Some(&reject));
        transaction.set_onerror(Some(&reject));
    });
    JsFuture::from(promise).await.map(|_| ())
}
