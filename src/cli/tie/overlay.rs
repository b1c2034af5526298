//! What stands before the tie for a while: the settings, the form of the log, and learning what
//! is pressed for what. Each is told line by line.

use super::services::TerminalServices;
use crate::pedal::{Binding, Input, InputEvent, Intent, KeyBinder, Press, Transition};
use crate::session::{
    Event, KnockTrial, LogAction, LogField, LogForm, Session, Setting, SettingsAction,
    SettingsList, keep_entry,
};
use crate::settings::Settings;
use crate::voice::VoiceEvent;
use crate::words::{Remark, Spoken};

/// What stands before the tie.
pub enum Overlay {
    /// The settings, changed line by line.
    Settings(SettingsList),
    /// What was used is written down.
    Log(Box<LogForm>),
    /// What is pressed is learnt.
    Learn(KeyBinder),
    /// Knocks are tried.
    Knocks(KnockTrial),
}

/// What a press on it came to.
#[derive(Debug, Default)]
pub struct Told {
    /// What is said.
    pub say: Spoken,
    /// What is printed, where that is not the same as what is said.
    pub print: Option<String>,
    /// What is added to the line that is being typed.
    pub echo: Option<String>,
    /// What comes of it all.
    pub then: Then,
}

/// Whether it stays.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Then {
    /// It stays before the tie.
    #[default]
    Stay,
    /// The tie is there again.
    Back,
    /// The settings give way to learning.
    Learn,
    /// Learning, or trying, gives way to the settings.
    Settings,
    /// The settings give way to trying knocks.
    TryKnocks,
    /// The tie is written down and done with.
    Logged,
}

impl Told {
    fn line(say: Spoken) -> Self {
        Self {
            say,
            ..Self::default()
        }
    }

    fn then(then: Then) -> Self {
        Self {
            then,
            ..Self::default()
        }
    }
}

impl Overlay {
    /// Whether letters are typed into it.
    pub const fn takes_text(&self) -> bool {
        matches!(self, Self::Log(_))
    }

    /// What is told when it appears.
    pub fn opening(&self, session: &Session) -> Told {
        let words = session.words();
        match self {
            Self::Settings(list) => {
                let opening = words.remark(Remark::SettingsOpeningSay);
                let here = settings_line(list, session);
                Told {
                    print: here.print.map(|line| format!("{opening} {line}")),
                    say: opening.then(&here.say),
                    ..Told::default()
                }
            }
            Self::Log(form) => {
                let opening = words.remark(Remark::TieLogSay);
                Told::line(opening.then(&form.say_field(words)))
            }
            Self::Knocks(trial) => Told::line(trial.say_opening(words)),
            Self::Learn(binder) => {
                let opening = words.remark(Remark::LearnOpeningSay);
                Told::line(opening.then(&asks(binder, session)))
            }
        }
    }

    /// Takes a press.
    pub fn press(
        &mut self,
        intent: Option<Intent>,
        press: &Press,
        session: &mut Session,
        services: &TerminalServices,
    ) -> Told {
        match self {
            Self::Settings(list) => {
                let action = list.press(press, intent, session.settings());
                follow_settings(list, action, session)
            }
            Self::Log(form) => press_form(form, intent, press, session, services),
            Self::Knocks(trial) => match intent {
                Some(Intent::Leave) => Told::then(Then::Settings),
                Some(Intent::Again | Intent::Where) => Told::line(trial.say(session.words())),
                Some(Intent::Next) if !trial.is_on() => Told::line(trial.switch_on(session)),
                _ => Told::default(),
            },
            // Learning takes inputs, before they are made into presses.
            Self::Learn(_) => Told::default(),
        }
    }

    /// Takes an input before gestures are made of it. Gives `None` where the input is none of its
    /// business.
    pub fn input(
        &mut self,
        raw: &InputEvent,
        session: &mut Session,
        now: std::time::Duration,
    ) -> Option<Told> {
        let binder = match self {
            Self::Learn(binder) => binder,
            // They are tried here, and do nothing.
            Self::Knocks(_) if matches!(raw.input, Input::Knocks(_)) => {
                return Some(Told::default());
            }
            _ => return None,
        };
        if raw.transition == Transition::Down && raw.input == Input::key("Escape") {
            return Some(Told::then(Then::Settings));
        }
        let Some(input) = session.take_to_learn(raw, now) else {
            return Some(Told::default());
        };
        let words = session.words();
        let came_to = match binder.press(input) {
            Some(Binding::Bound(input, intent)) => words.learnt(&input, intent).into(),
            Some(Binding::Skipped(_)) => words.remark(Remark::LearnSkippedSay),
            None => Spoken::default(),
        };
        let mut told = Told::line(came_to.then(&asks(binder, session)));
        if binder.asks_for().is_none() {
            session.set(Settings {
                bindings: binder.bindings(),
                ..session.settings().clone()
            });
            told.then = Then::Settings;
        }
        Some(told)
    }

    /// Takes what happens outside: the voices that there are, and a row of knocks that is over where knocks
    /// are tried.
    pub fn hear(&mut self, event: &Event, session: &Session) -> Told {
        if let (Self::Knocks(trial), Event::Ear(news)) = (&mut *self, event)
            && trial.take(*news)
        {
            return Told::line(trial.say(session.words()));
        }
        if let (Self::Settings(list), Event::Voice(VoiceEvent::Voices(voices))) = (self, event) {
            list.voices(voices);
        }
        Told::default()
    }

    /// Takes a line that was typed where there are no single keys; `None` where it is a press
    /// like any other.
    pub fn line(
        &mut self,
        typed: &str,
        session: &mut Session,
        services: &TerminalServices,
    ) -> Option<Told> {
        let Self::Log(form) = self else { return None };
        let typed = typed.trim();
        if !typed.is_empty() && form.focus() == LogField::Drawn {
            let action = form.switch(session.words());
            return Some(follow_log(form, action, session, services));
        }
        if !typed.is_empty() && form.focus() != LogField::Keep {
            form.type_in(form.focus(), typed.to_owned());
        }
        Some(onwards(form, session, services))
    }
}

fn asks(binder: &KeyBinder, session: &Session) -> Spoken {
    match binder.asks_for() {
        Some(intent) => session.words().learn_asks(intent).into(),
        None => session.words().remark(Remark::LearnDoneSay),
    }
}

/// The line of the settings that has the focus: as it is said, and as it stands on the screen.
fn settings_line(list: &SettingsList, session: &Session) -> Told {
    let (words, settings) = (session.words(), session.settings());
    let print = Setting::ALL.get(list.focus()).map(|setting| {
        let name = words.setting_name(setting.name());
        let value = list.shown(*setting, words, settings);
        format!("{name}: {}", words.setting_value(setting.name(), &value))
    });
    Told {
        say: list.say(words, settings),
        print,
        ..Told::default()
    }
}

fn follow_settings(list: &mut SettingsList, action: SettingsAction, session: &mut Session) -> Told {
    match action {
        SettingsAction::None => Told::default(),
        SettingsAction::Leave => Told::then(Then::Back),
        SettingsAction::Learn => Told::then(Then::Learn),
        SettingsAction::TryKnocks => Told::then(Then::TryKnocks),
        SettingsAction::Moved => settings_line(list, session),
        SettingsAction::Explain => {
            let line = settings_line(list, session);
            let hint = list.hint(session.words());
            Told {
                say: list.say_with_hint(session.words(), session.settings()),
                print: line.print.map(|line| format!("{line}\n{hint}")),
                ..line
            }
        }
        SettingsAction::Try(settings) => {
            session.try_voice(&settings);
            settings_line(list, session)
        }
        SettingsAction::Set(settings) => {
            session.set(*settings);
            list.speak(&session.words().tag().to_string());
            settings_line(list, session)
        }
    }
}

/// A key in the form: letters are typed, Enter goes on to the next field and at the last keeps
/// it all, Tab and the arrows move, Escape leaves.
fn press_form(
    form: &mut LogForm,
    intent: Option<Intent>,
    press: &Press,
    session: &mut Session,
    services: &TerminalServices,
) -> Told {
    let is_text = !matches!(form.focus(), LogField::Drawn | LogField::Keep);
    let mut typed = form.typed(form.focus()).to_owned();
    let echo = match press.key.as_str() {
        "Enter" if !press.is_repeat => return onwards(form, session, services),
        "Backspace" if is_text => match typed.pop() {
            // Moves left, overwrites the letter with a blank, and moves left again.
            Some(_) => "\u{8} \u{8}".to_owned(),
            None => return Told::default(),
        },
        key if is_text && key.chars().count() == 1 => {
            typed.push_str(key);
            key.to_owned()
        }
        _ => {
            let action = form.press(press, intent, session.words());
            return follow_log(form, action, session, services);
        }
    };
    form.type_in(form.focus(), typed);
    Told {
        echo: Some(echo),
        ..Told::default()
    }
}

/// On to the next field, or at the last one keeps it all.
fn onwards(form: &mut LogForm, session: &mut Session, services: &TerminalServices) -> Told {
    let action = if form.focus() == LogField::Keep {
        form.keep(session.words())
    } else {
        let tab = Press {
            key: "Tab".to_owned(),
            is_repeat: false,
        };
        form.press(&tab, None, session.words())
    };
    follow_log(form, action, session, services)
}

fn follow_log(
    form: &mut LogForm,
    action: LogAction,
    session: &mut Session,
    services: &TerminalServices,
) -> Told {
    match action {
        LogAction::None => Told::default(),
        LogAction::Say(say) | LogAction::Focus(_, say) => Told::line(say),
        LogAction::Leave => Told::then(Then::Back),
        LogAction::Keep(entry) => {
            let Some(shelf) = &services.shelf else {
                return Told::default();
            };
            match keep_entry(shelf, &entry) {
                Ok(kept) => {
                    kept.hand_on(session);
                    Told {
                        say: session.words().notice("log-kept", &[]).into(),
                        then: Then::Logged,
                        ..Told::default()
                    }
                }
                Err(fault) => {
                    let sentence = fault.sentence(session.words());
                    form.complain(sentence.clone());
                    Told::line(sentence.into())
                }
            }
        }
    }
}
