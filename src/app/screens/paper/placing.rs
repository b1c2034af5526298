//! Where what is made goes: asked by the system, or typed.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use iced::Task;
use iced::widget::operation;

use super::making;
use super::{Doing, LINE, Message, State};
use crate::app::off_thread::Number;
use crate::app::screens::context::Context;
use crate::app::screens::route::Next;
use crate::app::services::{DialogError, FileKind, SaveDialog};
use crate::paper::{FileForm, Overwrite, PaperKind, file_name};
use crate::session::as_path;
use crate::words::Words;

/// The folder that something was put into last.
pub(super) struct LastFolder(pub PathBuf);

impl State {
    /// Asks where it goes.
    pub(super) fn begin(&mut self, context: &mut Context) -> Next<Message> {
        let folder = folder(context);
        let words = context.words();
        if self.kind() == PaperKind::Strip && self.tie.plan.setup().is_none() {
            let sentence = words.notice("paper-no-tube", &[]);
            self.tell(sentence, context);
            return Next::default();
        }
        self.report = None;
        self.begun = Number::draw();
        self.stop = Arc::default();
        self.doing = Doing::Asking;
        let asking = words.notice("paper-asking", &[]);
        let form = self.form();
        let asked = SaveDialog {
            title: words.plainly("paper-dialog", &[("kind", self.called(self.kind()))]),
            name: self.file_name(words),
            folder,
            kind: FileKind {
                name: form.name().to_owned(),
                endings: match form {
                    FileForm::Pdf => &["pdf"],
                    FileForm::Png => &["png"],
                    FileForm::Gif => &["gif"],
                    FileForm::WebP => &["webp"],
                },
            },
        };
        context.say(asking.spoken());
        Next::run(making::ask(self.begun, asked, &self.stop, context))
    }

    /// The name that the file is proposed under.
    pub(super) fn file_name(&self, words: &Words) -> String {
        let tie = self.tie.name.trim();
        let line = words.tie_line(&self.tie.plan);
        let kind = words.plainly("paper-name", &[("kind", self.called(self.kind()))]);
        file_name(if tie.is_empty() { &line } else { tie }, &kind, self.form())
    }

    /// The system has told where it goes, or shows no window for that.
    pub(super) fn named(
        &mut self,
        named: Result<Option<PathBuf>, DialogError>,
        context: &mut Context,
    ) -> Next<Message> {
        match named {
            Ok(None) => self.call_off(context),
            Ok(Some(path)) => {
                let file = self.form().ended(&path);
                // The system has asked about the name that it gave, and about no other.
                let overwrite = if file == path {
                    Overwrite::Named
                } else {
                    Overwrite::Nothing
                };
                self.make(file, overwrite, context)
            }
            Err(error) => {
                ::log::warn!("{error}");
                self.type_path(None, context)
            }
        }
    }

    /// Has the path typed, as it was typed or proposed.
    pub(super) fn type_path(
        &mut self,
        before: Option<&Path>,
        context: &mut Context,
    ) -> Next<Message> {
        let path = before.map_or_else(
            || {
                let name = self.file_name(context.words());
                folder(context).unwrap_or_default().join(name)
            },
            Path::to_owned,
        );
        self.doing = Doing::Typing {
            path: path.display().to_string(),
            asked_back: None,
            wrong: None,
        };
        context.say(context.words().notice("paper-path", &[]).spoken());
        Next::run(focus())
    }

    /// The path is typed.
    pub(super) fn enter(&mut self, context: &mut Context) -> Next<Message> {
        let Doing::Typing {
            path,
            asked_back,
            wrong,
        } = &mut self.doing
        else {
            return Next::default();
        };
        if path.trim().is_empty() {
            let sentence = context.words().notice("paper-path-missing", &[]);
            context.say(sentence.spoken());
            *wrong = Some(sentence);
            return Next::default();
        }
        let (path, asked_back) = (as_path(path), asked_back.take());
        let file = self
            .form()
            .ended(&folder(context).unwrap_or_default().join(path));
        let overwrite = if asked_back.as_ref() == Some(&file) {
            Overwrite::All
        } else {
            Overwrite::Nothing
        };
        self.begun = Number::draw();
        self.stop = Arc::default();
        self.make(file, overwrite, context)
    }
}

/// Where a file goes when nothing is said: where the last one went, or the tyer's documents.
fn folder(context: &mut Context) -> Option<PathBuf> {
    if let Some(last) = context.fetch::<LastFolder>() {
        let folder = last.0.clone();
        context.put_by(*last);
        return Some(folder);
    }
    context.services.platform.documents.clone()
}

/// Puts the focus of the window on the line, behind what stands there.
pub(super) fn focus() -> Task<Message> {
    Task::batch([operation::focus(LINE), operation::move_cursor_to_end(LINE)])
}
