//! The shelf while nothing lies there: the first tie, and how to begin it.

use iced::widget::{column, container, responsive, row, text};
use iced::{Element, Fill};

use super::super::context::Context;
use super::super::route::{Go, Next};
use super::{Message, State};
use crate::app::{theme, widgets};
use crate::picture::Subject;
use crate::session::first_tie;
use crate::words::Words;

/// Between the words and the picture.
const GAP: f32 = 24.0;
/// The part of the width that the words have beside it.
const SHARE: f32 = 0.58;

impl State {
    /// Shows what the first tie comes to.
    pub(super) fn show_first(&mut self) {
        let first = first_tie().ok();
        self.first
            .show(first.map(|tie| Subject::finished(&tie.plan)));
    }

    /// Begins it.
    pub(super) fn begin_first(context: &Context) -> Next<Message> {
        match first_tie() {
            Ok(tie) => Go::Begin(Box::new(tie)).into(),
            Err(error) => {
                context.say(context.words().knot_error(&error).spoken());
                Next::default()
            }
        }
    }

    /// What could lie there, in the place of the list.
    pub(super) fn empty<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        responsive(move |room| {
            let begin = widgets::first_tie(Message::First, words);
            let told = column![
                text(words.plainly("shelf-empty", &[])).size(theme::BODY),
                container(begin).id("shelf-first"),
            ];
            let told = told.spacing(18);
            let picture = container(self.first.view()).width(Fill).height(Fill);
            if room.height > room.width {
                return column![told, picture].spacing(GAP).into();
            }
            let told = container(told).width(room.width * SHARE);
            row![told, picture].spacing(GAP).into()
        })
        .into()
    }
}
