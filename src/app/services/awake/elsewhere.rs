//! The request to a system that has no D-Bus.

use super::NAME;

/// A request that was granted; dropping it takes it back.
pub struct Request {
    _granted: keepawake::KeepAwake,
}

impl Request {
    /// Asks that the screen stays on, for a reason that the system may show.
    ///
    /// # Errors
    /// What the system says.
    pub fn make(reason: &str) -> Result<Self, keepawake::Error> {
        let granted = keepawake::Builder::default()
            .display(true)
            .idle(true)
            .reason(reason)
            .app_name(NAME)
            .app_reverse_domain("marlinspeak")
            .create()?;
        Ok(Self { _granted: granted })
    }
}
