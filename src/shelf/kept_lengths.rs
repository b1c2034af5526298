//! Lengths as they stand in documents, in millimetres.

use super::DocumentError;
use crate::bench::Millimetres;

/// A length in a document.
pub(super) fn length(name: &str, millimetres: f64) -> Result<Millimetres, DocumentError> {
    Millimetres::new(millimetres)
        .map_err(|error| DocumentError::shape(name, format!("`{name}`: {error}")))
}

/// A length that need not be there.
pub(super) fn maybe_length(
    name: &str,
    millimetres: Option<f64>,
) -> Result<Option<Millimetres>, DocumentError> {
    millimetres.map(|given| length(name, given)).transpose()
}
