//! The JSON documents of `marlinspeak shelf`.

use std::borrow::Cow;

use jiff::Timestamp;
use serde::Serialize;

use crate::shelf::{Shelved, TieStatus};
use crate::words::harmless;

#[derive(Serialize)]
pub(super) struct ListForm<'a> {
    pub ties: Vec<TieForm<'a>>,
    pub troubles: Vec<String>,
}

#[derive(Serialize)]
pub(super) struct TieForm<'a> {
    id: &'a str,
    name: Cow<'a, str>,
    note: Cow<'a, str>,
    leads: u16,
    bights: u16,
    nested: u16,
    lands: u16,
    passes: u16,
    weave: String,
    phase: &'static str,
    laid: u32,
    legs: u32,
    percent: u32,
    standing: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    batch: Option<BatchForm<'a>>,
    logged: bool,
    minutes_worked: f64,
    begun: Timestamp,
    touched: Timestamp,
}

impl<'a> TieForm<'a> {
    pub(super) fn of(shelved: &'a Shelved) -> Self {
        let (tie, plan) = (&shelved.tie, &shelved.tie.plan);
        Self {
            id: tie.id().as_str(),
            name: harmless(&tie.name),
            note: harmless(&tie.note),
            leads: plan.knot().leads(),
            bights: plan.knot().bights(),
            nested: plan.knot().nested(),
            lands: plan.knot().lattice().lands(),
            passes: plan.laying().passes(),
            weave: plan.knot().weave().to_string(),
            phase: tie.place.phase().name(),
            laid: shelved.progress.laid,
            legs: shelved.progress.legs,
            percent: shelved.per_cent(),
            standing: match shelved.status() {
                TieStatus::Waiting => "waiting",
                TieStatus::Finished => "finished",
                TieStatus::PutAway => "put-away",
            },
            batch: tie.batch.as_ref().map(|batch| BatchForm {
                series: batch.series(),
                piece: batch.number(),
                of: batch.of,
            }),
            logged: shelved.is_logged,
            minutes_worked: (tie.work_time.seconds() / 6.0).round() / 10.0,
            begun: tie.begun,
            touched: tie.touched,
        }
    }
}

/// Which piece of a batch a tie is.
#[derive(Serialize)]
struct BatchForm<'a> {
    series: &'a str,
    piece: u16,
    of: Option<u16>,
}

#[derive(Serialize)]
pub(super) struct VerifyForm {
    pub whole: bool,
    pub documents: Vec<DocumentForm>,
}

#[derive(Serialize)]
pub(super) struct DocumentForm {
    pub file: String,
    pub state: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub why: Option<String>,
}
