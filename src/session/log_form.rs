//! The form of the log: what was really used for a finished tie.

use crate::bench::{Cord, Give, Millimetres};
use crate::pedal::{Intent, Press};
use crate::shelf::{
    Entry, LONGEST_NAME, LONGEST_NOTE, MOST_MINUTES, MeasureKind, WildMeasure, cut_to,
};
use crate::words::{Remark, Sentence, Spoken, Words};

/// A part of the form, in the order of the Tab key.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{LogField, LogForm, new_tie};
/// use marlinspeak::shelf::Entry;
/// use marlinspeak::words::Words;
///
/// let words = Words::english();
/// let tie = new_tie(&Plan::read("3", "5", "2", "").unwrap());
/// let mut form = LogForm::new(Entry::of(&tie));
/// assert_eq!(form.focus(), LogField::CordName, "the first in the order of the Tab key");
/// // What cannot be read leads back to its field, and the complaint stands there.
/// form.type_in(LogField::Cut, "two arms".to_owned());
/// form.keep(&words);
/// assert_eq!(form.focus(), LogField::Cut);
/// assert!(form.complaint().is_some_and(|(field, _)| field == LogField::Cut));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LogField {
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

use LogField::{
    Around, Cord as CordField, CordName, Cut, Drawn, Keep, LeftOver, Minutes, Note, Photograph,
    Width,
};

const FIELDS: [LogField; 11] = [
    CordName, CordField, Cut, LeftOver, Around, Width, Drawn, Minutes, Note, Photograph, Keep,
];

impl LogField {
    /// All of them.
    pub const ALL: [Self; 11] = FIELDS;

    /// So many letters may be typed there.
    const fn most_letters(self) -> usize {
        match self {
            Note | Photograph => LONGEST_NOTE,
            _ => LONGEST_NAME,
        }
    }

    /// The message that names it.
    pub const fn label(self) -> &'static str {
        match self {
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
}

/// What is typed, and what was known before.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{LogAction, LogField, LogForm, new_tie};
/// use marlinspeak::shelf::Entry;
/// use marlinspeak::words::Words;
///
/// let tie = new_tie(&Plan::read("5", "7", "2", "1").unwrap());
/// let (mut form, words) = (LogForm::new(Entry::of(&tie)), Words::english());
/// form.type_in(LogField::Cut, "2,6 m".to_owned());
/// let LogAction::Keep(entry) = form.keep(&words) else {
///     panic!("{:?}", form.complaint());
/// };
/// assert_eq!(entry.cut.map(|cut| cut.get()), Some(2600.0));
/// ```
pub struct LogForm {
    entry: Entry,
    texts: [String; FIELDS.len()],
    /// As it was before anything was typed.
    begun_with: ([String; FIELDS.len()], bool),
    focus: LogField,
    /// What is wrong, and at which field.
    complaint: Option<(LogField, Sentence)>,
    /// It was asked whether to leave what was typed.
    is_leaving: bool,
    /// What was asked back once: kept as it is the next time.
    asked_back: Vec<WildMeasure>,
}

/// What a press in the form comes to.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{LogAction, LogField, LogForm, new_tie};
/// use marlinspeak::shelf::Entry;
/// use marlinspeak::words::Words;
///
/// let words = Words::english();
/// let tie = new_tie(&Plan::read("3", "5", "2", "").unwrap());
/// let mut form = LogForm::new(Entry::of(&tie));
/// form.type_in(LogField::Note, "for the bell".to_owned());
/// // What was typed is not thrown away by one press: it is asked first.
/// assert!(matches!(form.leave(&words), LogAction::Say(_)));
/// assert!(matches!(form.leave(&words), LogAction::Leave));
/// ```
#[derive(Clone, Debug)]
pub enum LogAction {
    /// Nothing.
    None,
    /// Say this.
    Say(Spoken),
    /// The focus is on this field: say this.
    Focus(LogField, Spoken),
    /// Keep the entry.
    Keep(Box<Entry>),
    /// Leave without keeping.
    Leave,
}

impl LogForm {
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
            Around => length(entry.around.map(|ground| ground.thickest())),
            Width => length(entry.width),
            Minutes => number(entry.minutes),
            Note => entry.note.clone(),
            Photograph => entry.photograph.clone(),
            Drawn | Keep => String::new(),
        });
        // A text of any length would have the window wait.
        let texts = FIELDS.map(|field| {
            let mut text = texts.get(field as usize).cloned().unwrap_or_default();
            cut_to(&mut text, field.most_letters());
            text
        });
        Self {
            begun_with: (texts.clone(), entry.left_open),
            entry,
            texts,
            focus: CordName,
            complaint: None,
            is_leaving: false,
            asked_back: Vec::new(),
        }
    }

    /// The field in the focus.
    pub const fn focus(&self) -> LogField {
        self.focus
    }

    /// What is said when the form appears.
    pub fn say(&self, words: &Words) -> Spoken {
        words.remark(Remark::LogSay).then(&self.say_field(words))
    }

    /// The field in the focus, as it is said.
    pub fn say_field(&self, words: &Words) -> Spoken {
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

    /// The text of a field.
    pub fn typed(&self, field: LogField) -> &str {
        self.texts.get(field as usize).map_or("", String::as_str)
    }

    /// The text of a field was changed.
    pub fn type_in(&mut self, field: LogField, typed: String) {
        self.focus = field;
        self.complaint = None;
        self.is_leaving = false;
        if let Some(text) = self.texts.get_mut(field as usize) {
            *text = typed;
            cut_to(text, field.most_letters());
        }
    }

    /// Switches between drawn up tight and left open.
    pub fn switch(&mut self, words: &Words) -> LogAction {
        self.focus = Drawn;
        self.entry.left_open = !self.entry.left_open;
        LogAction::Say(self.say_field(words))
    }

    /// Whether it was left open.
    pub const fn is_left_open(&self) -> bool {
        self.entry.left_open
    }

    /// Puts the focus on a field that was pointed at; nothing for the one that has it.
    pub fn point_at(&mut self, field: LogField, words: &Words) -> LogAction {
        if self.focus == field {
            return LogAction::None;
        }
        self.focus = field;
        LogAction::Focus(field, self.say_field(words))
    }

    /// What is wrong, to stand at its field until something is typed.
    pub fn complaint(&self) -> Option<(LogField, &str)> {
        let complaint = self.complaint.as_ref();
        complaint.map(|(field, sentence)| (*field, sentence.shown()))
    }

    /// Does what a press asks for that no field took.
    pub fn press(&mut self, press: &Press, intent: Option<Intent>, words: &Words) -> LogAction {
        if press.is_repeat {
            return LogAction::None;
        }
        match press.key.as_str() {
            "Tab" | "ArrowDown" => self.move_focus(1, words),
            "Shift+Tab" | "ArrowUp" => self.move_focus(FIELDS.len() - 1, words),
            " " | "ArrowLeft" | "ArrowRight" if self.focus == Drawn => self.switch(words),
            "Enter" => self.keep(words),
            " " if self.focus == Keep => self.keep(words),
            _ if intent == Some(Intent::Leave) => self.leave(words),
            _ => LogAction::None,
        }
    }

    /// Leaves; where something was typed, it is asked first.
    pub fn leave(&mut self, words: &Words) -> LogAction {
        let (texts, left_open) = &self.begun_with;
        let is_changed = self.texts != *texts || self.entry.left_open != *left_open;
        if !is_changed || self.is_leaving {
            return LogAction::Leave;
        }
        self.is_leaving = true;
        let asks = words.notice("log-leave-asks", &[]);
        self.complain(asks.clone());
        LogAction::Say(asks.into())
    }

    fn move_focus(&mut self, by: usize, words: &Words) -> LogAction {
        self.focus = FIELDS[(self.focus as usize + by) % FIELDS.len()];
        LogAction::Focus(self.focus, self.say_field(words))
    }

    /// Reads the form: to be kept, or told what is wrong in which field. A wild measure is asked
    /// back once.
    pub fn keep(&mut self, words: &Words) -> LogAction {
        let read = self.read(words).and_then(|entry| {
            let wild = entry.wild_measures().into_iter();
            let mut unasked = wild.filter(|wild| !self.asked_back.contains(wild));
            match unasked.next() {
                None => Ok(entry),
                Some(wild) => {
                    self.asked_back.push(wild);
                    let field = match wild.what {
                        MeasureKind::Width => Width,
                        MeasureKind::Cord => Cut,
                    };
                    Err((field, words.wild_measure(&wild)))
                }
            }
        });
        match read {
            Ok(entry) => LogAction::Keep(Box::new(entry)),
            Err((field, sentence)) => {
                self.focus = field;
                self.complaint = Some((field, sentence.clone()));
                LogAction::Focus(field, sentence.into())
            }
        }
    }

    /// Shows what is wrong with keeping it at all.
    pub fn complain(&mut self, sentence: Sentence) {
        self.complaint = Some((Keep, sentence));
    }

    /// Puts the focus on a field, and shows what is wrong there.
    pub fn complain_at(&mut self, field: LogField, sentence: Sentence) {
        self.focus = field;
        self.complaint = Some((field, sentence));
    }

    /// Whether a field has what stood there at the beginning.
    fn is_as_begun(&self, field: LogField) -> bool {
        let (texts, _) = &self.begun_with;
        texts
            .get(field as usize)
            .is_some_and(|text| text == self.typed(field))
    }

    /// The entry that the form describes, or the field that is wrong and why.
    fn read(&self, words: &Words) -> Result<Entry, (LogField, Sentence)> {
        let length = |field: LogField| match self.typed(field).trim() {
            "" => Ok(None),
            typed => Millimetres::parse(typed)
                .map(Some)
                .map_err(|error| (field, words.log_length_error(&error))),
        };
        let name = self.typed(CordName).trim();
        let known = self.entry.cord.as_ref();
        let diameter = length(CordField)?;
        if diameter.is_none() && !name.is_empty() {
            return Err((CordField, words.notice("log-cord-thickness", &[])));
        }
        let cord = diameter.map(|diameter| Cord {
            diameter,
            name: (!name.is_empty()).then(|| name.to_owned()),
            grams_per_metre: known.and_then(|cord| cord.grams_per_metre),
            give: known.map_or(Give::default(), |cord| cord.give),
        });
        let cut = length(Cut)?;
        let left_over = match self.typed(LeftOver).trim() {
            "0" => Some(0.0),
            _ => length(LeftOver)?.map(Millimetres::get),
        };
        if let (Some(cut), Some(left)) = (cut, left_over)
            && left >= cut.get()
        {
            return Err((LeftOver, words.notice("log-left-over-more", &[])));
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
            around: match length(Around)? {
                // What is as it was known needs no reading: it was shown rounded.
                Some(_) if self.is_as_begun(Around) => self.entry.around,
                measured => measured.map(|thickest| self.entry.around_measured(thickest)),
            },
            width: length(Width)?,
            minutes,
            note: self.typed(Note).trim().to_owned(),
            photograph: self.typed(Photograph).trim().to_owned(),
            ..self.entry.clone()
        })
    }
}
