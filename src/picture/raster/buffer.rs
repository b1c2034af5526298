//! An image together with what it shows.

use super::contours::{Fingerprint, differences};
use super::damage::Damage;
use super::image::Image;
use crate::picture::scene::Viewpoint;

/// An image together with what it shows.
#[derive(Debug, Default)]
pub struct Buffer {
    /// The pixels that were painted.
    pub image: Image,
    viewpoint: Option<Viewpoint>,
    fingerprints: Vec<Fingerprint>,
}

impl Buffer {
    /// Whether it shows the tube from this viewpoint in an image of this size.
    pub fn is_of(&self, size: (u32, u32), viewpoint: Option<Viewpoint>) -> bool {
        self.image.size() == size && self.viewpoint == viewpoint
    }

    /// Where it shows something else than contours of these fingerprints, in an image of this size
    /// and viewpoint.
    pub fn damage(
        &self,
        size: (u32, u32),
        viewpoint: Option<Viewpoint>,
        fingerprints: &[Fingerprint],
    ) -> Damage {
        let (width, height) = (size.0 as usize, size.1 as usize);
        if self.image.size() != size {
            return Damage::all(width, height);
        }
        let mut damage = Damage::none(width, height);
        if self.viewpoint == viewpoint {
            differences(&self.fingerprints, fingerprints, |columns, rows| {
                damage.add(columns, rows);
            });
        } else {
            // From another viewpoint nearly everything differs, and it is quicker to paint one
            // large piece.
            differences(&self.fingerprints, fingerprints, |columns, rows| {
                damage.stretch(columns, rows);
            });
        }
        damage
    }

    /// Notes what the image is about to show. The caller paints it.
    pub fn set(
        &mut self,
        size: (u32, u32),
        viewpoint: Option<Viewpoint>,
        fingerprints: Vec<Fingerprint>,
    ) {
        if self.image.size() != size {
            self.image = Image::blank(size.0, size.1);
        }
        self.viewpoint = viewpoint;
        self.fingerprints = fingerprints;
    }
}
