//! The form of the log: what was really used for a finished tie.

use iced::widget::{Id, button, column, operation, row, scrollable, text, text_input};
use iced::{Element, Fill, Padding, Task};

use super::{house, theme};
use crate::bench::{Cord, Millimetres};
use crate::pedal::{Intent, Press};
use crate::shelf::{Entry, MOST_MINUTES};
use crate::words::Words;

/// A part of the form, in the order of the Tab key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// A text: what the cord is called.
    CordName,
    /// A length: the cord's diameter.
    Cord,
    /// A length: cord that was cut.
    Cut,
    /// A length, or 0: cord left over.
    LeftOver,
    /// A length: what the knot sits on.
    Around,
    /// A length: the finished width.
    Width,
    /// Drawn up tight or left open.
    Drawn,
    /// A number.
    Minutes,
    /// A text.
    Note,
    /// A path.
    Photograph,
    /// The button that keeps it.
    Keep,
}

use Field::{
    Around, Cord as CordField, CordName, Cut, Drawn, Keep, LeftOver, Minutes, Note, Photograph,
    Width,
};

const FIELDS: [Field; 11] = [
    CordName, CordField, Cut, LeftOver, Around, Width, Drawn, Minutes, Note, Photograph, Keep,
];

/// What is typed.
pub struct State {
    entry: Entry,
    texts: [String; FIELDS.len()],
    focus: Field,
    complaint: Option<String>,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// A text of the form was changed.
    Typed(Field, String),
    /// The choice was switched over.
    Switched,
    /// It is to be kept.
    Keep,
}

/// What the parent has to do.
#[derive(Clone, Debug)]
pub enum Action {
    /// Nothing.
    None,
    /// Say this.
    Say(String),
    /// Say this and put the focus of the window on the field.
    Focus(Field, String),
    /// Keep the entry.
    Keep(Box<Entry>),
    /// Leave without keeping.
    Leave,
}

impl State {
    /// The form with what is known.
    pub fn new(entry: Entry) -> Self {
        let length = |length: Option<Millimetres>| {
            length.map_or_else(String::new, |length| length.to_string())
        };
        let number = |number: Option<f64>| {
            number.map_or_else(String::new, |number| (number.round()).to_string())
        };
        let cord = entry.cord.as_ref();
        let name = cord.and_then(|cord| cord.name.clone()).unwrap_or_default();
        let texts = FIELDS.map(|field| match field {
            CordName => name.clone(),
            CordField => length(cord.map(|cord| cord.diameter)),
            Cut => length(entry.cut),
            LeftOver => entry.left_over.map_or_else(String::new, |left| {
                format!("{} mm", (left * 100.0).round() / 100.0)
            }),
            Around => length(entry.around),
            Width => length(entry.width),
            Minutes => number(entry.minutes),
            Note => entry.note.clone(),
            Photograph => entry.photograph.clone(),
            Drawn | Keep => String::new(),
        });
        Self {
            entry,
            texts,
            focus: CordName,
            complaint: None,
        }
    }

    /// The field in the focus.
    pub const fn focus(&self) -> Field {
        self.focus
    }

    /// What is said when the screen appears.
    pub fn say(&self, words: &Words) -> String {
        format!(
            "{} {}",
            words.plainly("log-say", &[]),
            self.say_field(words)
        )
    }

    fn say_field(&self, words: &Words) -> String {
        let name = match (self.focus, self.entry.left_open) {
            (CordName, _) => "cord-name",
            (CordField, _) => "cord",
            (Cut, _) => "cut",
            (LeftOver, _) => "left-over",
            (Around, _) => "around",
            (Width, _) => "width",
            (Drawn, false) => "drawn-tight",
            (Drawn, true) => "drawn-open",
            (Minutes, _) => "minutes",
            (Note, _) => "note",
            (Photograph, _) => "photograph",
            (Keep, _) => "keep",
        };
        words.say_log_field(name, self.typed(self.focus))
    }

    fn typed(&self, field: Field) -> &str {
        self.texts.get(field as usize).map_or("", String::as_str)
    }

    /// Does what a message asks for.
    pub fn update(&mut self, message: Message, words: &Words) -> Action {
        match message {
            Message::Typed(field, typed) => {
                self.focus = field;
                self.complaint = None;
                if let Some(text) = self.texts.get_mut(field as usize) {
                    *text = typed;
                }
                Action::None
            }
            Message::Switched => {
                self.focus = Drawn;
                self.entry.left_open = !self.entry.left_open;
                Action::Say(self.say_field(words))
            }
            Message::Keep => self.keep(words),
        }
    }

    /// Does what a press asks for that no field took.
    pub fn press(&mut self, press: &Press, intent: Option<Intent>, words: &Words) -> Action {
        if press.is_repeat {
            return Action::None;
        }
        match press.key.as_str() {
            "Tab" | "ArrowDown" => self.move_focus(1, words),
            "Shift+Tab" | "ArrowUp" => self.move_focus(FIELDS.len() - 1, words),
            " " | "ArrowLeft" | "ArrowRight" if self.focus == Drawn => {
                self.update(Message::Switched, words)
            }
            "Enter" => self.keep(words),
            " " if self.focus == Keep => self.keep(words),
            _ if intent == Some(Intent::Leave) => Action::Leave,
            _ => Action::None,
        }
    }

    fn move_focus(&mut self, by: usize, words: &Words) -> Action {
        self.focus = FIELDS[(self.focus as usize + by) % FIELDS.len()];
        Action::Focus(self.focus, self.say_field(words))
    }

    fn keep(&mut self, words: &Words) -> Action {
        match self.read(words) {
            Ok(entry) => Action::Keep(Box::new(entry)),
            Err((field, sentence)) => {
                self.focus = field;
                self.complain(sentence.clone());
                Action::Focus(field, sentence)
            }
        }
    }

    /// Shows what is wrong.
    pub fn complain(&mut self, sentence: String) {
        self.complaint = Some(sentence);
    }

    /// The entry that the form describes, or the field that is wrong and why.
    fn read(&self, words: &Words) -> Result<Entry, (Field, String)> {
        let length = |field: Field| match self.typed(field).trim() {
            "" => Ok(None),
            typed => Millimetres::parse(typed)
                .map(Some)
                .map_err(|error| (field, words.log_length_error(&error))),
        };
        let name = self.typed(CordName).trim();
        let known = self.entry.cord.as_ref();
        let cord = length(CordField)?.map(|diameter| Cord {
            diameter,
            name: (!name.is_empty()).then(|| name.to_owned()),
            grams_per_metre: known.and_then(|cord| cord.grams_per_metre),
        });
        let cut = length(Cut)?;
        let left_over = match self.typed(LeftOver).trim() {
            "0" => Some(0.0),
            _ => length(LeftOver)?.map(Millimetres::get),
        };
        if let (Some(cut), Some(left)) = (cut, left_over)
            && left >= cut.get()
        {
            return Err((LeftOver, words.plainly("log-left-over-more", &[])));
        }
        let minutes = match self.typed(Minutes).trim() {
            "" => None,
            typed => match typed.replace(',', ".").parse() {
                Ok(minutes) if (0.0..=MOST_MINUTES).contains(&minutes) => Some(minutes),
                _ => return Err((Minutes, words.minutes_unreadable(typed))),
            },
        };
        Ok(Entry {
            cord,
            cut,
            left_over,
            around: length(Around)?,
            width: length(Width)?,
            minutes,
            note: self.typed(Note).trim().to_owned(),
            photograph: self.typed(Photograph).trim().to_owned(),
            ..self.entry.clone()
        })
    }

    /// The screen. `notices` stand above everything else.
    pub fn view<'a>(&'a self, words: &Words, notices: Vec<String>) -> Element<'a, Message> {
        let mut page = column![].spacing(12).padding(20);
        for notice in notices {
            page = page.push(house::notice(notice));
        }
        let heading = text(words.plainly("log-heading", &[]))
            .size(theme::HEADING)
            .font(theme::BOLD);
        page = page.push(heading);
        if let Some(complaint) = &self.complaint {
            page = page.push(house::notice(complaint.as_str()));
        }
        // Room for the bar that scrolls it.
        let mut form = column![].spacing(12).padding(Padding::ZERO.right(18));
        for pair in [
            [CordName, CordField],
            [Cut, LeftOver],
            [Around, Width],
            [Drawn, Minutes],
            [Note, Photograph],
        ] {
            form = form.push(row(pair.map(|field| self.field(field, words))).spacing(20));
        }
        form = form.push(house::quiet(words.plainly("log-hint", &[]), theme::SMALL));
        let keep = text(words.plainly("log-keep", &[]))
            .size(28)
            .font(theme::BOLD);
        form = form.push(
            button(keep)
                .padding([12, 24])
                .style(theme::pressable(self.focus == Keep))
                .on_press(Message::Keep),
        );
        page.push(scrollable(form).id(form_id()).width(Fill).height(Fill))
            .push(house::quiet(words.plainly("log-keys", &[]), theme::BODY))
            .into()
    }

    fn field<'a>(&'a self, field: Field, words: &Words) -> Element<'a, Message> {
        let label = text(words.plainly(label(field), &[])).size(theme::SMALL);
        let part: Element<'a, Message> = if field == Drawn {
            let value = if self.entry.left_open {
                "log-drawn-open"
            } else {
                "log-drawn-tight"
            };
            button(text(words.plainly(value, &[])).size(26).width(Fill))
                .padding(8)
                .style(theme::pressable(self.focus == Drawn))
                .on_press(Message::Switched)
                .into()
        } else {
            text_input("", self.typed(field))
                .id(id(field))
                .size(26)
                .padding(8)
                .style(theme::field)
                .on_input(move |typed| Message::Typed(field, typed))
                .on_submit(Message::Keep)
                .into()
        };
        column![label, part].spacing(4).width(Fill).into()
    }
}

const fn label(field: Field) -> &'static str {
    match field {
        CordName => "log-cord-name",
        CordField => "log-cord",
        Cut => "log-cut",
        LeftOver => "log-left-over",
        Around => "log-around",
        Width => "log-width",
        Drawn => "log-drawn",
        Minutes => "log-minutes",
        Note => "log-note",
        Photograph => "log-photograph",
        Keep => "log-keep",
    }
}

/// Puts the focus of the window on a field, and brings it into view.
pub fn focus<M: Send + 'static>(field: Field) -> Task<M> {
    #[expect(clippy::cast_precision_loss, reason = "a place on a scroll bar")]
    let share = field as usize as f32 / (FIELDS.len() - 1) as f32;
    Task::batch([
        // Focusing what takes no text leaves every text field unfocused.
        operation::focus(id(field)),
        operation::select_all(id(field)),
        operation::snap_to(form_id(), scrollable::RelativeOffset { x: 0.0, y: share }),
    ])
}

fn form_id() -> Id {
    Id::new("log-form")
}

/// The widget of a field.
fn id(field: Field) -> Id {
    Id::new(label(field))
}
