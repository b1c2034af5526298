//! The making of it, and what comes of that.

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::time::Duration;

use super::making;
use super::placing::LastFolder;
use super::{Doing, Message, State};
use crate::app::off_thread::Number;
use crate::app::screens::context::Context;
use crate::app::screens::route::Next;
use crate::paper::{Overwrite, PaperError, TooLong};
use crate::words::{Sentence, Words};

/// How long it is silent while something is made.
const SILENCE: Duration = Duration::from_secs(10);

impl State {
    /// Has it made.
    pub(super) fn make(
        &mut self,
        file: PathBuf,
        overwrite: Overwrite,
        context: &mut Context,
    ) -> Next<Message> {
        let making = context
            .words()
            .notice("paper-making", &[("kind", self.called(self.kind()))]);
        context.say(making.spoken());
        self.doing = Doing::Making {
            file: file.clone(),
            done: 0,
            count: 0,
            told: context.now(),
        };
        let (number, order) = (self.begun, self.order(context));
        let made = making::make(number, order, file, overwrite, &self.stop, context);
        Next::run(made)
    }

    /// Takes in how far it is, and says so now and then.
    pub(super) fn progress(&mut self, now_done: u32, of: u32, context: &Context) {
        if let Doing::Making {
            done, count, told, ..
        } = &mut self.doing
        {
            (*done, *count) = (now_done, of);
            let now = context.now();
            if now.saturating_sub(*told) >= SILENCE {
                *told = now;
                context.say(context.words().paper_progress(now_done, of).spoken());
            }
        }
    }

    /// Takes in that it is made, or why it is not.
    pub(super) fn made(
        &mut self,
        outcome: Result<Vec<PathBuf>, Arc<PaperError>>,
        context: &mut Context,
    ) -> Next<Message> {
        let doing = std::mem::replace(&mut self.doing, Doing::Choosing);
        let words = context.words();
        let error = match outcome {
            Ok(files) => {
                let Some(file) = files.first() else {
                    return Next::default();
                };
                let sentence = words.paper_made(self.called(self.kind()), file, files.len());
                self.tell(sentence, context);
                self.made = Some(file.clone());
                if let Some(folder) = file.parent() {
                    context.put_by(LastFolder(folder.to_owned()));
                }
                return Next::run(making::show(file, context));
            }
            Err(error) => error,
        };
        ::log::warn!("nothing made: {error}");
        let sentence = sentence(&error, words);
        // What was typed stands there again, to be mended or meant.
        if let (Doing::Making { file, .. }, PaperError::Exists(_) | PaperError::Unwritable { .. }) =
            (doing, &*error)
        {
            let asked_back = matches!(*error, PaperError::Exists(_)).then(|| file.clone());
            let next = self.type_path(Some(&file), context);
            context.say(sentence.spoken());
            self.doing = Doing::Typing {
                path: file.display().to_string(),
                asked_back,
                wrong: Some(sentence),
            };
            return next;
        }
        self.tell(sentence, context);
        Next::default()
    }

    /// Back to choosing, with nothing made.
    pub(super) fn call_off(&mut self, context: &mut Context) -> Next<Message> {
        self.turn_from_it("paper-called-off", context)
    }

    /// Stops what is being made. A disk that hangs does not hear of it: asked once more, it is left
    /// to itself.
    pub(super) fn stop_making(&mut self, context: &mut Context) -> Next<Message> {
        if self.stop.swap(true, Ordering::Relaxed) {
            return self.turn_from_it("paper-left-alone", context);
        }
        let sentence = context.words().notice("paper-stopping", &[]);
        self.tell(sentence, context);
        Next::default()
    }

    /// Back to choosing; whatever still comes of what was begun is of no interest.
    fn turn_from_it(&mut self, why: &'static str, context: &mut Context) -> Next<Message> {
        self.stop.store(true, Ordering::Relaxed);
        self.begun = Number::draw();
        self.doing = Doing::Choosing;
        let sentence = context.words().notice(why, &[]);
        self.tell(sentence, context);
        Next::default()
    }

    /// Opens what was made last.
    pub(super) fn open_made(&self, context: &Context) -> Next<Message> {
        match &self.made {
            Some(file) => Next::run(making::show(file, context)),
            None => Next::default(),
        }
    }
}

/// Why it was not made, in the words of the window.
fn sentence(error: &PaperError, words: &Words) -> Sentence {
    match error {
        PaperError::Long { what, most } => {
            let what = match what {
                TooLong::Card | TooLong::Class => "card",
                TooLong::Strip => "strip",
                TooLong::Reel => "reel",
            };
            words.paper_long(what, *most)
        }
        PaperError::NoTube => words.notice("paper-no-tube", &[]),
        PaperError::Exists(file) => {
            words.notice("paper-exists", &[("file", &file.to_string_lossy())])
        }
        PaperError::Unwritable { file, fault } => {
            PaperError::unwritable(&file.to_string_lossy(), fault, words)
        }
        PaperError::Stopped {
            done,
            count,
            is_one_file,
        } => words.sheet_stopped(*done, *count, *is_one_file),
        PaperError::Refused(_) => words.notice("sheet-failed", &[]),
    }
}
