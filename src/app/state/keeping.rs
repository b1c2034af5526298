//! What the app does about the shelf screen and the log.

use iced::Task;
use iced::widget::operation;

use super::{App, Bench, Message, Screen};
use crate::app::shelf_jobs::{self, Job, NotLogged, Report};
use crate::app::{desk, log, shelf};
use crate::pedal::{Intent, Press};
use crate::shelf::{Entry, ShelfError, Tie, TieId};

/// What happens about the shelf screen and the log.
#[derive(Debug)]
pub enum Keeping {
    /// On the shelf screen.
    Shelf(shelf::Message),
    /// In the form of the log.
    Log(log::Message),
    /// A job was done.
    Done(Box<Report>),
    /// The form can appear with this.
    ToLog(Box<Result<Entry, ShelfError>>),
    /// The entry is kept, or is not.
    Logged(Result<(), NotLogged>),
}

/// The form, and the tie in hand that it belongs to; none when it came from the shelf.
pub(in crate::app) struct Desktop {
    pub(super) form: log::State,
    pub(super) bench: Option<Box<Bench>>,
}

impl App {
    /// Goes to the shelf screen.
    pub(super) fn open_shelf(&mut self) -> Task<Message> {
        self.screen = Screen::Shelf(shelf::State::default());
        self.do_job(Job::Look)
    }

    fn do_job(&self, job: Job) -> Task<Message> {
        let keeper = self.desk.keeper.clone();
        match self.desk.shelf.clone() {
            Some(shelf) => Task::future(async move {
                let report = shelf_jobs::do_job(&shelf, keeper.as_deref(), desk::LAST_SAVE, job);
                Message::Keeping(Keeping::Done(Box::new(report)))
            }),
            None => Task::none(),
        }
    }

    /// Takes a tie up; the second press in a row for one that is open elsewhere is to look.
    pub(super) fn take_up(&self, id: TieId) -> Task<Message> {
        let may_look = self.refused.as_ref() == Some(&id);
        match self.desk.shelf.clone() {
            Some(shelf) => Task::future(async move {
                let taken = desk::take_up(&shelf, &id, may_look);
                Message::InHand(Box::new(taken), true)
            }),
            None => Task::none(),
        }
    }

    /// Takes in what happened.
    pub(super) fn keeping(&mut self, message: Keeping) -> Task<Message> {
        match (message, &mut self.screen) {
            (Keeping::Shelf(message), Screen::Shelf(shelf)) => {
                let action = shelf.update(message, &self.words);
                self.follow_shelf(action)
            }
            (Keeping::Log(message), Screen::Log(desktop)) => {
                let action = desktop.form.update(message, &self.words);
                self.follow_log(action)
            }
            (Keeping::Done(report), Screen::Shelf(shelf)) => {
                let say = match shelf.take_in(*report, &self.words) {
                    Ok(say) => {
                        self.notices.shelf(shelf.troubles());
                        let notices = self.notices.sentences(&self.words).join(" ");
                        format!("{notices} {say}")
                    }
                    Err(error) => self.notices.refused(&error, &self.words),
                };
                self.desk.voice.say(say.trim());
                shelf.scroll()
            }
            (Keeping::ToLog(entry), _) => self.show_form(*entry),
            (Keeping::Logged(result), Screen::Log(_)) => self.logged(result),
            _ => Task::none(),
        }
    }

    /// A press on the shelf screen or in the form.
    pub(in crate::app) fn press_keeping(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
    ) -> Task<Message> {
        match &mut self.screen {
            Screen::Shelf(shelf) => {
                let action = shelf.press(press, intent, &self.words);
                self.follow_shelf(action)
            }
            Screen::Log(desktop) => {
                let action = desktop.form.press(press, intent, &self.words);
                self.follow_log(action)
            }
            _ => Task::none(),
        }
    }

    fn follow_shelf(&mut self, action: shelf::Action) -> Task<Message> {
        match action {
            shelf::Action::None => Task::none(),
            shelf::Action::Say(text) => {
                self.desk.voice.say(&text);
                match &self.screen {
                    Screen::Shelf(shelf) => shelf.scroll(),
                    _ => Task::none(),
                }
            }
            shelf::Action::Ask(text) => {
                self.desk.voice.say(&text);
                Task::batch([
                    operation::focus(shelf::line()),
                    operation::move_cursor_to_end(shelf::line()),
                ])
            }
            shelf::Action::Do(job) => self.do_job(job),
            shelf::Action::TakeUp(id) => self.take_up(id),
            shelf::Action::Log(tie) => self.open_form(*tie),
            shelf::Action::Leave => self.leave(),
        }
    }

    /// Goes to the form of the log for a tie.
    pub(in crate::app) fn open_form(&self, tie: Tie) -> Task<Message> {
        match self.desk.shelf.clone() {
            Some(shelf) => Task::future(async move {
                let entry = shelf_jobs::to_be_logged(&shelf, &tie);
                Message::Keeping(Keeping::ToLog(Box::new(entry)))
            }),
            None => Task::none(),
        }
    }

    fn show_form(&mut self, entry: Result<Entry, ShelfError>) -> Task<Message> {
        let entry = match entry {
            Ok(entry) => entry,
            Err(error) => {
                let sentence = self.notices.refused(&error, &self.words);
                self.desk.voice.say(&sentence);
                return Task::none();
            }
        };
        let before = std::mem::replace(&mut self.screen, Screen::Shelf(shelf::State::default()));
        let bench = match before {
            Screen::Tying(bench) => Some(bench),
            Screen::Shelf(_) => None,
            // The tyer has gone elsewhere meanwhile.
            before => {
                self.screen = before;
                return Task::none();
            }
        };
        let form = log::State::new(entry);
        self.desk.voice.say(&form.say(&self.words));
        let focus = log::focus(form.focus());
        self.screen = Screen::Log(Box::new(Desktop { form, bench }));
        focus
    }

    fn follow_log(&mut self, action: log::Action) -> Task<Message> {
        match action {
            log::Action::None => Task::none(),
            log::Action::Say(text) => {
                self.desk.voice.say(&text);
                Task::none()
            }
            log::Action::Focus(field, text) => {
                self.desk.voice.say(&text);
                log::focus(field)
            }
            log::Action::Keep(entry) => match self.desk.shelf.clone() {
                Some(shelf) => Task::future(async move {
                    Message::Keeping(Keeping::Logged(shelf_jobs::log(&shelf, &entry)))
                }),
                None => Task::none(),
            },
            log::Action::Leave => self.leave_form(),
        }
    }

    /// Back to where the form was opened.
    fn leave_form(&mut self) -> Task<Message> {
        let before = std::mem::replace(&mut self.screen, Screen::Shelf(shelf::State::default()));
        match before {
            Screen::Log(desktop) => match desktop.bench {
                Some(bench) => {
                    self.desk.voice.say(bench.tying.say());
                    self.screen = Screen::Tying(bench);
                    self.bench_changed();
                    Task::none()
                }
                None => self.do_job(Job::Look),
            },
            before => {
                self.screen = before;
                Task::none()
            }
        }
    }

    fn logged(&mut self, result: Result<(), NotLogged>) -> Task<Message> {
        let Screen::Log(desktop) = &mut self.screen else {
            return Task::none();
        };
        let reason = match result {
            Ok(()) => {
                self.notices.tell(self.words.plainly("log-kept", &[]));
                return self.after_form();
            }
            Err(NotLogged::NoPhotograph(file)) => {
                self.words.plainly("log-no-photograph", &[("file", &file)])
            }
            Err(NotLogged::Shelf(error)) => {
                let reason = self.words.shelf_error(&error);
                self.words.plainly("log-not-kept", &[("reason", &reason)])
            }
        };
        self.desk.voice.say(&reason);
        desktop.form.complain(reason);
        Task::none()
    }

    /// A tie in hand is done with; from the shelf it goes back there.
    fn after_form(&mut self) -> Task<Message> {
        let was_in_hand = matches!(&self.screen, Screen::Log(desktop) if desktop.bench.is_some());
        if was_in_hand {
            self.leave()
        } else {
            self.open_shelf()
        }
    }
}
