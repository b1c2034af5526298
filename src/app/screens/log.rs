//! The screen with the form of the log.

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use iced::widget::{
    Id, button, column, container, mouse_area, operation, responsive, row, scrollable, text,
    text_input,
};
use iced::{Center, Element, Fill, Padding, Task};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::off_thread::{Number, off_thread};
use crate::app::services::{DialogError, FileKind, OpenDialog};
use crate::app::{theme, widgets};
use crate::logging::opens_under_wayland;
use crate::pedal::{Intent, Press};
use crate::session::{Event, LogAction, LogField, LogForm, NotLogged, keep_entry};
use crate::shelf::{Entry, ShelfReading};
use crate::words::{Spoken, Words};

use LogField::{
    Around, Cord as CordField, CordName, Cut, Drawn, Keep, LeftOver, Minutes, Note, Photograph,
    Width,
};

/// The form, and whether the tie that it is for is in hand; it can be on the shelf too.
pub struct State {
    form: LogForm,
    is_in_hand: bool,
    /// Raised, the window of the system of this number, in which the photograph is chosen goes; none while there is
    /// no such window.
    choosing: Option<(Number, Arc<AtomicBool>)>,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// A text of the form was changed.
    Typed(LogField, String),
    /// A field was clicked or touched.
    Pointed(LogField),
    /// The choice was switched over.
    Switched,
    /// The photograph is to be chosen in a window of the system.
    Choose,
    /// It is chosen, or is not.
    Photographed(Number, Result<Option<PathBuf>, DialogError>),
    /// It is to be kept.
    Keep,
    /// It is kept, or is not.
    Kept(Result<ShelfReading<()>, NotLogged>),
}

impl ScreenPage for State {
    type Message = Message;
    type Opening = Box<Entry>;

    /// A tie in hand waits behind the form.
    fn open(entry: Box<Entry>, context: &mut Context) -> (Self, Task<Message>) {
        let state = Self {
            form: LogForm::new(*entry),
            is_in_hand: context.session.tie().is_some(),
            choosing: None,
        };
        context.session.look_away();
        context.say(&state.form.say(context.words()));
        let focus = focus(state.form.focus());
        (state, focus)
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        let action = match message {
            Message::Typed(field, typed) => {
                self.form.type_in(field, typed);
                context.typed();
                LogAction::None
            }
            Message::Pointed(field) => self.form.point_at(field, context.words()),
            Message::Switched => self.form.switch(context.words()),
            Message::Choose => return self.choose(context),
            Message::Photographed(number, chosen) => {
                let asked = self.choosing.as_ref().map(|(asked, _)| *asked);
                if asked == Some(number) {
                    return self.photographed(chosen, context);
                }
                LogAction::None
            }
            Message::Keep => self.form.keep(context.words()),
            Message::Kept(result) => return self.kept(result, context),
        };
        Self::follow(action, context)
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        if press.key == "F2" && !press.is_repeat {
            return self.choose(context);
        }
        if let Some(next) = self.type_on(&press.key) {
            context.typed();
            return next;
        }
        let action = self.form.press(press, intent, context.words());
        Self::follow(action, context)
    }

    /// What is typed and not kept is asked back once, as when the form is left.
    fn may_close(&mut self, context: &mut Context) -> bool {
        match self.form.leave(context.words()) {
            LogAction::Say(asks) => {
                context.say(&asks);
                false
            }
            _ => true,
        }
    }

    /// It is the photograph of the tie; whether it can be shown is found out when it is kept.
    fn dropped(&mut self, file: PathBuf, context: &mut Context) -> Next<Message> {
        let file = file.display().to_string();
        let words = context.words();
        context.say(&words.say_log_field("photograph", &file));
        self.form.type_in(Photograph, file);
        Next::run(focus(Photograph))
    }

    fn takes_text(&self) -> bool {
        true
    }

    fn hear(&mut self, event: &Event, context: &mut Context) {
        if event.is_typing_at_rest() {
            context.say(&self.form.say_field(context.words()));
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        self.form.say(context.words())
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let words = context.words();
        let mut page = widgets::page(12);
        let heading = text(words.plainly("log-heading", &[]))
            .size(theme::HEADING)
            .font(theme::BOLD);
        page = page.push(heading);
        // All of it is in sight where it is low too: three fields beside one another, closer together.
        let form = responsive(move |room| {
            let is_low = room.height < LOW && room.width >= WIDE;
            let (beside, gap) = if is_low { (3, 4) } else { (2, 12) };
            let hint = |size: f32| widgets::quiet(words.plainly("log-hint", &[]), size);
            // Room for the bar that scrolls it.
            let mut form = column![].spacing(gap).padding(Padding::ZERO.right(18));
            for fields in FIELDS.chunks(beside) {
                // The last one has all of the width that is left, but where it is low: there it leaves room
                // for what is allowed.
                let beside = (is_low && fields.len() < beside).then(|| {
                    let hint = container(hint(LOW_LABEL)).width(Fill);
                    hint.padding(Padding::ZERO.top(LOW_LABEL))
                });
                let fields = fields.iter();
                let fields = fields.map(|field| self.field(*field, is_low, words));
                form = form.push(row(fields).push(beside).spacing(20));
            }
            let below = (!is_low).then(|| hint(theme::SMALL));
            scrollable(form.push(below))
                .id(FORM)
                .width(Fill)
                .height(Fill)
                .into()
        });
        // What is asked before it is left stands where nothing scrolls it away.
        page.push(form).push(self.wrong_at(Keep)).into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        vec![
            KeyHint::enter("key-keep"),
            KeyHint::here("Tab", "key-next-field"),
            KeyHint::here("Shift+Tab", "key-field-before"),
            KeyHint::here("F2", "key-photograph"),
            KeyHint::leave("key-leave"),
        ]
    }

    fn close(self, _: &mut Context) {
        if let Some((_, choosing)) = self.choosing {
            choosing.store(true, Ordering::Relaxed);
        }
    }
}

impl State {
    fn follow(action: LogAction, context: &Context) -> Next<Message> {
        match action {
            LogAction::None => Next::default(),
            LogAction::Say(text) => {
                context.say(&text);
                Next::default()
            }
            LogAction::Focus(field, text) => {
                context.say(&text);
                Next::run(focus(field))
            }
            LogAction::Keep(entry) => match context.services.shelf.clone() {
                Some(shelf) => Next::run(off_thread(move || {
                    Message::Kept(keep_entry(&shelf, &entry))
                })),
                None => Next::default(),
            },
            LogAction::Leave => Go::Back(Route::Shelf(())).into(),
        }
    }

    /// A tie in hand is done with once it is logged; from the shelf it goes back there.
    fn kept(
        &mut self,
        result: Result<ShelfReading<()>, NotLogged>,
        context: &mut Context,
    ) -> Next<Message> {
        let sentence = match result {
            Ok(kept) => {
                kept.hand_on(&mut context.session);
                let kept = context.words().notice("log-kept", &[]);
                context.session.good_news(kept);
                return if self.is_in_hand {
                    Go::start().into()
                } else {
                    Go::To(Route::Shelf(())).into()
                };
            }
            Err(fault) => fault.sentence(context.words()),
        };
        context.say(sentence.spoken());
        self.form.complain(sentence);
        Next::default()
    }

    /// Has the photograph chosen in a window of the system; one at a time.
    fn choose(&mut self, context: &Context) -> Next<Message> {
        if self.choosing.is_some() {
            return Next::default();
        }
        let words = context.words();
        let asked = OpenDialog {
            title: words.plainly("key-photograph", &[]),
            kind: FileKind {
                name: "JPEG, PNG, WebP".to_owned(),
                endings: &["jpg", "jpeg", "png", "webp"],
            },
        };
        let stop = Arc::<AtomicBool>::default();
        let number = Number::draw();
        self.choosing = Some((number, Arc::clone(&stop)));
        let dialogs = Arc::clone(&context.services.platform.dialogs);
        Next::run(off_thread(move || {
            Message::Photographed(number, dialogs.open(&asked, &stop))
        }))
    }

    /// What came of that. Where the system has no such window, the path is typed.
    fn photographed(
        &mut self,
        chosen: Result<Option<PathBuf>, DialogError>,
        context: &mut Context,
    ) -> Next<Message> {
        self.choosing = None;
        match chosen {
            Ok(Some(file)) => self.dropped(file, context),
            Ok(None) => Next::default(),
            Err(error) => {
                ::log::warn!("{error}");
                // No file can be dropped on a window of the library under Wayland.
                let asks = if opens_under_wayland() {
                    "log-photograph-typed"
                } else {
                    "log-photograph-typed-or-dropped"
                };
                let sentence = context.words().notice(asks, &[]);
                context.say(sentence.spoken());
                self.form.complain_at(Photograph, sentence);
                Next::run(focus(Photograph))
            }
        }
    }

    fn field<'a>(&'a self, field: LogField, is_low: bool, words: &Words) -> Element<'a, Message> {
        let (size, inside) = if is_low { (20, 9) } else { (26, 8) };
        let of_label = if is_low { LOW_LABEL } else { theme::SMALL };
        let label = text(words.plainly(field.label(), &[])).size(of_label);
        let part: Element<'a, Message> = if field == Drawn {
            let value = if self.form.is_left_open() {
                "log-drawn-open"
            } else {
                "log-drawn-tight"
            };
            button(text(words.plainly(value, &[])).size(size).width(Fill))
                .padding(inside)
                .style(theme::pressable(self.form.focus() == Drawn))
                .on_press(Message::Switched)
                .into()
        } else {
            let input = text_input("", self.form.typed(field))
                .id(id(field))
                .size(size)
                .padding(inside)
                .style(theme::field)
                .on_input(move |typed| Message::Typed(field, typed))
                .on_submit(Message::Keep);
            let input = mouse_area(input).on_release(Message::Pointed(field));
            if field == Photograph {
                let choose = text(words.plainly("log-photograph-choose", &[])).size(theme::SMALL);
                let choose = button(container(choose).center_y(Fill))
                    .height(BUTTON)
                    .padding([0, 14])
                    .style(theme::pressable(false))
                    .on_press(Message::Choose);
                row![input, container(choose).id(CHOOSE)]
                    .spacing(8)
                    .align_y(Center)
                    .into()
            } else {
                input.into()
            }
        };
        column![label, part, self.wrong_at(field)]
            .spacing(if is_low { 1 } else { 4 })
            .width(Fill)
            .into()
    }

    /// What is wrong with a field, below it. Its place is there whether anything is wrong or not: the
    /// field above it keeps the focus.
    fn wrong_at(&self, field: LogField) -> Element<'_, Message> {
        let wrong = self.form.complaint().filter(|(at, _)| *at == field);
        widgets::wrong(wrong.map(|(_, sentence)| sentence.to_owned()))
    }

    /// Types a letter into the field in turn, or takes one back. It comes here when the window has
    /// not put its own focus there, and must not be lost.
    fn type_on(&mut self, key: &str) -> Option<Next<Message>> {
        let field = self.form.focus();
        if matches!(field, Drawn | Keep) {
            return None;
        }
        let typed = widgets::typed_on(self.form.typed(field), key)?;
        self.form.type_in(field, typed);
        Some(Next::run(Task::batch([
            operation::focus(id(field)),
            operation::move_cursor_to_end(id(field)),
        ])))
    }
}

/// Puts the focus of the window on a field, and brings it into view.
fn focus(field: LogField) -> Task<Message> {
    Task::batch([
        // Focusing what takes no text leaves every text field unfocused.
        operation::focus(id(field)),
        operation::select_all(id(field)),
        widgets::bring_field_into_view(FORM, &LogField::ALL, &field),
    ])
}

/// The fields as they stand, from the left.
const FIELDS: [LogField; 10] = [
    CordName, CordField, Cut, LeftOver, Around, Width, Drawn, Minutes, Note, Photograph,
];

/// In less height than this, and no less width, three fields stand beside one another.
const LOW: f32 = 480.0;
const WIDE: f32 = 700.0;
/// The letters of their names there.
const LOW_LABEL: f32 = 16.0;

/// Height of a button: a finger needs 44 pixels (WCAG 2.2, success criterion 2.5.5).
const BUTTON: f32 = 46.0;

/// The button with which the photograph is chosen.
const CHOOSE: &str = "log-choose";

/// The widget that the form is scrolled in.
const FORM: &str = "log-form";

/// The widget of a field.
fn id(field: LogField) -> Id {
    Id::new(field.label())
}
