//! What a buyer noted, as the fields `terms` and `lot` of a garment's page.
//!
//! ```text
//! "terms": {"supplier":"…","style":"0042","colourways":"…","sizes":"…","currency":"EUR","incoterm":"FOB",
//!           "prices":[{"from":300,"minor":1200}],"minimum":300,"delivery":["2027-01-10","2027-02-01"],"shortlisted":true}
//! "lot":   {"pieces":400,"level":"II","major":"2.5","minor":"4.0","looked_at":20,
//!           "findings":[{"piece":3,"what":"open-seam","severity":"major"}]}
//! ```
//! A field in which anything is not known is set aside whole: half an offer is another offer.

use serde_json::{Map, Value, json};

use super::page::has_only;
use crate::cost::Incoterm;
use crate::garment::{Act, Garment, PriceBreak, Terms, TermsAct};
use crate::lot::{Aql, Finding, Level, Log, LotSize, Severity};
use crate::trade::{Currency, Day};

/// Name of the field of an offer.
pub(super) const TERMS: &str = "terms";
/// Name of the field of a lot.
pub(super) const LOT: &str = "lot";

pub(super) fn terms_written(terms: &Terms) -> Option<Value> {
    let mut written = Map::new();
    let mut put = |field: &str, value: Option<Value>| drop(value.map(|value| written.insert(field.to_owned(), value)));
    let text = |text: &str| (!text.is_empty()).then(|| text.into());
    put("supplier", text(terms.supplier()));
    put("style", text(terms.style()));
    put("colourways", text(terms.colourways()));
    put("sizes", text(terms.sizes()));
    put("currency", terms.currency().map(|currency| currency.code().into()));
    put("incoterm", terms.incoterm().map(|term| term.code().into()));
    let prices: Vec<Value> = terms.prices().iter().map(|price| json!({ "from": price.from, "minor": price.minor })).collect();
    put("prices", (!prices.is_empty()).then(|| prices.into()));
    put("minimum", terms.minimum().map(Value::from));
    put("delivery", terms.delivery().map(|(first, last)| json!([first.to_string(), last.to_string()])));
    put("shortlisted", terms.shortlisted().then(|| true.into()));
    (!written.is_empty()).then_some(Value::Object(written))
}

/// The garment with the offer; the field as it was where anything in it is not known or would not be taken as it stands.
pub(super) fn with_terms(garment: Garment, value: Value) -> Garment {
    match acts(&value) {
        Some(acts) => {
            let read = acts.into_iter().fold(garment.clone(), |garment, act| garment.after(Act::Terms(act)));
            if terms_written(read.terms()).as_ref() == Some(&value) {
                read
            } else {
                garment.with_aside(TERMS.to_owned(), value.to_string())
            }
        }
        None => garment.with_aside(TERMS.to_owned(), value.to_string()),
    }
}

fn acts(value: &Value) -> Option<Vec<TermsAct>> {
    let mut acts = Vec::new();
    for (field, value) in value.as_object()? {
        acts.push(match field.as_str() {
            "supplier" => TermsAct::Supplier(value.as_str()?.to_owned()),
            "style" => TermsAct::Style(value.as_str()?.to_owned()),
            "colourways" => TermsAct::Colourways(value.as_str()?.to_owned()),
            "sizes" => TermsAct::Sizes(value.as_str()?.to_owned()),
            "currency" => TermsAct::Currency(Some(Currency::from_code(value.as_str()?)?)),
            "incoterm" => TermsAct::Incoterm(Some(Incoterm::from_code(value.as_str()?)?)),
            "prices" => TermsAct::Prices(value.as_array()?.iter().map(price).collect::<Option<_>>()?),
            "minimum" => TermsAct::Minimum(Some(small(value)?)),
            "delivery" => {
                let [first, last] = value.as_array()?.as_slice() else { return None };
                TermsAct::Delivery(Some((Day::parse(first.as_str()?)?, Day::parse(last.as_str()?)?)))
            }
            "shortlisted" => TermsAct::Shortlisted(value.as_bool()?),
            _ => return None,
        });
    }
    Some(acts)
}

fn small(value: &Value) -> Option<u32> {
    value.as_u64().and_then(|number| u32::try_from(number).ok())
}

fn price(value: &Value) -> Option<PriceBreak> {
    let is = has_only(value, &["from", "minor"]);
    is.then_some(PriceBreak { from: small(value.get("from")?)?, minor: value.get("minor")?.as_u64()? })
}

pub(super) fn lot_written(log: &Log) -> Value {
    let finding = |found: &Finding| json!({ "piece": found.piece, "what": found.what, "severity": found.severity.key() });
    json!({
        "pieces": log.lot.pieces(),
        "level": log.level.key(),
        "major": log.major.key(),
        "minor": log.minor.key(),
        "looked_at": log.looked_at,
        "findings": log.findings.iter().map(finding).collect::<Vec<_>>(),
    })
}

/// What was agreed and found; none when anything in it is not known or not whole.
pub(super) fn lot_read(value: &Value) -> Option<Log> {
    if !has_only(value, &["pieces", "level", "major", "minor", "looked_at", "findings"]) {
        return None;
    }
    let text = |name: &str| value.get(name)?.as_str();
    let findings = value.get("findings")?.as_array()?.iter().map(|found| {
        let is = has_only(found, &["piece", "what", "severity"]);
        is.then_some(Finding {
            piece: small(found.get("piece")?)?,
            what: found.get("what")?.as_str()?.to_owned(),
            severity: Severity::from_key(found.get("severity")?.as_str()?)?,
        })
    });
    let log = Log {
        lot: LotSize::new(small(value.get("pieces")?)?).ok()?,
        level: Level::from_key(text("level")?)?,
        major: Aql::from_key(text("major")?)?,
        minor: Aql::from_key(text("minor")?)?,
        looked_at: small(value.get("looked_at")?)?,
        findings: findings.collect::<Option<_>>()?,
    };
    log.is_whole().then_some(log)
}
