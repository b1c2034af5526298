//! Looking over every document on the shelf.

use super::verified_file::{VerifiedFile, verify_folder};
use super::{Entry, Orders, PresetsFile, Shelf, ShelfError, Tie};

impl Shelf {
    /// Reads every document, the previous copies, the log, the orders, and the tubes and cords kept by
    /// name too, and changes nothing. Sorted by name, the ties first.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read.
    pub fn verify(&self) -> Result<Vec<VerifiedFile>, ShelfError> {
        let mut verified = verify_folder::<Tie>(self.folder())?;
        verified.extend(verify_folder::<Entry>(&self.log_folder())?);
        verified.extend(Orders::beside(self).verify()?);
        verified.extend(PresetsFile::beside(self).verify());
        Ok(verified)
    }
}
