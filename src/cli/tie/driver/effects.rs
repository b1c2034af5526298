//! What the session wants done, done in a terminal.

use std::io::{self, Write};
use std::time::Duration;

use super::{End, MOMENT, TerminalDriver};
use crate::cli::tie::overlay::Overlay;
use crate::cli::tie::services::TerminalServices;
use crate::session::{Effect, InHand, LogForm, SettingsList, entry_for};

impl<W: Write> TerminalDriver<W> {
    /// Does one thing that the session wants done.
    ///
    /// # Errors
    /// When nothing can be printed.
    pub(super) fn effect(&mut self, effect: Effect, now: Duration) -> io::Result<()> {
        let TerminalServices {
            voice,
            chime,
            keeper,
            file,
            shelf,
            ear,
        } = &self.services;
        match effect {
            Effect::Say(text) => voice.say(&text),
            Effect::Hush => voice.hush(),
            Effect::Show => self.is_asked_again = true,
            Effect::Cue(cue, volume) => {
                if let Some(chime) = chime {
                    chime.play(cue, volume);
                }
            }
            Effect::Wake(timer, Some(after)) => {
                self.timers.insert(timer, now + after);
            }
            Effect::Wake(timer, None) => {
                self.timers.remove(&timer);
            }
            // A program in a terminal cannot keep the screen lit.
            Effect::StayAwake(_) => {}
            Effect::Keep(tie) => {
                if let Some(keeper) = keeper {
                    keeper.keep(*tie);
                }
            }
            Effect::PutAway(held) => {
                if let Some(keeper) = keeper {
                    keeper.put_away(held);
                }
            }
            Effect::SetSpeech(speech) => voice.set_speech(speech),
            Effect::Listen(is_wanted) => ear.listen(is_wanted),
            Effect::KeepSettings(settings) => file.keep(&settings),
            Effect::OpenSettings => {
                let tag = self.session.words().tag().to_string();
                return self.open(Overlay::Settings(SettingsList::new(&tag)), now);
            }
            Effect::OpenLog(tie) => {
                let Some(shelf) = shelf else { return Ok(()) };
                match entry_for(shelf, &tie) {
                    Ok(entry) => {
                        let entry = entry.hand_on(&mut self.session);
                        let form = Box::new(LogForm::new(entry));
                        return self.open(Overlay::Log(form), now);
                    }
                    Err(error) => {
                        let sentence = self.session.refuse(&error);
                        self.services.voice.say(sentence.spoken());
                    }
                }
            }
            Effect::BeginNext(tie) => {
                // The one that is done goes to disk first: its time counts.
                self.flush(MOMENT);
                let in_hand = InHand::new(self.services.shelf.as_ref(), *tie);
                self.session.take_in_hand(in_hand, now);
            }
            Effect::Leave => self.end = Some(End::Left),
        }
        Ok(())
    }
}
