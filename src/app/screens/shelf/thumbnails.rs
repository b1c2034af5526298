//! Small pictures of the ties that are laid out.

use std::collections::HashMap;

use iced::widget::image::Handle;
use iced::widget::{container, image};
use iced::{ContentFit, Element};

use crate::app::picture_view::PictureView;
use crate::guide::{AtOnce, Place, Script};
use crate::picture::Subject;
use crate::shelf::{Photograph, Shelved, TieId};

/// Width and height of a picture in the list.
const SIZE: [f32; 2] = [112.0, 104.0];

/// Pixels each way of a small photograph at most: enough for a screen of two dots a pixel.
pub const MOST_PIXELS: u32 = 224;

/// Pictures of ties, each as it lies at its place, and of finished ones their photographs.
#[derive(Default)]
pub struct Thumbnails {
    ties: Vec<Thumbnail>,
    /// Those that were asked for; nothing as long as one is not there, and where it can't be shown.
    photographs: HashMap<TieId, Option<Handle>>,
}

struct Thumbnail {
    tie: TieId,
    place: Place,
    picture: PictureView,
}

impl Thumbnails {
    /// Shows these ties from now on, for a screen with so many dots for each pixel of the layout. A
    /// picture that is there stays while its tie stands where it stood.
    pub fn show(&mut self, ties: &[Shelved], dots: f32) {
        let mut before = std::mem::take(&mut self.ties);
        let thumbnail = |shelved: &Shelved| {
            let (tie, place) = (shelved.tie.id(), shelved.place);
            let known = before
                .iter()
                .position(|known| known.tie == *tie && known.place == place);
            known.map_or_else(|| Thumbnail::of(shelved), |at| before.swap_remove(at))
        };
        self.ties = ties.iter().map(thumbnail).collect();
        for Thumbnail { picture, .. } in &mut self.ties {
            picture.set_dots(dots);
        }
    }

    /// The picture of a tie, in its place of the list.
    pub fn view<'a, M: 'a>(&'a self, tie: &TieId) -> Option<Element<'a, M>> {
        let [width, height] = SIZE;
        if let Some(Some(photograph)) = self.photographs.get(tie) {
            let photograph = image(photograph.clone()).content_fit(ContentFit::Contain);
            return Some(photograph.width(width).height(height).into());
        }
        let found = self.ties.iter().find(|known| known.tie == *tie)?;
        let view = container(found.picture.view());
        Some(view.width(width).height(height).into())
    }

    /// Whether the photograph of a tie is to be read now: once.
    pub fn ask_for(&mut self, tie: &TieId) -> bool {
        let is_new = !self.photographs.contains_key(tie);
        if is_new {
            self.photographs.insert(tie.clone(), None);
        }
        is_new
    }

    /// Takes in the photograph of a tie, or that it can't be shown.
    pub fn put(&mut self, tie: TieId, photograph: Option<Photograph>) {
        let handle = |one: Photograph| Handle::from_rgba(one.width, one.height, one.pixels);
        self.photographs.insert(tie, photograph.map(handle));
    }
}

impl Thumbnail {
    fn of(shelved: &Shelved) -> Self {
        let script = Script::new(shelved.tie.plan.clone(), AtOnce::default());
        let step = script.step(shelved.place);
        let mut picture = PictureView::default();
        picture.show(step.map(|step| Subject::of(&script, &step)));
        Self {
            tie: shelved.tie.id().clone(),
            place: shelved.place,
            picture,
        }
    }
}
