//! Why a knot does not lie on a taper, a ball or a mat, and what would.

use fluent::fluent_args;

use super::lengths::{bound, enough, fine};
use super::setup_form::or_none;
use super::{Sentence, Words};
use crate::bench::{Misfit, ShapeError};

impl Words {
    /// The sentence for a knot that a ground does not take.
    pub(super) fn ground_shape_error(&self, error: &ShapeError) -> Sentence {
        match error {
            ShapeError::WiderThanReach { given, most } => self.sentence(
                "shape-wider",
                &fluent_args! { "given" => fine(*given), "most" => bound(*most) },
            ),
            ShapeError::TaperTooShort { over, least } => self.sentence(
                "shape-taper-short",
                &fluent_args! { "over" => fine(*over), "least" => enough(*least) },
            ),
            ShapeError::ThinEnd {
                leads,
                bights,
                thick_from,
                most_leads,
                most_bights,
            } => self.sentence(
                "shape-thin-end",
                &fluent_args! {
                    "leads" => *leads, "bights" => *bights, "thick_from" => enough(*thick_from),
                    "most_leads" => most_leads.unwrap_or(0),
                    "most_bights" => most_bights.unwrap_or(0),
                },
            ),
            ShapeError::BallFull {
                leads,
                bights,
                ball,
                ball_from,
                most_leads,
                most_bights,
            } => self.sentence(
                "shape-ball-full",
                &fluent_args! {
                    "leads" => *leads, "bights" => *bights,
                    "ball" => fine(*ball), "ball_from" => enough(*ball_from),
                    "most_leads" => most_leads.unwrap_or(0),
                    "most_bights" => most_bights.unwrap_or(0),
                },
            ),
            ShapeError::BallTooSmall {
                cord,
                ball,
                cord_to,
                ball_from,
            } => self.sentence(
                "shape-ball-small",
                &fluent_args! {
                    "cord" => fine(*cord), "ball" => fine(*ball),
                    "cord_to" => bound(*cord_to), "ball_from" => enough(*ball_from),
                },
            ),
            ShapeError::MatFull {
                leads,
                bights,
                outer,
                outer_from,
                most_leads,
                most_bights,
            } => self.sentence(
                "shape-mat-full",
                &fluent_args! {
                    "leads" => *leads, "bights" => *bights,
                    "outer" => fine(*outer), "outer_from" => enough(*outer_from),
                    "most_leads" => most_leads.unwrap_or(0),
                    "most_bights" => most_bights.unwrap_or(0),
                },
            ),
            ShapeError::HoleTooSmall {
                bights,
                hole,
                hole_from,
                most_bights,
            } => self.sentence(
                "shape-hole-small",
                &fluent_args! {
                    "bights" => *bights, "hole" => fine(*hole), "hole_from" => enough(*hole_from),
                    "most_bights" => most_bights.unwrap_or(0),
                },
            ),
            ShapeError::CordThickerThanObject { .. }
            | ShapeError::TooFull { .. }
            | ShapeError::NarrowerThanTight { .. } => self.shape_error(error),
        }
    }

    /// The sentence for a ground on which no knot lies, or none leaves room to tuck.
    pub(super) fn ground_misfit(&self, misfit: &Misfit) -> Sentence {
        match misfit {
            Misfit::NoneLies {
                thinner_cord,
                thicker_cord,
            } => self.sentence(
                "fit-none-lies",
                &fluent_args! {
                    "thinner" => or_none(*thinner_cord, fine),
                    "thicker" => or_none(*thicker_cord, fine),
                },
            ),
            Misfit::NoRoomInPlace { thinner_cord } => self.sentence(
                "fit-no-room-in-place",
                &fluent_args! { "thinner" => or_none(*thinner_cord, fine) },
            ),
            _ => self.misfits(std::slice::from_ref(misfit)),
        }
    }
}
