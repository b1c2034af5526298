//! The paper screen: what is to be made of a tie, where it goes, how far it is, and where it lies.

mod choosing;
mod making;
mod outcome;
mod placing;
mod view;

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;

use iced::widget::image::Handle;
use iced::{Element, Task};

use super::context::Context;
use super::route::{Go, Next, Route, TieOnPaper};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::off_thread::Number;
use crate::app::services::DialogError;
use crate::app::widgets;
use crate::paper::PaperKind;
use crate::pedal::{Intent, Press};
use crate::picture::Image;
use crate::picture::sheet::Paper;
use crate::session::Event;
use crate::words::{Sentence, Spoken, Units};
use making::Outcome;
use placing::focus;

/// What is chosen, and what is being done about it.
pub struct State {
    tie: TieOnPaper,
    chosen: usize,
    /// Of each of the four the place of its kind of file.
    forms: [usize; PaperKind::ALL.len()],
    paper: Paper,
    doing: Doing,
    /// Raised, what was begun ends.
    stop: Arc<AtomicBool>,
    /// The number of what was begun last: what comes of anything before it is of no interest.
    begun: Number,
    report: Option<Sentence>,
    /// What was made last.
    made: Option<PathBuf>,
    /// What the chosen one looks like, for the number of the look.
    glance: (Number, Option<Handle>),
}

/// What goes on.
enum Doing {
    /// It is chosen what to make.
    Choosing,
    /// The system asks where it goes.
    Asking,
    /// The path is typed; a file that is there was asked back.
    Typing {
        path: String,
        asked_back: Option<PathBuf>,
        wrong: Option<Sentence>,
    },
    /// It is made: so many of so many pages or frames, told last at this time.
    Making {
        file: PathBuf,
        done: u32,
        count: u32,
        told: Duration,
    },
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// One of the four was pointed at.
    Chosen(usize),
    /// A kind of file was pointed at.
    Formed(usize),
    /// A paper was pointed at.
    Papered(Paper),
    /// Where the file goes, as far as the system was told.
    Named(Number, Result<Option<PathBuf>, DialogError>),
    /// The path was changed.
    Typed(String),
    /// The path is as it is meant.
    Enter,
    /// What was made is to be opened once more.
    Open,
    /// So many of so many pages or frames are made.
    Progress(Number, u32, u32),
    /// It is made, or is not.
    Made(Number, Box<Outcome>),
    /// It is opened, or is not.
    Opened(Result<(), DialogError>),
    /// What the chosen one looks like.
    Glanced(Number, Option<Image>),
}

impl ScreenPage for State {
    type Message = Message;
    type Opening = Box<TieOnPaper>;

    /// A tie in hand waits behind the screen.
    fn open(tie: Box<TieOnPaper>, context: &mut Context) -> (Self, Task<Message>) {
        context.session.look_away();
        let words = context.words();
        let mut state = Self {
            tie: *tie,
            chosen: 0,
            forms: [0; PaperKind::ALL.len()],
            paper: match words.units() {
                Units::Metric => Paper::A4,
                Units::Inch => Paper::Letter,
            },
            doing: Doing::Choosing,
            stop: Arc::default(),
            begun: Number::draw(),
            report: None,
            made: None,
            glance: (Number::draw(), None),
        };
        context.say(&state.say_again(context));
        let look = state.look(context);
        (state, look)
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        match message {
            Message::Chosen(index) => return self.choose(index, context),
            Message::Formed(index) => return self.form_as(index, context),
            Message::Papered(paper) => return self.put_on(paper, context),
            Message::Typed(typed) => {
                if let Doing::Typing { path, wrong, .. } = &mut self.doing {
                    (*path, *wrong) = (typed, None);
                    context.typed();
                }
            }
            Message::Enter => return self.enter(context),
            Message::Open => return self.open_made(context),
            Message::Named(number, named) if number == self.begun => {
                return self.named(named, context);
            }
            Message::Progress(number, done, count) if number == self.begun => {
                self.progress(done, count, context);
            }
            Message::Made(number, outcome) => {
                let outcome = (*outcome).hand_on(&mut context.session);
                if number == self.begun {
                    return self.made(outcome, context);
                }
            }
            Message::Opened(Err(error)) => {
                ::log::warn!("nothing opens what was made: {error}");
                if let Some(file) = &self.made {
                    let file = file.display().to_string();
                    let sentence = context
                        .words()
                        .notice("paper-not-opened", &[("file", &file)]);
                    self.tell(sentence, context);
                }
            }
            Message::Glanced(number, image) if number == self.glance.0 => {
                let handle = |image: Image| {
                    Handle::from_rgba(image.width(), image.height(), image.pixels().to_vec())
                };
                self.glance.1 = image.filter(|image| image.width() > 0).map(handle);
            }
            Message::Named(..)
            | Message::Progress(..)
            | Message::Opened(Ok(()))
            | Message::Glanced(..) => {}
        }
        Next::default()
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        let key = press.key.to_lowercase();
        match (&self.doing, key.as_str(), intent) {
            (Doing::Choosing, "arrowdown" | "tab", _) => {
                self.choose((self.chosen + 1) % PaperKind::ALL.len(), context)
            }
            (Doing::Choosing, "arrowup" | "shift+tab", _) => {
                let before = self.chosen + PaperKind::ALL.len() - 1;
                self.choose(before % PaperKind::ALL.len(), context)
            }
            (Doing::Typing { path, .. }, key, intent) => {
                if let Some(typed) = widgets::typed_on(path, &press.key) {
                    // It comes here when the window has not put its own focus on the line.
                    let typed = self.update(Message::Typed(typed), context);
                    return Next::run(Task::batch([typed.task, focus()]));
                }
                match (key, intent) {
                    ("enter", _) if !press.is_repeat => self.enter(context),
                    (_, Some(Intent::Leave)) => self.call_off(context),
                    _ => Next::default(),
                }
            }
            (_, _, _) if press.is_repeat => Next::default(),
            (Doing::Choosing, "arrowright", _) => self.form_as(self.form_index() + 1, context),
            (Doing::Choosing, "arrowleft", _) => {
                let forms = self.kind().forms().len();
                self.form_as(self.form_index() + forms - 1, context)
            }
            (Doing::Choosing, "a", _) => {
                let other = match self.paper {
                    Paper::A4 => Paper::Letter,
                    Paper::Letter => Paper::A4,
                };
                self.put_on(other, context)
            }
            (Doing::Choosing, "o", _) => self.open_made(context),
            (Doing::Choosing, _, Some(Intent::Next)) => self.begin(context),
            (Doing::Choosing, _, Some(Intent::Leave)) => self.leave(),
            (Doing::Asking, _, Some(Intent::Next)) => {
                self.stop.store(true, Ordering::Relaxed);
                self.begun = Number::draw();
                self.type_path(None, context)
            }
            (Doing::Asking, _, Some(Intent::Leave)) => self.call_off(context),
            (Doing::Making { .. }, _, Some(Intent::Leave)) => self.stop_making(context),
            (_, _, Some(Intent::Again)) => {
                context.say(&self.say_again(context));
                Next::default()
            }
            _ => Next::default(),
        }
    }

    fn takes_text(&self) -> bool {
        matches!(self.doing, Doing::Typing { .. })
    }

    fn hear(&mut self, event: &Event, context: &mut Context) {
        if let (true, Doing::Typing { path, .. }) = (event.is_typing_at_rest(), &self.doing) {
            context.say(&context.words().say_typed(path));
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        let words = context.words();
        match &self.doing {
            Doing::Making { done, count, .. } => words.paper_progress(*done, *count).into(),
            Doing::Asking => words.notice("paper-asking", &[]).into(),
            Doing::Typing { .. } => words.notice("paper-path", &[]).into(),
            Doing::Choosing => {
                let how = Spoken::from(words.notice("paper-how", &[]));
                let report = self.report.clone().map(Spoken::from).unwrap_or_default();
                how.then(&report).then(&self.say_choice(words))
            }
        }
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        self.page(context.words())
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        match &self.doing {
            Doing::Typing { .. } => vec![
                KeyHint::enter("key-paper-make"),
                KeyHint::leave("key-leave-unchanged"),
            ],
            Doing::Asking => vec![
                KeyHint::next("key-paper-type"),
                KeyHint::again(),
                KeyHint::leave("key-leave-unchanged"),
            ],
            Doing::Making { .. } => vec![KeyHint::again(), KeyHint::leave("key-paper-stop")],
            Doing::Choosing => {
                let mut keys = vec![
                    KeyHint::next("key-paper-make"),
                    KeyHint::again(),
                    KeyHint::here("ArrowDown", "key-paper-below"),
                    KeyHint::here("ArrowUp", "key-paper-above"),
                    KeyHint::here("ArrowRight", "key-paper-form"),
                ];
                if self.kind().is_paper() {
                    keys.push(KeyHint::here("a", "key-paper-size"));
                }
                if self.made.is_some() {
                    keys.push(KeyHint::here("o", "key-paper-open"));
                }
                keys.push(KeyHint::leave("key-leave"));
                keys
            }
        }
    }

    /// A file on its way is stopped first, so that nothing is left half done.
    fn may_close(&mut self, context: &mut Context) -> bool {
        let was_stopped = self.stop.swap(true, Ordering::Relaxed);
        if was_stopped || !matches!(self.doing, Doing::Making { .. }) {
            return true;
        }
        let sentence = context.words().notice("paper-closing", &[]);
        self.tell(sentence, context);
        false
    }

    fn close(self, _: &mut Context) {
        self.stop.store(true, Ordering::Relaxed);
    }
}

impl State {
    fn leave(&mut self) -> Next<Message> {
        let back = std::mem::replace(&mut self.tie.back, Route::Start(()));
        Go::Back(back).into()
    }
}

/// The line in which the path is typed, and the list of the four.
const LINE: &str = "paper-line";
const LIST: &str = "paper-list";
