//! Drives a session in a terminal: hands presses on, does what the session wants done, and prints
//! what is shown, a line at a time.

mod effects;

use std::collections::HashMap;
use std::io::{self, Write};
use std::time::Duration;

use super::input::{self, TerminalEvent};
use super::overlay::{Overlay, Then, Told};
use super::page_news::page_news;
use super::services::TerminalServices;
use crate::pedal::{Input, InputEvent, Intent, KeyBinder, Press, Transition};
use crate::session::{Event, InHand, KnockTrial, Page, Session, SettingsList, Timer};
use crate::shelf::{ShelfError, ShelfReading, Waited};
use crate::words::{Remark, Spoken};

/// How long a press may wait until the one before it is on disk: longer than a slow disk takes, but
/// short enough for whoever presses.
const MOMENT: Duration = Duration::from_millis(500);

/// A tie in a terminal.
pub struct TerminalDriver<W> {
    session: Session,
    services: TerminalServices,
    out: W,
    /// What ends a line. A terminal in raw mode does not return to the left edge by itself.
    line_end: &'static str,
    overlay: Option<Overlay>,
    timers: HashMap<Timer, Duration>,
    /// What was printed last of the tie.
    printed: Option<Page>,
    /// The step is to be printed again.
    is_asked_again: bool,
    /// A line is being typed.
    is_typing: bool,
    end: Option<End>,
}

/// How the tie was left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum End {
    /// It can be taken up again.
    Left,
    /// It is done and written down.
    Logged,
}

/// How a tie is when its terminal is left.
#[derive(Clone, Debug)]
pub enum TieLeft {
    /// It is on disk, and can be taken up again.
    Saved,
    /// It is on disk, done and written down.
    Logged,
    /// It is not on disk as it stands, and why, as far as that is known.
    Unsaved(Option<ShelfError>),
}

impl<W: Write> TerminalDriver<W> {
    /// With nothing in hand yet.
    pub fn new(
        session: Session,
        services: TerminalServices,
        out: W,
        has_single_keys: bool,
    ) -> Self {
        Self {
            session,
            services,
            out,
            line_end: if has_single_keys { "\r\n" } else { "\n" },
            overlay: None,
            timers: HashMap::new(),
            printed: None,
            is_asked_again: false,
            is_typing: false,
            end: None,
        }
    }

    /// The tie in hand and all that belongs to it.
    pub const fn session(&self) -> &Session {
        &self.session
    }

    /// The tie comes into hand.
    ///
    /// # Errors
    /// When nothing can be printed.
    pub fn take_in_hand(&mut self, in_hand: ShelfReading<InHand>, now: Duration) -> io::Result<()> {
        self.session.take_in_hand(in_hand, now);
        self.carry_out(now)
    }

    /// How long nothing has to happen: until then the driver can wait for the next event.
    pub fn due(&self, now: Duration) -> Option<Duration> {
        let next = self.timers.values().min()?;
        Some(next.saturating_sub(now))
    }

    /// Whether the tie was left.
    pub const fn is_over(&self) -> bool {
        self.end.is_some()
    }

    /// Takes in what happened, or that the time of a timer has come, and does what follows.
    ///
    /// # Errors
    /// When nothing can be printed.
    pub fn take(&mut self, event: Option<TerminalEvent>, now: Duration) -> io::Result<()> {
        match event {
            None => self.wake(now)?,
            Some(TerminalEvent::Gone) => {
                self.session.put_away();
                self.end = Some(End::Left);
            }
            Some(TerminalEvent::Pedal(raw)) => self.raw(&raw, None, now)?,
            Some(TerminalEvent::Key(raw, typed)) => self.raw(&raw, typed, now)?,
            Some(TerminalEvent::Line(typed)) => self.line(&typed, now)?,
            Some(TerminalEvent::Session(event)) => {
                if let Some(overlay) = &mut self.overlay {
                    let told = overlay.hear(&event, &self.session);
                    self.tell(told, now)?;
                }
                self.hear(event, now);
            }
        }
        self.carry_out(now)
    }

    fn wake(&mut self, now: Duration) -> io::Result<()> {
        let due = |(_, at): &(&Timer, &Duration)| **at <= now;
        while let Some(timer) = self.timers.iter().find(due).map(|(timer, _)| *timer) {
            self.timers.remove(&timer);
            if timer == Timer::Gesture {
                let intent = self.session.gesture_due(now);
                self.press(intent, &Press::default(), now)?;
            } else {
                self.hear(Event::Woken(timer), now);
            }
        }
        Ok(())
    }

    fn hear(&mut self, event: Event, now: Duration) {
        let here = match (&self.overlay, self.session.walk()) {
            (None, Some(walk)) => walk.say().clone(),
            _ => Spoken::default(),
        };
        self.session.hear(event, &here, now);
    }

    fn raw(&mut self, raw: &InputEvent, typed: Option<String>, now: Duration) -> io::Result<()> {
        if let Some(overlay) = &mut self.overlay
            && let Some(told) = overlay.input(raw, &mut self.session, now)
        {
            return self.tell(told, now);
        }
        if raw.transition == Transition::Down {
            self.session.seen();
            if self.asks_for_keys(&raw.input) {
                let said = self.session.words().remark(Remark::TieKeysSay);
                return self.tell_keys("tie-keys", &said);
            }
        }
        let bound = self.session.take(raw, now);
        let letter = || input::letter(raw, self.session.pedals().bindings());
        let takes_text = self.overlay.as_ref().is_some_and(Overlay::takes_text);
        let intent = if takes_text {
            bound
        } else {
            bound.or_else(letter)
        };
        match input::press(raw, typed) {
            None if intent.is_none() => Ok(()),
            press => self.press(intent, &press.unwrap_or_default(), now),
        }
    }

    fn line(&mut self, typed: &str, now: Duration) -> io::Result<()> {
        if let Some(overlay) = &mut self.overlay
            && let Some(told) = overlay.line(typed, &mut self.session, &self.services)
        {
            return self.tell(told, now);
        }
        self.session.seen();
        if self.overlay.is_none() && typed.trim() == "?" {
            let keys = self.session.words().notice("tie-keys-lines", &[]);
            return self.tell_keys("tie-keys-lines", keys.spoken());
        }
        let (intent, press) = input::line(typed, self.session.pedals().bindings());
        self.press(intent, &press, now)
    }

    /// Whether all keys are asked for, by what asks for them in the window too.
    fn asks_for_keys(&self, input: &Input) -> bool {
        let is_bound = self.session.pedals().bindings().intent(input).is_some();
        let asks = [Input::key("?"), Input::key("F1")].contains(input);
        asks && !is_bound && self.overlay.is_none()
    }

    fn tell_keys(&mut self, shown: &str, said: &Spoken) -> io::Result<()> {
        self.services.voice.say(said);
        let shown = self.session.words().plainly(shown, &[]);
        self.print(&shown)
    }

    fn press(&mut self, intent: Option<Intent>, press: &Press, now: Duration) -> io::Result<()> {
        let Some(overlay) = &mut self.overlay else {
            self.session.press(intent, press, now);
            return Ok(());
        };
        if !overlay.takes_text()
            && let Some(is_faster) = intent.and_then(Intent::speed)
        {
            self.session.change_speed(is_faster);
            return Ok(());
        }
        let told = overlay.press(intent, press, &mut self.session, &self.services);
        self.tell(told, now)
    }

    /// Tells what came of a press on what stands before the tie.
    fn tell(&mut self, told: Told, now: Duration) -> io::Result<()> {
        let Told {
            say,
            print,
            echo,
            then,
        } = told;
        if let Some(echo) = echo {
            self.is_typing = true;
            write!(self.out, "{echo}")?;
            return self.out.flush();
        }
        if !say.is_empty() {
            self.services.voice.say(&say);
            self.print(print.as_deref().unwrap_or(say.as_str()))?;
        }
        let tag = self.session.words().tag().to_string();
        match then {
            Then::Stay => Ok(()),
            Then::Back => {
                self.overlay = None;
                self.session.come_back(now);
                Ok(())
            }
            Then::Logged => {
                self.session.put_away();
                self.end = Some(End::Logged);
                Ok(())
            }
            Then::Learn => self.open(Overlay::Learn(KeyBinder::default()), now),
            Then::TryKnocks => {
                let trial = KnockTrial::new(self.session.settings().knocks);
                self.open(Overlay::Knocks(trial), now)
            }
            // What is being said about the last press must not be cut off by the settings.
            Then::Settings if !say.is_empty() => {
                self.services.voice.ask_for_voices();
                self.overlay = Some(Overlay::Settings(SettingsList::new(&tag)));
                Ok(())
            }
            Then::Settings => self.open(Overlay::Settings(SettingsList::new(&tag)), now),
        }
    }

    fn open(&mut self, overlay: Overlay, now: Duration) -> io::Result<()> {
        self.session.look_away();
        self.services.voice.ask_for_voices();
        let told = overlay.opening(&self.session);
        self.overlay = Some(overlay);
        self.tell(told, now)
    }

    /// Does what the session wants done, and prints what has changed.
    fn carry_out(&mut self, now: Duration) -> io::Result<()> {
        loop {
            let effects = self.session.effects();
            if effects.is_empty() {
                break;
            }
            for effect in effects {
                self.effect(effect, now)?;
            }
        }
        if self.overlay.is_none() && self.end.is_none() {
            self.print_page()?;
        }
        Ok(())
    }

    /// Prints what is new on the page.
    fn print_page(&mut self) -> io::Result<()> {
        let Some(page) = self.session.page() else {
            return Ok(());
        };
        let before = self.printed.take();
        let is_asked_again = std::mem::take(&mut self.is_asked_again);
        let new = page_news(&page, before.as_ref(), is_asked_again);
        self.printed = Some(page);
        new.iter().try_for_each(|line| self.print(line))
    }

    /// Prints one line at once.
    ///
    /// # Errors
    /// When nothing can be printed.
    pub fn print(&mut self, line: &str) -> io::Result<()> {
        let end = self.line_end;
        if std::mem::take(&mut self.is_typing) {
            write!(self.out, "{end}")?;
        }
        write!(self.out, "{line}{end}")?;
        self.out.flush()
    }

    /// Waits until everything asked for is on disk, at most this long, and says whether it is. It
    /// never is where there is nothing to keep it on.
    pub fn flush(&self, at_most: Duration) -> bool {
        let keeper = self.services.keeper.as_ref();
        keeper.is_some_and(|keeper| keeper.flush(at_most))
    }

    /// Waits a moment until the last press is on disk, unless the tyer was told that saving takes
    /// long or fails. So, however fast the presses come, no more than one of them is not on disk.
    pub fn settle(&mut self, now: Duration) {
        if self.session.is_saving_late() {
            return;
        }
        match self
            .services
            .keeper
            .as_ref()
            .map(|keeper| keeper.wait(MOMENT))
        {
            Some(Waited::Slow) => self.session.goes_on_unsaved(),
            // What was reported may stand behind a press that is taken before it.
            Some(Waited::Refused(failure)) => self.hear(Event::Kept(failure), now),
            Some(Waited::Saved) | None => {}
        }
    }

    /// Falls silent, waits at most this long for the last save, and says how the tie was left.
    pub fn close(&mut self, at_most: Duration) -> TieLeft {
        self.services.voice.hush();
        if self.flush(at_most) {
            return match self.end {
                Some(End::Logged) => TieLeft::Logged,
                _ => TieLeft::Saved,
            };
        }
        if let Some(keeper) = self.services.keeper.take() {
            keeper.abandon();
        }
        TieLeft::Unsaved(self.session.saving_failure().cloned())
    }
}
